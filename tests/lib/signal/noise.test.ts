import { describe, expect, it } from "vitest";
import { noiseBetweenJumps, noiseOf, stepOf } from "../../../lib/signal/noise.ts";
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

describe("noise between jumps", () => {
  const pulsing = white.map((value, i) => value + (i % 3 === 0 ? 12 : 0));

  it("is that of white noise, also where every third value is a pulse, which the second differences take for noise", () => {
    // The quartile of 4000 differences is known to some 4 %; two in three differences here are pulses, so that it is their smallest third.
    expect(noiseBetweenJumps(white, 0) / 0.05).toBeCloseTo(1, 1);
    expect(noiseOf(pulsing)).toBeGreaterThan(1);
    expect(noiseBetweenJumps(pulsing, 0)).toBeLessThan(0.2);
  });

  it("is not less than the step that values are written in, unless the second differences say so", () => {
    expect(noiseBetweenJumps(pulsing, 0.5)).toBe(0.5);
    expect(noiseBetweenJumps(new Float64Array(50).fill(13.6), 0.5)).toBe(0);
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
