/** From the posterior's draws to a middle and its intervals. */
import type { Estimate } from "./examination.ts";
import type { Posterior } from "./posterior.ts";
import type { Story } from "./story.ts";

/**
 * Median and central intervals of a quantity over the whole posterior.
 * @param quantity  what to read off a story; draws that give NaN are left out
 * @returns undefined where no draw gives a number
 */
export function estimate(posterior: Posterior, quantity: (story: Story) => number): Estimate | undefined {
  const sorted = sortedValues(posterior, quantity);
  if (sorted.length === 0) return undefined;
  return {
    value: quantile(sorted, 0.5),
    low90: quantile(sorted, 0.05),
    high90: quantile(sorted, 0.95),
    low95: quantile(sorted, 0.025),
    high95: quantile(sorted, 0.975),
  };
}

/**
 * An estimate of something that may be nothing: ends and middle that lie under what counts as nought become 0.
 * @param nought  in the estimate's unit
 */
export function fromNought(estimate: Estimate, nought: number): Estimate {
  const ground = (x: number): number => (x < nought ? 0 : x);
  return {
    value: ground(estimate.value),
    low90: ground(estimate.low90),
    high90: estimate.high90,
    low95: ground(estimate.low95),
    high95: estimate.high95,
  };
}

/**
 * An estimate of a share of the capacity: nothing under 0, and whatever comes within what counts as nought of 1 is 1.
 * @param nought  a share
 */
export function withinShare(estimate: Estimate, nought: number): Estimate {
  const hold = (x: number): number => (x > 1 - nought ? 1 : Math.max(0, x));
  return {
    value: hold(estimate.value),
    low90: Math.max(0, estimate.low90),
    high90: hold(estimate.high90),
    low95: Math.max(0, estimate.low95),
    high95: hold(estimate.high95),
  };
}

/**
 * Probability that a quantity lies below a value, over the whole posterior: what calibration compares with chance.
 * @returns 0 to 1; draws that give NaN are left out; NaN where all do
 */
export function probabilityBelow(posterior: Posterior, quantity: (story: Story) => number, value: number): number {
  const sorted = sortedValues(posterior, quantity);
  return sorted.reduce((count, drawn) => count + (drawn < value ? 1 : 0), 0) / sorted.length;
}

function sortedValues(posterior: Posterior, quantity: (story: Story) => number): Float64Array {
  const values = new Float64Array(posterior.drawCount);
  let length = 0;
  for (const { draws } of posterior.combinations)
    for (const story of draws) {
      const value = quantity(story);
      if (!Number.isNaN(value)) values[length++] = value;
    }
  return values.subarray(0, length).sort();
}

/** The value below which this share of the draws lies, straight between neighbours (the middle convention: draw i stands for (i + ½)/n). */
function quantile(sorted: Float64Array, share: number): number {
  const place = Math.min(sorted.length - 1, Math.max(0, share * sorted.length - 0.5));
  const below = Math.floor(place);
  const low = sorted[below] ?? Number.NaN;
  return low + (place - below) * ((sorted[below + 1] ?? low) - low);
}
