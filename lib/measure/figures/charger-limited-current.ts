import type { Rules } from "../../nouns/rules.ts";
import { highestSlidingMean } from "../../signal/sliding-mean.ts";
import { firstAtOrAfter } from "../../signal/sorted.ts";
import { type FigureDefinition, notMeasured } from "../define.ts";
import { evidenceOf, type MeasuredRecording } from "../recording.ts";
import type { Trace } from "../trace.ts";
import { uncertaintyOfReading } from "../uncertainty-of-reading.ts";
import { missingAccuracy } from "./shared-doubts.ts";

/** @param windowS  the site's window of a sustained value, s */
export const chargerLimitedCurrent = ({
  sustainedWindowS: windowS,
}: Pick<Rules, "sustainedWindowS">): FigureDefinition<MeasuredRecording> => ({
  id: "charger-limited-current",
  label: "Current held while the charger limited it",
  unit: "A",
  version: 1,
  explain: `The highest mean over ${windowS} s within stages in which the charger, and not the battery, limited the current. A claim about current is judged by this number and no other.`,
  formula: "max over t of (1/Δt) ∫ from t to t + Δt, within such a stage and without a gap",
  source: "Our definition; one minute is common practice.",
  checkedBy: ["A step of known height and length"],
  compute: (recording) => {
    const { trace } = recording;
    if (!trace.hasCurrent) return notMeasured("not recorded", "the recorder logs no current", [evidenceOf(recording)]);
    const ranges = recording.stages
      .filter((stage) => stage.limitedBy === "charger")
      .flatMap((stage) => rangesWithin(trace, stage.startS, stage.endS));
    if (ranges.length === 0)
      return notMeasured("not recorded", "the recording shows no stretch in which the charger, and not the battery, limited the current", [
        evidenceOf(recording),
      ]);
    const held = highestSlidingMean(trace.elapsedS, trace.currentsA, ranges, windowS);
    if (held === undefined)
      return notMeasured("cannot tell", `no such stretch without a gap is ${windowS} s long`, [evidenceOf(recording)]);
    return {
      value: held.mean,
      standardUncertainty: uncertaintyOfReading(recording, "current", held.mean),
      evidence: [evidenceOf(recording, held.from, held.to + 1)],
      doubts: missingAccuracy([recording], "current"),
    };
  },
});

/** Samples from one time to another, cut at the trace's gaps: half-open ranges of two samples or more. */
function rangesWithin({ stretches, elapsedS }: Trace, fromS: number, toS: number): [number, number][] {
  return stretches.flatMap(([from, to]): [number, number][] => {
    const start = firstAtOrAfter(elapsedS, fromS, from, to);
    const end = firstAtOrAfter(elapsedS, toS, start, to);
    return end - start > 1 ? [[start, end]] : [];
  });
}
