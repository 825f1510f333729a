import { describe, expect, it } from "vitest";
import { isRefused } from "../../../lib/signal/fit-result.ts";
import { fitSaturating } from "../../../lib/signal/fit-saturating.ts";
import { readDataSet } from "../../reference/nist-nonlinear/data-sets.ts";

describe("saturating rise", () => {
  it.each(["Misra1a", "BoxBOD"])("finds NIST's certified %s without a starting point", (name) => {
    const { x, y, certified, certifiedErrors } = readDataSet(name);
    const fit = fitSaturating(x, y);
    if (isRefused(fit)) throw new Error(fit.refused);
    for (const j of [0, 1] as const) {
      expect(Math.abs(fit.parameters[j] / (certified[j] ?? 0) - 1)).toBeLessThan(1e-6);
      expect(Math.abs(fit.standardErrors[j] / (certifiedErrors[j] ?? 0) - 1)).toBeLessThan(1e-6);
    }
  });

  it("takes a starting point too", () => {
    const { x, y, certified } = readDataSet("BoxBOD");
    const fit = fitSaturating(x, y, [1, 1]);
    if (isRefused(fit)) throw new Error(fit.refused);
    expect(Math.abs(fit.parameters[0] / (certified[0] ?? 0) - 1)).toBeLessThan(1e-6);
  });

  it("commutes with the units of x and y", () => {
    const { x, y } = readDataSet("BoxBOD");
    const plain = fitSaturating(x, y);
    const scaled = fitSaturating(
      x.map((value) => value * 3600),
      y.map((value) => value / 1000),
    );
    if (isRefused(plain) || isRefused(scaled)) throw new Error("a fit was refused");
    // Each converges to nine digits.
    expect(scaled.parameters[0] * 1000).toBeCloseTo(plain.parameters[0], 5);
    expect(scaled.parameters[1] * 3600).toBeCloseTo(plain.parameters[1], 7);
  });

  it("refuses a straight line, whose ceiling nobody can know", () => {
    expect(fitSaturating([1, 2, 3, 4, 5], [2, 4, 6, 8, 10])).toEqual({
      refused: "no bend can be seen: the values rise as along a straight line",
    });
  });

  it("refuses values that stand at their ceiling from the first", () => {
    expect(fitSaturating([1, 2, 3, 4], [5, 5, 5, 5])).toHaveProperty("refused");
  });

  it("refuses too few points, and no x above zero", () => {
    expect(fitSaturating([1, 2], [1, 2])).toHaveProperty("refused");
    expect(fitSaturating([0, 0, 0], [1, 2, 3])).toEqual({ refused: "no x above zero" });
  });
});
