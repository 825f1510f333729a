import { Temporal } from "temporal-polyfill";
import { zoneClock } from "./clock.ts";

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
 * @param wallMs  wall-clock times as if they were UTC, in file order; NaN never occurs
 */
export function readWallClock(wallMs: Float64Array, zone: string): WallClockReading {
  const clock = zoneClock(zone);
  const follows = new Float64Array(wallMs.length);
  let lastMs = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < wallMs.length; i++) {
    lastMs = clock.instantMs(wallMs[i] ?? Number.NaN, lastMs);
    follows[i] = lastMs;
  }
  const offsetMs = (follows[0] ?? 0) - (wallMs[0] ?? 0);
  if (keepsOffset(follows, wallMs, offsetMs)) return { instantsMs: follows, summerTime: "either" };
  const fixed = wallMs.map((ms) => ms + offsetMs);
  const a = unevenness(follows);
  const b = unevenness(fixed);
  const fixedIsEvener = b.stepsBack < a.stepsBack || (b.stepsBack === a.stepsBack && b.longestMs < a.longestMs);
  return fixedIsEvener ? { instantsMs: fixed, summerTime: "fixed" } : { instantsMs: follows, summerTime: "follows" };
}

/** Whether every instant lies the same way off its wall-clock time. */
function keepsOffset(instantsMs: Float64Array, wallMs: Float64Array, offsetMs: number): boolean {
  for (let i = 0; i < instantsMs.length; i++) if (instantsMs[i] !== (wallMs[i] as number) + offsetMs) return false;
  return true;
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
