/** Student's t distribution, for coverage factors from few repeats. */
import { logGamma } from "./log-gamma.ts";

/**
 * Probability that a t value lies within -t to t.
 * @param t  not negative
 * @param nu  degrees of freedom, positive, not necessarily whole
 * @returns 0 to 1; NaN for impossible arguments
 * Source: the regularised incomplete beta function by its continued fraction (Lentz), in standard form (from memory; checked against
 * tabled quantiles).
 */
export function probabilityWithinT(t: number, nu: number): number {
  if (!(t >= 0 && nu > 0)) return Number.NaN;
  return 1 - regularisedBeta(nu / (nu + t * t), nu / 2, 0.5);
}

/**
 * The t within which a share of the distribution lies: 2.101 for 95 % and 18 degrees of freedom.
 * @param probability  0 < probability < 1
 * @param nu  degrees of freedom, positive; Infinity is taken as a million, which is normal to six digits
 * @returns t; NaN for impossible arguments
 */
export function studentT(probability: number, nu: number): number {
  if (!(probability > 0 && probability < 1 && nu > 0)) return Number.NaN;
  const freedom = Math.min(nu, 1e6);
  let low = 0;
  let high = 1;
  while (probabilityWithinT(high, freedom) < probability) high *= 2;
  for (let i = 0; i < 100 && high - low > 1e-13 * high; i++) {
    const middle = (low + high) / 2;
    if (probabilityWithinT(middle, freedom) < probability) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

function regularisedBeta(x: number, a: number, b: number): number {
  if (x <= 0) return 0;
  if (x >= 1) return 1;
  // The continued fraction converges fast only on this side; the other follows by symmetry.
  if (x > (a + 1) / (a + b + 2)) return 1 - regularisedBeta(1 - x, b, a);
  const front = Math.exp(a * Math.log(x) + b * Math.log1p(-x) + logGamma(a + b) - logGamma(a) - logGamma(b)) / a;
  return front * betaFraction(x, a, b);
}

function betaFraction(x: number, a: number, b: number): number {
  const tiny = 1e-300;
  const guarded = (value: number): number => (Math.abs(value) < tiny ? tiny : value);
  let c = 1;
  let d = 1 / guarded(1 - ((a + b) * x) / (a + 1));
  let fraction = d;
  for (let m = 1; m <= 10_000; m++) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    d = 1 / guarded(1 + even * d);
    c = guarded(1 + even / c);
    fraction *= d * c;
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    d = 1 / guarded(1 + odd * d);
    c = guarded(1 + odd / c);
    fraction *= d * c;
    if (Math.abs(d * c - 1) < 1e-15) break;
  }
  return fraction;
}
