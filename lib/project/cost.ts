/** What one result costs: a battery brought to its target, from purchase, energy, standby and visits, with what moves it most. */
import type { Range } from "./spread.ts";

/** A number with the interval that holds it. */
export type Estimate = { readonly value: number } & Range;

/** An amount of money in an ISO 4217 currency. */
export type MoneyEstimate = { readonly amount: Estimate; readonly currency: string; readonly on?: string };

/** How much of one currency another one buys, and the day on which that was true. */
export type Rate = { readonly from: string; readonly to: string; readonly rate: Estimate; readonly on: string };

export type CostInputs = {
  readonly currency: string;
  readonly rates?: readonly Rate[];
  readonly purchase: MoneyEstimate;
  /** Results over which the purchase is spread. */
  readonly usesInLife: Estimate;
  readonly pricePerKWh: MoneyEstimate;
  /** Of one result: from the mains meter, or at the battery's posts over a conversion efficiency. */
  readonly energy: { readonly mainsKWh: Estimate } | { readonly dcKWh: Estimate; readonly efficiency: Estimate };
  /** Drawn beside that between results, kWh a result. */
  readonly standbyKWh?: Estimate;
  /** The owner's time for one result, and what an hour of it is worth to them. */
  readonly visits?: { readonly minutes: Estimate; readonly valuePerHour: MoneyEstimate };
  /** What one result put back, for the costs by unit: Ah, and density gained, kg/l. */
  readonly restoredAh?: Estimate;
  readonly densityGain?: Estimate;
};

export type CostOfResult = {
  readonly currency: string;
  /** Purchase spread over its uses, and all paid for the first one. */
  readonly perResult: Estimate;
  readonly firstResult: Estimate;
  /** Without the purchase. */
  readonly runningPerResult: Estimate;
  readonly perAh: Estimate | null;
  readonly perHundredthKgPerL: Estimate | null;
  readonly parts: readonly { readonly part: "purchase" | "energy" | "standby" | "visits"; readonly amount: number }[];
  /** Each input moved alone from one end of its interval to the other, and what the cost of a result then is; widest first. */
  readonly movedBy: readonly { readonly input: string; readonly low: number; readonly high: number }[];
};

/** No cost, and why. */
export type CostRefused = { readonly refused: string };

/** An estimate without an interval of its own. */
export function known(value: number): Estimate {
  return { value, low: value, high: value };
}

/**
 * The cost of one result.
 * @returns costs in the currency asked for; a refusal where a conversion rate is missing, or uses or efficiency are not positive
 *
 * Intervals: each input is moved alone to either end of its own; the moves upwards add as the root of their squares, those downwards
 * likewise (JCGM 100, 5.1.2, taken on each side by itself, since a division is lopsided). Nothing is rounded.
 */
export function costPerResult(inputs: CostInputs): CostOfResult | CostRefused {
  const flat = flatten(inputs);
  if ("refused" in flat) return flat;
  const values = flat.map(({ estimate }) => estimate.value);
  const perResult = propagateEach(flat, (at) => perUse(inputs, at) + running(inputs, at));
  const centre = read(flat, values);
  const movedBy = flat
    .map(({ input, estimate }, index) => {
      const at = (value: number): number => {
        const moved = read(flat, values.with(index, value));
        return perUse(inputs, moved) + running(inputs, moved);
      };
      const ends = [at(estimate.low), at(estimate.high)];
      return { input, low: Math.min(...ends), high: Math.max(...ends) };
    })
    .filter(({ low, high }) => high > low)
    .sort((a, b) => b.high - b.low - (a.high - a.low));
  const over = (amount: string): Estimate | null =>
    flat.some(({ input }) => input === amount)
      ? propagateEach(flat, (at) => (perUse(inputs, at) + running(inputs, at)) / at(amount))
      : null;
  const perKgPerL = over("density gained");
  return {
    currency: inputs.currency,
    perResult,
    firstResult: propagateEach(flat, (at) => purchaseOf(inputs, at) + running(inputs, at)),
    runningPerResult: propagateEach(flat, (at) => running(inputs, at)),
    perAh: over("charge put back"),
    perHundredthKgPerL: perKgPerL === null ? null : { value: perKgPerL.value / 100, low: perKgPerL.low / 100, high: perKgPerL.high / 100 },
    parts: [
      { part: "purchase", amount: perUse(inputs, centre) },
      { part: "energy", amount: energyCost(inputs, centre) },
      { part: "standby", amount: standbyCost(inputs, centre) },
      { part: "visits", amount: visitCost(inputs, centre) },
    ],
    movedBy,
  };
}

/**
 * An amount as shown: rounded half away from zero on its decimal digits, so that 1.005 is 1.01 though the double below it is smaller.
 * @param decimals  2 for most currencies
 * @returns digits without currency; "not a number" for one that is not finite. For showing only: nothing is computed from it.
 */
export function showAmount(amount: number, decimals = 2): string {
  if (!Number.isFinite(amount)) return "not a number";
  // Fifteen significant digits are what the number was meant to be; the rest is the double's own dust.
  const [digits = "0", exponent = "0"] = Math.abs(amount).toExponential(14).split("e");
  const shifted = Math.round(Number(`${digits}e${Number(exponent) + decimals}`));
  const text = (shifted / 10 ** decimals).toFixed(decimals);
  return amount < 0 && shifted > 0 ? `-${text}` : text;
}

type FlatInput = { readonly input: string; readonly estimate: Estimate };
type Reader = (input: string) => number;

/** How much of one currency one unit of another buys; undefined where no rate is stated that way round. */
export function rateBetween(rates: readonly Rate[], from: string, to: string): Estimate | undefined {
  return from === to ? known(1) : rates.find((rate) => rate.from === from && rate.to === to)?.rate;
}

/** All inputs as one list of named numbers, money converted by a rate that is itself an input. */
function flatten(inputs: CostInputs): FlatInput[] | CostRefused {
  const flat: FlatInput[] = [{ input: "uses in its life", estimate: inputs.usesInLife }];
  const monies: [string, MoneyEstimate][] = [
    ["purchase", inputs.purchase],
    ["price of electricity", inputs.pricePerKWh],
    ...(inputs.visits === undefined ? [] : [["value of an hour", inputs.visits.valuePerHour] as [string, MoneyEstimate]]),
  ];
  for (const [input, { amount, currency }] of monies) {
    flat.push({ input, estimate: amount });
    if (currency === inputs.currency) continue;
    const rate = rateBetween(inputs.rates ?? [], currency, inputs.currency);
    if (rate === undefined) return { refused: `${input} is in ${currency}, and no rate to ${inputs.currency} is stated` };
    flat.push({ input: rateName(input), estimate: rate });
  }
  if ("mainsKWh" in inputs.energy) flat.push({ input: "mains energy", estimate: inputs.energy.mainsKWh });
  else
    flat.push(
      { input: "energy at the battery", estimate: inputs.energy.dcKWh },
      { input: "efficiency", estimate: inputs.energy.efficiency },
    );
  if (inputs.standbyKWh !== undefined) flat.push({ input: "standby", estimate: inputs.standbyKWh });
  if (inputs.visits !== undefined) flat.push({ input: "minutes of visits", estimate: inputs.visits.minutes });
  if (inputs.restoredAh !== undefined) flat.push({ input: "charge put back", estimate: inputs.restoredAh });
  if (inputs.densityGain !== undefined) flat.push({ input: "density gained", estimate: inputs.densityGain });
  const impossible = flat.find(({ input, estimate }) => !(estimate.low > 0) && (input === "uses in its life" || input === "efficiency"));
  if (impossible !== undefined) return { refused: `${impossible.input} must be more than nothing` };
  return flat;
}

function rateName(input: string): string {
  return `rate of exchange of ${input}`;
}

function read(flat: readonly FlatInput[], values: readonly number[]): Reader {
  const byName = new Map(flat.map(({ input }, index) => [input, values[index] ?? Number.NaN]));
  return (input) => byName.get(input) ?? Number.NaN;
}

function propagateEach(flat: readonly FlatInput[], cost: (at: Reader) => number): Estimate {
  const values = flat.map(({ estimate }) => estimate.value);
  const value = cost(read(flat, values));
  let [upwards, downwards] = [0, 0];
  for (const [index, { estimate }] of flat.entries()) {
    const ends = [estimate.low, estimate.high].map((end) => cost(read(flat, values.with(index, end))) - value);
    upwards += Math.max(0, ...ends) ** 2;
    downwards += Math.min(0, ...ends) ** 2;
  }
  return { value, low: value - Math.sqrt(downwards), high: value + Math.sqrt(upwards) };
}

function converted(inputs: CostInputs, at: Reader, input: string, currency: string): number {
  return at(input) * (currency === inputs.currency ? 1 : at(rateName(input)));
}

function purchaseOf(inputs: CostInputs, at: Reader): number {
  return converted(inputs, at, "purchase", inputs.purchase.currency);
}

function perUse(inputs: CostInputs, at: Reader): number {
  return purchaseOf(inputs, at) / at("uses in its life");
}

function pricePerKWh(inputs: CostInputs, at: Reader): number {
  return converted(inputs, at, "price of electricity", inputs.pricePerKWh.currency);
}

function energyCost(inputs: CostInputs, at: Reader): number {
  const mainsKWh = "mainsKWh" in inputs.energy ? at("mains energy") : at("energy at the battery") / at("efficiency");
  return mainsKWh * pricePerKWh(inputs, at);
}

function standbyCost(inputs: CostInputs, at: Reader): number {
  return inputs.standbyKWh === undefined ? 0 : at("standby") * pricePerKWh(inputs, at);
}

function visitCost(inputs: CostInputs, at: Reader): number {
  if (inputs.visits === undefined) return 0;
  return (at("minutes of visits") / 60) * converted(inputs, at, "value of an hour", inputs.visits.valuePerHour.currency);
}

function running(inputs: CostInputs, at: Reader): number {
  return energyCost(inputs, at) + standbyCost(inputs, at) + visitCost(inputs, at);
}
