import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { quantile, quantileOfSorted } from "../../../lib/signal/order-statistics.ts";
import { selectKth } from "../../../lib/signal/select.ts";
import { seededRandom } from "../../generator/random.ts";

describe("the k-th smallest", () => {
  it("is the one that sorting puts there, and parts the smaller from the larger", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: -5, max: 5 }), { minLength: 1, maxLength: 60 }), fc.nat(), (numbers, any) => {
        const k = any % numbers.length;
        const values = Float64Array.from(numbers);
        const value = selectKth(values, k);
        expect(value).toBe(Float64Array.from(numbers).sort()[k]);
        expect(values.subarray(0, k).every((other) => other <= value)).toBe(true);
        expect(values.subarray(k).every((other) => other >= value)).toBe(true);
        expect(values.slice().sort()).toEqual(Float64Array.from(numbers).sort());
      }),
      { seed: 20_260_101, numRuns: 2000 },
    );
  });

  it.each([
    ["noise", (i: number, uniform: () => number) => uniform() * i],
    ["a ramp", (i: number) => i],
    ["a falling ramp", (i: number) => 1 - i],
    ["few different values", (_: number, uniform: () => number) => Math.floor(uniform() * 3)],
    ["one value", () => 7],
    ["a saw", (i: number) => i % 100],
  ] as const)("of many is the one that sorting puts there: %s", (_, write) => {
    const random = seededRandom(7);
    const values = Float64Array.from({ length: 20_000 }, (__, i) => write(i, random.uniform));
    const sorted = values.slice().sort();
    for (const p of [0, 0.01, 0.1, 0.5, 0.99, 1]) expect(quantile(values, p)).toBe(quantileOfSorted(sorted, p));
  });
});
