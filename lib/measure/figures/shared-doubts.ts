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
