import { describe, expect, it } from "vitest";
import { noiseOf, stepOf } from "../../../lib/signal/noise.ts";
import { seededRandom } from "../../generator/random.ts";

const count = 4000;
const random = seededRandom(41);
const white = Float64Array.from({ length: count }, () => 0.05 * random.normal());

describe("noise", () => {
  it("finds the standard deviation of white noise, a slope and a step under it or not", () => {
    // The median of 4000 absolute second differences is known to some 3 %.
    expect(noiseOf(white) / 0.05).toBeCloseTo(1, 1);
    expect(noiseOf(white.map((value, i) => value + 0.01 * i)) / 0.05).toBeCloseTo(1, 1);
    expect(noiseOf(white.map((value, i) => value + (i > 2000 ? 12 : 0))) / 0.05).toBeCloseTo(1, 1);
  });

  it("is 0 for a straight line, for equal values and for fewer than three", () => {
    expect(noiseOf(Float64Array.from({ length: 50 }, (_, i) => 0.5 * i))).toBe(0);
    expect(noiseOf(new Float64Array(50).fill(13.6))).toBe(0);
    expect(noiseOf(Float64Array.of(1, 9))).toBe(0);
  });
});

describe("the step that a series is written in", () => {
  it("is 0.01 for values rounded to it, whatever crumbs the doubles have", () => {
    expect(stepOf(white.map((value) => Math.round(value * 100) / 100))).toBeCloseTo(0.01, 9);
  });

  it("is 0 where all values are equal or there is one", () => {
    expect(stepOf(new Float64Array(9).fill(5))).toBe(0);
    expect(stepOf(Float64Array.of(5))).toBe(0);
  });
});
