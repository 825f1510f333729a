import { describe, expect, it } from "vitest";
import type { ChargerResult, TestResult } from "../../../lib/publish/results.ts";
import { assembleCompared, tellingRecording } from "../../../lib/publish/side-by-side/assemble-compared.ts";
import { chargeShare } from "../../../lib/publish/side-by-side/charge-share.ts";
import { comparedPhrases } from "../../../lib/publish/side-by-side/compared-phrases.ts";
import { figureText } from "../../../lib/units/format.ts";
import { fixture } from "../../pages/fixture.ts";

const [lantern, , pebble] = fixture.chargers as [ChargerResult, ChargerResult, ChargerResult];
const lanternTest = fixture.tests[0] as TestResult;
const compared = (charger: ChargerResult, language?: "pl" | "de") => assembleCompared(charger, fixture.index.rows, fixture.tests, language);
const phrases = (charger: ChargerResult, language: "pl" | "de") =>
  comparedPhrases(compared(charger), compared(charger, language), language);

describe("the charge put in", () => {
  it("is half of 60 Ah after 6 h of a steady 5 A (definition of the ampere-hour)", () => {
    expect(chargeShare([0, 2, 6], [5, 5, 5], 60).at(-1)).toBeCloseTo(0.5, 12);
  });

  it("is the area of a triangle for a current that falls evenly", () => {
    expect(chargeShare([0, 4], [10, 0], 40)).toEqual([0, 0.5]);
  });

  it("adds nothing over a gap, and is missing inside it", () => {
    expect(chargeShare([0, 1, 2, 3, 4], [10, 10, null, 10, 10], 100)).toEqual([0, 0.1, null, 0.1, 0.2]);
  });

  it("is missing throughout where no current was recorded, and empty for no points", () => {
    expect(chargeShare([0, 1], [null, null], 60)).toEqual([null, null]);
    expect(chargeShare([], [], 60)).toEqual([]);
  });
});

describe("what the page knows of a charger", () => {
  it("keeps value, unit and interval of each figure of the test, with the way to its evidence", () => {
    const published = fixture.index.rows[0]?.figures.filter((figure) => figure.of === "test") ?? [];
    const figures = compared(lantern).modes[0]?.runs[0]?.figures ?? [];
    expect(figures).toHaveLength(published.length);
    for (const figure of published) {
      const kept = figures.find(({ id }) => id === figure.id);
      expect([kept?.value, kept?.low, kept?.high, kept?.unit]).toEqual([figure.value, figure.low, figure.high, figure.unit]);
      expect(kept?.written).toEqual(figure.value === null ? null : figureText(figure));
      expect(kept?.to).toBe(`tests/lantern-first/#figure-test-${figure.id}`);
    }
  });

  it("keeps the price with the charger, not with each test", () => {
    expect(compared(lantern).figures.map(({ id, heldOn }) => [id, heldOn])).toContainEqual(["price", []]);
    expect(
      compared(lantern)
        .modes.flatMap(({ runs }) => runs.flatMap(({ figures }) => figures))
        .map(({ id }) => id),
    ).not.toContain("price");
    expect(compared(lantern).priced).toBe("hardware shop, on 2026-02-20");
    expect(compared(pebble).priced).toBeNull();
  });

  it("tells each claim as printed and as measured, and says where nothing was measured", () => {
    const claims = compared(lantern).modes[0]?.claims ?? [];
    expect(claims[0]).toMatchObject({ claimed: "8\u202FA, “8 A DC”", measured: "5.92 ± 0.13\u202FA", outcome: "short of" });
    expect(claims.find(({ id }) => id === "claim-season")).toMatchObject({ measured: null, outcome: "not put to the test" });
  });

  it("says why a mode cannot be held against others on the reference battery", () => {
    expect(compared(lantern).modes[0]?.reference).toEqual({ because: "no recording shows what the mode does" });
  });

  it("puts tested modes before untested ones", () => {
    const untested = { ...(lantern.modes[1] as ChargerResult["modes"][number]), id: "never", name: "NEVER" };
    const modes = compared({ ...lantern, modes: [untested, ...lantern.modes] }).modes;
    expect(modes.at(-1)?.id).toBe("never");
    expect(modes.at(-1)?.runs).toEqual([]);
    expect(modes[0]?.runs.length).toBeGreaterThan(0);
  });

  it("has no runs for a charger that the comparison does not list", () => {
    expect(assembleCompared(lantern, [], fixture.tests).modes.flatMap(({ runs }) => runs)).toEqual([]);
  });

  it("takes the recording with the most charge for the profile, and says who ended it", () => {
    const [first, ...others] = lanternTest.recordings;
    expect(first).toBeDefined();
    const telling = tellingRecording(lanternTest);
    const run = compared(lantern).modes[0]?.runs[0];
    expect(run?.recording).toMatchObject({ id: telling?.id, endedBy: telling?.ending.by, endedWords: telling?.ending.words });
    expect(tellingRecording({ ...lanternTest, recordings: [] })).toBeUndefined();
    const swapped = tellingRecording({ ...lanternTest, recordings: [...others, ...(first === undefined ? [] : [first])] });
    expect(swapped?.id).toBe(telling?.id);
  });
});

describe("what a charger's file means in another language", () => {
  it("is told of claims, figures, prices, batteries and outcomes, with the language's comma, quotes and dates", () => {
    const german = phrases(lantern, "de");
    expect(german).toMatchObject({
      "8\u202FA, “8 A DC”": "8\u202FA, „8 A DC“",
      "5.92 ± 0.13\u202FA": "5,92 ± 0,13\u202FA",
      "hardware shop, on 2026-02-20": "hardware shop, am 20.02.2026",
      "short of": "bleibt darunter",
    });
    expect(phrases(lantern, "pl")["5.92 ± 0.13\u202FA"]).toBe("5,92 ± 0,13\u202FA");
  });

  it("is told of the results' statements, and of no name", () => {
    const german = phrases(lantern, "de");
    expect(german["no recording shows what the mode does"]).toBe("keine Aufzeichnung zeigt, was die Betriebsart tut");
    for (const name of [lantern.name, lanternTest.title, lanternTest.battery.name]) expect(german).not.toHaveProperty([name]);
  });
});
