import { describe, expect, it } from "vitest";
import { crankingShare } from "../../../../lib/measure/figures/cranking-share.ts";
import { benchInstruments, contextOf, visit } from "../bench.ts";

const readings = [visit(1, 0, { cranking_A: 300 }), visit(2, 11, { cranking_A: 450 })];
const battery = { crankingRating: { currentA: 600, standard: "EN 50342-1" } };

describe("cranking current of its rating", () => {
  it("is 75 % for 450 A of 600 A at the last visit, within the tester's 5 % (by hand)", () => {
    expect(crankingShare.compute(contextOf({ battery, readings }))).toMatchObject({
      value: 75,
      standardUncertainty: expect.closeTo((0.05 * 75) / Math.sqrt(3), 9),
    });
  });

  it("converts nothing between standards", () => {
    const other = { crankingRating: { currentA: 600, standard: "SAE J537" } };
    expect(crankingShare.compute(contextOf({ battery: other, readings }))).toMatchObject({
      absent: "cannot tell",
      why: expect.stringContaining("they do not convert"),
    });
  });

  it("says where the tester only estimates from conductance", () => {
    const batteryTester = { ...benchInstruments.batteryTester, cranking: { standard: "EN 50342-1", method: "conductance" as const } };
    expect(crankingShare.compute(contextOf({ battery, readings, instruments: { batteryTester } }))).toMatchObject({
      doubts: ["estimated from conductance, not under load"],
    });
  });

  it("is absent where nothing was read or nothing is rated", () => {
    expect(crankingShare.compute(contextOf({ battery }))).toMatchObject({ absent: "not measured" });
    expect(crankingShare.compute(contextOf({ readings }))).toMatchObject({ absent: "not stated" });
  });
});
