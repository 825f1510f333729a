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
    // What the window's left edge would move on to, kept at hand: a day at one row a second asks for it a hundred thousand times.
    let xLeft = x[left] as number;
    let yLeft = y[left] as number;
    let xNext = x[left + 1] as number;
    let xBefore = xLeft;
    let yBefore = yLeft;
    for (let right = from + 1; right < to; right++) {
      const xRight = x[right] as number;
      const yRight = y[right] as number;
      area += ((yRight + yBefore) / 2) * (xRight - xBefore);
      xBefore = xRight;
      yBefore = yRight;
      while (left + 1 < right && xRight - xNext >= width) {
        left++;
        const yNext = y[left] as number;
        area -= ((yNext + yLeft) / 2) * (xNext - xLeft);
        xLeft = xNext;
        yLeft = yNext;
        xNext = x[left + 1] as number;
      }
      const span = xRight - xLeft;
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
