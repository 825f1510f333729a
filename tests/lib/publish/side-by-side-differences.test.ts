import { describe, expect, it } from "vitest";
import { differingAspects } from "../../../lib/publish/side-by-side/conditions.ts";
import { compareFigure, type Held, intervalOf } from "../../../lib/publish/side-by-side/differences.ts";
import { finishingOrder } from "../../../lib/publish/side-by-side/finishing-order.ts";
import { listed } from "../../../lib/publish/side-by-side/side-speech.ts";
import { alike, figureBetween } from "./side-by-side-samples.ts";
import { english, sideSpeech } from "./side-speech-samples.ts";

const toldIn = (language: "en" | "pl" | "de", ...held: readonly Partial<Held>[]): string[] =>
  compareFigure(
    held.map((one, index) => ({ letter: String.fromCharCode(65 + index), figure: undefined, conditions: alike, ...one })),
    sideSpeech(language).words,
  ).map(({ sign, words }) => `${sign} ${words}`);
const told = (...held: readonly Partial<Held>[]): string[] => toldIn("en", ...held);

describe("the interval that a figure is compared by", () => {
  it("is the value itself where it is stated", () => {
    expect(intervalOf(figureBetween(null, null, { value: 89, basis: "stated" }))).toEqual({ low: 89, high: 89 });
  });

  it("is none where a measured value has none", () => {
    expect(intervalOf(figureBetween(null, null, { value: 89 }))).toBeUndefined();
  });

  it("is open where one end is not known, as of a target that was not reached in 40 h", () => {
    expect(intervalOf(figureBetween(40, null, { value: null }))).toEqual({ low: 40, high: Number.POSITIVE_INFINITY });
  });
});

describe("comparing a figure", () => {
  it("tells apart what does not overlap, and says which is lower", () => {
    expect(told({ figure: figureBetween(10, 12) }, { figure: figureBetween(13, 15) })).toEqual(["≠ A is lower than B"]);
    expect(told({ figure: figureBetween(13, 15) }, { figure: figureBetween(10, 12) })).toEqual(["≠ B is lower than A"]);
  });

  it("says a tie where intervals overlap, if only in one point", () => {
    expect(told({ figure: figureBetween(10, 12) }, { figure: figureBetween(12, 15) })).toEqual(["≈ A and B: cannot be told apart"]);
  });

  it("tells an open interval from one that ends below it", () => {
    const never = figureBetween(40, null, { value: null, absent: { kind: "not reached", why: "given up" } });
    expect(told({ figure: figureBetween(10, 12) }, { figure: never })).toEqual(["≠ A is lower than B"]);
  });

  it("calls two stated values the same only where they are", () => {
    const price = (value: number) => ({ figure: figureBetween(null, null, { value, basis: "stated", unit: "EUR", heldOn: [] }) });
    expect(told(price(89), price(89))).toEqual(["= A and B: the same"]);
    expect(told(price(89), price(89.5))).toEqual(["≠ A is lower than B"]);
  });

  it("orders three, ties among them", () => {
    expect(told({ figure: figureBetween(10, 12) }, { figure: figureBetween(20, 22) }, { figure: figureBetween(21, 30) })).toEqual([
      "≠ A is lower than B and C",
      "≈ B and C: cannot be told apart",
    ]);
  });

  it("says once that no two of several can be told apart", () => {
    const same = { figure: figureBetween(10, 12) };
    expect(told(same, same, same)).toEqual(["≈ all: cannot be told apart"]);
    expect(told(same, same, {})).toEqual(["≈ A and B: cannot be told apart", " C has no value"]);
  });

  it("does not compare tests of batteries that were not alike, and says in what they differ", () => {
    expect(told({ figure: figureBetween(10, 12) }, { figure: figureBetween(20, 22), conditions: { ...alike, capacityAh: 75 } })).toEqual([
      "∦ A and B: not comparable because capacity differs",
    ]);
  });

  it("names everything in which the tests differ", () => {
    const other = { ...alike, nominalVoltageV: 6, construction: "AGM", targetAt25C: null };
    expect(told({ figure: figureBetween(10, 12) }, { figure: figureBetween(20, 22), conditions: other })).toEqual([
      "∦ A and B: not comparable because voltage, kind of battery and target density differ",
    ]);
  });

  it("compares what does not depend on the battery, whatever was tested on", () => {
    const reference = { heldOn: [], basis: "projected" } as const;
    expect(
      told(
        { figure: figureBetween(10, 12, reference) },
        { figure: figureBetween(20, 22, reference), conditions: { ...alike, nominalVoltageV: 6 } },
      ),
    ).toEqual(["≠ A is lower than B"]);
  });

  it("does not hold projected against measured, nor one currency against another", () => {
    expect(told({ figure: figureBetween(10, 12) }, { figure: figureBetween(20, 22, { basis: "projected" }) })).toEqual([
      "∦ A and B: not comparable because A is measured, B is projected",
    ]);
    expect(told({ figure: figureBetween(10, 12, { unit: "EUR" }) }, { figure: figureBetween(20, 22, { unit: "CHF" }) })).toEqual([
      "∦ A and B: not comparable because A is in EUR, B is in CHF",
    ]);
  });

  it("compares those that are alike beside one that is not", () => {
    expect(
      told(
        { figure: figureBetween(10, 12) },
        { figure: figureBetween(20, 22), conditions: { ...alike, targetAt25C: null } },
        { figure: figureBetween(30, 32) },
      ),
    ).toEqual(["≠ A is lower than C", "∦ A and B; B and C: not comparable because target density differs"]);
  });

  it("says who has no value, and never takes absence for a number", () => {
    expect(told({ figure: figureBetween(10, 12) }, {})).toEqual([" nothing to compare: B has no value"]);
    expect(
      told({ figure: figureBetween(null, null, { value: 5 }) }, { figure: figureBetween(1, 2) }, { figure: figureBetween(3, 4) }),
    ).toEqual(["≠ B is lower than C", " A has no interval"]);
    expect(told({}, {})).toEqual([" nothing to compare: no value with an interval"]);
  });
});

describe("comparing a figure in other languages", () => {
  const low = { figure: figureBetween(10, 12) };
  const high = { figure: figureBetween(20, 22) };
  const other = { figure: figureBetween(20, 22), conditions: { ...alike, capacityAh: 75, construction: "AGM" } };

  it("says the same in German", () => {
    expect(toldIn("de", low, high, low, {})).toEqual([
      "≠ A ist niedriger als B",
      "≠ C ist niedriger als B",
      "≈ A und C: nicht zu unterscheiden",
      " D hat keinen Wert",
    ]);
    expect(toldIn("de", low, other)).toEqual(["∦ A und B: nicht vergleichbar: Batterieart und Kapazität sind verschieden"]);
    expect(toldIn("de", low, { figure: figureBetween(20, 22, { basis: "projected" }) })).toEqual([
      "∦ A und B: nicht vergleichbar: A ist gemessen, B ist hochgerechnet",
    ]);
  });

  it("says the same in Polish", () => {
    expect(toldIn("pl", low, high)).toEqual(["≠ A: mniej niż B"]);
    expect(toldIn("pl", low, other)).toEqual(["∦ A i B: nieporównywalne, bo różnice: rodzaj akumulatora i pojemność"]);
    expect(toldIn("pl", {}, {})).toEqual([" nie ma czego porównać: brak wartości z przedziałem"]);
  });
});

describe("conditions", () => {
  it("differ in every aspect that is not the very same", () => {
    expect(differingAspects(alike, { ...alike, construction: "AGM", targetAt25C: 1.28 })).toEqual(["construction", "targetAt25C"]);
    expect(differingAspects(alike, { ...alike, capacityAh: 61 }, ["nominalVoltageV", "construction"])).toEqual([]);
  });
});

describe("who is done first", () => {
  const draws = (drawsH: readonly (number | null)[], words = "a battery") => ({ words, drawsH, drawsKWh: [], pricePerKWh: null });
  const order = (...references: readonly Parameters<typeof finishingOrder>[0][number]["reference"][]): string[] =>
    finishingOrder(
      references.map((reference, index) => ({ name: String.fromCharCode(65 + index), reference })),
      english,
    ).map(({ sign, words }) => `${sign} ${words}`);
  const twenty = Array.from({ length: 20 }, (_, index) => 5 + index);

  it("is told by draws on the same batteries, where two intervals would overlap", () => {
    expect(order(draws(twenty), draws(twenty.map((hours) => hours + 1)))).toEqual(["≠ A is done before B in 20 of 20 draws"]);
    expect(order(draws(twenty.map((hours) => hours + 1)), draws(twenty))).toEqual(["≠ B is done before A in 20 of 20 draws"]);
  });

  it("is a tie at nineteen of twenty: more than 95 % are asked for", () => {
    expect(order(draws(twenty), draws(twenty.map((hours, index) => (index === 0 ? hours - 1 : hours + 1))))).toEqual([
      "≈ A is done before B in 19 of 20 draws: cannot be told apart",
    ]);
  });

  it("counts never as later than any hour, and never against never as half", () => {
    expect(order(draws([70, 70]), draws([null, null]))).toEqual(["≠ A is done before B in 2 of 2 draws"]);
    expect(order(draws([null, 3]), draws([null, 4]))).toEqual(["≈ A is done before B in 1.5 of 2 draws: cannot be told apart"]);
  });

  it("tells whole draws as whole numbers, whatever their count", () => {
    const hours = Array.from({ length: 49 }, (_, index) => index);
    expect(order(draws(hours.map((hour, index) => (index < 3 ? hour : hour + 1))), draws(hours.map((hour) => hour + 0.5)))).toEqual([
      "≈ B is done before A in 46 of 49 draws: cannot be told apart",
    ]);
  });

  it("says who is not comparable, and why", () => {
    expect(order(draws([1, 2]), { because: "the mode is for 6 V" })).toEqual(["∦ B is not comparable because the mode is for 6 V"]);
    expect(order(draws([1, 2]), draws([1, 2, 3]))).toEqual(["∦ B is not comparable because its figure has another number of draws"]);
  });

  it("is told in the page's language, halves with its comma", () => {
    const inGerman = finishingOrder(
      [draws([null, 3]), draws([null, 4]), { because: "no recording shows what the mode does" }].map((reference, index) => ({
        name: String.fromCharCode(65 + index),
        reference,
      })),
      sideSpeech("de"),
    );
    expect(inGerman.map(({ words }) => words)).toEqual([
      "A ist in 1,5 von 2 Ziehungen vor B fertig: nicht zu unterscheiden",
      "C ist nicht vergleichbar: keine Aufzeichnung zeigt, was die Betriebsart tut",
    ]);
  });

  it("has nothing to say of nobody", () => {
    expect(finishingOrder([], english)).toEqual([]);
  });
});

describe("a list of words", () => {
  it("joins none, one, two and three", () => {
    expect([[], ["A"], ["A", "B"], ["A", "B", "C"]].map((names) => listed(names, english.words))).toEqual([
      "",
      "A",
      "A and B",
      "A, B and C",
    ]);
  });
});
