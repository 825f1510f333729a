import { describe, expect, it } from "vitest";
import { fitLine, valueOnLine } from "../../../lib/signal/fit-line.ts";
import { isRefused } from "../../../lib/signal/fit-result.ts";

describe("straight line", () => {
  it("is exact on a line, with no scatter", () => {
    const line = fitLine([0, 1, 2, 5], [1, 3, 5, 11]);
    if (isRefused(line)) throw new Error(line.refused);
    expect(line.slope).toBeCloseTo(2, 12);
    expect(line.intercept).toBeCloseTo(1, 12);
    expect(line.residualStandardDeviation).toBeCloseTo(0, 12);
  });

  it("says the same of any x whatever its origin", () => {
    const x = [1, 2, 3, 4, 5];
    const y = [2.1, 3.9, 6.2, 7.8, 10.1];
    const [near, far] = [fitLine(x, y, 3), fitLine(x, y, -100)];
    if (isRefused(near) || isRefused(far)) throw new Error("a line was refused");
    expect(valueOnLine(near, 10).value).toBeCloseTo(valueOnLine(far, 10).value, 9);
    // Some ten digits are left after the variances at -100 cancel.
    expect(valueOnLine(near, 10).standardUncertainty).toBeCloseTo(valueOnLine(far, 10).standardUncertainty, 6);
  });

  it("is surest in the middle of its data", () => {
    const line = fitLine([0, 1, 2, 3, 4], [0, 1.1, 1.9, 3.2, 3.9]);
    if (isRefused(line)) throw new Error(line.refused);
    const middle = valueOnLine(line, 2).standardUncertainty;
    expect(valueOnLine(line, 1).standardUncertainty).toBeGreaterThan(middle);
    expect(valueOnLine(line, 3).standardUncertainty).toBeGreaterThan(middle);
  });

  it("leaves out pairs with NaN", () => {
    expect(fitLine([0, 1, 2, Number.NaN, 3], [1, 3, 5, 100, 7])).toMatchObject({ points: 4, slope: 2 });
  });

  it("refuses two points, none, and a single x", () => {
    expect(fitLine([0, 1], [0, 1])).toHaveProperty("refused");
    expect(fitLine([], [])).toHaveProperty("refused");
    expect(fitLine([2, 2, 2], [0, 1, 2])).toEqual({ refused: "all points have the same x" });
  });
});
