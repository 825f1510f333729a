import { selectKth } from "./select.ts";

/**
 * The p-quantile of values, by linear interpolation between order statistics (type 7 of Hyndman and Fan, The American
 * Statistician 50 (1996) 361, from memory; what most software calls the default).
 *
 * @param values  any order; NaN must not occur
 * @param p       0 to 1
 * @returns NaN for no values
 */
export function quantile(values: Float64Array | readonly number[], p: number): number {
  return quantileByMoving(values instanceof Float64Array ? values.slice() : Float64Array.from(values), p);
}

/** As quantile, for values that may be moved about. */
export function quantileByMoving(values: Float64Array, p: number): number {
  return quantilesByMoving(values, [p])[0] as number;
}

/**
 * Several quantiles of the same values, which are moved about: each further one only looks at what the one before left above it.
 * @param shares  each from 0 to 1, rising
 */
export function quantilesByMoving(values: Float64Array, shares: readonly number[]): number[] {
  const count = values.length;
  if (count === 0) return shares.map(() => Number.NaN);
  let from = 0;
  return shares.map((share) => {
    const place = share * (count - 1);
    const below = Math.floor(place);
    const low = selectKth(values, below, from);
    from = below;
    if (place === below) return low;
    // What stands behind the k-th value is no smaller; the next one is the smallest of it.
    let high = values[below + 1] as number;
    for (let i = below + 2; i < count; i++) if ((values[i] as number) < high) high = values[i] as number;
    return low + (high - low) * (place - below);
  });
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
