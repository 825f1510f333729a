/** Where a voltage limit was reached: the corner between a held current and a held voltage. */
import { lineSums } from "../../signal/line-sums.ts";
import { runningMedian } from "../../signal/running-median.ts";
import type { Segment } from "./segments.ts";
import type { Series } from "./series.ts";

/** A voltage limit counts as reached within this share of it, once the current has begun to fall. */
const reachShareV = 0.007;
/** The fall is drawn down to this logarithm (13 %), through no more than so many values: deeper down a taper bends as no parabola does. */
const deepEnough = 0.14;
const mostFollowed = 20_000;
/** The hinge is looked for through so many means of the values, with at least so many behind it. */
const mostHingePoints = 300;
const fewestBehind = 4;
/** A voltage lower than the one before by more than this share has fallen back. */
const fallenBackShareV = 0.002;
/** A corner is rounded where the current has fallen by this share before the voltage comes within reach. */
const roundedShareA = 0.05;

/**
 * Moves each start of a held voltage to where the voltage came within reach of its level and the current began to fall below its trend.
 *
 * With a sharp corner that is the corner: the voltage is near its level some time before, but the current is still held. With a rounded
 * one the current falls first, and the limit counts as reached when the voltage is within 0.7 % of it (0.10 V of 14.4 V).
 */
export function placeVoltageStarts(segments: readonly Segment[], raw: Series): Segment[] {
  // A tooth would pull a line through current and voltage out of its place.
  const series: Series = { ...raw, voltagesV: runningMedian(raw.voltagesV), currentsA: runningMedian(raw.currentsA) };
  const placed = [...segments];
  for (let i = 1; i < placed.length; i++) {
    const before = placed[i - 1] as Segment;
    const held = placed[i] as Segment;
    if ((held.regime !== "U" && held.regime !== "steady") || before.regime !== "I") continue;
    // Where the voltage falls back the current was lowered; that is no limit reached.
    if (held.ends.meanV < before.ends.endV * (1 - fallenBackShareV)) continue;
    const near = firstNear(series, before.from + 2, held.from, held.ends.meanV * (1 - reachShareV));
    const start = cornerAfter(series, before.from, near, held.to);
    if (start === undefined || start <= before.from + 2 || start >= held.to - 2) continue;
    placed[i - 1] = { ...before, to: start };
    placed[i] = { ...held, from: start };
  }
  return placed;
}

/** The first place from which the voltage is at least `levelV`; `to` where there is none. */
function firstNear(series: Series, from: number, to: number, levelV: number): number {
  for (let at = from; at < to; at++) if ((series.voltagesV[at] as number) >= levelV) return at;
  return to;
}

/**
 * Where the current leaves what it was held at: `near` itself where it had fallen already (a rounded corner), else the best hinge.
 *
 * What it was held at is told by the voltage and not by time, since a current that sags does so as the battery's voltage climbs. Its
 * logarithm over that is nought up to the corner and falls behind it, first fast and then slower, as tapers do: the corner is where a
 * bent line that starts from nought there leaves the least (hinge, or broken-stick, regression with one known arm).
 *
 * @returns undefined where there is too little before the limit, or no fall behind it
 */
function cornerAfter(series: Series, from: number, near: number, to: number): number | undefined {
  const start = from + Math.floor((near - from) / 5);
  if (near - start < 5) return undefined;
  if (hadFallen(series, start, near)) return near;
  const count = near - start;
  const held = lineSums(series.voltagesV.subarray(start, near), series.currentsA.subarray(start, near), 1);
  const fallAt = (at: number): number =>
    Math.log(Math.max(1e-6, series.currentsA[at] as number) / Math.max(1e-6, held.lineAt(0, count, series.voltagesV[at] as number)));
  const falls: number[] = [];
  let end = near;
  let deep = 0;
  // The fall is followed until it is deep enough to be drawn, five values in a row so that teeth do not end it.
  while (end < to && end - near < mostFollowed && deep < 5) {
    const fall = fallAt(end);
    falls.push(fall);
    deep = fall < -deepEnough ? deep + 1 : 0;
    end++;
  }
  return deep < 5 ? undefined : near + bestHinge(series.timesS.subarray(near, end), falls);
}

/** The place from which a bent line down from nought, y = aτ + bτ², leaves least of `falls` unexplained; nought holds before it. */
function bestHinge(times: Float64Array, falls: readonly number[]): number {
  const stride = Math.ceil(falls.length / mostHingePoints);
  const points = Math.floor(falls.length / stride);
  const spanS = (times.at(-1) as number) - (times[0] as number) || 1;
  const t = Float64Array.from({ length: points }, (_, i) => ((times[i * stride] as number) - (times[0] as number)) / spanS);
  const y = Float64Array.from({ length: points }, (_, i) => meanOf(falls, i * stride, (i + 1) * stride));
  let best = 0;
  let most = 0;
  for (let k = 0; k + fewestBehind < points; k++) {
    const explained = explainedBehind(t, y, k);
    if (explained > most) {
      most = explained;
      best = k;
    }
  }
  return best * stride;
}

/** Squares that the least-squares y = aτ + bτ² behind a place explains; nothing where it would not fall, τ counted from the place. */
function explainedBehind(t: Float64Array, y: Float64Array, k: number): number {
  let [s2, s3, s4, y1, y2] = [0, 0, 0, 0, 0];
  for (let i = k + 1; i < t.length; i++) {
    const tau = (t[i] as number) - (t[k] as number);
    const square = tau * tau;
    s2 += square;
    s3 += square * tau;
    s4 += square * square;
    y1 += (y[i] as number) * tau;
    y2 += (y[i] as number) * square;
  }
  const determinant = s2 * s4 - s3 * s3;
  const a = (y1 * s4 - y2 * s3) / determinant;
  const b = (y2 * s2 - y1 * s3) / determinant;
  // An arm that falls slower and slower; one that would start level and fall faster would reach back before the corner.
  if (determinant > 1e-12 * s2 * s4 && a < 0 && b > 0) return a * y1 + b * y2;
  return y1 < 0 && s2 > 0 ? (y1 * y1) / s2 : 0;
}

function meanOf(values: readonly number[], from: number, to: number): number {
  let sum = 0;
  for (let i = from; i < to; i++) sum += values[i] as number;
  return sum / (to - from);
}

/** Whether the current at `near` is well below where the middle of its stretch was heading, as the voltage climbed. */
function hadFallen(series: Series, start: number, near: number): boolean {
  const end = start + Math.floor((7 * (near - start)) / 12);
  if (end - start < 5) return false;
  const trend = lineSums(series.voltagesV.subarray(start, end), series.currentsA.subarray(start, end), 1);
  const expectedA = trend.lineAt(0, end - start, series.voltagesV[near] as number);
  const scatterA = Math.sqrt(trend.residual(0, end - start) / Math.max(1, end - start - 2));
  // Where the current is noisy, more values are averaged, so that noise alone makes no corner round.
  const reach = Math.min(12, Math.max(2, Math.ceil(((4 * scatterA) / (roundedShareA * expectedA)) ** 2 / 2)));
  return meanOver(series.currentsA, near, reach) < (1 - roundedShareA) * expectedA - (2 * scatterA) / Math.sqrt(2 * reach + 1);
}

/** Mean over the values within `reach` of a place, the highest and lowest fifth left out: teeth do not count. */
function meanOver(values: Float64Array, at: number, reach: number): number {
  const window = Float64Array.from(values.subarray(Math.max(0, at - reach), at + reach + 1)).sort();
  const cut = Math.floor(window.length / 5);
  const kept = window.subarray(cut, window.length - cut);
  return kept.reduce((sum, value) => sum + value, 0) / kept.length;
}
