/** What several logged batteries say about the next one of their kind: beliefs moved, and narrowed as far as that goes. */
import { type BatteryBeliefs, type Belief, parameterNames } from "./battery-priors.ts";
import type { FittedBattery } from "./fit-battery.ts";
import { inverseOf } from "./lower-factor.ts";

/**
 * Share of a belief's variance that lies between one battery and the next; the rest is our not knowing where their common middle is.
 * Only the second part can be learnt from other batteries. Our judgement: half and half.
 */
const betweenBatteries = 0.5;

/**
 * Moves beliefs by fitted batteries of the same kind.
 * @param beliefs  those under which the batteries were fitted
 * @param fitted  fits of other batteries; what a log told nothing about has no weight, and what it told only of several together (more
 *   hard sulphate or a slower one) counts for them together
 * @returns beliefs about a battery not yet seen: never narrower than the spread between batteries; the same beliefs for no fits
 * Source: normal distributions throughout, conjugate (textbook form). In units of the beliefs' standard deviations the common middle μ is
 *   N(0, c·1) and each battery N(μ, b·1), b + c = 1. A fit with mean z and covariance Σ under N(0, 1) holds Λ = Σ⁻¹ - 1 of its own and
 *   the vector η = Σ⁻¹·z; about μ that says (1 + b·Λ)⁻¹·Λ and (1 + b·Λ)⁻¹·η.
 */
export function poolBatteries(beliefs: BatteryBeliefs, fitted: readonly FittedBattery[]): BatteryBeliefs {
  if (fitted.length === 0) return beliefs;
  const [between, common] = [betweenBatteries, 1 - betweenBatteries];
  const size = parameterNames.length;
  const precision = identity(size, 1 / common);
  const sum = new Array<number>(size).fill(0);
  for (const fit of fitted) {
    const information = inverseOf(covarianceOf(fit, size));
    // 1 + b·Λ = (1 - b)·1 + b·Σ⁻¹, which is as symmetric and positive as Σ.
    const softened = information.map((row, i) => row.map((value, j) => between * value + (i === j ? 1 - between : 0)));
    const towards = inverseOf(softened);
    const told = times(information, fit.z);
    for (const [i, value] of times(towards, told).entries()) sum[i] = (sum[i] ?? 0) + value;
    // (1 + b·Λ)⁻¹·Λ = (1 - (1 + b·Λ)⁻¹)/b
    for (const [i, row] of precision.entries())
      for (const [j, value] of row.entries()) row[j] = value + ((i === j ? 1 : 0) - (towards[i]?.[j] ?? 0)) / between;
  }
  const covariance = inverseOf(precision);
  const middle = times(covariance, sum);
  const pooled = parameterNames.map((name, j): [string, Belief] => {
    const { mean, standardDeviation, isLog } = beliefs[name];
    const spread = Math.sqrt(between + (covariance[j]?.[j] ?? common));
    return [name, { mean: mean + standardDeviation * (middle[j] ?? 0), standardDeviation: standardDeviation * spread, isLog }];
  });
  return Object.fromEntries(pooled) as BatteryBeliefs;
}

/** L·Lᵀ of a fit's parameters, its start left out; a trace is added so that what a log fixes exactly can still be inverted. */
function covarianceOf({ factor }: FittedBattery, size: number): number[][] {
  const rows = factor.slice(0, size);
  return rows.map((one, i) =>
    rows.map((other, j) => one.reduce((sum, value, k) => sum + value * (other[k] ?? 0), 0) + (i === j ? 1e-6 : 0)),
  );
}

function identity(size: number, value: number): number[][] {
  return Array.from({ length: size }, (_, i) => Array.from({ length: size }, (_, j) => (i === j ? value : 0)));
}

function times(matrix: readonly (readonly number[])[], vector: readonly number[]): number[] {
  return matrix.map((row) => row.reduce((sum, value, j) => sum + value * (vector[j] ?? 0), 0));
}
