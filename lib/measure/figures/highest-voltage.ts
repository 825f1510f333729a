import { type FigureDefinition, notMeasured } from "../define.ts";
import { evidenceOf, type MeasuredRecording } from "../recording.ts";
import { uncertaintyOfReading } from "../uncertainty-of-reading.ts";
import { missingAccuracy } from "./shared-doubts.ts";

export const highestVoltage: FigureDefinition<MeasuredRecording> = {
  id: "highest-voltage",
  label: "Highest voltage in any row",
  unit: "V",
  version: 1,
  explain: "The largest single value in the log. A spike of one row counts here; claims are judged on what was sustained.",
  formula: null,
  source: "Definition.",
  checkedBy: ["Rows read by hand in small logs"],
  compute: (recording) => {
    const { trace } = recording;
    if (!trace.hasVoltage || trace.voltagesV.length === 0)
      return notMeasured("not recorded", "the recorder logs no voltage", [evidenceOf(recording)]);
    let at = 0;
    for (let i = 1; i < trace.voltagesV.length; i++) if ((trace.voltagesV[i] as number) > (trace.voltagesV[at] as number)) at = i;
    const value = trace.voltagesV[at] as number;
    return {
      value,
      standardUncertainty: uncertaintyOfReading(recording, "voltage", value),
      evidence: [evidenceOf(recording, at, at + 1)],
      doubts: missingAccuracy([recording], "voltage"),
    };
  },
};
