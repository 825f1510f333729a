import { highestSlidingMean } from "../../signal/sliding-mean.ts";
import { type FigureDefinition, notMeasured } from "../define.ts";
import { evidenceOf, type MeasuredRecording } from "../recording.ts";
import { uncertaintyOfReading } from "../uncertainty-of-reading.ts";
import { missingAccuracy } from "./shared-doubts.ts";

/** @param windowS  how long a value must be held, s; a site may set its own */
export const sustainedCurrent = (windowS: number): FigureDefinition<MeasuredRecording> => ({
  id: "sustained-current",
  label: `Highest current held for ${windowS} s`,
  unit: "A",
  version: 1,
  explain: "The highest time-weighted mean over any stretch of that length without a gap. Spikes and ripple of the meter do not count.",
  formula: "max over t of (1/Δt) ∫ from t to t + Δt",
  source: "Our definition; one minute is common practice.",
  checkedBy: ["A step of known height and length"],
  compute: (recording) => {
    const { trace } = recording;
    if (!trace.hasCurrent) return notMeasured("not recorded", "the recorder logs no current", [evidenceOf(recording)]);
    const held = highestSlidingMean(trace.elapsedS, trace.currentsA, trace.stretches, windowS);
    if (held === undefined) return notMeasured("cannot tell", `no stretch without a gap is ${windowS} s long`, [evidenceOf(recording)]);
    return {
      value: held.mean,
      standardUncertainty: uncertaintyOfReading(recording, "current", held.mean),
      evidence: [evidenceOf(recording, held.from, held.to + 1)],
      doubts: missingAccuracy([recording], "current"),
    };
  },
});
