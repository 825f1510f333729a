import { type FigureDefinition, notMeasured } from "../define.ts";
import { evidenceOf, type MeasuredRecording } from "../recording.ts";

export const sampleInterval: FigureDefinition<MeasuredRecording> = {
  id: "sample-interval",
  label: "Usual time between rows",
  unit: "s",
  version: 1,
  explain: "The median time from one row to the next. What happens faster than this cannot be seen in the log.",
  formula: "median(tᵢ₊₁ − tᵢ)",
  source: "Definition.",
  checkedBy: ["Rows counted by hand in small logs"],
  compute: (recording) =>
    recording.trace.elapsedS.length < 2
      ? notMeasured("not applicable", "one row has no interval", [evidenceOf(recording)])
      : { value: recording.trace.intervalS, evidence: [evidenceOf(recording)] },
};
