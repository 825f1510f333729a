/** The chi-square distribution, for the interval of a standard deviation from few repeats. */
import { logGamma } from "./log-gamma.ts";

/**
 * Probability that a chi-square value is at most x.
 * @param x   not negative
 * @param nu  degrees of freedom, positive
 * @returns 0 to 1; NaN for impossible arguments
 * Source: the regularised lower incomplete gamma function by its series, in standard form (from memory; checked against tabled quantiles).
 */
export function chiSquareCdf(x: number, nu: number): number {
  if (!(x >= 0 && nu > 0)) return Number.NaN;
  if (x === 0) return 0;
  const a = nu / 2;
  const z = x / 2;
  let term = 1 / a;
  let sum = term;
  for (let n = 1; n < 100_000; n++) {
    term *= z / (a + n);
    sum += term;
    if (term < sum * 1e-16) break;
  }
  return Math.min(1, sum * Math.exp(a * Math.log(z) - z - logGamma(a)));
}

/**
 * The chi-square value below which a share of the distribution lies: 20.483 for 97.5 % and 10 degrees of freedom.
 * @param probability  0 < probability < 1
 * @param nu  degrees of freedom, positive
 * @returns the quantile; NaN for impossible arguments
 */
export function chiSquareQuantile(probability: number, nu: number): number {
  if (!(probability > 0 && probability < 1 && nu > 0)) return Number.NaN;
  let low = 0;
  let high = 1;
  while (chiSquareCdf(high, nu) < probability) high *= 2;
  for (let i = 0; i < 200 && high - low > 1e-13 * high; i++) {
    const middle = (low + high) / 2;
    if (chiSquareCdf(middle, nu) < probability) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
