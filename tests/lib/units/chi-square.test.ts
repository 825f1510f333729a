import { describe, expect, it } from "vitest";
import { chiSquareCdf, chiSquareQuantile } from "../../../lib/units/chi-square.ts";

describe("chi-square distribution", () => {
  // NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.4, critical values to three decimals (from memory).
  it.each([
    [0.025, 1, 0.001],
    [0.975, 1, 5.024],
    [0.025, 2, 0.051],
    [0.975, 2, 7.378],
    [0.025, 10, 3.247],
    [0.975, 10, 20.483],
    [0.95, 5, 11.07],
    [0.99, 30, 50.892],
  ])("at %f and %i degrees of freedom is the tabled %f", (probability, nu, tabled) => {
    expect(Math.abs(chiSquareQuantile(probability, nu) - tabled)).toBeLessThanOrEqual(0.0005 + 1e-9);
  });

  it.each([0.1, 1, 5, 40])("is 1 - exp(-x/2) with two degrees of freedom, at %f (closed form)", (x) => {
    expect(chiSquareCdf(x, 2)).toBeCloseTo(1 - Math.exp(-x / 2), 12);
  });

  it("is NaN for impossible arguments", () => {
    expect([chiSquareCdf(-1, 2), chiSquareCdf(1, 0), chiSquareQuantile(0, 2), chiSquareQuantile(1, 2)]).toEqual(Array(4).fill(Number.NaN));
  });
});
