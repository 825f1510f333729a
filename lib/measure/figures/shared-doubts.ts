/** Doubts that several figures share, worded once. */
import type { MeasuredRecording } from "../recording.ts";

/** Says which recorders have no stated accuracy for a quantity, so that figures of theirs carry no interval. */
export function missingAccuracy(recordings: readonly MeasuredRecording[], quantity: "voltage" | "current"): string[] {
  const names = recordings
    .filter((recording) => recording.recorder?.measures?.[quantity] === undefined)
    .map((recording) => recording.recorder?.name ?? "the recorder");
  return [...new Set(names)].map((name) => `${name}: no accuracy is stated for ${quantity}, so no interval is given`);
}

/** Says how long the gaps inside recordings are. */
export function gapDoubts(recordings: readonly MeasuredRecording[]): string[] {
  return recordings
    .filter((recording) => recording.trace.gaps.length > 0)
    .map((recording) => {
      const minutes = (recording.trace.spanS - recording.trace.coveredS) / 60;
      return `${recording.id} has ${recording.trace.gaps.length === 1 ? "a gap" : `${recording.trace.gaps.length} gaps`} of ${minutes.toFixed(0)} min in all, which add nothing`;
    });
}

/** Says which recordings ran side by side; that time is counted once, from the one that began first. */
export function overlapDoubts(recordings: readonly MeasuredRecording[]): string[] {
  const placed = recordings
    .flatMap(({ id, startMs, trace }) => (startMs === undefined ? [] : [{ id, startMs, endMs: startMs + trace.spanS * 1000 }]))
    .sort((a, b) => a.startMs - b.startMs);
  return placed.slice(1).flatMap((later, index) => {
    const earlier = placed[index];
    const minutes = earlier === undefined ? 0 : (Math.min(earlier.endMs, later.endMs) - later.startMs) / 60_000;
    return earlier === undefined || minutes < 1
      ? []
      : [`${earlier.id} and ${later.id} ran side by side for ${minutes.toFixed(0)} min, which are counted once`];
  });
}

/** Says which recordings add nothing to a sum, and why. */
export function leftOutDoubts(all: readonly MeasuredRecording[], used: readonly MeasuredRecording[], why: string): string[] {
  return all
    .filter((recording) => !used.includes(recording))
    .map((recording) => `${recording.id} adds nothing: ${reasonFor(recording, why)}`);
}

function reasonFor({ trace }: MeasuredRecording, why: string): string {
  return trace.elapsedS.length > 1 ? why : "fewer than two of its rows have values";
}
