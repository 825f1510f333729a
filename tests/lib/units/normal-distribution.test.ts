import { describe, expect, it } from "vitest";
import { normalCdf, normalDensity } from "../../../lib/units/normal-distribution.ts";

describe("normal distribution", () => {
  it.each([
    // Tabled values, from memory, to the digits given.
    [0, 0.5],
    [1, 0.8413447461],
    [1.959963985, 0.975],
    [2, 0.9772498681],
    [3, 0.998650102],
    [4, 0.9999683288],
  ])("is %f: %f", (z, expected) => {
    expect(Math.abs(normalCdf(z) - expected)).toBeLessThan(1e-9);
    expect(Math.abs(normalCdf(-z) - (1 - expected))).toBeLessThan(1e-9);
  });

  it("keeps its digits far out in the tail", () => {
    // 2.866515719e-7 at -5 and 7.619853024e-24 at -10, from memory.
    expect(normalCdf(-5) / 2.866515719e-7).toBeCloseTo(1, 8);
    expect(normalCdf(-10) / 7.619853024e-24).toBeCloseTo(1, 8);
  });

  it("does not jump where series and tail meet", () => {
    const slope = normalDensity(5);
    expect(normalCdf(-5) - normalCdf(-5 - 1e-6)).toBeGreaterThan(0.9e-6 * slope);
    expect(normalCdf(-5) - normalCdf(-5 - 1e-6)).toBeLessThan(1.1e-6 * slope);
  });

  it("is the integral of its density", () => {
    let sum = 0;
    for (let i = 0; i < 2000; i++) sum += normalDensity(-1 + (i + 0.5) / 1000) / 1000;
    // Midpoint rule over 2000 steps: error below h²/12 · 0.5 = 4e-8.
    expect(Math.abs(normalCdf(1) - normalCdf(-1) - sum)).toBeLessThan(1e-7);
  });

  it("knows the ends, and NaN", () => {
    expect(normalCdf(Number.POSITIVE_INFINITY)).toBe(1);
    expect(normalCdf(Number.NEGATIVE_INFINITY)).toBe(0);
    expect(normalCdf(Number.NaN)).toBeNaN();
  });
});
