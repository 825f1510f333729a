import { beforeAll, describe, expect, it } from "vitest";
import { energyRecorded } from "../../../../lib/measure/figures/energy-recorded.ts";
import { contextOf, recordingOf, recordingOfSamples, rows, steadyLog, valueIn } from "../bench.ts";
import { type FieldCharge, fieldRecorder, readFieldCharges } from "../field-log.ts";

describe("energy recorded", () => {
  it("agrees with W068 of the worked examples: trapezoids of the product, within 1e-5 Wh", () => {
    const s = rows(61, 60);
    const log = { s, v: s.map((t) => 14.4 - 1.8 * Math.exp(-t / 1200)), a: s.map((t) => 5 * Math.exp(-t / 1200)) };
    expect(Math.abs(valueIn(energyRecorded.recording.compute(recordingOf(log))) - 21.312333)).toBeLessThan(1e-5);
  });

  it("comes to W067, the exact integral, at one row a second", () => {
    const s = rows(3601, 1);
    const log = { s, v: s.map((t) => 14.4 - 1.8 * Math.exp(-t / 1200)), a: s.map((t) => 5 * Math.exp(-t / 1200)) };
    // The trapezoid's excess falls with the square of the step: 3.5e-3 Wh / 3600.
    expect(Math.abs(valueIn(energyRecorded.recording.compute(recordingOf(log))) - 21.308828)).toBeLessThan(1e-5);
  });

  it("joins the errors of voltage and current as independent: ±0.1 V and ±0.1 A on 12 V and 5 A over 1 h, by hand", () => {
    const outcome = energyRecorded.recording.compute(recordingOf(steadyLog(61, 12, 5)));
    expect(outcome).toMatchObject({
      value: expect.closeTo(60, 9),
      standardUncertainty: expect.closeTo(Math.hypot(12 * (0.1 / Math.sqrt(3)), 5 * (0.1 / Math.sqrt(3))), 9),
    });
  });

  it("is absent, with the reason, without voltage, without current, and without a recording", () => {
    const s = rows(11, 60);
    const why = { absent: "not recorded", why: "the recorder does not log both voltage and current" };
    expect(energyRecorded.recording.compute(recordingOf({ s, v: s.map(() => 13) }))).toMatchObject(why);
    expect(energyRecorded.recording.compute(recordingOf({ s, a: s.map(() => 5) }))).toMatchObject(why);
    expect(energyRecorded.test.compute(contextOf())).toMatchObject({ absent: "not recorded", why: "there is no recording" });
  });
});

describe("energy recorded, against an open field log of a 17 Ah battery (tests/reference/leadacid-17ah)", () => {
  let charges: readonly FieldCharge[] = [];
  beforeAll(async () => {
    charges = await readFieldCharges();
  });

  it.each([1, 2, 3])("charge %i agrees within one part in a thousand with what an independent script added up", (number) => {
    const charge = charges[number - 1];
    if (charge === undefined) throw new Error("the field log holds three charges");
    const outcome = energyRecorded.recording.compute(recordingOfSamples(charge.samples, { recorder: fieldRecorder, capacityAh: 17 }));
    expect(Math.abs(valueIn(outcome) / charge.expected("Wh_trapz") - 1)).toBeLessThan(0.001);
  });
});
