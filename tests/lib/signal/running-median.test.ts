import { describe, expect, it } from "vitest";
import { runningMedian } from "../../../lib/signal/running-median.ts";

const of = (values: readonly number[]) => [...runningMedian(Float64Array.from(values))];

describe("running median over five", () => {
  it("takes out teeth of one and two samples", () => {
    expect(of([1, 1, 1, 9, 1, 1, 1, 8, 8, 1, 1, 1])).toEqual(Array(12).fill(1));
  });

  it("leaves a lasting jump where it is", () => {
    expect(of([0, 0, 0, 0, 5, 5, 5, 5])).toEqual([0, 0, 0, 0, 5, 5, 5, 5]);
  });

  it("takes the samples there are at the ends (by hand)", () => {
    expect(of([5, 1, 2])).toEqual([2, 2, 2]);
    expect(of([5, 1, 2, 4])).toEqual([2, 3, 3, 2]);
    expect(of([])).toEqual([]);
  });

  it("changes nothing in a series that rises", () => {
    const rising = Array.from({ length: 20 }, (_, i) => i * i);
    expect(of(rising).slice(2, -2)).toEqual(rising.slice(2, -2));
  });
});
