import { type FigureDefinition, notMeasured } from "../define.ts";
import { countedOnce, coveredHoursOfAll } from "../integrals.ts";
import { evidenceOf } from "../recording.ts";
import type { MeasuredConnection } from "../test-context.ts";

export const timeRecorded: FigureDefinition<MeasuredConnection> = {
  id: "time-recorded",
  label: "Time recorded",
  unit: "h",
  version: 2,
  explain:
    "The time of a connection for which recordings show the battery, gaps taken off, and hours with the leads off it or the wrong way round; an hour that two recorders saw counts once.",
  formula: "Σ (span − gaps − leads off)",
  source: "Definition.",
  checkedBy: ["Small invented test records"],
  compute: (connection) => {
    if (connection.recordings.length === 0) return notMeasured("not recorded", "there is no recording of this connection");
    return {
      value: coveredHoursOfAll(countedOnce(connection.recordings)),
      evidence: connection.recordings.map((recording) => evidenceOf(recording)),
    };
  },
};
