/**
 * The most probable unknowns of one combination of causes, the bell about them, and the probability of the readings under it.
 *
 * All unknowns are standard normal before the readings, so with residuals r of the readings, in their uncertainties, the posterior is
 * exp(−½(|z|² + |r(z)|²)). Gauss and Newton's step with Marquardt's damping climbs to its top; the curvature there, H = 1 + JᵀJ, gives the
 * bell, and Laplace's formula the integral: log p(readings) = −½(|z|² + |r|²) − ½ log det H − Σ log(u·√(2π)).
 */
import { choleskyInPlace, logDeterminant, solveLower, solveUpper } from "./cholesky.ts";

/** Residuals of the readings, in their own uncertainties, for unknowns z; written into `into`. */
export type Residuals = (z: Float64Array, into: Float64Array) => void;

export type Bell = {
  readonly top: Float64Array;
  /** Triangular root of the curvature H at the top. */
  readonly root: Float64Array;
  /** The same of 1 + ½·JᵀJ: a bell that is wider where readings speak, as a posterior with bent ridges is. */
  readonly wideRoot: Float64Array;
  /** Minus the logarithm of the posterior at the top, without constants. */
  readonly misfit: number;
  /** Logarithm of Laplace's integral of the posterior, without the readings' own constants. */
  readonly logIntegral: number;
};

const mostSteps = 40;
/** A step that promises less than this of the misfit ends the climb: a thousandth of what would matter. */
const enough = 1e-4;
/** Step of the numerical slopes, in standard deviations of the prior. */
const slopeStep = 1e-4;

/**
 * Finds the top of the posterior.
 * @param size  unknowns
 * @param readings  residuals
 * @param start  where the climb begins; it is not changed
 * @returns the bell about the top; undefined where the model has no finite value at the start
 */
export function findBell(residuals: Residuals, size: number, readings: number, start: Float64Array): Bell | undefined {
  let z = start.slice();
  let r = new Float64Array(readings);
  residuals(z, r);
  let misfit = misfitOf(z, r);
  if (!Number.isFinite(misfit)) return undefined;

  let trialR = new Float64Array(readings);
  const shifted = new Float64Array(readings);
  const jacobian = new Float64Array(readings * size);
  const curvature = new Float64Array(size * size);
  const root = new Float64Array(size * size);
  const slope = new Float64Array(size);
  const step = new Float64Array(size);
  let damping = 1e-3;
  let isFresh = false;
  for (let steps = 0; steps < mostSteps; steps++) {
    if (!isFresh) {
      differentiate(residuals, z, r, shifted, jacobian);
      buildNormal(jacobian, z, r, curvature, slope);
      isFresh = true;
    }
    root.set(curvature);
    for (let i = 0; i < size; i++) root[i * size + i] = (root[i * size + i] ?? 0) * (1 + damping);
    if (!choleskyInPlace(root, size)) {
      damping = damping * 10 + 1e-3;
      continue;
    }
    step.set(slope);
    solveLower(root, size, step);
    solveUpper(root, size, step);
    let promise = 0;
    for (let i = 0; i < size; i++) promise += 0.5 * (step[i] ?? 0) * (slope[i] ?? 0);
    const trial = z.map((value, i) => value - (step[i] ?? 0));
    residuals(trial, trialR);
    const trialMisfit = misfitOf(trial, trialR);
    if (trialMisfit < misfit) {
      z = trial;
      [r, trialR] = [trialR, r];
      misfit = trialMisfit;
      isFresh = false;
      damping = Math.max(1e-9, damping / 8);
    } else damping = damping * 6 + 1e-6;
    if (promise < enough) break;
  }
  if (!isFresh) {
    differentiate(residuals, z, r, shifted, jacobian);
    buildNormal(jacobian, z, r, curvature, slope);
  }
  root.set(curvature);
  if (!choleskyInPlace(root, size)) return undefined;
  const wideRoot = curvature.map((entry, i) => (i % (size + 1) === 0 ? 0.5 + entry / 2 : entry / 2));
  if (!choleskyInPlace(wideRoot, size)) return undefined;
  return { top: z, root, wideRoot, misfit, logIntegral: -misfit - logDeterminant(root, size) / 2 };
}

/** Half the squares of unknowns and residuals. */
export function misfitOf(z: Float64Array, r: Float64Array): number {
  let sum = 0;
  for (const value of z) sum += value * value;
  for (const value of r) sum += value * value;
  return sum / 2;
}

/** Slopes of the residuals, column by column: jacobian[j·readings + i] = ∂r_i/∂z_j. */
function differentiate(residuals: Residuals, z: Float64Array, r: Float64Array, shifted: Float64Array, jacobian: Float64Array): void {
  const moved = z.slice();
  for (let j = 0; j < z.length; j++) {
    const at = z[j] ?? 0;
    moved[j] = at + slopeStep;
    residuals(moved, shifted);
    moved[j] = at;
    for (let i = 0; i < r.length; i++) jacobian[j * r.length + i] = ((shifted[i] ?? 0) - (r[i] ?? 0)) / slopeStep;
  }
}

/** H = 1 + JᵀJ, and the slope z + Jᵀr. */
function buildNormal(jacobian: Float64Array, z: Float64Array, r: Float64Array, curvature: Float64Array, slope: Float64Array): void {
  const size = z.length;
  const readings = r.length;
  for (let a = 0; a < size; a++) {
    let pull = z[a] ?? 0;
    for (let i = 0; i < readings; i++) pull += (jacobian[a * readings + i] ?? 0) * (r[i] ?? 0);
    slope[a] = pull;
    for (let b = 0; b <= a; b++) {
      let sum = a === b ? 1 : 0;
      for (let i = 0; i < readings; i++) sum += (jacobian[a * readings + i] ?? 0) * (jacobian[b * readings + i] ?? 0);
      curvature[a * size + b] = sum;
      curvature[b * size + a] = sum;
    }
  }
}
