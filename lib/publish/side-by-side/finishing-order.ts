/** Who is done first on the reference battery, by draws in which all met the same battery. */
import { isTie, shareWon } from "../../project/compare.ts";
import { writeNumber } from "../../units/write-number.ts";
import { fill } from "../words/fill.ts";
import type { ComparedMode, ComparedReference } from "./compared.ts";
import type { Statement } from "./differences.ts";
import type { SideSpeech, SideWords } from "./side-speech.ts";

export type Finisher = {
  /** What the statements call it. */
  readonly name: string;
  readonly reference: ComparedMode["reference"];
};

/**
 * Holds hours to 95 % against each other, draw by draw; "never" loses against any hour, and equal draws count half.
 * @param finishers one a charger, in any order
 * @param speech    of the page's language
 * @returns a statement a pair, then who is not comparable and why; [] for no chargers
 * Source of the rule for a tie: lib/project/compare.ts.
 */
export function finishingOrder(finishers: readonly Finisher[], speech: SideSpeech): Statement[] {
  const { words } = speech;
  const drawn = finishers.flatMap(({ reference }) => ("because" in reference ? [] : [reference]))[0];
  const judged = finishers.map(({ name, reference }) => ({ name, reference, because: reasonAgainst(reference, drawn, speech) }));
  const running = judged.flatMap(({ name, reference, because }): Running[] =>
    because !== undefined || "because" in reference
      ? []
      : [{ name, draws: reference.drawsH.map((hours) => hours ?? Number.POSITIVE_INFINITY) }],
  );
  return [
    ...running.flatMap((a, index) => running.slice(index + 1).map((b) => pairStatement(a, b, words))),
    ...judged.flatMap(({ name, because }): Statement[] =>
      because === undefined ? [] : [{ sign: "∦", words: fill(words.notComparable, { name, because }) }],
    ),
  ];
}

/** A charger with the hours that each draw took it; Infinity is "never". */
type Running = { readonly name: string; readonly draws: readonly number[] };

function pairStatement(a: Running, b: Running, words: SideWords): Statement {
  const aBeatsB = shareWon(a, b, "less");
  const [first, second, share] = aBeatsB >= 0.5 ? [a, b, aBeatsB] : [b, a, 1 - aBeatsB];
  const count = a.draws.length;
  // Halves are all that can come; the share's division leaves a crumb beside them.
  const won = Math.round(2 * share * count) / 2;
  const draws = fill(words.doneBefore, {
    first: first.name,
    second: second.name,
    won: writeNumber(won, won % 1 === 0 ? 0 : 1, words.numbers),
    count,
  });
  return isTie(aBeatsB) ? { sign: "≈", words: fill(words.tie, { those: draws }) } : { sign: "≠", words: draws };
}

/** What keeps a charger from being held against the first that has draws; undefined where nothing does. */
function reasonAgainst(
  reference: Finisher["reference"],
  first: ComparedReference | undefined,
  { words, tell }: SideSpeech,
): string | undefined {
  if ("because" in reference) return tell(reference.because);
  if (first === undefined) return undefined;
  if (reference.words !== first.words) return fill(words.otherBattery, { battery: tell(reference.words), reference: tell(first.words) });
  return reference.drawsH.length === first.drawsH.length ? undefined : words.otherDraws;
}
