import { type FigureDefinition, notMeasured } from "../define.ts";
import { countedOnce, coveredHoursOfAll } from "../integrals.ts";
import { evidenceOf } from "../recording.ts";
import type { MeasuredConnection } from "../test-context.ts";

export const timeUnrecorded: FigureDefinition<MeasuredConnection> = {
  id: "time-unrecorded",
  label: "Time connected but not recorded",
  unit: "h",
  version: 2,
  explain: "What the charger did in this time was not seen. A recording that stops does not mean that the charger stopped.",
  formula: "time connected − time recorded",
  source: "Definition.",
  checkedBy: ["Small invented test records"],
  compute: (connection) => {
    const evidence = connection.recordings.map((recording) => evidenceOf(recording));
    const until = connection.offMs ?? connection.lastKnownMs;
    if (connection.onMs === undefined || until === undefined)
      return notMeasured("not recorded", "nobody noted when the connection began or ended", evidence);
    const recordedH = coveredHoursOfAll(countedOnce(connection.recordings));
    const hours = Math.max(0, (until - connection.onMs) / 3_600_000 - recordedH);
    if (connection.offMs === undefined)
      return notMeasured(
        "cannot tell",
        `nobody noted when the clamps came off; at least ${hours.toFixed(1)} h are known to be unrecorded`,
        evidence,
      );
    return { value: hours, evidence };
  },
};
