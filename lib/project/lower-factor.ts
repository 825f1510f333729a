/** Cholesky's factor: what turns independent normal numbers into dependent ones. */

/**
 * Lower triangular L with L·Lᵀ = the matrix.
 * @param matrix  n by n, symmetric, not negative; a diagonal that rounding has made negative counts as 0
 * @returns n rows of n; NaN goes where it came from. Source: textbook form.
 */
export function lowerFactor(matrix: readonly (readonly number[])[]): number[][] {
  const lower = matrix.map((row) => row.map(() => 0));
  for (const [i, row] of matrix.entries()) {
    for (let j = 0; j <= i; j++) {
      let sum = row[j] ?? 0;
      for (let k = 0; k < j; k++) sum -= (lower[i]?.[k] ?? 0) * (lower[j]?.[k] ?? 0);
      const target = lower[i];
      if (target === undefined) continue;
      const pivot = lower[j]?.[j] ?? 0;
      target[j] = i === j ? Math.sqrt(Math.max(0, sum)) : pivot > 0 ? sum / pivot : 0;
    }
  }
  return lower;
}

/**
 * The inverse of a symmetric positive matrix, by its factor: columns of L⁻¹, and L⁻ᵀ·L⁻¹.
 * @returns n rows of n; Infinity or NaN where the matrix is not positive
 */
export function inverseOf(matrix: readonly (readonly number[])[]): number[][] {
  const lower = lowerFactor(matrix);
  const columns = matrix.map((_, column) => forwardSubstitute(lower, column));
  return columns.map((one) => columns.map((other) => one.reduce((sum, value, k) => sum + value * (other[k] ?? 0), 0)));
}

/** x of L·x = the unit vector of a place. */
function forwardSubstitute(lower: readonly (readonly number[])[], place: number): number[] {
  const solution: number[] = [];
  for (const [i, row] of lower.entries()) {
    let sum = i === place ? 1 : 0;
    for (let k = 0; k < i; k++) sum -= (row[k] ?? 0) * (solution[k] ?? 0);
    solution.push(sum / (row[i] ?? 0));
  }
  return solution;
}
