import { median } from "./order-statistics.ts";

/** Neighbouring values over which the noise is taken as one. */
const blockLength = 64;
/** No single jump costs more than this: enough to make a cut worth it, not so much as to swallow everything else in the sum. */
const dearest = 1e4;

/**
 * What it costs to let a channel do anything, as long as it is smooth: the sum of its squared second differences in units of their own
 * noise, about 1 for each place. A jump inside a range costs its square; one at a range's edge costs nothing.
 *
 * The noise is that of the neighbourhood (median absolute second difference over 64 places), but never below `sigma`: recorders are
 * noisier at some currents than at others.
 *
 * @param values  no NaN; @param sigma more than 0
 * @returns cost over [from, to), in constant time
 */
export function roughness(values: Float64Array, sigma: number): (from: number, to: number) => number {
  const n = values.length;
  const second = new Float64Array(n);
  for (let i = 1; i + 1 < n; i++) second[i] = (values[i - 1] as number) - 2 * (values[i] as number) + (values[i + 1] as number);
  const sums = new Float64Array(n + 1);
  for (let start = 0; start < n; start += blockLength) {
    const block = second.subarray(start, Math.min(n, start + blockLength));
    // As in noiseOf: the second difference of white noise has variance 6 σ².
    const scale = Math.max(Math.sqrt(6) * sigma, 1.4826 * median(block.map(Math.abs)));
    for (let i = 0; i < block.length; i++) {
      const share = (block[i] as number) / scale;
      sums[start + i + 1] = (sums[start + i] as number) + Math.min(dearest, share * share);
    }
  }
  return (from, to) => (to - from < 4 ? 0 : (sums[to - 1] as number) - (sums[from + 1] as number));
}
