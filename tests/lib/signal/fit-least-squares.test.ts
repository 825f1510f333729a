import { describe, expect, it } from "vitest";
import { solveLeastSquares } from "../../../lib/signal/fit-least-squares.ts";

const column = (...values: number[]): Float64Array => Float64Array.from(values);

describe("linear least squares", () => {
  it("solves a square system exactly", () => {
    // 2a + b = 5, a - b = 1: a = 2, b = 1.
    const solved = solveLeastSquares([column(2, 1), column(1, -1)], column(5, 1));
    expect(solved?.solution[0]).toBeCloseTo(2, 12);
    expect(solved?.solution[1]).toBeCloseTo(1, 12);
  });

  it("gives the inverse of JᵀJ", () => {
    // J = [1 0; 1 1; 1 2]: JᵀJ = [3 3; 3 5], inverse 1/6 · [5 -3; -3 3].
    const inverse = solveLeastSquares([column(1, 1, 1), column(0, 1, 2)], column(0, 0, 0))?.inverseNormal;
    expect(inverse?.[0]?.[0]).toBeCloseTo(5 / 6, 12);
    expect(inverse?.[0]?.[1]).toBeCloseTo(-0.5, 12);
    expect(inverse?.[1]?.[1]).toBeCloseTo(0.5, 12);
  });

  it("does not mind units twelve decades apart", () => {
    const solved = solveLeastSquares([column(1e6, 1e6, 1e6), column(0, 1e-6, 2e-6)], column(1, 2, 3));
    expect((solved?.solution[1] ?? 0) * 1e-6).toBeCloseTo(1, 9);
  });

  it("has no answer for dependent columns, a column of noughts, or NaN", () => {
    expect(solveLeastSquares([column(1, 2, 3), column(2, 4, 6)], column(1, 2, 3))).toBeUndefined();
    expect(solveLeastSquares([column(1, 2, 3), column(0, 0, 0)], column(1, 2, 3))).toBeUndefined();
    expect(solveLeastSquares([column(1, Number.NaN, 3)], column(1, 2, 3))).toBeUndefined();
  });
});
