import { describe, expect, it } from "vitest";
import { judgeFloatVoltage, judgeVoltage } from "../../../../lib/judge/claims/claim-voltage.ts";
import type { Instrument } from "../../../../lib/nouns/instrument.ts";
import {
  absorption,
  bulk,
  contextOf,
  float,
  logOf,
  type Part,
  plainRecorder,
  recordingOf,
  unstatedRecorder,
  visit,
} from "../../measure/bench.ts";

/** ±0.05 V, so that U is 0.058 V against a tolerance of 0.216 V. */
const recorder: Instrument = {
  ...plainRecorder,
  measures: { ...plainRecorder.measures, voltage: { plusMinus: 0.05, from: "data sheet" } },
};
const contextAt = (parts: readonly Part[], used = recorder, more: Parameters<typeof contextOf>[0] = {}) =>
  contextOf({
    claims: { voltageV: { value: 14.4, from: "label" }, floatVoltageV: { value: 13.6, from: "manual" } },
    connections: [{ onH: 0, offH: 14, recordings: [recordingOf(logOf(parts), { recorder: used })] }],
    ...more,
  });
const limitAt = (voltageV: number): readonly Part[] => [
  { ...bulk, v: (h) => voltageV - 2 + 0.4 * h },
  { ...absorption, v: () => voltageV },
];
const floatAt = (voltageV: number): readonly Part[] => [bulk, absorption, { ...float, v: () => voltageV }];

describe("claim: voltage limit, 14.4 V with the site's tolerance of 1.5 % either way", () => {
  it.each([
    ["meets", 14.4],
    ["short of", 14.0],
    ["above", 14.8],
    ["cannot tell", 14.2],
  ] as const)("%s at %f V held", (outcome, voltageV) => {
    const claim = judgeVoltage(contextAt(limitAt(voltageV)));
    expect(claim).toMatchObject({ outcome, acceptLow: expect.closeTo(14.184, 9), acceptHigh: expect.closeTo(14.616, 9) });
    expect(claim?.measured).toBeCloseTo(voltageV, 2);
  });

  it("is not put to the test by a bulk alone", () => {
    expect(judgeVoltage(contextAt([bulk]))).toMatchObject({ outcome: "not put to the test", wouldSettle: expect.any(String) });
  });

  it("cannot be told with a recorder of unstated accuracy", () => {
    expect(judgeVoltage(contextAt(limitAt(14.4), unstatedRecorder))).toMatchObject({ outcome: "cannot tell", low: null, high: null });
  });

  it("counts the drop on the leads as not known, which never narrows the interval", () => {
    const widthWith = (leadResistanceOhm: number): number => {
      const claim = judgeVoltage(contextAt(limitAt(14.4), { ...recorder, leadResistanceOhm }));
      return (claim?.high ?? Number.NaN) - (claim?.low ?? Number.NaN);
    };
    expect(widthWith(0.2)).toBeGreaterThan(widthWith(0));
  });

  it("doubts a voltage whose temperature nobody read, and judges it as for 25 °C", () => {
    expect(judgeVoltage(contextAt(limitAt(14.4)))?.doubts).toEqual([expect.stringContaining("temperature was not read")]);
    expect(judgeVoltage(contextAt(limitAt(14.4), recorder, batteryAt(22)))?.doubts).toEqual([]);
  });
});

/** The battery read at one temperature, with a thermometer that nobody states the accuracy of: ±2 K. */
const batteryAt = (battery_C: number, claims?: Record<string, unknown>) => ({
  readings: [visit(1, 1, { battery_C })],
  ...(claims === undefined ? {} : { claims }),
});

describe("claim: voltage limit, at the temperature that the battery had", () => {
  const printed = { voltageV: { value: 14.4, from: "label" } };

  it("is still above in ordinary warmth, where compensation moves hardly anything", () => {
    expect(judgeVoltage(contextAt(limitAt(14.9), recorder, batteryAt(25)))).toMatchObject({ outcome: "above" });
  });

  it("cannot be told in the cold, where a compensating charger holds more and the maker says nothing of it", () => {
    const claim = judgeVoltage(contextAt(limitAt(14.9), recorder, batteryAt(5)));
    expect(claim).toMatchObject({ outcome: "cannot tell", probability: null, wouldSettle: expect.stringContaining("battery at 25 °C") });
    expect(claim?.why).toContain("rule of thumb");
  });

  it("is above in the cold where not even compensation explains it: 20 K of -5 mV/K and 6 cells are 0.60 V", () => {
    expect(judgeVoltage(contextAt(limitAt(15.4), recorder, batteryAt(5)))).toMatchObject({ outcome: "above" });
  });

  it("is short of in the cold: compensation only raises the voltage there", () => {
    expect(judgeVoltage(contextAt(limitAt(14.0), recorder, batteryAt(5)))).toMatchObject({ outcome: "short of" });
  });

  it("cannot be told in heat, where a compensating charger holds less", () => {
    expect(judgeVoltage(contextAt(limitAt(14.0), recorder, batteryAt(38)))).toMatchObject({ outcome: "cannot tell" });
  });

  it("moves the claim by what the maker states: 14.4 V with -4 mV/K a cell is 14.76 V at 10 °C", () => {
    const compensated = { ...printed, compensation: { mVPerKPerCell: -4, from: "manual" } };
    const claim = judgeVoltage(contextAt(limitAt(14.76), recorder, batteryAt(10, compensated)));
    expect(claim).toMatchObject({
      outcome: "meets",
      acceptLow: expect.closeTo(14.4 * 0.985 + 0.36, 9),
      acceptHigh: expect.closeTo(14.4 * 1.015 + 0.36, 9),
    });
    expect(judgeVoltage(contextAt(limitAt(14.4), recorder, batteryAt(10, compensated)))).toMatchObject({ outcome: "short of" });
  });

  it("holds a maker who states that the voltage stays to it", () => {
    const fixed = { ...printed, compensation: { mVPerKPerCell: 0, from: "manual" } };
    expect(judgeVoltage(contextAt(limitAt(14.9), recorder, batteryAt(5, fixed)))).toMatchObject({ outcome: "above" });
  });

  it("judges by the site's own rule", () => {
    const compensation = { leastMVPerKPerCell: -1, mostMVPerKPerCell: -2, fromC: 0, toC: 40 };
    const strict = { ...batteryAt(5), site: { rules: { compensation } } };
    expect(judgeVoltage(contextAt(limitAt(14.95), recorder, strict))).toMatchObject({ outcome: "above" });
  });

  it("takes a probe on the battery before what visits read", () => {
    const probed = { ...recorder, temperatureOf: "battery" as const };
    const log = logOf(limitAt(14.9));
    const warm = recordingOf({ ...log, t: log.s.map(() => 25) }, { recorder: probed });
    const cold = { readings: [visit(1, 1, { battery_C: 5 })], connections: [{ onH: 0, offH: 14, recordings: [warm] }] };
    expect(judgeVoltage(contextAt([], probed, cold))).toMatchObject({ outcome: "above" });
  });
});

describe("claim: float voltage, 13.6 V with the site's tolerance of 1.5 % either way", () => {
  it.each([
    ["meets", 13.6],
    ["short of", 13.2],
    ["above", 14.0],
    ["cannot tell", 13.42],
  ] as const)("%s at %f V held", (outcome, voltageV) => {
    const claim = judgeFloatVoltage(contextAt(floatAt(voltageV)));
    expect(claim?.measured).toBeCloseTo(voltageV, 2);
    expect(claim).toMatchObject({ outcome });
  });

  it("is not put to the test where the recording ends in the absorption: that is not what it holds afterwards", () => {
    expect(judgeFloatVoltage(contextAt([bulk, absorption]))).toMatchObject({
      outcome: "not put to the test",
      why: "no recording reaches a float",
      wouldSettle: expect.stringContaining("a recorder that does not stop by itself"),
    });
  });

  it("is above where the limit was held for more than a day in place of a float", () => {
    const held = { hours: 30, v: () => 14.4, a: (h: number) => 0.2 + 4.8 * Math.exp(-h / 1.5) };
    expect(judgeFloatVoltage(contextAt([bulk, held]))).toMatchObject({ outcome: "above" });
  });
});
