import { beforeAll, describe, expect, it } from "vitest";
import { limitVoltage } from "../../../../lib/measure/figures/limit-voltage.ts";
import {
  absorption,
  bulk,
  float,
  logOf,
  plainRecorder,
  recordingOf,
  recordingOfSamples,
  rows,
  unstatedRecorder,
  valueIn,
} from "../bench.ts";
import { type FieldCharge, fieldRecorder, readFieldCharges } from "../field-log.ts";

describe("voltage held at the limit", () => {
  it("is the held 14.4 V of an IUoU charge, not the float after it, within the meter's 0.1 V", () => {
    const outcome = limitVoltage.compute(recordingOf(logOf([bulk, absorption, float])));
    expect(valueIn(outcome)).toBeCloseTo(14.4, 2);
    expect(outcome).toMatchObject({ standardUncertainty: expect.closeTo(0.1 / Math.sqrt(3), 9) });
  });

  it("carries the drop on stated leads as not known: 0.2 Ω at the 0.37 A left after 5 h, by hand", () => {
    const outcome = limitVoltage.compute(
      recordingOf(logOf([bulk, absorption]), { recorder: { ...plainRecorder, leadResistanceOhm: 0.2 } }),
    );
    const endA = 0.3 + 4.7 * Math.exp(-5 / 1.2);
    // The end is the median of the last samples, so the current is known to a hundredth.
    expect(outcome).toMatchObject({ standardUncertainty: expect.closeTo(Math.hypot(0.1, 0.2 * endA) / Math.sqrt(3), 3) });
  });

  it("is absent where the limit was not reached, held for less than ten minutes, or no voltage was logged", () => {
    expect(limitVoltage.compute(recordingOf(logOf([bulk])))).toMatchObject({ absent: "not recorded" });
    expect(limitVoltage.compute(recordingOf(logOf([bulk, { ...absorption, hours: 0.12 }])))).toMatchObject({ absent: "not recorded" });
    const s = rows(200, 60);
    expect(limitVoltage.compute(recordingOf({ s, a: s.map(() => 5) }))).toMatchObject({ absent: "not recorded" });
  });

  it("has no uncertainty where the recorder's accuracy is not stated", () => {
    expect(limitVoltage.compute(recordingOf(logOf([bulk, absorption]), { recorder: unstatedRecorder }))).toHaveProperty(
      "standardUncertainty",
      undefined,
    );
  });
});

describe("voltage held at the limit, against an open field log of a 17 Ah battery (tests/reference/leadacid-17ah)", () => {
  let charges: readonly FieldCharge[] = [];
  beforeAll(async () => {
    charges = await readFieldCharges();
  });

  it.each([1, 2, 3])("charge %i: within 0.02 V of what an independent script read", (number) => {
    const charge = charges[number - 1];
    if (charge === undefined) throw new Error("the field log holds three charges");
    const outcome = limitVoltage.compute(recordingOfSamples(charge.samples, { recorder: fieldRecorder, capacityAh: 17 }));
    expect(Math.abs(valueIn(outcome) - charge.expected("V_cv"))).toBeLessThan(0.02);
  });
});
