import { describe, expect, it } from "vitest";
import type { JudgedClaim, Outcome } from "../../../../lib/nouns/finding.ts";
import { hardestTest, headlinesOf } from "../../../../lib/publish/outward/headlines.ts";
import { outwardSpeechIn } from "../../../../lib/publish/outward/outward-speech.ts";
import type { ChargerResult, TestResult } from "../../../../lib/publish/results.ts";
import { first, publishedResults } from "./published.ts";

const { chargers, tests } = publishedResults();
const lantern = first(chargers);
const lanternTest = first(tests);
const english = outwardSpeechIn("en");
const all = (charger: ChargerResult, of: readonly TestResult[]) => {
  const { promises, way } = headlinesOf(charger, of, english);
  return [...promises, ...way];
};

const mode = first(lantern.modes);
const current = first(mode.claims);
const withModes = (...outcomes: Outcome[]): ChargerResult => ({
  ...lantern,
  modes: outcomes.map((outcome, index) => ({
    ...mode,
    id: `mode-${index}`,
    name: `mode ${index}`,
    claims: [{ ...current, outcome } satisfies JudgedClaim],
  })),
});

describe("the six figures", () => {
  it("are six for every charger, one without a single test included", () => {
    for (const charger of chargers)
      expect(
        all(
          charger,
          tests.filter((test) => test.charger.id === charger.id),
        ),
      ).toHaveLength(6);
    const bare = all({ ...lantern, modes: [], findings: [], tests: [] }, []);
    expect(bare.map(({ text }) => text)).toEqual(Array(6).fill(null));
    for (const { absent } of bare) expect(absent?.why.words).toBeTruthy();
  });

  it("have a value or the reason of its absence, never neither", () => {
    for (const { text, absent } of all(lantern, [lanternTest])) expect(text === null).toBe(absent !== null);
  });

  it("have their unit where they have a value with one", () => {
    const texts = Object.fromEntries(all(lantern, [lanternTest]).map(({ id, text }) => [id, text]));
    expect(texts["claim-current"]).toBe("5.92 ± 0.13\u202FA");
    expect(texts["hours-to-target"]).toBe("61\u202Fh (38 to 88)");
    expect(texts["cost-per-result"]).toBe("1.10\u202FEUR (0.92 to 1.31), projected");
  });

  it("say what was promised, and where it is printed", () => {
    expect(first(headlinesOf(lantern, [lanternTest], english).promises).claimed).toBe("8\u202FA (label)");
  });
});

describe("a charger of several modes", () => {
  it("shows the least favourable, and names what the others say", () => {
    const shown = first(headlinesOf(withModes("meets", "short of", "cannot tell"), [], english).promises);
    expect(shown.outcome?.words).toBe("short of the claim");
    expect(shown.others).toBe("mode “mode 0”: meets; mode “mode 2”: cannot tell");
  });

  it("never hides a broken promise behind a kept one, in whatever order the modes stand", () => {
    for (const outcomes of [
      ["meets", "above"],
      ["above", "meets"],
      ["not put to the test", "short of"],
    ] as Outcome[][])
      expect(first(headlinesOf(withModes(...outcomes), [], english).promises).outcome?.kind).toMatch(/above|short of/);
  });
});

describe("a charger that is left connected", () => {
  const claims = [{ ...current, id: "claim-season", outcome: "meets" as const, measured: 13.5, low: 13.4, high: 13.6, unit: "V" }];
  const finding = first(lantern.findings);
  const kept: ChargerResult = { ...lantern, modes: [{ ...mode, claims }], findings: [] };
  const seasonOf = (charger: ChargerResult) => headlinesOf(charger, [lanternTest], english).promises[2];

  it("is told by its promise, with the voltage it holds", () => {
    expect(seasonOf(kept)).toMatchObject({ text: "holds 13.50 ± 0.10\u202FV", outcome: { words: "meets the claim" } });
  });

  it("is told by a finding that is graver than its promise", () => {
    const grave = { ...finding, id: "float-window", verdict: "no", weight: "bad" as const };
    expect(seasonOf({ ...kept, findings: [grave] })?.outcome).toEqual({ kind: "bad", id: "no", words: "no" });
  });

  it("is not put to the test where nothing tells", () => {
    expect(seasonOf({ ...lantern, modes: [], findings: [] })?.absent?.kind).toBe("not put to the test");
  });
});

describe("the hardest test", () => {
  const test = (id: string, status: TestResult["status"], hours: number | null): TestResult => ({
    ...lanternTest,
    id,
    status,
    figures: lanternTest.figures.map((figure) => (figure.id === "hours-to-target" ? { ...figure, value: hours } : figure)),
  });

  it("is the one that did not reach its target", () => {
    expect(hardestTest([test("a", "reached", 900), test("b", "not reached", null), test("c", "no target", null)])?.id).toBe("b");
  });

  it("is the one of most hours where all reached it, whatever their order", () => {
    const [short, long] = [test("short", "reached", 20), test("long", "reached", 60)];
    expect(hardestTest([short, long])?.id).toBe("long");
    expect(hardestTest([long, short])?.id).toBe("long");
  });

  it("is undefined of none, and named among how many", () => {
    expect(hardestTest([])).toBeUndefined();
    const { wayOthers } = headlinesOf(lantern, [test("a", "reached", 20), test("b", "abandoned", null), test("c", "reached", 5)], english);
    expect(wayOthers).toBe("The hardest of 3 tests is shown. The others: full density reached (2).");
  });
});
