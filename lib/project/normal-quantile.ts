/** The inverse of the normal distribution, to turn an even draw into a normal one. */
import { normalCdf, normalDensity } from "../units/normal-distribution.ts";

/**
 * The z below which a share of the standard normal distribution lies: 1.960 for 0.975.
 * @param probability  between 0 and 1
 * @returns z, to about 1e-13 between 1e-10 and 1 - 1e-10; the infinities for 0 and 1, NaN outside and for NaN
 * Source: a logistic start, then Newton's steps on the distribution function, which rises everywhere.
 */
export function normalQuantile(probability: number): number {
  if (!(probability >= 0 && probability <= 1)) return Number.NaN;
  if (probability === 0) return Number.NEGATIVE_INFINITY;
  if (probability === 1) return Number.POSITIVE_INFINITY;
  // The lower half only: a tail keeps its digits where its complement has lost them.
  if (probability > 0.5) return -normalQuantile(1 - probability);
  let z = Math.max(-7, 0.551_33 * Math.log(probability / (1 - probability)));
  for (let round = 0; round < 60; round++) {
    const excess = normalCdf(z) - probability;
    const step = excess / normalDensity(z);
    // Halley's term keeps the step from leaping in the tail.
    const move = step / (1 + (z * step) / 2);
    z -= Math.max(-1, Math.min(1, move));
    if (Math.abs(move) < 1e-13 * Math.max(1, Math.abs(z))) break;
  }
  return z;
}
