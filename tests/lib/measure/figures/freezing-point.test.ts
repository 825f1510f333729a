import { describe, expect, it } from "vitest";
import { freezingPoint } from "../../../../lib/measure/figures/freezing-point.ts";
import { benchInstruments, contextOf, visit } from "../bench.ts";

function at(values: Parameters<typeof visit>[2], options: Parameters<typeof contextOf>[0] = {}) {
  const context = contextOf({ ...options, readings: [visit(1, 0, values)] });
  const reading = context.readings[0];
  if (reading === undefined) throw new Error("the visit is missing");
  return freezingPoint.compute({ context, reading });
}

/** A hydrometer on the scale of the service manuals' tables: specific gravity by 80 °F. */
const byEightyF = { ...benchInstruments.hydrometer, density: { convention: "SG 80/80 °F" as const, correctsTemperature: true } };

/** Specific gravity, freezing point in °C, and how far the manuals' own tables, printed in whole °F, differ from each other, K. */
const service: readonly (readonly [number, number, number])[] = [
  [1.1, -7.5, 1],
  [1.15, -15, 1],
  [1.2, -27, 3],
  [1.25, -52, 3],
];

describe("freezing point of the acid", () => {
  it.each(service)("at a specific gravity of %s is %s °C by service manuals, within %s K", (density_1, manualC, withinK) => {
    const outcome = at({ density_1, acid_C: 25 }, { instruments: { hydrometer: byEightyF } });
    if (!("value" in outcome)) throw new Error(outcome.why);
    expect(Math.abs(outcome.value - manualC)).toBeLessThanOrEqual(withinK);
  });

  it("has the tables' ±3 K above 1.15 kg/l in its interval even for an exact density, and more for a coarse one", () => {
    const width = (plusMinus: number): number => {
      const hydrometer = { ...benchInstruments.hydrometer, measures: { density: { plusMinus, from: "data sheet" as const } } };
      const outcome = at({ density_1: 1.2, acid_C: 25 }, { instruments: { hydrometer } });
      if (!("value" in outcome) || outcome.interval === undefined) throw new Error("no interval");
      return outcome.interval.high - outcome.interval.low;
    };
    expect(width(0)).toBeCloseTo(6, 6);
    expect(width(0.005)).toBeGreaterThan(width(0.001));
  });

  it("has no interval where the hydrometer's accuracy is not stated", () => {
    const hydrometer = { ...benchInstruments.hydrometer, measures: {} };
    expect(at({ density_1: 1.2, acid_C: 25 }, { instruments: { hydrometer } })).toMatchObject({ interval: undefined });
  });

  it("names the weakest cell, which freezes first, where cells differ by 0.02", () => {
    expect(at({ density_1: 1.2, density_2: 1.15, acid_C: 25 }).doubts?.join(" ")).toContain("cell 2, the weakest at 1.150 kg/l");
    expect(at({ density_1: 1.2, density_2: 1.195, acid_C: 25 }).doubts).toEqual([]);
  });

  it("is absent for acid stronger than the tables reach, for a sealed battery, and without a density", () => {
    expect(at({ density_1: 1.3, acid_C: 25 })).toMatchObject({ absent: "not applicable" });
    expect(at({ rest_V: 12.6 }, { battery: { construction: "AGM" } })).toMatchObject({ absent: "not applicable" });
    expect(at({ rest_V: 12.6 })).toMatchObject({ absent: "not measured" });
  });
});
