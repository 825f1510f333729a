/** The triangular root of a positive definite matrix, kept row by row in one array. */

/**
 * Replaces a symmetric matrix by its lower triangular root L, with A = L·Lᵀ.
 * @param matrix  n·n numbers, row by row; the lower triangle is read and overwritten
 * @returns false where the matrix is not positive definite, or holds NaN
 * Source: textbook form.
 */
export function choleskyInPlace(matrix: Float64Array, n: number): boolean {
  for (let i = 0; i < n; i++) {
    for (let j = 0; j <= i; j++) {
      let sum = matrix[i * n + j] ?? Number.NaN;
      for (let k = 0; k < j; k++) sum -= (matrix[i * n + k] ?? 0) * (matrix[j * n + k] ?? 0);
      if (i !== j) matrix[i * n + j] = sum / (matrix[j * n + j] ?? Number.NaN);
      else if (sum > 0) matrix[i * n + i] = Math.sqrt(sum);
      else return false;
    }
  }
  return true;
}

/** Overwrites b with the solution of L·y = b. */
export function solveLower(root: Float64Array, n: number, b: Float64Array): void {
  for (let i = 0; i < n; i++) {
    let sum = b[i] ?? 0;
    for (let k = 0; k < i; k++) sum -= (root[i * n + k] ?? 0) * (b[k] ?? 0);
    b[i] = sum / (root[i * n + i] ?? Number.NaN);
  }
}

/** Overwrites b with the solution of Lᵀ·x = b. */
export function solveUpper(root: Float64Array, n: number, b: Float64Array): void {
  for (let i = n - 1; i >= 0; i--) {
    let sum = b[i] ?? 0;
    for (let k = i + 1; k < n; k++) sum -= (root[k * n + i] ?? 0) * (b[k] ?? 0);
    b[i] = sum / (root[i * n + i] ?? Number.NaN);
  }
}

/** Logarithm of the determinant of A, from its root. */
export function logDeterminant(root: Float64Array, n: number): number {
  let sum = 0;
  for (let i = 0; i < n; i++) sum += 2 * Math.log(root[i * n + i] ?? Number.NaN);
  return sum;
}
