import { describe, expect, it } from "vitest";
import { inverseOf, lowerFactor } from "../../../lib/project/lower-factor.ts";

describe("Cholesky's factor", () => {
  const matrix = [
    [4, 2, 0.6],
    [2, 5, 1],
    [0.6, 1, 3],
  ];

  it("times itself turned over is the matrix, and is nothing above its diagonal", () => {
    const lower = lowerFactor(matrix);
    for (const [i, row] of matrix.entries())
      for (const [j, value] of row.entries()) {
        expect(lower[i]?.reduce((sum, part, k) => sum + part * (lower[j]?.[k] ?? 0), 0)).toBeCloseTo(value, 12);
        if (j > i) expect(lower[i]?.[j]).toBe(0);
      }
  });

  it("gives the inverse: times the matrix it is 1", () => {
    const inverse = inverseOf(matrix);
    for (const [i, row] of matrix.entries())
      for (const j of matrix.keys())
        expect(row.reduce((sum, value, k) => sum + value * (inverse[k]?.[j] ?? 0), 0)).toBeCloseTo(i === j ? 1 : 0, 12);
  });

  it("has no finite inverse of a matrix that is not positive", () => {
    expect(
      inverseOf([
        [1, 1],
        [1, 1],
      ])
        .flat()
        .every(Number.isFinite),
    ).toBe(false);
  });
});
