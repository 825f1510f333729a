import { describe, expect, it } from "vitest";
import { chargeRequired } from "../../../../lib/measure/figures/charge-required.ts";
import { hydrogen } from "../../../../lib/measure/figures/hydrogen.ts";
import { overchargeWater } from "../../../../lib/measure/figures/overcharge-water.ts";
import { contextOf, recordingOf, steadyLog, unstatedRecorder, valueIn, visit } from "../bench.ts";

const readings = [visit(1, -1, { density_1: 1.15, acid_C: 25 }), visit(2, 30, { density_1: 1.27, acid_C: 25 })];
const tenHoursAt10A = recordingOf(steadyLog(601, 14, 10));
const charged = (recording = tenHoursAt10A) => contextOf({ readings, connections: [{ onH: 0, offH: 20, recordings: [recording] }] });

describe("hydrogen that overcharge can have set free, at most", () => {
  it("is 0.45642 l an ampere-hour and cell at 25 °C (W010), times six cells, on the charge beyond the density's need", () => {
    const excessAh = 100 - valueIn(chargeRequired.compute(charged()));
    // W010 is printed to five digits, which is 0.001 l on some 200 l.
    expect(valueIn(hydrogen.compute(charged())) / (6 * excessAh)).toBeCloseTo(0.45642, 4);
  });

  it("is of the same overcharge as the water: 0.45642 l for each 0.336087 g (W005, W010)", () => {
    const litresPerG = valueIn(hydrogen.compute(charged())) / valueIn(overchargeWater.compute(charged()));
    expect(litresPerG).toBeCloseTo(0.45642 / 0.336087, 4);
  });

  it("has no interval where the recorder's accuracy is not stated, and says so", () => {
    const outcome = hydrogen.compute(charged(recordingOf(steadyLog(601, 14, 10), { recorder: unstatedRecorder })));
    expect(outcome).toMatchObject({
      interval: undefined,
      doubts: expect.arrayContaining([expect.stringContaining("no interval is given")]),
    });
  });

  it("says nothing of a sealed battery, and is absent without a recording", () => {
    expect(hydrogen.compute(contextOf({ battery: { construction: "AGM" } }))).toMatchObject({ absent: "not applicable" });
    expect(hydrogen.compute(contextOf({ readings }))).toMatchObject({ absent: "not recorded" });
  });
});
