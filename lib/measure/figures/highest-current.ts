import { type FigureDefinition, notMeasured } from "../define.ts";
import { evidenceOf, type MeasuredRecording } from "../recording.ts";
import { uncertaintyOfReading } from "../uncertainty-of-reading.ts";
import { missingAccuracy } from "./shared-doubts.ts";

export const highestCurrent: FigureDefinition<MeasuredRecording> = {
  id: "highest-current",
  label: "Highest current in any row",
  unit: "A",
  version: 1,
  explain: "The largest single value in the log. A spike of one row counts here; claims are judged on what was sustained.",
  formula: null,
  source: "Definition.",
  checkedBy: ["Rows read by hand in small logs"],
  compute: (recording) => {
    const { trace } = recording;
    if (!trace.hasCurrent || trace.currentsA.length === 0)
      return notMeasured("not recorded", "the recorder logs no current", [evidenceOf(recording)]);
    let at = 0;
    for (let i = 1; i < trace.currentsA.length; i++) if ((trace.currentsA[i] as number) > (trace.currentsA[at] as number)) at = i;
    const value = trace.currentsA[at] as number;
    return {
      value,
      standardUncertainty: uncertaintyOfReading(recording, "current", value),
      evidence: [evidenceOf(recording, at, at + 1)],
      doubts: missingAccuracy([recording], "current"),
    };
  },
};
