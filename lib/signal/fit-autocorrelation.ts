/** How much longer an uncertainty must be where neighbouring residuals resemble each other. */

/** However alike neighbours are, a fit that follows the data at all rests on a handful of independent points. */
const fewestIndependent = 6;

/**
 * Factor by which standard errors from independent scatter are to be multiplied.
 * @param residuals  n residuals in the order of sampling
 * @returns root of n over the number of independent points, n·(1 - r)/(1 + r) with r the correlation of neighbours; 1 for residuals that
 *   alternate, scatter freely, vanish, or are six or fewer; never more than the root of n/6
 * Source: lag-one (AR(1)) approximation of the effective sample size (common practice). Uneven sampling is not told from even.
 */
export function inflationByAutocorrelation(residuals: ArrayLike<number>): number {
  const n = residuals.length;
  let together = 0;
  let squares = 0;
  for (let i = 0; i < n; i++) {
    const residual = residuals[i] ?? 0;
    squares += residual * residual;
    if (i > 0) together += residual * (residuals[i - 1] ?? 0);
  }
  if (!(squares > 0) || n <= fewestIndependent) return 1;
  const neighbours = Math.max(0, together / squares);
  const independent = Math.max(fewestIndependent, (n * (1 - neighbours)) / (1 + neighbours));
  return Math.sqrt(n / independent);
}
