import { describe, expect, it } from "vitest";
import { ceilingOf, type GrowthCurve, hoursAtDensity, hoursBeyondKnee, weighCurves } from "../../../lib/project/growth-grid.ts";

const curve = (bend: number): GrowthCurve => ({
  model: bend === 0 ? "straight" : "saturating",
  firstH: 0,
  lastH: 20,
  firstDensity: 1.15,
  lastDensity: 1.25,
  bend,
  weight: 1,
});

describe("a growth curve", () => {
  it("runs through its two ends, straight or bent", () => {
    for (const bend of [0, 0.5, 3]) {
      expect(hoursAtDensity(curve(bend), 1.15)).toBeCloseTo(0, 9);
      expect(hoursAtDensity(curve(bend), 1.25)).toBeCloseTo(20, 9);
    }
  });

  it("meets a density between as the closed form says, and none at or above its ceiling", () => {
    // 0.1·(1 - exp(-h/τ))/(1 - exp(-2)) with τ = 10 h: half of the gain at -10·ln(1 - 0.5·(1 - e⁻²)).
    expect(hoursAtDensity(curve(2), 1.2)).toBeCloseTo(-10 * Math.log(1 - 0.5 * (1 - Math.exp(-2))), 9);
    const ceiling = ceilingOf(1.15, 1.25, 2);
    expect(ceiling).toBeCloseTo(1.15 + 0.1 / (1 - Math.exp(-2)), 12);
    expect(hoursAtDensity(curve(2), ceiling + 1e-9)).toBe(Number.POSITIVE_INFINITY);
    expect(hoursAtDensity({ ...curve(0), lastDensity: 1.15 }, 1.2)).toBe(Number.POSITIVE_INFINITY);
  });

  it("leaves its line at the knee without a corner and gets to the ceiling never", () => {
    const goesOn = { knee: 1.26, ceiling: 1.28 };
    expect(hoursBeyondKnee(curve(0), 1.26, goesOn)).toBeCloseTo(22, 9);
    const slopeAfter = 1e-5 / (hoursBeyondKnee(curve(0), 1.26 + 1e-5, goesOn) - 22);
    expect(slopeAfter).toBeCloseTo(0.005, 5);
    expect(hoursBeyondKnee(curve(0), 1.28, goesOn)).toBe(Number.POSITIVE_INFINITY);
  });
});

describe("weighed curves", () => {
  it("have weights that add up to 1, and none without time between the visits", () => {
    const visits = [0, 8, 16].map((hours, connections) => ({
      hoursLow: hours,
      hoursHigh: hours,
      connections,
      densityAt25C: 1.15 + 0.004 * hours,
      standardUncertainty: 0.002,
      step: 0.005,
    }));
    expect(weighCurves(visits).reduce((sum, { weight }) => sum + weight, 0)).toBeCloseTo(1, 9);
    expect(weighCurves(visits.map((visit) => ({ ...visit, hoursLow: 5, hoursHigh: 5 })))).toEqual([]);
    expect(weighCurves(visits.slice(0, 1))).toEqual([]);
  });
});
