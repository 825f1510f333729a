import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { middleOfDraws, quantiles, rangeOf, spreadOf } from "../../../lib/project/spread.ts";

const never = Number.POSITIVE_INFINITY;

describe("quantiles of draws", () => {
  it("are straight between the middles of neighbouring draws", () => {
    expect(quantiles([3, 1, 2, 4], [0.125, 0.25, 0.5, 0.875])).toEqual([1, 1.5, 2.5, 4]);
  });

  it("of 101 even draws from 0 to 100 leave 2.5 % on either side, to half a draw", () => {
    const { median, middle95 } = spreadOf(Array.from({ length: 101 }, (_, i) => i));
    expect(median).toBe(50);
    expect(middle95.low).toBeCloseTo(2.025, 9);
    expect(middle95.high).toBeCloseTo(97.975, 9);
  });

  it("say never where that many draws say never, and never say NaN", () => {
    const { median, middle90 } = spreadOf([1, 2, 3, 4, 5, 6, 7, never, never, never]);
    expect(median).toBe(5.5);
    expect(middle90.high).toBe(never);
    expect(spreadOf([never, never]).median).toBe(never);
  });

  it("are open above where a single draw of 64 never comes, and closed where all do", () => {
    const came = Array.from({ length: 63 }, (_, i) => i);
    expect(middleOfDraws([...came, never])).toMatchObject({ value: 31.5, high: never });
    expect(middleOfDraws([...came, 63]).high).toBeLessThan(63);
    expect(middleOfDraws([]).value).toBeNaN();
  });

  it("follow the weights: a draw of weight 3 counts as three", () => {
    expect(quantiles([1, 2], [0.5], [3, 1])[0]).toBeLessThan(1.5);
    expect(quantiles([1, 2], [0.9], [0, 1])).toEqual([2]);
  });

  it("are NaN for no draws", () => {
    expect(spreadOf([]).median).toBeNaN();
    expect(rangeOf([])).toBeUndefined();
  });

  it("are in order, whatever the draws (200 random sets)", () => {
    fc.assert(
      fc.property(fc.array(fc.oneof(fc.double({ min: -1e6, max: 1e6, noNaN: true }), fc.constant(never)), { minLength: 1 }), (draws) => {
        const { median, middle80, middle95 } = spreadOf(draws);
        return middle95.low <= middle80.low && middle80.low <= median && median <= middle80.high && middle80.high <= middle95.high;
      }),
      { numRuns: 200, seed: 7 },
    );
  });
});
