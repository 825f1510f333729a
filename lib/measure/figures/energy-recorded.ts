import { type FigureDefinition, type FigureOutcome, notMeasured } from "../define.ts";
import { countedOnce, energyOfAll } from "../integrals.ts";
import { evidenceOf, type MeasuredRecording } from "../recording.ts";
import type { MeasuredConnection, TestContext } from "../test-context.ts";
import { gapDoubts, leftOutDoubts, missingAccuracy, overlapDoubts } from "./shared-doubts.ts";

const meta = {
  id: "energy-recorded",
  unit: "Wh",
  version: 1,
  explain: "Voltage times current, added up over the time that was recorded: what went into the battery, not what the mains gave.",
  formula: "W = ∫ U·I dt by the trapezoidal rule / 3600",
  source: "Definition: 1 Wh = 3600 J. Uncertainty: JCGM 100:2008, 5.1.2 (from memory).",
  checkedBy: ["Analytic integrals W067 and W068", "Watt-hours of the three charges of an open field log (17 Ah battery), within 0.1 %"],
};

export const energyRecorded: {
  recording: FigureDefinition<MeasuredRecording>;
  connection: FigureDefinition<MeasuredConnection>;
  test: FigureDefinition<TestContext>;
} = {
  recording: { ...meta, label: "Energy recorded", compute: (recording) => sum([recording]) },
  connection: { ...meta, label: "Energy recorded", compute: (connection) => sum(connection.recordings) },
  test: {
    ...meta,
    label: "Energy recorded in all",
    compute: (context) => sum(context.connections.flatMap((connection) => connection.recordings)),
  },
};

function sum(recordings: readonly MeasuredRecording[]): FigureOutcome {
  if (recordings.length === 0) return notMeasured("not recorded", "there is no recording");
  const whole = recordings.filter((recording) => recording.trace.hasCurrent && recording.trace.hasVoltage);
  if (whole.length === 0)
    return notMeasured(
      "not recorded",
      "the recorder does not log both voltage and current",
      recordings.map((recording) => evidenceOf(recording)),
    );
  const usable = whole.filter((recording) => recording.trace.elapsedS.length > 1);
  if (usable.length === 0)
    return notMeasured(
      "cannot tell",
      "fewer than two rows have values, so nothing can be added up",
      whole.map((recording) => evidenceOf(recording)),
    );
  return {
    ...energyOfAll(countedOnce(usable)),
    evidence: usable.map((recording) => evidenceOf(recording)),
    doubts: [
      ...missingAccuracy(usable, "current"),
      ...missingAccuracy(usable, "voltage"),
      ...gapDoubts(usable),
      ...overlapDoubts(usable),
      ...leftOutDoubts(recordings, usable, "it does not log both voltage and current"),
    ],
  };
}
