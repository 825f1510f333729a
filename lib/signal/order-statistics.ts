/**
 * The p-quantile of values, by linear interpolation between order statistics (type 7 of Hyndman and Fan, The American
 * Statistician 50 (1996) 361, from memory; what most software calls the default).
 *
 * @param values  any order; NaN must not occur
 * @param p       0 to 1
 * @returns NaN for no values
 */
export function quantile(values: Float64Array | readonly number[], p: number): number {
  const sorted = Float64Array.from(values).sort();
  return quantileOfSorted(sorted, p);
}

/** As quantile, for values already in rising order. */
export function quantileOfSorted(sorted: Float64Array, p: number): number {
  if (sorted.length === 0) return Number.NaN;
  const place = p * (sorted.length - 1);
  const below = Math.floor(place);
  const low = sorted[below] ?? Number.NaN;
  const high = sorted[Math.min(below + 1, sorted.length - 1)] ?? Number.NaN;
  return low + (high - low) * (place - below);
}

/** The median; NaN for no values. */
export function median(values: Float64Array | readonly number[]): number {
  return quantile(values, 0.5);
}

/**
 * Standard deviation estimated from the median absolute deviation, which a tenth of wild values hardly moves.
 *
 * 1.4826 makes it the standard deviation of a normal distribution (1/Φ⁻¹(3/4)).
 */
export function robustSpread(values: Float64Array | readonly number[]): number {
  const centre = median(values);
  return 1.4826 * median(Array.from(values, (value) => Math.abs(value - centre)));
}
