/** Whether one figure of several chargers tells them apart, said in words. */

import { fill, fillCounted } from "../words/fill.ts";
import type { Aspect, ComparedFigure, Conditions } from "./compared.ts";
import { aspects, differingAspects } from "./conditions.ts";
import { listed, type SideWords } from "./side-speech.ts";

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
 * @param words of the page's language
 * @returns statements, told apart first. Two 95 % intervals that do not overlap differ: a strict rule, which leaves some real differences untold
 */
export function compareFigure(held: readonly Held[], words: SideWords): Statement[] {
  const present = held.flatMap((one): Present[] => {
    const interval = one.figure === undefined ? undefined : intervalOf(one.figure);
    return one.figure === undefined || interval === undefined ? [] : [{ ...one, figure: one.figure, interval }];
  });
  const missing = held.filter(({ letter }) => !present.some((one) => one.letter === letter));
  if (present.length < 2) return [{ sign: "", words: onlyWords(present, missing, words) }];
  const pairs = present.flatMap((a, index) => present.slice(index + 1).map((b): Pair => ({ a, b })));
  const apart = pairs.filter((pair) => barriers(pair).length > 0);
  const alike = pairs.filter((pair) => barriers(pair).length === 0);
  return [
    ...orderStatements(alike, words),
    ...pairStatement("=", alike.filter(isSame), pairs.length, words.same, words),
    ...pairStatement("≈", alike.filter(isTie), pairs.length, words.tie, words),
    ...barrierStatement(apart, pairs.length, words),
    ...(missing.length === 0 ? [] : [{ sign: "" as const, words: absenceWords(missing, words) }]),
  ];
}

const isSame = ({ a, b }: Pair): boolean =>
  a.interval.low === a.interval.high && b.interval.low === b.interval.high && a.interval.low === b.interval.low;
const isLower = (a: Present, b: Present): boolean => a.interval.high < b.interval.low;
const isTie = (pair: Pair): boolean => !isSame(pair) && !isLower(pair.a, pair.b) && !isLower(pair.b, pair.a);

/** "A is lower than B and C", one statement for each charger that is lower than any. */
function orderStatements(pairs: readonly Pair[], words: SideWords): Statement[] {
  const higherThan = new Map<string, string[]>();
  for (const { a, b } of pairs) {
    if (isLower(a, b)) higherThan.set(a.letter, [...(higherThan.get(a.letter) ?? []), b.letter]);
    if (isLower(b, a)) higherThan.set(b.letter, [...(higherThan.get(b.letter) ?? []), a.letter]);
  }
  return [...higherThan].sort().map(([letter, others]) => ({
    sign: "≠",
    words: fill(words.lower, { letter, others: listed(others, words) }),
  }));
}

function pairStatement(sign: Sign, pairs: readonly Pair[], ofPairs: number, message: string, words: SideWords): Statement[] {
  return pairs.length === 0 ? [] : [{ sign, words: fill(message, { those: pairNames(pairs, ofPairs, words) }) }];
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

function barrierStatement(pairs: readonly Pair[], ofPairs: number, words: SideWords): Statement[] {
  if (pairs.length === 0) return [];
  const each = [...new Map(pairs.flatMap(({ a, b }) => [a, b]).map((one) => [one.letter, one])).values()].sort((a, b) =>
    a.letter < b.letter ? -1 : 1,
  );
  const found = new Set(pairs.flatMap(barriers));
  const differing = aspects.filter((aspect) => found.has(aspect)).map((aspect) => words.aspects[aspect]);
  const reasons = [
    ...(differing.length === 0 ? [] : [fillCounted(words.differ, differing.length, words.language, { aspects: listed(differing, words) })]),
    ...(found.has("basis")
      ? [each.map(({ letter, figure }) => fill(words.hasBasis, { letter, basis: words.bases[figure.basis] })).join(", ")]
      : []),
    ...(found.has("unit") ? [each.map(({ letter, figure }) => fill(words.hasUnit, { letter, unit: figure.unit })).join(", ")] : []),
  ];
  return [{ sign: "∦", words: fill(words.apart, { those: pairNames(pairs, ofPairs, words), reasons: reasons.join("; ") }) }];
}

function onlyWords(present: readonly Present[], missing: readonly Held[], words: SideWords): string {
  return fill(words.nothing, { why: present.length === 0 ? words.noInterval : absenceWords(missing, words) });
}

function absenceWords(missing: readonly Held[], words: SideWords): string {
  return missing
    .map(({ letter, figure }) => fill(figure === undefined || figure.value === null ? words.hasNoValue : words.hasNoInterval, { letter }))
    .join(", ");
}

/** "A and B; A and C"; "all" where several pairs are all there are. */
function pairNames(pairs: readonly Pair[], ofPairs: number, words: SideWords): string {
  return pairs.length > 1 && pairs.length === ofPairs ? words.all : pairs.map(({ a, b }) => listed([a.letter, b.letter], words)).join("; ");
}
