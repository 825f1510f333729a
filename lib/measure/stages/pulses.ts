import { quantile } from "../../signal/order-statistics.ts";
import type { Trace } from "../trace.ts";
import type { Series } from "./series.ts";

/** Common practice (and the proposal in docs/method.md): more than two changes between high and low in ten minutes are pulses. */
const shortestWindowS = 600;
const changesInWindow = 6;
/** A recorder that looks about as seldom as the current changes sees some of the changes only; the window holds this many rows then. */
const rowsInWindow = 25;
/** What takes longer is a charger switching itself on and off, and each time is a stage. Our definition: an hour. */
export const longestWindowS = 3600;
/** A charger that pauses for longer is not pulsing: so many changes do not fit into the window. */
export const shortestPauseS = (2 * shortestWindowS) / changesInWindow;
/** A recorder that looks in step with the pulses loses sight of them; sightings no further apart than so many windows are one train. */
const bridgedWindows = 2;
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
 * @param known  ranges of samples whose changes are already known to be something else
 * @returns half-open ranges of samples, in order, not touching
 */
export function findPulses(
  trace: Trace,
  topA: number,
  noiseA: number,
  known: readonly { readonly from: number; readonly to: number }[] = [],
): [number, number][] {
  const { elapsedS, currentsA } = trace;
  const windowS = Math.min(longestWindowS, Math.max(shortestWindowS, rowsInWindow * trace.intervalS));
  const leastA = Math.max(leastShare * topA, 10 * noiseA);
  // A charger that gives nothing does not go up and down, however long it is watched.
  if (leastA === 0) return [];
  const changes = swings(currentsA, leastA).filter((sample) => !known.some(({ from, to }) => sample >= from && sample <= to));
  const ranges: [number, number][] = [];
  for (let i = changesInWindow - 1; i < changes.length; i++) {
    const first = changes[i - changesInWindow + 1] as number;
    const last = changes[i] as number;
    if ((elapsedS[last] as number) - (elapsedS[first] as number) > windowS) continue;
    const previous = ranges.at(-1);
    // A train that the recorder loses sight of for a moment is one train.
    const isSame =
      previous !== undefined && (elapsedS[first] as number) - (elapsedS[previous[1] - 1] as number) <= bridgedWindows * windowS;
    if (previous !== undefined && isSame) previous[1] = last + 1;
    else ranges.push([first, last + 1]);
  }
  const last = ranges.at(-1);
  if (last !== undefined && endsInPulse(last, changes, elapsedS)) last[1] = elapsedS.length;
  return ranges;
}

/** Whether the log ends sooner after a train's last change than the train's changes follow each other: it ended in the midst of it. */
function endsInPulse([from, to]: readonly [number, number], changes: readonly number[], elapsedS: Float64Array): boolean {
  const own = changes.filter((sample) => sample >= from && sample < to).map((sample) => elapsedS[sample] as number);
  const longestS = own.reduce((longest, atS, index) => Math.max(longest, atS - (own[index - 1] ?? atS)), 0);
  return (elapsedS.at(-1) as number) - (elapsedS[to - 1] as number) <= longestS;
}

/**
 * Samples at which the current has swung over from one extreme to the other by at least `least`: a zigzag filter.
 * A swing is placed where it passes the shares of its height.
 */
function swings(currentsA: Float64Array, least: number): number[] {
  const changes: number[] = [];
  const rise = least * highShare;
  const fall = least * (1 - lowShare);
  let low = currentsA[0] ?? 0;
  let high = low;
  // Before the first swing it may go either way.
  let mayRise = true;
  let mayFall = true;
  for (let i = 1; i < currentsA.length; i++) {
    const value = currentsA[i] as number;
    if (mayRise && value - low >= rise) {
      changes.push(i);
      high = value;
      [mayRise, mayFall] = [false, true];
    } else if (mayFall && high - value >= fall) {
      changes.push(i);
      low = value;
      [mayRise, mayFall] = [true, false];
    } else if (value > high) high = value;
    else if (value < low) low = value;
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
