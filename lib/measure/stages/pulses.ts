import type { Trace } from "../trace.ts";

/** Common practice (and the proposal in docs/method.md): more than two changes between high and low in ten minutes are pulses. */
const windowS = 600;
const changesInWindow = 6;
/** A change goes from below a quarter to above three quarters of the pulse's height, or back, so that noise makes none. */
const lowShare = 0.25;
const highShare = 0.75;
/** Pulses smaller than this share of the highest current are ripple. */
const leastShare = 0.2;

/**
 * Ranges of samples in which the current goes up and down again and again.
 *
 * @param trace  with current
 * @param topA   the highest sustained current, A
 * @param noiseA noise of the current, A
 * @returns half-open ranges of samples, in order, not touching
 */
export function findPulses(trace: Trace, topA: number, noiseA: number): [number, number][] {
  const { elapsedS, currentsA } = trace;
  const least = Math.max(leastShare * topA, 10 * noiseA);
  const changes = swings(currentsA, least);
  const ranges: [number, number][] = [];
  for (let i = changesInWindow - 1; i < changes.length; i++) {
    const first = changes[i - changesInWindow + 1] as number;
    const last = changes[i] as number;
    if ((elapsedS[last] as number) - (elapsedS[first] as number) > windowS) continue;
    const previous = ranges.at(-1);
    if (previous !== undefined && first <= previous[1]) previous[1] = last + 1;
    else ranges.push([first, last + 1]);
  }
  return ranges;
}

/**
 * Samples at which the current has swung over from one extreme to the other by at least `least`: a zigzag filter.
 * A swing is placed where it passes the shares of its height.
 */
function swings(currentsA: Float64Array, least: number): number[] {
  const changes: number[] = [];
  let low = currentsA[0] ?? 0;
  let high = low;
  let isHigh: boolean | undefined;
  for (let i = 1; i < currentsA.length; i++) {
    const value = currentsA[i] as number;
    if (isHigh !== true && value - low >= least * highShare) {
      if (isHigh === false) changes.push(i);
      isHigh = true;
      high = value;
    } else if (isHigh !== false && high - value >= least * (1 - lowShare)) {
      if (isHigh === true) changes.push(i);
      isHigh = false;
      low = value;
    }
    if (value > high) high = value;
    if (value < low) low = value;
    if (isHigh === true) low = Math.min(value, high);
    if (isHigh === false) high = Math.max(value, low);
  }
  return changes;
}
