import { describe, expect, it } from "vitest";
import { densityLast } from "../../../../lib/measure/figures/density-last.ts";
import { contextOf, valueIn, visit } from "../bench.ts";

describe("density at the last visit", () => {
  it("is the mean of the cells at the last visit that read any", () => {
    const readings = [
      visit(1, 0, { air_C: 20 }),
      visit(2, 1, { density_1: 1.15, density_2: 1.17, acid_C: 25 }),
      visit(3, 9, { density_1: 1.27, density_2: 1.29, acid_C: 25 }),
      visit(4, 10, { air_C: 20 }),
    ];
    // Acid at 25 °C read on a scale of kg/l at 25 °C needs no conversion; its way through the acid's strength keeps nine digits.
    expect(valueIn(densityLast.compute(contextOf({ readings })))).toBeCloseTo(1.28, 9);
  });

  it("brings acid read at 35 °C to 25 °C: 1.2500 becomes 1.2571 kg/l (W040, within 0.0005)", () => {
    const readings = [visit(1, 0, { density_1: 1.25, acid_C: 35 })];
    expect(Math.abs(valueIn(densityLast.compute(contextOf({ readings }))) - 1.2571)).toBeLessThan(0.0005);
  });

  it("is absent for a sealed battery and where no density was read", () => {
    expect(densityLast.compute(contextOf({ battery: { construction: "AGM" } }))).toMatchObject({ absent: "not applicable" });
    expect(densityLast.compute(contextOf({ readings: [visit(1, 0, { rest_V: 12.6 })] }))).toMatchObject({ absent: "not measured" });
  });
});
