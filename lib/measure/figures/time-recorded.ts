import { type FigureDefinition, notMeasured } from "../define.ts";
import { evidenceOf } from "../recording.ts";
import type { MeasuredConnection } from "../test-context.ts";

export const timeRecorded: FigureDefinition<MeasuredConnection> = {
  id: "time-recorded",
  label: "Time recorded",
  unit: "h",
  version: 1,
  explain: "The time of a connection that recordings cover, gaps taken off.",
  formula: "Σ (span − gaps)",
  source: "Definition.",
  checkedBy: ["Small invented test records"],
  compute: (connection) => {
    if (connection.recordings.length === 0) return notMeasured("not recorded", "there is no recording of this connection");
    const hours = connection.recordings.reduce((sum, recording) => sum + recording.trace.coveredS, 0) / 3600;
    return { value: hours, evidence: connection.recordings.map((recording) => evidenceOf(recording)) };
  },
};
