import { describe, expect, it } from "vitest";
import { choleskyInPlace, logDeterminant, solveLower, solveUpper } from "../../../lib/reconcile/cholesky.ts";
import { findBell } from "../../../lib/reconcile/laplace.ts";

describe("triangular root", () => {
  it("gives back the matrix, its solution and its determinant", () => {
    const matrix = Float64Array.from([4, 2, 0.4, 2, 3, 0.1, 0.4, 0.1, 2]);
    const root = matrix.slice();
    expect(choleskyInPlace(root, 3)).toBe(true);
    const x = Float64Array.from([1, -2, 3]);
    const b = Float64Array.from([0, 1, 2].map((i) => [0, 1, 2].reduce((sum, j) => sum + (matrix[3 * i + j] ?? 0) * (x[j] ?? 0), 0)));
    solveLower(root, 3, b);
    solveUpper(root, 3, b);
    for (const [i, value] of x.entries()) expect(b[i]).toBeCloseTo(value, 12);
    const determinant = 4 * (3 * 2 - 0.01) - 2 * (2 * 2 - 0.04) + 0.4 * (0.2 - 1.2);
    expect(logDeterminant(root, 3)).toBeCloseTo(Math.log(determinant), 12);
  });

  it("tells a matrix that has none", () => {
    expect(choleskyInPlace(Float64Array.from([1, 2, 2, 1]), 2)).toBe(false);
    expect(choleskyInPlace(Float64Array.from([Number.NaN]), 1)).toBe(false);
  });
});

describe("the bell about the most probable unknowns", () => {
  it("is exact where all is linear: one unknown, two readings, by hand", () => {
    // z standard normal, readings 2z = 1 ± 0.5 and z = 0.2 ± 1, in their uncertainties.
    const residuals = (z: Float64Array, into: Float64Array): void => {
      into[0] = (2 * (z[0] ?? 0) - 1) / 0.5;
      into[1] = (z[0] ?? 0) - 0.2;
    };
    const bell = findBell(residuals, 1, 2, new Float64Array(1));
    // Curvature 1 + 16 + 1, slope at nought -(8 + 0.2).
    expect(bell?.top[0]).toBeCloseTo(8.2 / 18, 6);
    expect(bell?.root[0]).toBeCloseTo(Math.sqrt(18), 6);
    const misfit = (4 + 0.04) / 2 - 8.2 ** 2 / 36;
    expect(bell?.misfit).toBeCloseTo(misfit, 8);
    expect(bell?.logIntegral).toBeCloseTo(-misfit - Math.log(18) / 2, 6);
  });

  it("climbs a bent ridge from its prior's middle", () => {
    const residuals = (z: Float64Array, into: Float64Array): void => {
      into[0] = (Math.exp(0.8 * (z[0] ?? 0)) * Math.exp(0.5 * (z[1] ?? 0)) - 6) / 0.01;
    };
    const bell = findBell(residuals, 2, 1, new Float64Array(2));
    // On the ridge 0.8a + 0.5b = ln 6 the nearest point to nought lies along (0.8, 0.5); the reading holds it there to 0.01/6.
    const along = Math.log(6) / (0.8 ** 2 + 0.5 ** 2);
    expect(bell?.top[0]).toBeCloseTo(0.8 * along, 2);
    expect(bell?.top[1]).toBeCloseTo(0.5 * along, 2);
  });

  it("has no bell for a model without a value", () => {
    expect(findBell((_, into) => into.fill(Number.NaN), 2, 1, new Float64Array(2))).toBeUndefined();
  });
});
