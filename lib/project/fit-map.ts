/** The most probable parameters under a normal prior, and how sure they are: least squares with the prior as further residuals. */
import { solveLeastSquares } from "../signal/fit-least-squares.ts";
import { lowerFactor } from "./lower-factor.ts";

export type MapFit = {
  readonly z: readonly number[];
  /** Posterior standard deviation of each z, by the curvature at the mode (Laplace); at most 1, the prior's. */
  readonly standardDeviations: readonly number[];
  /** Lower triangular factor L of the posterior covariance, L·Lᵀ: z + L·n is a draw of it where n is normal. */
  readonly factor: readonly (readonly number[])[];
  /** Half the sum of squares of data and prior residuals at the mode. */
  readonly halfSquares: number;
  readonly converged: boolean;
};

const mostRounds = 25;
const derivativeStep = 1e-3;
/** No parameter moves by more than this in one round, in prior standard deviations: the models bend too much for longer leaps. */
const longestMove = 1;
/** Beyond this many prior standard deviations nothing is believed. */
const farthest = 4;

/**
 * Finds the mode of exp(-½|r(z)|² - ½|z|²).
 * @param residuals  of the data, each over its standard deviation, for parameters z in prior standard deviations (0 is the prior's middle)
 * @param size  how many parameters
 * @param from  where to begin; the prior's middle where left out
 * @returns the mode; not converged where 25 rounds did not settle it or residuals were not finite, and then the best found
 * Source: Gauss and Newton with Levenberg's damping, textbook form.
 */
export function fitMap(residuals: (z: readonly number[]) => Float64Array, size: number, from?: readonly number[]): MapFit {
  let z: number[] = Array.from({ length: size }, (_, j) => from?.[j] ?? 0);
  let at = residuals(z);
  let squares = halfSquaresOf(at, z);
  let damping = 0.1;
  let converged = false;
  for (let round = 0; round < mostRounds && !converged; round++) {
    const columns = derivativesOf(residuals, z, at);
    let improved = false;
    for (let attempt = 0; attempt < 6 && !improved; attempt++) {
      const move = dampedMove(columns, at, z, damping);
      if (move === undefined) break;
      const candidate = z.map((value, j) => Math.min(farthest, Math.max(-farthest, value + clip(move[j] ?? 0, longestMove))));
      const candidateAt = residuals(candidate);
      const candidateSquares = halfSquaresOf(candidateAt, candidate);
      if (candidateSquares <= squares) {
        converged = squares - candidateSquares < 1e-4;
        [z, at, squares] = [candidate, candidateAt, candidateSquares];
        damping = Math.max(1e-4, damping / 4);
        improved = true;
      } else damping *= 6;
    }
    if (!improved) converged = Number.isFinite(squares) && damping > 10;
    if (!improved) break;
  }
  const covariance = covarianceOf(derivativesOf(residuals, z, at), size);
  const standardDeviations = covariance.map((row, j) => Math.sqrt(Math.min(1, row[j] ?? 1)));
  return { z, standardDeviations, factor: lowerFactor(covariance), halfSquares: squares, converged };
}

function halfSquaresOf(residuals: Float64Array, z: readonly number[]): number {
  let sum = 0;
  for (const value of residuals) sum += value * value;
  for (const value of z) sum += value * value;
  return Number.isFinite(sum) ? sum / 2 : Number.POSITIVE_INFINITY;
}

function derivativesOf(residuals: (z: readonly number[]) => Float64Array, z: readonly number[], at: Float64Array): Float64Array[] {
  return z.map((value, j) => {
    const moved = residuals(z.with(j, value + derivativeStep));
    return moved.map((residual, i) => (residual - (at[i] ?? 0)) / derivativeStep);
  });
}

/** The damped step: rows of data, then of the prior, then of the damping. */
function dampedMove(columns: readonly Float64Array[], at: Float64Array, z: readonly number[], damping: number): number[] | undefined {
  const size = columns.length;
  const rows = at.length + 2 * size;
  const extended = columns.map((column, j) => {
    const longer = new Float64Array(rows);
    longer.set(column);
    longer[at.length + j] = 1;
    longer[at.length + size + j] = Math.sqrt(damping);
    return longer;
  });
  const target = new Float64Array(rows);
  for (let i = 0; i < at.length; i++) target[i] = -(at[i] ?? 0);
  for (let j = 0; j < size; j++) target[at.length + j] = -(z[j] ?? 0);
  return solveLeastSquares(extended, target)?.solution;
}

/** (JᵀJ + 1)⁻¹; the prior alone where the data's derivatives are not finite. */
function covarianceOf(columns: readonly Float64Array[], size: number): number[][] {
  const length = columns[0]?.length ?? 0;
  const extended = columns.map((column, j) => {
    const longer = new Float64Array(length + size);
    longer.set(column);
    longer[length + j] = 1;
    return longer;
  });
  const inverse = solveLeastSquares(extended, new Float64Array(length + size))?.inverseNormal;
  return inverse ?? Array.from({ length: size }, (_, i) => Array.from({ length: size }, (_, j) => (i === j ? 1 : 0)));
}

function clip(value: number, most: number): number {
  return Math.min(most, Math.max(-most, value));
}
