import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  densityFromRestVoltage,
  errorOfRuleOfThumb,
  restVoltageFromDensity,
  restVoltagePerCell,
} from "../../../lib/electrochem/rest-voltage.ts";

const seed = 20260311;

describe("rest voltage", () => {
  it("rises with strength over the whole range", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 12.9, noNaN: true }),
        fc.double({ min: 0, max: 50, noNaN: true }),
        (molality, temperatureC) => {
          expect(restVoltagePerCell(molality + 0.1, temperatureC)).toBeGreaterThan(restVoltagePerCell(molality, temperatureC));
        },
      ),
      { seed },
    );
  });

  it("is undone by the density of that voltage, for any battery and temperature", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1.01, max: 1.4, noNaN: true }),
        fc.constantFrom(1, 3, 6, 12),
        fc.double({ min: 0, max: 50, noNaN: true }),
        (density, cells, temperatureC) => {
          const back = densityFromRestVoltage(restVoltageFromDensity(density, cells, temperatureC), cells, temperatureC);
          // Two halvings to 1e-15 of their range, 13 mol/kg: below 1e-9 kg/l.
          expect(Math.abs(back - density)).toBeLessThan(1e-9);
        },
      ),
      { seed },
    );
  });

  it("falls in the band of IEC 60095-1 for full batteries: 12.70 to 12.90 V at 1.27 to 1.30 kg/l (from memory)", () => {
    // The band is printed to 0.01 V, ours lies 0.02 V inside it at the most.
    expect(restVoltageFromDensity(1.27, 6)).toBeCloseTo(12.72, 1);
    expect(restVoltageFromDensity(1.3, 6)).toBeCloseTo(12.9, 1);
  });

  it("of a 24 V battery is four times that of a 6 V battery", () => {
    expect(restVoltageFromDensity(1.25, 12)).toBeCloseTo(4 * restVoltageFromDensity(1.25, 3), 10);
  });

  it("moves by 1 to 2 mV per K for a 12 V battery, upwards, and not by the 18 to 30 of charge compensation", () => {
    const slopeVPerK = restVoltageFromDensity(1.265, 6, 26) - restVoltageFromDensity(1.265, 6, 25);
    expect(slopeVPerK).toBeGreaterThan(0.001);
    expect(slopeVPerK).toBeLessThan(0.002);
  });

  it.each([
    // Table of the reference pack, mV per cell, rule minus polynomial.
    [1.1, -26],
    [1.15, -21],
    [1.2, -15],
    [1.25, -11],
    [1.28, -9],
    [1.3, -9],
  ])("rule of thumb at %f is off by %f mV", (density, errorMV) => {
    // Printed to 1 mV.
    expect(Math.abs(1000 * errorOfRuleOfThumb(density) - errorMV)).toBeLessThan(0.6);
  });

  it("is NaN for water, for no battery, and for voltages no acid gives", () => {
    expect(restVoltageFromDensity(1, 6)).toBeNaN();
    expect(restVoltageFromDensity(1.25, 0)).toBeNaN();
    expect(restVoltageFromDensity(1.25, 2.5)).toBeNaN();
    expect(restVoltageFromDensity(1.25, 6, -10)).toBeNaN();
    for (const restV of [0, 10, 14.4, Number.NaN]) expect(densityFromRestVoltage(restV, 6)).toBeNaN();
  });
});
