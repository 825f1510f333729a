/** Whether one figure of several chargers tells them apart, said in words. */
import type { Aspect, ComparedFigure, Conditions } from "./compared.ts";
import { aspectName, aspects, differingAspects } from "./conditions.ts";

/** A charger's figure with what it was taken on. */
export type Held = {
  readonly letter: string;
  readonly figure: ComparedFigure | undefined;
  /** undefined for a mode that nobody tested. */
  readonly conditions: Conditions | undefined;
};

/** ≠ told apart, ≈ not told apart, = the very same, ∦ not comparable, "" nothing to compare. */
export type Sign = "≠" | "≈" | "=" | "∦" | "";
export type Statement = { readonly sign: Sign; readonly words: string };

type Interval = { readonly low: number; readonly high: number };

/**
 * The interval that a figure is compared by: its own, an end that is not known standing at infinity; a stated value is exact.
 * undefined where no interval can be defended, so that no difference can be either.
 */
export function intervalOf({ value, low, high, basis }: ComparedFigure): Interval | undefined {
  if (low === null && high === null) return basis === "stated" && value !== null ? { low: value, high: value } : undefined;
  return { low: low ?? Number.NEGATIVE_INFINITY, high: high ?? Number.POSITIVE_INFINITY };
}

type Present = Held & { readonly figure: ComparedFigure; readonly interval: Interval };
type Pair = { readonly a: Present; readonly b: Present };

/**
 * Compares one figure over chargers, pair by pair.
 * @param held one entry a charger, in the order of their letters; absent figures are told as such
 * @returns statements, told apart first. Two 95 % intervals that do not overlap differ: a strict rule, which leaves some real differences untold
 */
export function compareFigure(held: readonly Held[]): Statement[] {
  const present = held.flatMap((one): Present[] => {
    const interval = one.figure === undefined ? undefined : intervalOf(one.figure);
    return one.figure === undefined || interval === undefined ? [] : [{ ...one, figure: one.figure, interval }];
  });
  const missing = held.filter(({ letter }) => !present.some((one) => one.letter === letter));
  if (present.length < 2) return [{ sign: "", words: onlyWords(present, missing) }];
  const pairs = present.flatMap((a, index) => present.slice(index + 1).map((b): Pair => ({ a, b })));
  const apart = pairs.filter((pair) => barriers(pair).length > 0);
  const alike = pairs.filter((pair) => barriers(pair).length === 0);
  return [
    ...orderStatements(alike),
    ...pairStatement("=", alike.filter(isSame), pairs.length, "the same"),
    ...pairStatement("≈", alike.filter(isTie), pairs.length, "cannot be told apart"),
    ...barrierStatement(apart, pairs.length),
    ...(missing.length === 0 ? [] : [{ sign: "" as const, words: absenceWords(missing) }]),
  ];
}

const isSame = ({ a, b }: Pair): boolean =>
  a.interval.low === a.interval.high && b.interval.low === b.interval.high && a.interval.low === b.interval.low;
const isLower = (a: Present, b: Present): boolean => a.interval.high < b.interval.low;
const isTie = (pair: Pair): boolean => !isSame(pair) && !isLower(pair.a, pair.b) && !isLower(pair.b, pair.a);

/** "A is lower than B and C", one statement for each charger that is lower than any. */
function orderStatements(pairs: readonly Pair[]): Statement[] {
  const higherThan = new Map<string, string[]>();
  for (const { a, b } of pairs) {
    if (isLower(a, b)) higherThan.set(a.letter, [...(higherThan.get(a.letter) ?? []), b.letter]);
    if (isLower(b, a)) higherThan.set(b.letter, [...(higherThan.get(b.letter) ?? []), a.letter]);
  }
  return [...higherThan].sort().map(([letter, others]) => ({ sign: "≠", words: `${letter} is lower than ${listed(others)}` }));
}

function pairStatement(sign: Sign, pairs: readonly Pair[], ofPairs: number, words: string): Statement[] {
  return pairs.length === 0 ? [] : [{ sign, words: `${pairNames(pairs, ofPairs)}: ${words}` }];
}

/** What keeps a pair apart: an aspect of what they were tested on, how the figure came about, or its unit. */
function barriers({ a, b }: Pair): (Aspect | "basis" | "unit")[] {
  const asked = a.figure.heldOn;
  const ofTests = a.conditions === undefined || b.conditions === undefined ? [] : differingAspects(a.conditions, b.conditions, asked);
  return [
    ...ofTests,
    ...(a.figure.basis === b.figure.basis ? [] : ["basis" as const]),
    ...(a.figure.unit === b.figure.unit ? [] : ["unit" as const]),
  ];
}

function barrierStatement(pairs: readonly Pair[], ofPairs: number): Statement[] {
  if (pairs.length === 0) return [];
  const each = [...new Map(pairs.flatMap(({ a, b }) => [a, b]).map((one) => [one.letter, one])).values()].sort((a, b) =>
    a.letter < b.letter ? -1 : 1,
  );
  const found = new Set(pairs.flatMap(barriers));
  const differing = aspects.filter((aspect) => found.has(aspect)).map(aspectName);
  const reasons = [
    ...(differing.length === 0 ? [] : [`${listed(differing)} ${differing.length === 1 ? "differs" : "differ"}`]),
    ...(found.has("basis") ? [each.map(({ letter, figure }) => `${letter} is ${figure.basis}`).join(", ")] : []),
    ...(found.has("unit") ? [each.map(({ letter, figure }) => `${letter} is in ${figure.unit}`).join(", ")] : []),
  ];
  return [{ sign: "∦", words: `${pairNames(pairs, ofPairs)}: not comparable because ${reasons.join("; ")}` }];
}

function onlyWords(present: readonly Present[], missing: readonly Held[]): string {
  return present.length === 0 ? "nothing to compare: no value with an interval" : `nothing to compare: ${absenceWords(missing)}`;
}

function absenceWords(missing: readonly Held[]): string {
  return missing
    .map(({ letter, figure }) => (figure === undefined || figure.value === null ? `${letter} has no value` : `${letter} has no interval`))
    .join(", ");
}

/** "A and B; A and C"; "all" where several pairs are all there are. */
function pairNames(pairs: readonly Pair[], ofPairs: number): string {
  return pairs.length > 1 && pairs.length === ofPairs ? "all" : pairs.map(({ a, b }) => `${a.letter} and ${b.letter}`).join("; ");
}

/** "A", "A and B", "A, B and C". */
export function listed(words: readonly string[]): string {
  return words.length < 2 ? (words[0] ?? "") : `${words.slice(0, -1).join(", ")} and ${words.at(-1)}`;
}
