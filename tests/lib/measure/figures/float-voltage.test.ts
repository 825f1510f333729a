import { beforeAll, describe, expect, it } from "vitest";
import { floatVoltage } from "../../../../lib/measure/figures/float-voltage.ts";
import { absorption, bulk, float, logOf, recordingOf, recordingOfSamples, valueIn } from "../bench.ts";
import { type FieldCharge, fieldRecorder, readFieldCharges } from "../field-log.ts";

describe("voltage held at float", () => {
  it("is the lower voltage held after the limit", () => {
    expect(valueIn(floatVoltage.compute(recordingOf(logOf([bulk, absorption, float]))))).toBeCloseTo(13.6, 2);
  });

  it("is absent where the recording ends in the absorption", () => {
    expect(floatVoltage.compute(recordingOf(logOf([bulk, absorption])))).toMatchObject({ absent: "not recorded" });
  });
});

describe("voltage held at float, against an open field log of a 17 Ah battery (tests/reference/leadacid-17ah)", () => {
  let charges: readonly FieldCharge[] = [];
  beforeAll(async () => {
    charges = await readFieldCharges();
  });

  it.each([1, 2, 3])("charge %i: within 0.02 V of what an independent script read", (number) => {
    const charge = charges[number - 1];
    if (charge === undefined) throw new Error("the field log holds three charges");
    const outcome = floatVoltage.compute(recordingOfSamples(charge.samples, { recorder: fieldRecorder, capacityAh: 17 }));
    expect(Math.abs(valueIn(outcome) - charge.expected("V_float"))).toBeLessThan(0.02);
  });
});
