import { trapezoid } from "./trapezoid.ts";

/** Of windows that are alike within this share the first is taken: sums of the same values differ by their roundings. */
const alikeShare = 1e-12;

/** What is higher than a value lies above this. */
const justAbove = (value: number): number => value + alikeShare * Math.abs(value);

type Window = { readonly mean: number; readonly from: number; readonly to: number };

/**
 * The highest mean of y over any stretch of x at least `width` long: a value that was held, not just touched.
 *
 * The mean is time-weighted (trapezoids divided by the stretch). A window never crosses a break between stretches, and is as short as it may
 * be.
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
): Window | undefined {
  let best: Window | undefined;
  for (const [from, to] of stretches) {
    const step = evenStep(x, from, to);
    const held = step === undefined ? highestOfUneven(x, y, from, to, width) : highestOfEven(y, from, to, Math.ceil(width / step));
    if (held === undefined) continue;
    // Summed anew, since a sum that values were added to and taken from along a long log has gathered their roundings.
    const mean = trapezoid(x, y, held.from, held.to + 1) / ((x[held.to] as number) - (x[held.from] as number));
    if (best === undefined || mean > justAbove(best.mean)) best = { mean, ...held };
  }
  return best;
}

type Place = { readonly from: number; readonly to: number };

/** The even steps of series that have been asked for as a whole; undefined for those that have none. */
const known = new WeakMap<Float64Array, number | undefined>();

/** The step of places that stand evenly to the last bit, as those of a recorder that counts seconds do; undefined for any others. */
function evenStep(x: Float64Array, from: number, to: number): number | undefined {
  // A log is asked for one channel after another, and for stretch after stretch: most are even from end to end.
  if (!known.has(x)) known.set(x, stepBetween(x, 0, x.length));
  return known.get(x) ?? stepBetween(x, from, to);
}

function stepBetween(x: Float64Array, from: number, to: number): number | undefined {
  let before = x[from + 1] as number;
  const step = before - (x[from] as number);
  for (let i = from + 2; i < to; i++) {
    const place = x[i] as number;
    if (place - before !== step) return undefined;
    before = place;
  }
  return step > 0 ? step : undefined;
}

/** Where the window of so many even steps with the largest sum stands: all are of one width, so that no mean need be worked out. */
function highestOfEven(y: Float64Array, from: number, to: number, steps: number): Place | undefined {
  if (!(from + steps < to)) return undefined;
  let area = 0;
  for (let i = from + 1; i <= from + steps; i++) area += (y[i] as number) + (y[i - 1] as number);
  let toBeat = justAbove(area);
  let bestTo = from + steps;
  let yBefore = y[bestTo] as number;
  let yLeft = y[from] as number;
  for (let right = bestTo + 1; right < to; right++) {
    const yRight = y[right] as number;
    const yNext = y[right - steps] as number;
    area += yRight + yBefore - (yNext + yLeft);
    yBefore = yRight;
    yLeft = yNext;
    if (!(area > toBeat)) continue;
    toBeat = justAbove(area);
    bestTo = right;
  }
  return { from: bestTo - steps, to: bestTo };
}

function highestOfUneven(x: Float64Array, y: Float64Array, from: number, to: number, width: number): Place | undefined {
  let bestMean = Number.NEGATIVE_INFINITY;
  let bestFrom = -1;
  let bestTo = -1;
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
    if (!(bestFrom < 0 || mean > justAbove(bestMean))) continue;
    bestMean = mean;
    bestFrom = left;
    bestTo = right;
  }
  return bestFrom < 0 ? undefined : { from: bestFrom, to: bestTo };
}
