/** After how many charges a charger that is dearer to buy has earned that back by the energy it saves, pair by pair. */
import { breakEvenUses } from "../../project/break-even.ts";
import { formatNumber, withUnit } from "../../units/format.ts";
import type { ComparedFigure, ComparedMode, ComparedReference } from "./compared.ts";
import type { Statement } from "./differences.ts";

export type Buyable = {
  /** What the statements call it. */
  readonly name: string;
  readonly price: ComparedFigure | undefined;
  readonly reference: ComparedMode["reference"];
};

/** Beyond so many uses an answer means never: one a week for twenty years. Our judgement. */
const mostUses = 1000;
/** Share of the draws that must agree before something is said of all. */
const agreed = 0.95;

/**
 * Holds prices and the energy of the reference charge against each other, draw by draw: all chargers meet the same battery in each.
 * @param buyables  one a charger, in any order
 * @returns a statement a pair that can be compared, then who cannot and why
 */
export function breakEvenStatements(buyables: readonly Buyable[]): Statement[] {
  const ready = buyables.flatMap((one): Ready[] => {
    const { name, price, reference } = one;
    if (typeof price?.value !== "number" || "because" in reference || reference.pricePerKWh === null) return [];
    const { amount, currency } = reference.pricePerKWh;
    const runs = reference.drawsKWh.map((kWh) => (kWh === null ? Number.NaN : kWh * amount));
    return isFillingHalf(reference) ? [{ name, priced: price.value, currency, runs }] : [];
  });
  const missing = buyables.filter(({ name }) => !ready.some((one) => one.name === name));
  return [
    ...ready.flatMap((a, index) => ready.slice(index + 1).map((b) => pairStatement(a, b))),
    ...missing.map((one): Statement => ({ sign: "∦", words: `${one.name} is not comparable because ${whyMissing(one)}` })),
  ];
}

/** A charger that fills the battery in less than half of the draws saves energy by not doing its work. */
const isFillingHalf = ({ drawsKWh }: ComparedReference): boolean => 2 * drawsKWh.filter((kWh) => kWh !== null).length >= drawsKWh.length;

/** A charger with its price and what each draw of the reference charge costs to run, NaN where the battery is not filled. */
type Ready = { readonly name: string; readonly priced: number; readonly currency: string; readonly runs: readonly number[] };

function pairStatement(a: Ready, b: Ready): Statement {
  const both = `${a.name} and ${b.name}`;
  if (a.currency !== b.currency) return { sign: "∦", words: `${both}: prices are in ${a.currency} and ${b.currency}` };
  if (a.priced === b.priced) return { sign: "=", words: `${both} cost the same to buy` };
  const [dearer, cheaper] = a.priced > b.priced ? [a, b] : [b, a];
  const extra = dearer.priced - cheaper.priced;
  const saved = dearer.runs.map((run, draw) => (cheaper.runs[draw] ?? Number.NaN) - run).filter((money) => !Number.isNaN(money));
  const uses = breakEvenUses(extra, saved);
  const count = uses.length;
  const ever = uses.filter((use) => use <= mostUses);
  const bought = `${dearer.name} costs ${withUnit(formatNumber(extra, 2), dearer.currency)} more to buy than ${cheaper.name}`;
  if (ever.length < (1 - agreed) * count) return { sign: "≠", words: `${bought}, and the energy it saves does not earn that back` };
  if (ever.length < agreed * count)
    return {
      sign: "≈",
      words: `${bought}; whether the energy it saves earns that back cannot be told: in ${ever.length} of ${count} draws it does, after ${charges(ever[0])} at best`,
    };
  const [low, high] = [uses[Math.floor(0.025 * count)], ever[Math.min(ever.length, Math.ceil(0.975 * count)) - 1]];
  return { sign: "≠", words: `${bought}, and has earned that back by the energy it saves after ${formatCount(low)} to ${charges(high)}` };
}

const formatCount = (uses = 0): string => formatNumber(Math.ceil(uses), 0);
const charges = (uses?: number): string => withUnit(formatCount(uses), formatCount(uses) === "1" ? "charge" : "charges");

function whyMissing({ price, reference }: Buyable): string {
  if ("because" in reference) return reference.because;
  if (typeof price?.value !== "number") return "no price of it is stated";
  return isFillingHalf(reference) ? "no price of energy is stated" : "it leaves the reference battery short in half of the draws or more";
}
