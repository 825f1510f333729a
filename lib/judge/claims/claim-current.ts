import type { MeasuredRecording } from "../../measure/recording.ts";
import type { TestContext } from "../../measure/test-context.ts";
import { uncertaintyOfReading } from "../../measure/uncertainty-of-reading.ts";
import type { JudgedClaim } from "../../nouns/finding.ts";
import { highestSlidingMean } from "../../signal/sliding-mean.ts";
import { judgeNumber, notTested, whyNoStages } from "./shared.ts";

const subject = { id: "claim-current", label: "Output current", unit: "A" };

/**
 * Judges the current on the label.
 *
 * Only stretches in which the charger limited the current count: the battery may take less than a charger could give, and then the
 * claim was not put to the test. The highest mean over the site's window within such a stretch is held against the claim.
 *
 * @returns undefined where the mode claims no current
 */
export function judgeCurrent(context: TestContext): JudgedClaim | undefined {
  const claim = context.mode.claims.currentA;
  if (claim === undefined) return undefined;
  const { rules } = context;
  const best = context.connections
    .flatMap((connection) => connection.recordings)
    .flatMap((recording) => highestInChargerLimited(recording, rules.sustainedWindowS))
    .sort((a, b) => b.mean - a.mean)[0];
  if (best === undefined)
    return notTested(
      subject,
      claim,
      rules.currentTolerance,
      whyNoStages(context) ?? "no recording shows a stretch in which the charger, and not the battery, limited the current",
      "a recording from the first minute of a charge on a well discharged battery",
    );
  return judgeNumber(
    subject,
    claim,
    {
      value: best.mean,
      standardUncertainty: uncertaintyOfReading(best.recording, "current", best.mean),
      figure: `recording/${best.recording.id}#sustained-current`,
      why: `${best.mean.toFixed(2)} A was held for ${rules.sustainedWindowS} s in ${best.recording.id} while the charger limited the current`,
      doubts: [],
    },
    rules.currentTolerance,
    rules,
  );
}

function highestInChargerLimited(recording: MeasuredRecording, windowS: number): { mean: number; recording: MeasuredRecording }[] {
  const { trace } = recording;
  const ranges = recording.stages
    .filter((stage) => stage.limitedBy === "charger")
    .flatMap((stage) =>
      trace.stretches.flatMap(([from, to]): [number, number][] => {
        let start = from;
        while (start < to && (trace.elapsedS[start] as number) < stage.startS) start++;
        let end = start;
        while (end < to && (trace.elapsedS[end] as number) < stage.endS) end++;
        return end - start > 1 ? [[start, end]] : [];
      }),
    );
  const held = highestSlidingMean(trace.elapsedS, trace.currentsA, ranges, windowS);
  return held === undefined ? [] : [{ mean: held.mean, recording }];
}
