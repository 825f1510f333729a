import type { FigureDefinition } from "../define.ts";
import { evidenceOf, type MeasuredRecording } from "../recording.ts";

export const rows: FigureDefinition<MeasuredRecording> = {
  id: "rows",
  label: "Rows with values",
  unit: "",
  version: 1,
  explain: "Rows that carry a time and every value that this recorder logs. Blank, excluded and half-empty rows are counted apart.",
  formula: null,
  source: "Definition.",
  checkedBy: ["Rows counted by hand in small logs"],
  compute: (recording) => ({
    value: recording.trace.elapsedS.length,
    interval: { low: recording.trace.elapsedS.length, high: recording.trace.elapsedS.length },
    evidence: [evidenceOf(recording)],
  }),
};
