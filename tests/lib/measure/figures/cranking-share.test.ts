import { describe, expect, it } from "vitest";
import { crankingShare } from "../../../../lib/measure/figures/cranking-share.ts";
import { benchInstruments, contextOf, visit } from "../bench.ts";

const readings = [visit(1, 0, { cranking_A: 300, battery_C: 20 }), visit(2, 11, { cranking_A: 450, battery_C: 20 })];
const battery = { crankingRating: { currentA: 600, standard: "EN 50342-1" } };
const testerBy = (standard: string, method: "load" | "conductance" | "not stated") => ({
  batteryTester: { ...benchInstruments.batteryTester, cranking: { standard, method } },
});

describe("cranking current of its rating", () => {
  it("is 75 % for 450 A of 600 A at the last visit, within the tester's 5 % (by hand)", () => {
    expect(crankingShare.compute(contextOf({ battery, readings }))).toMatchObject({
      value: 75,
      standardUncertainty: expect.closeTo((0.05 * 75) / Math.sqrt(3), 9),
      doubts: [],
    });
  });

  it("converts nothing between standards, and says in words alone what the trade's rule EN = 0.92 SAE would make of it: 414 A", () => {
    const outcome = crankingShare.compute(contextOf({ battery, readings, instruments: testerBy("SAE J537", "load") }));
    expect(outcome).not.toHaveProperty("value");
    expect(outcome).toMatchObject({
      absent: "cannot tell",
      why: expect.stringMatching(/do not convert.*orientation only: 450 A by SAE J537 is about 414 A by EN 50342-1, ±10 %/),
    });
  });

  it("says no word of a conversion where the trade has no rule (JIS tests by fixed currents)", () => {
    const outcome = crankingShare.compute(contextOf({ battery, readings, instruments: testerBy("JIS D 5301", "load") }));
    expect(outcome).toMatchObject({ why: "the tester reads JIS D 5301, the rating is EN 50342-1; they do not convert" });
  });

  it("compares nothing where one of the standards is not stated", () => {
    const unrated = { crankingRating: { currentA: 600, standard: "not stated" } };
    const why = expect.stringContaining("by a standard that is not stated");
    expect(crankingShare.compute(contextOf({ battery: unrated, readings }))).toMatchObject({ absent: "cannot tell", why });
    expect(crankingShare.compute(contextOf({ battery, readings, instruments: testerBy("not stated", "load") }))).toMatchObject({ why });
  });

  it("keeps an estimate from conductance apart from a load test", () => {
    const doubtsBy = (method: "conductance" | "not stated") =>
      crankingShare.compute(contextOf({ battery, readings, instruments: testerBy("EN 50342-1", method) })).doubts;
    expect(doubtsBy("conductance")).toEqual([expect.stringContaining("not to be compared with figures of a load tester")]);
    expect(doubtsBy("not stated")).toEqual([expect.stringContaining("is not stated")]);
  });

  it("doubts a figure read in the cold, or at a temperature that nobody read, and takes air for no battery", () => {
    const doubtsAt = (values: { battery_C?: number; acid_C?: number; air_C?: number }) =>
      crankingShare.compute(contextOf({ battery, readings: [visit(1, 0, { cranking_A: 450, ...values })] })).doubts;
    expect(doubtsAt({ acid_C: 3, air_C: 20 })).toEqual(["read with the acid at 3 °C; cold lowers the figure"]);
    expect(doubtsAt({ air_C: 3 })).toEqual(["read with the air at 3 °C; cold lowers the figure"]);
    expect(doubtsAt({})).toEqual(["the battery's temperature was not read at visit 1; cold lowers the figure"]);
  });

  it("is absent where nothing was read or nothing is rated", () => {
    expect(crankingShare.compute(contextOf({ battery }))).toMatchObject({ absent: "not measured" });
    expect(crankingShare.compute(contextOf({ readings }))).toMatchObject({ absent: "not stated" });
  });
});
