/** What the reference charge costs: the one cost that all chargers can be held against each other by. */
import type { PublishedSpread } from "../../judge/forecast/forecast-mode.ts";
import { usesInLife } from "../../measure/cost-of-result.ts";
import type { TestContext } from "../../measure/test-context.ts";
import type { Evidence } from "../../nouns/evidence.ts";
import type { AbsenceKind, Figure } from "../../nouns/figure.ts";
import { type CostOfResult, costPerResult, type Estimate, known } from "../../project/index.ts";

export const runningCostId = "reference-running-cost";

/** How these figures are explained, for their method pages. */
export const referenceCostMethods = [
  {
    id: runningCostId,
    version: 1,
    label: "Running cost of the reference charge",
    unit: "currency of the price",
    explain:
      "What one charge of the reference battery costs once the charger is paid for: energy from the mains until 95 % at the site's price, and one visit of the owner where the site values their time.",
    formula: "E_mains · price per kWh + one visit",
    source: "Our definition: no standard defines it. Interval: that of the energy (docs/projection.md).",
    checkedBy: ["Worked by hand in a small test record"],
  },
  {
    id: "reference-cost",
    version: 1,
    label: "Cost of the reference charge",
    unit: "currency of the price",
    explain:
      "The running cost with the purchase spread over the uses of the charger's life. Every charger is held to the same charge, whatever it was tested on.",
    formula: "price / uses + running cost",
    source:
      "Our definition: no standard defines it. Intervals: each input moved alone, root of the sum of squares on either side (JCGM 100, 5.1.2).",
    checkedBy: ["Worked by hand in a small test record"],
  },
] as const;

/**
 * @param context  any test of the mode: price, uses, electricity and rates are read from it
 * @param mainsKWh  its energy from the mains until 95 %, null for never: a charge that stops short is no cheap one, but none
 * @param evidence  the recordings that the forecast rests on
 * @returns two figures, projected; absent with the reason where a price is not stated or the charge does not end
 */
export function referenceCosts(context: TestContext, modeId: string, mainsKWh: PublishedSpread, evidence: readonly Evidence[]): Figure[] {
  const cost = costOf(context, mainsKWh);
  const currency = context.charger.price?.currency ?? "";
  const figureOf = (id: string, label: string, pick: (made: CostOfResult) => Estimate): Figure => {
    const common = { id, of: `mode/${modeId}`, label, unit: currency, basis: "projected" as const, method: `${id}/1` };
    if ("absent" in cost)
      return {
        ...common,
        value: null,
        low: null,
        high: null,
        evidence: [...evidence],
        absent: { kind: cost.absent, why: cost.why },
        doubts: [],
      };
    const { value, low, high } = pick(cost.made);
    const isBounded = mainsKWh.low !== null && mainsKWh.high !== null;
    return {
      ...common,
      value,
      low: isBounded ? low : null,
      high: isBounded ? high : null,
      evidence: [...evidence, context.recordEvidence],
      absent: null,
      doubts: ["projected, not seen", ...cost.doubts],
    };
  };
  return [
    figureOf(runningCostId, "Running cost of the reference charge", ({ runningPerResult }) => runningPerResult),
    figureOf("reference-cost", "Cost of the reference charge, purchase included", ({ perResult }) => perResult),
  ];
}

/** What a kilowatt-hour costs in the currency of the charger's price; null where either is not stated, or no rate leads from one to the other. */
export function pricePerKWh({
  charger: { price },
  site: { electricity, exchangeRates },
}: TestContext): { amount: number; currency: string } | null {
  if (price === undefined || electricity === undefined) return null;
  const { currency } = price;
  const rate =
    electricity.currency === currency
      ? 1
      : exchangeRates?.find((known) => known.from === electricity.currency && known.to === currency)?.rate;
  return rate === undefined ? null : { amount: electricity.pricePerKWh * rate, currency };
}

type Made = { readonly made: CostOfResult; readonly doubts: readonly string[] };
type Absent = { readonly absent: AbsenceKind; readonly why: string };

function costOf(context: TestContext, { value, low, high }: PublishedSpread): Made | Absent {
  const { price } = context.charger;
  const { electricity, exchangeRates, ownersTime } = context.site;
  if (price === undefined) return { absent: "not stated", why: "no price of the charger is stated" };
  if (electricity === undefined) return { absent: "not stated", why: "the site states no price of electricity" };
  if (value === null)
    return {
      absent: "not reached",
      why: "the reference battery is not brought to 95 % in half of the draws or more, so there is no result to pay for",
    };
  const uses = usesInLife(context);
  const made = costPerResult({
    currency: price.currency,
    ...(exchangeRates === undefined ? {} : { rates: exchangeRates.map(({ from, to, rate, on }) => ({ from, to, rate: known(rate), on })) }),
    purchase: { amount: known(price.amount), currency: price.currency, ...(price.on === undefined ? {} : { on: price.on }) },
    usesInLife: uses.estimate,
    pricePerKWh: { amount: known(electricity.pricePerKWh), currency: electricity.currency, on: electricity.on },
    energy: { mainsKWh: { value, low: low ?? value, high: high ?? value } },
    ...(ownersTime === undefined
      ? {}
      : {
          visits: {
            minutes: known(ownersTime.minutesPerVisit),
            valuePerHour: { amount: known(ownersTime.valuePerHour), currency: ownersTime.currency },
          },
        }),
  });
  if ("refused" in made) return { absent: "cannot tell", why: made.refused };
  return {
    made,
    doubts: [
      uses.words,
      ownersTime === undefined ? "the owner's time is left out" : `the owner's time counts ${ownersTime.minutesPerVisit} min a connection`,
    ],
  };
}
