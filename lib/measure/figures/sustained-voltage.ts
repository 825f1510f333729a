import { highestSlidingMean } from "../../signal/sliding-mean.ts";
import { type FigureDefinition, notMeasured } from "../define.ts";
import { evidenceOf, type MeasuredRecording } from "../recording.ts";
import { uncertaintyOfReading } from "../uncertainty-of-reading.ts";
import { missingAccuracy } from "./shared-doubts.ts";

/** @param windowS  how long a value must be held, s; a site may set its own */
export const sustainedVoltage = (windowS: number): FigureDefinition<MeasuredRecording> => ({
  id: "sustained-voltage",
  label: `Highest voltage held for ${windowS} s`,
  unit: "V",
  version: 1,
  explain: "The highest time-weighted mean over any stretch of that length without a gap. Spikes and ripple of the meter do not count.",
  formula: "max over t of (1/Δt) ∫ from t to t + Δt",
  source: "Our definition; one minute is common practice.",
  checkedBy: ["A step of known height and length"],
  compute: (recording) => {
    const { trace } = recording;
    if (!trace.hasVoltage) return notMeasured("not recorded", "the recorder logs no voltage", [evidenceOf(recording)]);
    const held = highestSlidingMean(trace.elapsedS, trace.voltagesV, trace.stretches, windowS);
    if (held === undefined) return notMeasured("cannot tell", `no stretch without a gap is ${windowS} s long`, [evidenceOf(recording)]);
    return {
      value: held.mean,
      standardUncertainty: uncertaintyOfReading(recording, "voltage", held.mean),
      evidence: [evidenceOf(recording, held.from, held.to + 1)],
      doubts: missingAccuracy([recording], "voltage"),
    };
  },
});
