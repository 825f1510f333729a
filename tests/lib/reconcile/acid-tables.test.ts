import { describe, expect, it } from "vitest";
import { densityOfAcid, weightFractionOfAcid } from "../../../lib/electrochem/acid.ts";
import { restVoltageFromDensity } from "../../../lib/electrochem/rest-voltage.ts";
import { cellVoltageOf, cellVoltageSlopeOf, densityOf, weightFractionOf } from "../../../lib/reconcile/acid-tables.ts";

describe("acid by tables", () => {
  it("agrees with the formulas to a hundredth of what any instrument shows", () => {
    for (let density = 1.05; density < 1.33; density += 0.003) {
      const strength = weightFractionOfAcid(density, 25);
      expect(Math.abs(weightFractionOf(density) - strength)).toBeLessThan(1e-5);
      expect(Math.abs(densityOf(strength) - densityOfAcid(strength, 25))).toBeLessThan(1e-5);
      expect(Math.abs(cellVoltageOf(density) - restVoltageFromDensity(density, 1))).toBeLessThan(2e-5);
      const at15 = cellVoltageOf(density) - 10 * cellVoltageSlopeOf(density);
      expect(Math.abs(at15 - restVoltageFromDensity(density, 1, 15))).toBeLessThan(2e-5);
    }
  });

  it("keeps the end's value beyond its range, and NaN", () => {
    expect(densityOf(0.9)).toBe(densityOf(0.55));
    expect(weightFractionOf(0.5)).toBeCloseTo(0.02, 6);
    expect(densityOf(Number.NaN)).toBeNaN();
  });
});
