import { beforeAll, describe, expect, it } from "vitest";
import { holdingVoltage } from "../../../../lib/measure/figures/holding-voltage.ts";
import { absorption, bulk, contextOf, float, logOf, recordingOf, recordingOfSamples, valueIn, visit } from "../bench.ts";
import { type FieldCharge, fieldRecorder, readFieldCharges } from "../field-log.ts";

const held = (recordings: readonly ReturnType<typeof recordingOf>[]) => contextOf({ connections: [{ onH: 0, offH: 60, recordings }] });

describe("voltage held for long", () => {
  it("is that of the float that was recorded: 13.6 V as the log was made, within its ripple of 2 mV", () => {
    const outcome = holdingVoltage.compute(held([recordingOf(logOf([bulk, absorption, float]))]));
    expect(Math.abs(valueIn(outcome) - 13.6)).toBeLessThan(0.002);
  });

  it("is the limit where that was held for more than a day", () => {
    const day = { hours: 30, v: () => 14.4, a: (h: number) => 0.15 + 4.8 * Math.exp(-h / 1.5) };
    expect(Math.abs(valueIn(holdingVoltage.compute(held([recordingOf(logOf([bulk, day]))]))) - 14.4)).toBeLessThan(0.002);
  });

  it("is what a voltmeter read after a day connected, where no recording shows it, with the doubt that one reading leaves", () => {
    const readings = [visit(1, 30, { terminal_V: 13.52, clamp_A: 0.1 }, { charger: "connected" })];
    expect(holdingVoltage.compute(contextOf({ connections: [{ onH: 0, offH: 60 }], readings }))).toMatchObject({
      value: 13.52,
      doubts: ["one reading at a visit, not a recording"],
    });
  });

  it("is absent, with the reason, where a recording stops before any float and nobody read a voltmeter", () => {
    expect(holdingVoltage.compute(held([recordingOf(logOf([bulk, absorption]))]))).toMatchObject({
      absent: "not recorded",
      why: expect.stringContaining("no recording reaches a float"),
    });
  });
});

describe("voltage held for long, against an open field log of a 17 Ah battery (tests/reference/leadacid-17ah)", () => {
  let charges: readonly FieldCharge[] = [];
  beforeAll(async () => {
    charges = await readFieldCharges();
  });

  it.each([1, 2, 3])("charge %i: the float voltage within 0.02 V of what an independent script read", (number) => {
    const charge = charges[number - 1];
    if (charge === undefined) throw new Error("the field log holds three charges");
    const recording = recordingOfSamples(charge.samples, { recorder: fieldRecorder, capacityAh: 17 });
    const outcome = holdingVoltage.compute(contextOf({ connections: [{ onH: 0, offH: 60, recordings: [recording] }] }));
    expect(Math.abs(valueIn(outcome) - charge.expected("V_float"))).toBeLessThan(0.02);
  });
});
