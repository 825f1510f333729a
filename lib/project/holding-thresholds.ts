/** The two voltages between which an on-off charger holds, read from a log. */
import { placeOfHighest } from "../signal/highest.ts";
import { median } from "../signal/order-statistics.ts";

/** Voltages of the whole battery, and how many pauses were seen. */
export type HoldingThresholds = { readonly wakeV: number; readonly stopV: number; readonly rounds: number };

/** Current below this share of the highest counts as none, above that one as charging again: a float's tail is neither. */
const noCurrentShare = 0.01;
const chargingShare = 0.3;

/**
 * Finds pauses in which no current flows until it suddenly does again.
 * @param voltagesV  n voltages at the posts, V
 * @param currentsA  n currents, A; samples with NaN in either column are passed over
 * @returns the median of the lowest voltage of each pause that ended, and the highest voltage of any spell of current; undefined
 *   where no pause ended. A recorder that looks once a minute misses the very top of a short spell: `stopV` is the best of all spells.
 */
export function findHoldingThresholds(voltagesV: ArrayLike<number>, currentsA: ArrayLike<number>): HoldingThresholds | undefined {
  const highestA = Math.max(0, currentsA[placeOfHighest(currentsA)] ?? 0);
  const wakes: number[] = [];
  const tops: number[] = [];
  let lowestV = Number.POSITIVE_INFINITY;
  let topV = Number.NEGATIVE_INFINITY;
  let isPaused = false;
  for (let i = 0; i < currentsA.length; i++) {
    const [voltageV, currentA] = [voltagesV[i] ?? Number.NaN, currentsA[i] ?? Number.NaN];
    if (Number.isNaN(voltageV) || Number.isNaN(currentA)) continue;
    const isNothing = currentA < noCurrentShare * highestA;
    const isCharging = currentA > chargingShare * highestA;
    if (isNothing && !isPaused) {
      tops.push(topV);
      lowestV = Number.POSITIVE_INFINITY;
    }
    if (isCharging && isPaused) {
      wakes.push(lowestV);
      topV = Number.NEGATIVE_INFINITY;
    }
    if (isNothing) lowestV = Math.min(lowestV, voltageV);
    else topV = Math.max(topV, voltageV);
    // Between the two nothing is decided: a pause goes on until the full current is back.
    isPaused = isNothing || (isPaused && !isCharging);
  }
  const ended = tops.filter(Number.isFinite);
  return wakes.length === 0 || ended.length === 0 ? undefined : { wakeV: median(wakes), stopV: Math.max(...ended), rounds: wakes.length };
}

/**
 * How many samples come before the first pause from which the charger woke again; all of them where it never did.
 * A battery is best learnt from these: where current goes on and off faster than a fit can follow, means of it tell nothing.
 */
export function samplesBeforeFirstRestart(currentsA: Float64Array): number {
  const highestA = Math.max(0, currentsA[placeOfHighest(currentsA)] ?? 0);
  let pausedFrom: number | undefined;
  for (let i = 0; i < currentsA.length; i++) {
    const currentA = currentsA[i] as number;
    if (currentA < noCurrentShare * highestA) pausedFrom ??= i;
    else if (currentA > chargingShare * highestA) {
      if (pausedFrom !== undefined && pausedFrom > 0) return pausedFrom;
      pausedFrom = undefined;
    }
  }
  return currentsA.length;
}
