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

  it("doubts a voltage held in cold or heat, and one whose temperature nobody read", () => {
    expect(judgeVoltage(contextAt(limitAt(14.4)))?.doubts).toEqual([expect.stringContaining("temperature was not read")]);
    const cold = { readings: [visit(1, 1, { battery_C: 5 })] };
    expect(judgeVoltage(contextAt(limitAt(14.4), recorder, cold))?.doubts).toEqual([expect.stringContaining("at 5 °C")]);
    const mild = { readings: [visit(1, 1, { battery_C: 22 })] };
    expect(judgeVoltage(contextAt(limitAt(14.4), recorder, mild))?.doubts).toEqual([]);
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
