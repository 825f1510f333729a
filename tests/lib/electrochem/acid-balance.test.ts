import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  chargeForDensityRise,
  densityAfterCharge,
  electrolyteKgAtDensity,
  estimateElectrolyteKgPerCell,
} from "../../../lib/electrochem/acid-balance.ts";

const seed = 20260311;
const density = fc.double({ min: 1.08, max: 1.32, noNaN: true });
const massKg = fc.double({ min: 0.1, max: 20, noNaN: true });

describe("acid balance", () => {
  it("finds the charge of a rise that a charge has caused", () => {
    fc.assert(
      fc.property(massKg, density, density, (electrolyteKg, start, end) => {
        const chargeAh = chargeForDensityRise(electrolyteKg, start, end);
        expect(Math.abs(densityAfterCharge(electrolyteKg, start, chargeAh) - end)).toBeLessThan(1e-9);
      }),
      { seed },
    );
  });

  it("is the same by two charges as by one, when the electrolyte's growth is minded", () => {
    fc.assert(
      fc.property(massKg, density, density, density, (electrolyteKg, one, two, three) => {
        const inOne = chargeForDensityRise(electrolyteKg, one, three);
        const inTwo =
          chargeForDensityRise(electrolyteKg, one, two) + chargeForDensityRise(electrolyteKgAtDensity(electrolyteKg, one, two), two, three);
        // Some 100 Ah a kilogram at the most, from densities good to 1e-9.
        expect(Math.abs(inOne - inTwo)).toBeLessThan(1e-6 * electrolyteKg);
      }),
      { seed },
    );
  });

  it("holds a sixth less electrolyte in an empty cell than in a full one", () => {
    const emptyOverFull = electrolyteKgAtDensity(1, 1.28, 1.12);
    expect(emptyOverFull).toBeGreaterThan(0.78);
    expect(emptyOverFull).toBeLessThan(0.86);
    expect(electrolyteKgAtDensity(emptyOverFull, 1.12, 1.28)).toBeCloseTo(1, 9);
  });

  it("gives no charge without a rise, and a negative one for a fall", () => {
    expect(chargeForDensityRise(0.8, 1.2, 1.2)).toBe(0);
    expect(chargeForDensityRise(0.8, 1.2, 1.15)).toBeLessThan(0);
  });

  it("is NaN for no electrolyte, for no acid, and for a charge that acid cannot hold", () => {
    expect(chargeForDensityRise(0, 1.1, 1.2)).toBeNaN();
    expect(chargeForDensityRise(0.8, 0.9, 1.2)).toBeNaN();
    expect(densityAfterCharge(0.8, 1.2, 500)).toBeNaN();
    expect(densityAfterCharge(0.8, 1.2, -500)).toBeNaN();
    expect(densityAfterCharge(Number.NaN, 1.2, 10)).toBeNaN();
  });
});

describe("electrolyte mass where nobody weighed it", () => {
  const estimate = estimateElectrolyteKgPerCell(60, 1.28, 1.12);

  it("is the mass that the rated capacity carries from empty to full", () => {
    expect(densityAfterCharge(estimate.value, estimate.atDensity, 60)).toBeCloseTo(1.28, 9);
  });

  it("is known to 10 to 15 %, and worse for a narrow span of density", () => {
    const relative = estimate.standardUncertainty / estimate.value;
    expect(relative).toBeGreaterThan(0.095);
    expect(relative).toBeLessThan(0.15);
    const narrow = estimateElectrolyteKgPerCell(60, 1.28, 1.2);
    expect(narrow.standardUncertainty / narrow.value).toBeGreaterThan(relative);
  });

  it("doubles with the capacity", () => {
    expect(estimateElectrolyteKgPerCell(120, 1.28, 1.12).value).toBeCloseTo(2 * estimate.value, 9);
  });

  it("is NaN where full is not above empty, or there is no capacity", () => {
    expect(estimateElectrolyteKgPerCell(60, 1.12, 1.28).value).toBeNaN();
    expect(estimateElectrolyteKgPerCell(60, 1.2, 1.2).value).toBeNaN();
    expect(estimateElectrolyteKgPerCell(0, 1.28, 1.12).value).toBeNaN();
    expect(estimateElectrolyteKgPerCell(60, 1.12, 1.28).standardUncertainty).toBeNaN();
  });
});
