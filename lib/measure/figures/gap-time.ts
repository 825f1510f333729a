import type { FigureDefinition } from "../define.ts";
import { evidenceOf, type MeasuredRecording } from "../recording.ts";

export const gapTime: FigureDefinition<MeasuredRecording> = {
  id: "gap-time",
  label: "Time in gaps",
  unit: "h",
  version: 1,
  explain:
    "Time inside the recording in which no row was written for longer than the recorder's own pace allows: two and a half times the longest usual pause (99th percentile; 90th in a log of fewer than 200 rows), or the longest pause that the recorder's record declares.",
  formula: "Σ (tᵢ₊₁ − tᵢ) over gaps",
  source: "Our definition; the factor lets one missed row in a regular log pass.",
  checkedBy: ["A log with rows cut out: reference W066"],
  compute: (recording) => {
    const hours = (recording.trace.spanS - recording.trace.coveredS) / 3600;
    return { value: hours, interval: { low: hours, high: hours }, evidence: [evidenceOf(recording)] };
  },
};
