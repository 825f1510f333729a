import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  acidRange,
  densityAtTemperature,
  densityOfAcid,
  densitySlopePerK,
  molalityFromWeightFraction,
  molarity,
  weightFractionFromMolality,
  weightFractionOfAcid,
} from "../../../lib/electrochem/acid.ts";
import { densityOfWater } from "../../../lib/electrochem/water.ts";

const seed = 20260311;
const strength = fc.double({ min: 0, max: 0.6, noNaN: true });
const temperature = fc.double({ min: 0, max: 50, noNaN: true });

describe("density of acid", () => {
  it("rises with strength everywhere between 0 and 60 wt %, 0 and 50 °C", () => {
    for (let temperatureC = 0; temperatureC <= 50; temperatureC += 2.5) {
      for (let permille = 1; permille <= 600; permille++) {
        const step = densityOfAcid(permille / 1000, temperatureC) - densityOfAcid((permille - 1) / 1000, temperatureC);
        // 0.0006 to 0.0011 kg/l a permille in every table; half and twice that leave room for curvature only.
        expect(step, `${permille} permille, ${temperatureC} °C`).toBeGreaterThan(0.0004);
        expect(step, `${permille} permille, ${temperatureC} °C`).toBeLessThan(0.0013);
      }
    }
  });

  it("does not jump where the dilute curve meets the polynomial", () => {
    for (const temperatureC of [0, 12.5, 25, 50]) {
      // A billionth in strength is 1e-9 kg/l; anything above that would be a step.
      expect(densityOfAcid(0.1, temperatureC) - densityOfAcid(0.1 - 1e-9, temperatureC)).toBeLessThan(2e-9);
    }
  });

  it("is water's at no strength", () => {
    for (const temperatureC of [0, 4, 25, 50]) expect(densityOfAcid(0, temperatureC)).toBe(densityOfWater(temperatureC));
  });

  it("is undone by the strength of that density", () => {
    fc.assert(
      fc.property(strength, temperature, (weightFraction, temperatureC) => {
        const back = weightFractionOfAcid(densityOfAcid(weightFraction, temperatureC), temperatureC);
        // Rounding of a density near one, 2e-16, over the slope 0.6 kg/l, with the eleven terms' cancellation: below 1e-9.
        expect(Math.abs(back - weightFraction)).toBeLessThan(1e-9);
      }),
      { seed },
    );
  });

  it("comes back when the acid is warmed and cooled again", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.02, max: 0.58, noNaN: true }), temperature, temperature, (weightFraction, fromC, toC) => {
        const density = densityOfAcid(weightFraction, fromC);
        expect(Math.abs(densityAtTemperature(densityAtTemperature(density, fromC, toC), toC, fromC) - density)).toBeLessThan(1e-9);
      }),
      { seed },
    );
  });

  it("falls with temperature, by the slopes of the derived table from 15 to 40 wt %", () => {
    const slopes = [
      [0.15, -0.00052],
      [0.2, -0.00059],
      [0.25, -0.00065],
      [0.3, -0.00069],
      [0.36, -0.00072],
      [0.4, -0.00073],
    ] as const;
    // Printed to 0.00001 per K.
    for (const [weightFraction, slope] of slopes) expect(Math.abs(densitySlopePerK(weightFraction, 25) - slope)).toBeLessThan(0.6e-5);
  });

  it("catches the wrong sign in the polynomial, which would give 1.2979 for 40 wt % at 40 °C", () => {
    expect(Math.abs(densityOfAcid(0.4, 40) - 1.2881)).toBeLessThan(0.0005);
  });

  it.each([
    ["too weak", -0.01, 25],
    ["too strong", 0.61, 25],
    ["too cold", 0.3, -0.1],
    ["too hot", 0.3, 50.1],
    ["no strength", Number.NaN, 25],
    ["no temperature", 0.3, Number.NaN],
  ])("is NaN and never throws: %s", (_, weightFraction, temperatureC) => {
    expect(densityOfAcid(weightFraction, temperatureC)).toBeNaN();
  });

  it("has no strength for what is no acid in range", () => {
    for (const density of [0.9, 1.6, Number.NaN, Number.POSITIVE_INFINITY]) expect(weightFractionOfAcid(density, 25)).toBeNaN();
    expect(weightFractionOfAcid(densityOfAcid(acidRange.weightFraction.high, 25), 25)).toBeCloseTo(0.6, 9);
  });
});

describe("ways of stating strength", () => {
  it("goes from mass fraction to molality and back", () => {
    fc.assert(
      fc.property(strength, (weightFraction) => {
        const back = weightFractionFromMolality(molalityFromWeightFraction(weightFraction));
        expect(Math.abs(back - weightFraction)).toBeLessThan(1e-14);
      }),
      { seed },
    );
  });

  it("gives the same moles by litre whether counted in the solution or in its water", () => {
    const weightFraction = 0.36;
    const density = densityOfAcid(weightFraction, 25);
    const kgOfWaterPerL = density * (1 - weightFraction);
    expect(molarity(weightFraction, density)).toBeCloseTo(molalityFromWeightFraction(weightFraction) * kgOfWaterPerL, 12);
  });

  it("is NaN for impossible strengths", () => {
    expect(molalityFromWeightFraction(1)).toBeNaN();
    expect(molalityFromWeightFraction(-0.1)).toBeNaN();
    expect(weightFractionFromMolality(-1)).toBeNaN();
  });
});
