import { describe, expect, it } from "vitest";
import { energyMains } from "../../../../lib/measure/figures/energy-mains.ts";
import { benchInstruments, contextOf, recordingOf, steadyLog, visit } from "../bench.ts";

describe("energy from the mains", () => {
  it("is the difference of two meter readings, within the meter's 1 % (by hand)", () => {
    const readings = [visit(1, 0, { mains_kWh: 12.25 }), visit(2, 9, {}), visit(3, 10, { mains_kWh: 14.25 })];
    expect(energyMains.compute(contextOf({ readings }))).toMatchObject({
      value: expect.closeTo(2, 9),
      standardUncertainty: expect.closeTo(0.02 / Math.sqrt(3), 9),
      evidence: [{ lines: [2, 2] }, { lines: [4, 4] }],
    });
  });

  it("has no interval where the meter's accuracy is not stated", () => {
    const readings = [visit(1, 0, { mains_kWh: 12.25 }), visit(2, 10, { mains_kWh: 14.25 })];
    expect(
      energyMains.compute(contextOf({ readings, instruments: { energyMeter: { ...benchInstruments.energyMeter, measures: {} } } })),
    ).toHaveProperty("standardUncertainty", undefined);
  });

  it("is projected over the stated efficiency without a meter: 120 Wh over 0.7 to 0.9, by hand, and says what it leaves out", () => {
    const recordings = [recordingOf(steadyLog(121, 12, 5))];
    expect(energyMains.compute(contextOf({ connections: [{ onH: 0, offH: 2, recordings }] }))).toMatchObject({
      basis: "projected",
      value: expect.closeTo(0.12 / 0.8, 9),
      interval: { low: expect.closeTo(0.12 / 0.9, 9), high: expect.closeTo(0.12 / 0.7, 9) },
      doubts: expect.arrayContaining(["hours that were not recorded are left out"]),
    });
  });

  it("is absent where no meter was read and no energy recorded", () => {
    expect(energyMains.compute(contextOf())).toMatchObject({ absent: "not measured" });
  });
});
