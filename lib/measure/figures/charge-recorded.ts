import { type FigureDefinition, type FigureOutcome, notMeasured } from "../define.ts";
import { chargeOfAll, countedOnce } from "../integrals.ts";
import { evidenceOf, type MeasuredRecording } from "../recording.ts";
import type { MeasuredConnection, TestContext } from "../test-context.ts";
import { gapDoubts, leftOutDoubts, missingAccuracy, overlapDoubts } from "./shared-doubts.ts";

const meta = {
  id: "charge-recorded",
  unit: "Ah",
  version: 1,
  explain:
    "Current added up over the time that was recorded, each hour once where two recorders ran side by side. Gaps and unrecorded hours add nothing here; see the charge in gaps and the unrecorded charge for what they may hide.",
  formula: "Q = ∫ I dt by the trapezoidal rule / 3600",
  source: "Definition: 1 Ah = 3600 C. Uncertainty: JCGM 100:2008, 5.2.2 (from memory): a meter's error is common to all its samples.",
  checkedBy: ["Analytic integrals W062 to W069", "Ampere-hours of the three charges of an open field log (17 Ah battery), within 0.1 %"],
};

export const chargeRecorded: {
  recording: FigureDefinition<MeasuredRecording>;
  connection: FigureDefinition<MeasuredConnection>;
  test: FigureDefinition<TestContext>;
} = {
  recording: { ...meta, label: "Charge recorded", compute: (recording) => sum([recording]) },
  connection: { ...meta, label: "Charge recorded", compute: (connection) => sum(connection.recordings) },
  test: {
    ...meta,
    label: "Charge recorded in all",
    compute: (context) => sum(context.connections.flatMap((connection) => connection.recordings)),
  },
};

function sum(recordings: readonly MeasuredRecording[]): FigureOutcome {
  if (recordings.length === 0) return notMeasured("not recorded", "there is no recording");
  const withCurrent = recordings.filter((recording) => recording.trace.hasCurrent);
  if (withCurrent.length === 0)
    return notMeasured(
      "not recorded",
      "the recorder logs no current",
      recordings.map((recording) => evidenceOf(recording)),
    );
  const usable = withCurrent.filter((recording) => recording.trace.elapsedS.length > 1);
  if (usable.length === 0)
    return notMeasured(
      "cannot tell",
      "fewer than two rows have values, so nothing can be added up",
      withCurrent.map((recording) => evidenceOf(recording)),
    );
  return {
    ...chargeOfAll(countedOnce(usable)),
    evidence: usable.map((recording) => evidenceOf(recording)),
    doubts: [
      ...missingAccuracy(usable, "current"),
      ...gapDoubts(usable),
      ...overlapDoubts(usable),
      ...leftOutDoubts(recordings, usable, "it logs no current"),
    ],
  };
}
