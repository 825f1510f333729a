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
  let best: { mean: number; from: number; to: number } | undefined;
  for (const [from, to] of stretches) {
    let area = 0;
    let left = from;
    for (let right = from + 1; right < to; right++) {
      area += trapezoidOf(x, y, right);
      while (left + 1 < right && at(x, right) - at(x, left + 1) >= width) {
        left++;
        area -= trapezoidOf(x, y, left);
      }
      const span = at(x, right) - at(x, left);
      if (span < width) continue;
      const mean = area / span;
      if (best === undefined || mean > best.mean) best = { mean, from: left, to: right };
    }
  }
  return best;
}

function trapezoidOf(x: Float64Array, y: Float64Array, right: number): number {
  return ((at(y, right) + at(y, right - 1)) / 2) * (at(x, right) - at(x, right - 1));
}

function at(values: Float64Array, index: number): number {
  return values[index] as number;
}
