/** Linear least squares by orthogonal reflections, which keep twice the digits that normal equations would. */

/** The solution, and the inverse of JᵀJ, from which standard errors follow. */
export type LeastSquares = { readonly solution: number[]; readonly inverseNormal: number[][] };

/**
 * Solves min |J·p - r| for p.
 * @param columns  the columns of J, each of length m; they are overwritten
 * @param target  r, of length m; it is overwritten
 * @returns undefined where the columns are (nearly) dependent or anything is not finite
 * Source: Householder's QR, textbook form; columns are scaled to unit length first, so that units do not look like dependence.
 */
export function solveLeastSquares(columns: readonly Float64Array[], target: Float64Array): LeastSquares | undefined {
  const n = columns.length;
  const m = target.length;
  const scales: number[] = [];
  for (const column of columns) {
    const norm = Math.sqrt(dot(column, column, 0));
    if (!(norm > 0 && Number.isFinite(norm))) return undefined;
    for (let i = 0; i < m; i++) column[i] = (column[i] ?? 0) / norm;
    scales.push(norm);
  }

  const upper: number[][] = Array.from({ length: n }, () => new Array<number>(n).fill(0));
  for (const [j, column] of columns.entries()) {
    const length = Math.sqrt(dot(column, column, j));
    // Below this what is left of the column is rounding noise: about 1e3 times the spacing of doubles near one.
    if (!(length > 2e-13)) return undefined;
    const pivot = (column[j] ?? 0) > 0 ? -length : length;
    set(upper, j, j, pivot);
    column[j] = (column[j] ?? 0) - pivot;
    const reflector = dot(column, column, j) / 2;
    for (let k = j + 1; k < n; k++) {
      const other = columns[k];
      if (other === undefined) continue;
      reflect(column, other, j, reflector);
      set(upper, j, k, other[j] ?? 0);
    }
    reflect(column, target, j, reflector);
  }

  const solution = backSubstitute(upper, Array.from(target.subarray(0, n))).map((value, i) => value / (scales[i] ?? 1));
  // Columns of R⁻¹; the inverse of JᵀJ = RᵀR is R⁻¹·R⁻ᵀ.
  const inverse = scales.map((_, j) =>
    backSubstitute(
      upper,
      scales.map((_, i) => (i === j ? 1 : 0)),
    ),
  );
  const inverseNormal = scales.map((scaleI, i) =>
    scales.map((scaleJ, j) => inverse.reduce((sum, column) => sum + (column[i] ?? 0) * (column[j] ?? 0), 0) / (scaleI * scaleJ)),
  );
  return solution.every(Number.isFinite) ? { solution, inverseNormal } : undefined;
}

function dot(one: Float64Array, other: Float64Array, from: number): number {
  let sum = 0;
  for (let i = from; i < one.length; i++) sum += (one[i] ?? 0) * (other[i] ?? 0);
  return sum;
}

function reflect(reflector: Float64Array, vector: Float64Array, from: number, halfSquare: number): void {
  const share = dot(reflector, vector, from) / halfSquare;
  for (let i = from; i < vector.length; i++) vector[i] = (vector[i] ?? 0) - share * (reflector[i] ?? 0);
}

function backSubstitute(upper: readonly (readonly number[])[], right: readonly number[]): number[] {
  const solved = [...right];
  for (let i = solved.length - 1; i >= 0; i--) {
    let value = solved[i] ?? 0;
    for (let j = i + 1; j < solved.length; j++) value -= (upper[i]?.[j] ?? 0) * (solved[j] ?? 0);
    solved[i] = value / (upper[i]?.[i] ?? Number.NaN);
  }
  return solved;
}

function set(matrix: number[][], i: number, j: number, value: number): void {
  const row = matrix[i];
  if (row !== undefined) row[j] = value;
}
