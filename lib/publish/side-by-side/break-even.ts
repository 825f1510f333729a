/** After how many charges a charger that is dearer to buy has earned that back by what it saves, pair by pair. */
import { breakEvenUses, type Estimate } from "../../project/cost.ts";
import { formatNumber, withUnit } from "../../units/format.ts";
import type { ComparedFigure } from "./compared.ts";
import { intervalOf, type Statement } from "./differences.ts";

export type Buyable = {
  /** What the statements call it. */
  readonly name: string;
  readonly price: ComparedFigure | undefined;
  /** Of the reference charge, without the purchase. */
  readonly running: ComparedFigure | undefined;
};

/** So many charges no charger is known to live to; beyond it a number would be a show of precision. Our judgement. */
const mostUses = 10_000;

/**
 * Holds prices and running costs against each other.
 * @param buyables  one a charger, in any order
 * @returns a statement a pair that can be compared, then who cannot and why; [] for fewer than two
 */
export function breakEvenStatements(buyables: readonly Buyable[]): Statement[] {
  const ready = buyables.flatMap((one): Ready[] => {
    const [price, running] = [estimateOf(one.price), estimateOf(one.running)];
    if (price === undefined || running === undefined) return [];
    return [{ name: one.name, purchase: price, runningPerResult: running, currency: one.price?.unit ?? "" }];
  });
  if (buyables.length < 2) return [];
  const missing = buyables.filter(({ name }) => !ready.some((one) => one.name === name));
  return [
    ...ready.flatMap((a, index) => ready.slice(index + 1).map((b) => pairStatement(a, b))),
    ...missing.map((one): Statement => ({ sign: "∦", words: `${one.name} is not comparable because ${whyMissing(one)}` })),
  ];
}

type Ready = { readonly name: string; readonly purchase: Estimate; readonly runningPerResult: Estimate; readonly currency: string };

function pairStatement(a: Ready, b: Ready): Statement {
  const [dearer, cheaper] = a.purchase.value >= b.purchase.value ? [a, b] : [b, a];
  const even = breakEvenUses(dearer, cheaper);
  if ("refused" in even) return { sign: "∦", words: `${a.name} and ${b.name} are not comparable because ${even.refused}` };
  const extra = dearer.purchase.value - cheaper.purchase.value;
  if (extra === 0) return { sign: "=", words: `${a.name} and ${b.name} cost the same to buy` };
  const bought = `${dearer.name} costs ${withUnit(formatNumber(extra, 2), dearer.currency)} more to buy than ${cheaper.name}`;
  const { low, high } = even;
  if (isNever(low)) return { sign: "≠", words: `${bought}, and never earns that back: it costs no less to run` };
  if (isNever(high))
    return { sign: "≈", words: `${bought}; whether it ever earns that back cannot be told: after ${charges(low)} at best` };
  return { sign: "≠", words: `${bought}, and has earned that back after ${charges(low)} at best, ${charges(high)} at worst` };
}

const isNever = (uses: number | "never"): uses is "never" => uses === "never" || uses > mostUses;

function charges(uses: number): string {
  const whole = Math.ceil(uses);
  return withUnit(formatNumber(whole, 0), whole === 1 ? "charge" : "charges");
}

/** Undefined where no interval with two ends can be defended. */
function estimateOf(figure: ComparedFigure | undefined): Estimate | undefined {
  const interval = figure && intervalOf(figure);
  if (figure === undefined || figure.value === null || interval === undefined) return undefined;
  return Number.isFinite(interval.high - interval.low) ? { value: figure.value, ...interval } : undefined;
}

function whyMissing({ price, running }: Buyable): string {
  if (typeof price?.value !== "number") return "no price of it is stated";
  return running?.absent?.why ?? "what it costs to run has no interval";
}
