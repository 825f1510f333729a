import { describe, expect, it } from "vitest";
import { ventilationNeed } from "../../../../lib/measure/figures/ventilation-need.ts";
import { absorption, bulk, contextOf, float, logOf, type Part, recordingOf, rest, valueIn, visit } from "../bench.ts";

const charged = (parts: readonly Part[], battery: Record<string, unknown> = {}) =>
  contextOf({ battery, connections: [{ onH: 0, offH: 60, recordings: [recordingOf(logOf(parts))] }] });

describe("fresh air asked for while charging", () => {
  it("is 0.36 m³/h for 60 Ah in six vented cells above float (W011), through openings of 10 cm² (W012)", () => {
    const outcome = ventilationNeed.compute(charged([bulk, absorption, float]));
    expect(valueIn(outcome)).toBeCloseTo(0.36, 9);
    expect(outcome.doubts?.join(" ")).toContain("two openings of 10 cm² each");
  });

  it("is a quarter of that where only a float of 2.27 V a cell was held: 5 mA per Ah (IEC 62485-2)", () => {
    expect(valueIn(ventilationNeed.compute(charged([float])))).toBeCloseTo(0.09, 9);
  });

  it("counts sealed batteries with 8 and 1 mA per Ah (IEC 62485-2)", () => {
    expect(valueIn(ventilationNeed.compute(charged([bulk, absorption], { construction: "AGM" })))).toBeCloseTo(0.05 * 6 * 8 * 0.06, 9);
    expect(valueIn(ventilationNeed.compute(charged([float], { construction: "gel" })))).toBeCloseTo(0.05 * 6 * 1 * 0.06, 9);
  });

  it("doubts its design current above 2.40 V a cell, and not at it", () => {
    const doubtsAt = (voltageV: number): string =>
      (ventilationNeed.compute(charged([bulk, { ...absorption, v: () => voltageV }])).doubts ?? []).join(" ");
    expect(doubtsAt(15.6)).toContain("more gas can come");
    expect(doubtsAt(14.4)).not.toContain("more gas can come");
  });

  it("tells the most that there can be above 2.40 V a cell: 0.05 m³/h for each cell and ampere, were all of it gas (IEC 62485-2)", () => {
    const readings = [visit(1, 5, { terminal_V: 15.9, clamp_A: 2.4 }, { charger: "connected" })];
    expect(ventilationNeed.compute(contextOf({ readings })).doubts?.join(" ")).toContain(
      "all of the 2.40 A that flowed there gas, 0.72 m³/h",
    );
  });

  it("takes a voltmeter's word where nothing was recorded, and a rest for no charge", () => {
    const readings = [visit(1, 5, { terminal_V: 14.4 }, { charger: "connected" })];
    expect(valueIn(ventilationNeed.compute(contextOf({ readings })))).toBeCloseTo(0.36, 9);
    expect(ventilationNeed.compute(charged([rest]))).toMatchObject({ absent: "not recorded" });
  });

  it("takes no leads off the battery, nor any the wrong way round, for a charge", () => {
    const off: Part = { hours: 1, v: () => 0.02, a: () => 0 };
    const wrong: Part = { hours: 1, v: () => -12.4, a: () => 0 };
    for (const part of [off, wrong]) expect(ventilationNeed.compute(charged([part]))).toMatchObject({ absent: "not recorded" });
  });

  it("is absent where nobody saw a voltage, telling the safe side in words: the higher design current", () => {
    expect(ventilationNeed.compute(contextOf())).toMatchObject({ absent: "not recorded", why: expect.stringContaining("0.36 m³/h") });
  });

  it("takes a voltage that may be above float, by the meter's error, as above it: 13.79 V read within ±0.02 V", () => {
    const at = (terminal_V: number) =>
      ventilationNeed.compute(contextOf({ readings: [visit(1, 5, { terminal_V }, { charger: "connected" })] }));
    expect(valueIn(at(13.79))).toBeCloseTo(0.36, 9);
    expect(valueIn(at(13.77))).toBeCloseTo(0.09, 9);
  });

  it("leaves the decision to local codes, the maker and licensed practice", () => {
    expect(ventilationNeed.compute(charged([float])).doubts?.[0]).toContain(
      "local codes, the battery's maker and licensed practice decide",
    );
  });
});
