import { median, quantileOfSorted } from "./order-statistics.ts";

/** At most this many differences are looked at: enough for a spread known to a per cent, and no cost on a long log. */
const differencesLookedAt = 20_000;

/**
 * Standard deviation of the noise on a smooth series, from its second differences, which a slope does not move.
 *
 * σ = 1.4826 · median|x₍ᵢ₋₁₎ − 2xᵢ + x₍ᵢ₊₁₎| / √6, since the second difference of white noise has variance 6σ². The median keeps
 * steps and pulses out. Source: difference-based variance estimators, e.g. Gasser, Sroka and Jennen-Steinmetz, Biometrika 73
 * (1986) 625 (from memory).
 *
 * @param values  in order; NaN must not occur
 * @returns 0 for fewer than three values and for values without noise
 */
export function noiseOf(values: Float64Array): number {
  const stride = Math.max(1, Math.floor((values.length - 2) / differencesLookedAt));
  const differences: number[] = [];
  for (let i = 1; i + 1 < values.length; i += stride)
    differences.push(Math.abs((values[i - 1] as number) - 2 * (values[i] as number) + (values[i + 1] as number)));
  return differences.length === 0 ? 0 : (1.4826 * median(differences)) / Math.sqrt(6);
}

/**
 * Standard deviation of the noise where half of the series or more may be jumps, as in a train of pulses: `noiseOf`, or what the
 * smaller quarter of the first differences says, where that is less.
 *
 * σ = q₁ ⁄ (0.3186 · √2), since the quartile of |d| of a normal variable of variance 2σ² lies there (Φ⁻¹(5/8) = 0.3186). A slope widens
 * first differences, so they only ever lower the estimate. They cannot tell noise below the step that values are written in.
 *
 * @param values  in order; NaN must not occur
 * @param step    the step that they are written in; 0 for none
 */
export function noiseBetweenJumps(values: Float64Array, step: number): number {
  const noise = noiseOf(values);
  if (noise <= step) return noise;
  const stride = Math.max(1, Math.floor(values.length / differencesLookedAt));
  const differences: number[] = [];
  for (let i = 1; i < values.length; i += stride) differences.push(Math.abs((values[i] as number) - (values[i - 1] as number)));
  return Math.min(noise, Math.max(step, quantileOfSorted(Float64Array.from(differences).sort(), 0.25) / (0.3186 * Math.SQRT2)));
}

/**
 * The smallest step that a series is written in: the smallest distance between different values, a few freaks let off.
 *
 * @returns 0 where all values are equal or there are fewer than two
 */
export function stepOf(values: Float64Array): number {
  const stride = Math.max(1, Math.floor(values.length / differencesLookedAt));
  const looked: number[] = [];
  for (let i = 0; i < values.length; i += stride) looked.push(values[i] as number);
  const sorted = Float64Array.from(looked).sort();
  const distances: number[] = [];
  for (let i = 1; i < sorted.length; i++) {
    const distance = (sorted[i] as number) - (sorted[i - 1] as number);
    // Text to double and back leaves crumbs of about 1e-12 between values that were written alike.
    if (distance > 1e-9 * Math.max(1, Math.abs(sorted[i] as number))) distances.push(distance);
  }
  return distances.length === 0 ? 0 : quantileOfSorted(Float64Array.from(distances).sort(), 0.02);
}
