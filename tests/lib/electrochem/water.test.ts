import { describe, expect, it } from "vitest";
import { densityOfWater } from "../../../lib/electrochem/water.ts";

describe("density of water", () => {
  it.each([
    // From memory: the maximum, and the reference temperatures of specific gravity, in every handbook to 0.00001.
    [3.98, 0.99997],
    [15.56, 0.99902],
    [20, 0.99821],
    [25, 0.99705],
    [26.67, 0.99661],
  ])("at %f °C is %f kg/l", (temperatureC, expected) => {
    expect(Math.abs(densityOfWater(temperatureC) - expected)).toBeLessThan(1e-5);
  });

  it("is NaN where water is ice or steam", () => {
    expect(densityOfWater(-1)).toBeNaN();
    expect(densityOfWater(101)).toBeNaN();
    expect(densityOfWater(Number.NaN)).toBeNaN();
  });
});
