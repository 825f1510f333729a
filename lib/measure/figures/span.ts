import type { FigureDefinition } from "../define.ts";
import { evidenceOf, type MeasuredRecording } from "../recording.ts";

export const span: FigureDefinition<MeasuredRecording> = {
  id: "span",
  label: "Span",
  unit: "h",
  version: 1,
  explain: "From the recording's first row to its last. It says how long the recorder worked, not how long the charger did.",
  formula: "t_last − t_first",
  source: "Definition.",
  checkedBy: ["Rows counted by hand in small logs"],
  compute: (recording) => {
    const drift = recording.recorder?.measures?.time?.percentOfReading;
    const hours = recording.trace.spanS / 3600;
    return {
      value: hours,
      standardUncertainty: drift === undefined ? undefined : (hours * drift) / 100 / Math.sqrt(3),
      evidence: [evidenceOf(recording)],
    };
  },
};
