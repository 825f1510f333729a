import { type FigureDefinition, notMeasured } from "../define.ts";
import { evidenceOf } from "../recording.ts";
import type { MeasuredConnection } from "../test-context.ts";

export const timeConnected: FigureDefinition<MeasuredConnection> = {
  id: "time-connected",
  label: "Time connected",
  unit: "h",
  version: 1,
  explain:
    "From clamps on to clamps off. Where nobody saw them come off, it is at least the time to the last thing known of the connection.",
  formula: "t_off − t_on",
  source: "Definition.",
  checkedBy: ["Small invented test records"],
  compute: (connection) => {
    const evidence = connection.recordings.map((recording) => evidenceOf(recording));
    if (connection.onMs === undefined) return notMeasured("not recorded", "nobody noted when the clamps went on", evidence);
    if (connection.offMs !== undefined) return { value: (connection.offMs - connection.onMs) / 3_600_000, evidence };
    return notMeasured(
      "not recorded",
      connection.lastKnownMs === undefined
        ? "nobody noted when the clamps came off"
        : `nobody noted when the clamps came off; the charger is known to have been connected for at least ${((connection.lastKnownMs - connection.onMs) / 3_600_000).toFixed(1)} h`,
      evidence,
    );
  },
};
