import { describe, expect, it } from "vitest";
import { searchLogarithmically } from "../../../lib/signal/fit-rate-search.ts";

describe("logarithmic search", () => {
  it("finds a dip anywhere over nine decades", () => {
    for (const dip of [1e-4, 0.3, 7, 4e4]) {
      const found = searchLogarithmically((value) => Math.log(value / dip) ** 2, 1e-4, 1e5);
      // Ends at 1e-6 of the logarithm.
      expect(found / dip).toBeCloseTo(1, 5);
    }
  });

  it("takes the deeper of two dips", () => {
    const cost = (value: number): number => Math.min(Math.abs(Math.log(value / 0.01)) + 1, Math.abs(Math.log(value / 100)));
    expect(searchLogarithmically(cost, 1e-4, 1e4) / 100).toBeCloseTo(1, 4);
  });

  it("ends at an end where the cost only falls", () => {
    expect(searchLogarithmically((value) => -value, 1, 1000) / 1000).toBeCloseTo(1, 4);
    expect(searchLogarithmically((value) => value, 1, 1000)).toBeCloseTo(1, 4);
  });
});
