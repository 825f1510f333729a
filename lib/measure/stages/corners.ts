/** Where a voltage limit was reached: the corner between a held current and a held voltage. */
import { lineSums } from "../../signal/line-sums.ts";
import { median } from "../../signal/order-statistics.ts";
import type { Segment } from "./segments.ts";
import type { Series } from "./series.ts";

/** A voltage limit counts as reached within this share of it, once the current has fallen by that share. */
const reachShareV = 0.007;
const fallenShareA = 0.005;
/** At most so many values on either side are averaged to find the fall. */
const mostAveraged = 12;
/** A corner is rounded where the current has fallen by this share before the voltage comes within reach. */
const roundedShareA = 0.05;

/**
 * Moves each start of a held voltage to where the voltage came within reach of its level and the current began to fall below its trend.
 *
 * With a sharp corner that is the corner: the voltage is near its level some time before, but the current is still held. With a rounded
 * one the current falls first, and the limit counts as reached when the voltage is within 0.7 % of it (0.10 V of 14.4 V).
 */
export function placeVoltageStarts(segments: readonly Segment[], series: Series): Segment[] {
  const placed = [...segments];
  for (let i = 1; i < placed.length; i++) {
    const before = placed[i - 1] as Segment;
    const held = placed[i] as Segment;
    if ((held.regime !== "U" && held.regime !== "steady") || before.regime !== "I") continue;
    const near = firstNear(series, before.from + 2, held.from, held.ends.meanV * (1 - reachShareV));
    const start = firstFallen(series, before.from, near, held.to);
    if (start === undefined || start <= before.from + 2 || start >= held.to - 2) continue;
    placed[i - 1] = { ...before, to: start };
    placed[i] = { ...held, from: start };
  }
  return placed;
}

/** The first sample from which the voltage is at least `levelV`, by medians of five; `to` where there is none. */
function firstNear(series: Series, from: number, to: number, levelV: number): number {
  for (let at = from; at < to; at++) if (medianOfFive(series.voltagesV, at) >= levelV) return at;
  return to;
}

/**
 * The first sample at or after `near` at which the current lies below the straight line through the samples before `near`, and stays
 * there; `near` itself where it had fallen already.
 */
function firstFallen(series: Series, from: number, near: number, to: number): number | undefined {
  if (hadFallen(series, from, near)) return near;
  const trendFrom = Math.max(from, near - Math.max(10, Math.floor((near - from) / 3)));
  if (near - trendFrom < 4) return undefined;
  const times = series.timesS.subarray(trendFrom, near);
  const currents = series.currentsA.subarray(trendFrom, near);
  const trend = lineSums(times, currents, 1);
  const scatterA = Math.sqrt(trend.residual(0, near - trendFrom) / Math.max(1, near - trendFrom - 2));
  const levelA = trend.mean(0, near - trendFrom);
  // Over so many values the mean is known to a third of the fall that counts.
  const allowedA = fallenShareA * Math.abs(levelA);
  const reach = Math.min(mostAveraged, Math.ceil(((3 * scatterA) / allowedA) ** 2 / 2));
  const isBelow = (at: number): boolean =>
    meanOver(series.currentsA, at, reach) < trend.lineAt(0, near - trendFrom, series.timesS[at] as number) - allowedA;
  for (let at = near; at < to - 5; at++) {
    // Five in a row below the line; the first of them saw the fall with its middle value.
    if (isBelow(at) && isBelow(at + 1) && isBelow(at + 4)) return at;
  }
  return undefined;
}

/** Whether the current at `near` is well below where the middle of its stretch was heading. */
function hadFallen(series: Series, from: number, near: number): boolean {
  const start = from + Math.floor((near - from) / 5);
  const end = from + Math.floor((2 * (near - from)) / 3);
  if (end - start < 5) return false;
  const trend = lineSums(series.timesS.subarray(start, end), series.currentsA.subarray(start, end), 1);
  return medianOfFive(series.currentsA, near) < (1 - roundedShareA) * trend.lineAt(0, end - start, series.timesS[near] as number);
}

/** Mean over the values within `reach` of a place, the highest and lowest left out where there are enough: teeth do not count. */
function meanOver(values: Float64Array, at: number, reach: number): number {
  const window = Float64Array.from(values.subarray(Math.max(0, at - Math.max(2, reach)), at + Math.max(2, reach) + 1)).sort();
  const cut = Math.floor(window.length / 5);
  const kept = window.subarray(cut, window.length - cut);
  return kept.reduce((sum, value) => sum + value, 0) / kept.length;
}

function medianOfFive(values: Float64Array, at: number): number {
  return median(values.subarray(Math.max(0, at - 2), at + 3));
}
