import { highestSlidingMean } from "../../signal/sliding-mean.ts";
import { type FigureDefinition, notMeasured } from "../define.ts";
import { evidenceOf, type MeasuredRecording } from "../recording.ts";
import { uncertaintyOfReading } from "../uncertainty-of-reading.ts";
import { missingAccuracy } from "./shared-doubts.ts";

/** @param windowS  how long a value must be held, s; a site may set its own */
export const sustainedCurrent = (windowS: number): FigureDefinition<MeasuredRecording> =>
  heldFor("sustained-current", windowS, `${windowS} s`);

/** The same over other lengths, since a boost that lasts a minute starts no car and one that lasts an hour fills a battery. */
export const sustainedCurrentOver: readonly FigureDefinition<MeasuredRecording>[] = [
  heldFor("sustained-current-10-s", 10, "10 s"),
  heldFor("sustained-current-10-min", 600, "10 min"),
  heldFor("sustained-current-60-min", 3600, "60 min"),
];

function heldFor(id: string, windowS: number, length: string): FigureDefinition<MeasuredRecording> {
  return {
    id,
    label: `Highest current held for ${length}`,
    unit: "A",
    version: 1,
    explain: "The highest time-weighted mean over any stretch of that length without a gap. Spikes and ripple of the meter do not count.",
    formula: "max over t of (1/Δt) ∫ from t to t + Δt",
    source: "Our definition; one minute is common practice.",
    checkedBy: ["A step of known height and length"],
    compute: (recording) => {
      const { trace } = recording;
      if (!trace.hasCurrent) return notMeasured("not recorded", "the recorder logs no current", [evidenceOf(recording)]);
      if (trace.shortIntervalS > windowS)
        return notMeasured("cannot tell", `rows are ${trace.shortIntervalS} s apart or more, longer than ${length}`, [
          evidenceOf(recording),
        ]);
      const held = highestSlidingMean(trace.elapsedS, trace.currentsA, trace.stretches, windowS);
      if (held === undefined) return notMeasured("cannot tell", `no stretch without a gap is ${length} long`, [evidenceOf(recording)]);
      return {
        value: held.mean,
        standardUncertainty: uncertaintyOfReading(recording, "current", held.mean),
        evidence: [evidenceOf(recording, held.from, held.to + 1)],
        doubts: missingAccuracy([recording], "current"),
      };
    },
  };
}
