/**
 * The highest mean of y over any stretch of x at least `width` long: a value that was held, not just touched.
 *
 * The mean is time-weighted (trapezoids divided by the stretch). A window never crosses a break between stretches.
 *
 * @param x        places, rising within each stretch
 * @param y        values at them, no NaN
 * @param stretches half-open ranges of samples without a break
 * @param width    in x's unit, more than 0
 * @returns the mean and the samples it was taken over; undefined where no stretch is that long
 */
export function highestSlidingMean(
  x: Float64Array,
  y: Float64Array,
  stretches: readonly (readonly [number, number])[],
  width: number,
): { mean: number; from: number; to: number } | undefined {
  let bestMean = Number.NEGATIVE_INFINITY;
  let bestFrom = -1;
  let bestTo = -1;
  for (const [from, to] of stretches) {
    let area = 0;
    let left = from;
    for (let right = from + 1; right < to; right++) {
      const xRight = x[right] as number;
      area += (((y[right] as number) + (y[right - 1] as number)) / 2) * (xRight - (x[right - 1] as number));
      while (left + 1 < right && xRight - (x[left + 1] as number) >= width) {
        left++;
        area -= (((y[left] as number) + (y[left - 1] as number)) / 2) * ((x[left] as number) - (x[left - 1] as number));
      }
      const span = xRight - (x[left] as number);
      if (span < width) continue;
      const mean = area / span;
      if (!(mean > bestMean || bestFrom < 0)) continue;
      bestMean = mean;
      bestFrom = left;
      bestTo = right;
    }
  }
  return bestFrom < 0 ? undefined : { mean: bestMean, from: bestFrom, to: bestTo };
}
