import { standardUncertaintyOf } from "../units/uncertainty.ts";
import type { MeasuredRecording } from "./recording.ts";

/** Standard uncertainty of a value read by a recording's recorder; undefined where its accuracy is not stated. */
export function uncertaintyOfReading(
  recording: MeasuredRecording,
  quantity: "voltage" | "current" | "temperature",
  value: number,
): number | undefined {
  const accuracy = recording.recorder?.measures?.[quantity];
  return accuracy === undefined ? undefined : standardUncertaintyOf(accuracy, value);
}
