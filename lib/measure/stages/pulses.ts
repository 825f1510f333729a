import { quantile } from "../../signal/order-statistics.ts";
import type { Trace } from "../trace.ts";
import type { Series } from "./series.ts";

/** Common practice (and the proposal in docs/method.md): more than two changes between high and low in ten minutes are pulses. */
const windowS = 600;
const changesInWindow = 6;
/** A recorder that looks in step with the pulses loses sight of them; sightings no further apart than this are one train. */
const bridgedS = 1200;
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
    // A train that the recorder loses sight of for a moment is one train.
    const isSame = previous !== undefined && (elapsedS[first] as number) - (elapsedS[previous[1] - 1] as number) <= bridgedS;
    if (previous !== undefined && isSame) previous[1] = last + 1;
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

/**
 * Period, duty and height of a train of pulses, in words.
 *
 * The height is between the 10th and 90th percentile of the current, the duty the share of time above their middle, the period the
 * stretch over the number of rises through that middle.
 */
export function describePulses(series: Pick<Series, "timesS" | "currentsA" | "voltagesV">, from: number, to: number): string {
  const currents = series.currentsA.subarray(from, to);
  const voltages = series.voltagesV.subarray(from, to);
  const [lowA, highA] = [quantile(currents, 0.1), quantile(currents, 0.9)];
  const middleA = (lowA + highA) / 2;
  let rises = 0;
  let above = 0;
  for (let i = 0; i < currents.length; i++) {
    const isAbove = (currents[i] as number) > middleA;
    if (isAbove) above++;
    if (isAbove && i > 0 && (currents[i - 1] as number) <= middleA) rises++;
  }
  const seconds = (series.timesS[to - 1] as number) - (series.timesS[from] as number);
  const period = rises === 0 ? "" : `about every ${(seconds / rises).toFixed(0)} s, `;
  const duty = Math.round((100 * above) / Math.max(1, currents.length));
  return `${period}from ${lowA.toFixed(2)} to ${highA.toFixed(2)} A, high ${duty} % of the time, voltage ${quantile(voltages, 0.1).toFixed(2)} to ${quantile(voltages, 0.9).toFixed(2)} V`;
}
