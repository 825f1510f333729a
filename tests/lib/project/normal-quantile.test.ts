import { describe, expect, it } from "vitest";
import { normalQuantile } from "../../../lib/project/normal-quantile.ts";
import { normalCdf } from "../../../lib/units/normal-distribution.ts";

describe("normal quantile", () => {
  it("is 1.959963985 for 0.975, 2.575829304 for 0.995 and 0.674489750 for 0.75 (tabled values)", () => {
    expect(normalQuantile(0.975)).toBeCloseTo(1.959963985, 9);
    expect(normalQuantile(0.995)).toBeCloseTo(2.575829304, 9);
    expect(normalQuantile(0.75)).toBeCloseTo(0.67448975, 9);
  });

  it("undoes the distribution function from one in a hundred thousand to a half, to that function's own 1e-14", () => {
    for (let exponent = -5; exponent <= -0.3; exponent += 0.1) {
      const probability = 10 ** exponent;
      expect(Math.abs(normalCdf(normalQuantile(probability)) - probability)).toBeLessThan(2e-14);
    }
  });

  it("is infinite at the ends and NaN outside", () => {
    expect(normalQuantile(0)).toBe(Number.NEGATIVE_INFINITY);
    expect(normalQuantile(1)).toBe(Number.POSITIVE_INFINITY);
    for (const bad of [-0.1, 1.1, Number.NaN]) expect(normalQuantile(bad)).toBeNaN();
  });
});
