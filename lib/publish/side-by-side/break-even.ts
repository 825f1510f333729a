/** After how many charges a charger that is dearer to buy has earned that back by the energy it saves, pair by pair. */
import { breakEvenUses } from "../../project/break-even.ts";
import { withUnit, writeNumber } from "../../units/write-number.ts";
import { fill, fillCounted } from "../words/fill.ts";
import type { ComparedFigure, ComparedMode, ComparedReference } from "./compared.ts";
import type { Statement } from "./differences.ts";
import { listed, type SideSpeech } from "./side-speech.ts";

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
 * @param speech    of the page's language
 * @returns a statement a pair that can be compared, then who cannot and why
 */
export function breakEvenStatements(buyables: readonly Buyable[], speech: SideSpeech): Statement[] {
  const ready = buyables.flatMap((one): Ready[] => {
    const { name, price, reference } = one;
    if (typeof price?.value !== "number" || "because" in reference || reference.pricePerKWh === null) return [];
    const { amount, currency } = reference.pricePerKWh;
    const runs = reference.drawsKWh.map((kWh) => (kWh === null ? Number.NaN : kWh * amount));
    return isFillingHalf(reference) ? [{ name, priced: price.value, currency, runs }] : [];
  });
  const missing = buyables.filter(({ name }) => !ready.some((one) => one.name === name));
  return [
    ...ready.flatMap((a, index) => ready.slice(index + 1).map((b) => pairStatement(a, b, speech))),
    ...missing.map(
      (one): Statement => ({ sign: "∦", words: fill(speech.words.notComparable, { name: one.name, because: whyMissing(one, speech) }) }),
    ),
  ];
}

/** A charger that fills the battery in less than half of the draws saves energy by not doing its work. */
const isFillingHalf = ({ drawsKWh }: ComparedReference): boolean => 2 * drawsKWh.filter((kWh) => kWh !== null).length >= drawsKWh.length;

/** A charger with its price and what each draw of the reference charge costs to run, NaN where the battery is not filled. */
type Ready = { readonly name: string; readonly priced: number; readonly currency: string; readonly runs: readonly number[] };

function pairStatement(a: Ready, b: Ready, { words }: SideSpeech): Statement {
  const both = listed([a.name, b.name], words);
  if (a.currency !== b.currency) return { sign: "∦", words: fill(words.currencies, { both, a: a.currency, b: b.currency }) };
  if (a.priced === b.priced) return { sign: "=", words: fill(words.sameCost, { both }) };
  const [dearer, cheaper] = a.priced > b.priced ? [a, b] : [b, a];
  const extra = dearer.priced - cheaper.priced;
  const saved = dearer.runs.map((run, draw) => (cheaper.runs[draw] ?? Number.NaN) - run).filter((money) => !Number.isNaN(money));
  const uses = breakEvenUses(extra, saved);
  const count = uses.length;
  // Each fills the battery in half of the draws, and in none of them both do.
  if (count === 0) return { sign: "∦", words: fill(words.notComparable, { name: dearer.name, because: words.leavesShort }) };
  const ever = uses.filter((use) => use <= mostUses);
  const bought = fill(words.bought, {
    dearer: dearer.name,
    extra: withUnit(writeNumber(extra, 2, words.numbers), dearer.currency),
    cheaper: cheaper.name,
  });
  const charges = (use = 0): string => fillCounted(words.charges, Math.ceil(use), words.language);
  const never = count - ever.length;
  // No draw in which it is earned back can close an interval beside one in which it never is.
  const earned = never > 0 ? words.earnedOrNever : words.earned;
  const unsure = never > agreed * count ? words.neverEarned : words.unsureEarned;
  const statement = ever.length < agreed * count ? unsure : earned;
  const [low = 0, high] = [uses[Math.floor(0.025 * count)], uses[Math.ceil(0.975 * count) - 1]];
  const all = dearer.runs.length;
  return {
    sign: statement === words.unsureEarned ? "≈" : "≠",
    words: fill(statement + (count < all ? words.bothFill : ""), {
      bought,
      draws: count,
      all,
      ever: ever.length,
      never,
      best: charges(ever[0]),
      low: Math.ceil(low),
      least: charges(low),
      high: charges(high),
    }),
  };
}

function whyMissing({ price, reference }: Buyable, { words, tell }: SideSpeech): string {
  if ("because" in reference) return tell(reference.because);
  if (typeof price?.value !== "number") return words.noPrice;
  return isFillingHalf(reference) ? words.noEnergyPrice : words.leavesShort;
}
