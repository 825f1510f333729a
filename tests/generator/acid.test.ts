import { describe, expect, it } from "vitest";
import { acidDensity, massFractionOf, openCircuitVoltage } from "./acid.ts";

describe("acid", () => {
  it("has the densities at 25 °C that published tables give, within 0.0005 kg/l (the polynomial's own spread against them)", () => {
    // CRC and Perry tables at 25 °C, from memory: 20 % 1.1365, 30 % 1.2150, 36 % 1.2647, 40 % 1.2991.
    const table: readonly [number, number][] = [
      [0.2, 1.1365],
      [0.3, 1.215],
      [0.36, 1.2647],
      [0.4, 1.2991],
    ];
    for (const [massFraction, density] of table) expect(Math.abs(acidDensity(massFraction, 25) - density)).toBeLessThan(0.0005);
  });

  it("finds the strength of a density again", () => {
    for (const density of [1.12, 1.2, 1.28]) expect(acidDensity(massFractionOf(density), 25)).toBeCloseTo(density, 10);
  });

  it("rests at 12.70 to 12.90 V where six cells hold 1.27 to 1.30 kg/l (IEC 60095-1, from memory), within 0.02 V", () => {
    expect(6 * openCircuitVoltage(massFractionOf(1.27))).toBeGreaterThan(12.68);
    expect(6 * openCircuitVoltage(massFractionOf(1.3))).toBeLessThan(12.92);
  });
});
