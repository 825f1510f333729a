import { Temporal } from "temporal-polyfill";
import { type SteadySpan, zoneClock } from "./clock.ts";

export type WallClockReading = {
  /** Milliseconds since 1970 UTC, one for each wall-clock time. */
  readonly instantsMs: Float64Array;
  /** "follows": the recorder's clock changes with summer time; "fixed": it keeps the offset of its first row; "either": no change of clocks inside. */
  readonly summerTime: "follows" | "fixed" | "either";
};

/**
 * Turns a log's wall-clock times into instants.
 *
 * Where the zone changes its clocks inside the log, the recorder may or may not have followed. Both readings are made, and the
 * one with fewer steps back and the shorter longest pause is taken; where they tie, the recorder is taken to follow.
 *
 * @param wallMs  wall-clock times as if they were UTC, in file order; NaN never occurs. They are overwritten where no clock changes
 */
export function readWallClock(wallMs: Float64Array, zone: string): WallClockReading {
  const offsetMs = steadyOffsetMs(wallMs, zone);
  if (offsetMs !== undefined) return { instantsMs: shifted(wallMs, offsetMs), summerTime: "either" };
  const clock = zoneClock(zone);
  const follows = new Float64Array(wallMs.length);
  let lastMs = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < wallMs.length; i++) {
    lastMs = clock.instantMs(wallMs[i] ?? Number.NaN, lastMs);
    follows[i] = lastMs;
  }
  const firstOffsetMs = (follows[0] ?? 0) - (wallMs[0] ?? 0);
  const fixed = wallMs.map((ms) => ms + firstOffsetMs);
  if (follows.every((ms, i) => ms === fixed[i])) return { instantsMs: follows, summerTime: "either" };
  const a = unevenness(follows);
  const b = unevenness(fixed);
  const fixedIsEvener = b.stepsBack < a.stepsBack || (b.stepsBack === a.stepsBack && b.longestMs < a.longestMs);
  return fixedIsEvener ? { instantsMs: fixed, summerTime: "fixed" } : { instantsMs: follows, summerTime: "follows" };
}

/** What an instant lies off its wall-clock time, where that is the same for all rows, as without a change of clocks inside. */
function steadyOffsetMs(wallMs: Float64Array, zone: string): number | undefined {
  const clock = zoneClock(zone);
  let offsetMs: number | undefined;
  let span: SteadySpan = { fromMs: 0, toMs: 0, offsetMs: 0 };
  for (let i = 0; i < wallMs.length; i++) {
    const ms = wallMs[i] as number;
    if (ms >= span.fromMs && ms < span.toMs) continue;
    const found = clock.steadySpanAt(ms);
    offsetMs ??= found?.offsetMs;
    if (found === undefined || found.offsetMs !== offsetMs) return undefined;
    span = found;
  }
  return offsetMs ?? 0;
}

function shifted(values: Float64Array, by: number): Float64Array {
  for (let i = 0; i < values.length; i++) values[i] = (values[i] as number) + by;
  return values;
}

function unevenness(instantsMs: Float64Array): { stepsBack: number; longestMs: number } {
  let stepsBack = 0;
  let longestMs = 0;
  for (let i = 1; i < instantsMs.length; i++) {
    const step = (instantsMs[i] ?? 0) - (instantsMs[i - 1] ?? 0);
    if (step < 0) stepsBack++;
    if (step > longestMs) longestMs = step;
  }
  return { stepsBack, longestMs };
}

/** What the clock on the wall of a zone shows at an instant, in milliseconds as if it were UTC. */
export function wallMsAt(instantMs: number, zone: string): number {
  const instant = Temporal.Instant.fromEpochMilliseconds(Math.round(instantMs));
  return instantMs + instant.toZonedDateTimeISO(zone).offsetNanoseconds / 1e6;
}
