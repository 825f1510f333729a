import { describe, expect, it } from "vitest";
import { spreadBetween, spreadWithin } from "../../../lib/measure/repeatability.ts";

describe("repeatability", () => {
  it("is the standard deviation of repeats, with an interval from the chi-square distribution", () => {
    // JCGM 100:2008, 4.4.3 and table 1: twenty temperatures with s = 1.489 °C (from memory).
    const jcgm = [
      96.9, 98.18, 98.25, 98.61, 99.03, 99.49, 99.56, 99.74, 99.89, 100.07, 100.33, 100.42, 100.68, 100.95, 101.11, 101.2, 101.57, 101.84,
      102.36, 102.72,
    ];
    const spread = spreadWithin([jcgm]);
    expect(spread?.value).toBeCloseTo(1.489, 3);
    // 95 % interval with 19 degrees of freedom: chi-square 8.907 and 32.852 (NIST e-Handbook 1.3.6.7.4, from memory).
    expect(spread?.low).toBeCloseTo(1.489 * Math.sqrt(19 / 32.852), 3);
    expect(spread?.high).toBeCloseTo(1.489 * Math.sqrt(19 / 8.907), 3);
  });

  it("pools the scatter within tests and leaves out what lies between them", () => {
    // Within each pair the values are 0.2 apart: s² = 0.02 a pair, by hand.
    expect(spreadWithin([[14.3, 14.5], [13.0, 13.2], [15]])?.value).toBeCloseTo(Math.sqrt(0.02), 12);
    expect(
      spreadBetween([
        [14.3, 14.5],
        [13.0, 13.2],
      ])?.value,
    ).toBeCloseTo(Math.SQRT1_2 * (14.4 - 13.1), 12);
  });

  it("is not known from single values, and is nought, not absent, where repeats are equal", () => {
    expect(spreadWithin([[14.4], [14.5]])).toBeUndefined();
    expect(spreadBetween([[14.4, 14.5], []])).toBeUndefined();
    expect(spreadWithin([[14.4, 14.4]])).toMatchObject({ value: 0, low: 0, high: 0 });
  });
});
