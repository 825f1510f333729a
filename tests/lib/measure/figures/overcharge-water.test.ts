import { describe, expect, it } from "vitest";
import { chargeRequired } from "../../../../lib/measure/figures/charge-required.ts";
import { overchargeWater } from "../../../../lib/measure/figures/overcharge-water.ts";
import { benchStartMs, contextOf, recordingOf, steadyLog, valueIn, visit } from "../bench.ts";

const readings = [visit(1, -1, { density_1: 1.15, acid_C: 25 }), visit(2, 30, { density_1: 1.27, acid_C: 25 })];
const tenHoursAt10A = recordingOf(steadyLog(601, 14, 10));

describe("water that overcharge can have cost, at most", () => {
  it("is 0.336087 g an ampere-hour and cell (W005), times six cells, on what was recorded beyond the density's need", () => {
    const context = contextOf({ readings, connections: [{ onH: 0, offH: 20, recordings: [tenHoursAt10A] }] });
    const excessAh = 100 - valueIn(chargeRequired.compute(context));
    expect(valueIn(overchargeWater.compute(context))).toBeCloseTo(0.336087 * 6 * excessAh, 3);
  });

  it("counts nothing that was recorded after the last density", () => {
    const later = recordingOf(steadyLog(601, 14, 10), { id: "later.csv", startMs: benchStartMs + 31 * 3_600_000 });
    const one = contextOf({ readings, connections: [{ onH: 0, offH: 20, recordings: [tenHoursAt10A] }] });
    const two = contextOf({ readings, connections: [{ onH: 0, offH: 45, recordings: [tenHoursAt10A, later] }] });
    expect(valueIn(overchargeWater.compute(two))).toBeCloseTo(valueIn(overchargeWater.compute(one)), 9);
  });

  it("cannot be told where less was recorded than the density needs", () => {
    const little = recordingOf(steadyLog(61, 13, 2));
    expect(overchargeWater.compute(contextOf({ readings, connections: [{ onH: 0, offH: 20, recordings: [little] }] }))).toMatchObject({
      absent: "cannot tell",
    });
  });

  it("stands behind a weighing, and says so", () => {
    const weighed = [
      visit(1, -1, { density_1: 1.15, acid_C: 25, weight_kg: 15 }),
      visit(2, 30, { density_1: 1.27, acid_C: 25, weight_kg: 14.95 }),
    ];
    const context = contextOf({ readings: weighed, connections: [{ onH: 0, offH: 20, recordings: [tenHoursAt10A] }] });
    expect(overchargeWater.compute(context).doubts?.join(" ")).toContain("water-lost-weighed counts before this");
  });

  it("says nothing of a sealed battery, and is absent without a recording", () => {
    expect(overchargeWater.compute(contextOf({ battery: { construction: "gel" }, readings }))).toMatchObject({ absent: "not applicable" });
    expect(overchargeWater.compute(contextOf({ readings }))).toMatchObject({ absent: "not recorded", why: "no current was recorded" });
  });
});
