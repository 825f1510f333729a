import { describe, expect, it } from "vitest";
import { median, quantile, quantileOfSorted, robustSpread } from "../../../lib/signal/order-statistics.ts";

describe("order statistics", () => {
  it.each([
    [0, 1],
    [0.1, 1.9],
    [0.25, 3.25],
    [0.5, 5.5],
    [0.75, 7.75],
    [1, 10],
  ])("quantile %f of 1 to 10 is %f by Hyndman and Fan's type 7 (common software prints these for 1:10)", (p, expected) => {
    expect(quantile([10, 1, 9, 2, 8, 3, 7, 4, 6, 5], p)).toBeCloseTo(expected, 12);
  });

  it("median is the middle, or the mean of the two in the middle", () => {
    expect(median([3, 1, 2])).toBe(2);
    expect(median([4, 1, 3, 2])).toBe(2.5);
    expect(median([7])).toBe(7);
  });

  it("robust spread is 1.4826 times the median absolute deviation, and one wild value hardly moves it (by hand)", () => {
    expect(robustSpread([1, 2, 3, 4, 5])).toBeCloseTo(1.4826, 12);
    expect(robustSpread([1, 2, 3, 4, 1e6])).toBeCloseTo(1.4826, 12);
  });

  it("is not a number for no values, and leaves its argument in order", () => {
    expect(median([])).toBeNaN();
    expect(quantileOfSorted(new Float64Array(0), 0.5)).toBeNaN();
    const values = Float64Array.of(3, 1, 2);
    median(values);
    expect([...values]).toEqual([3, 1, 2]);
  });
});
