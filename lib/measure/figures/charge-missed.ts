import { currentAfterLastRow } from "../after-last-row.ts";
import { type FigureDefinition, notMeasured } from "../define.ts";
import { tellOffBattery } from "../ending.ts";
import { evidenceOf, type MeasuredRecording } from "../recording.ts";
import type { MeasuredConnection } from "../test-context.ts";

/** Less unrecorded time than this is the slack of a hand that starts a recorder, h. */
const slackH = 0.1;

export const chargeMissed: FigureDefinition<MeasuredConnection> = {
  id: "charge-missed",
  label: "Charge that the recorder missed",
  unit: "Ah",
  version: 1,
  explain:
    "What may have flowed after the last row of a connection, while the charger was still connected. At a held voltage the current only falls, so the last current over the remaining time is the most there can have been; where the charger still held its current, that current is. The least is nothing.",
  formula: "0 … I_last · (t_off − t_last)",
  source: "Our definition; current at a held voltage falls (any battery handbook).",
  checkedBy: ["Small invented test records"],
  compute: (connection) => {
    const last = connection.recordings.at(-1);
    const evidence = connection.recordings.map((recording) => evidenceOf(recording));
    if (last === undefined) return notMeasured("not recorded", "nothing of this connection was recorded");
    if (!last.trace.hasCurrent) return notMeasured("not recorded", "the recorder logs no current", evidence);
    if (connection.ending.by === "charger") return notMeasured("not applicable", "the charger was seen to end the charge", evidence);
    const until = connection.offMs ?? connection.lastKnownMs;
    if (last.startMs === undefined || until === undefined)
      return notMeasured("cannot tell", "nobody noted when the connection began or ended", evidence);
    const hours = (until - last.startMs) / 3_600_000 - last.trace.spanS / 3600;
    if (hours < slackH) return notMeasured("not applicable", "the recording goes on to the end of the connection", evidence);
    const after = currentAfterLastRow(connection);
    if (after === undefined) return notMeasured("cannot tell", whyUnknown(last), evidence);
    const { mostA, inPause } = after;
    return {
      ...notMeasured(
        "not recorded",
        `${hours.toFixed(1)} h after the last row: at least nothing, at most ${(mostA * hours).toFixed(1)} Ah, since ${mostA.toFixed(2)} A ${inPause ? "flowed before the pause" : "flowed at the last row"}${connection.offMs === undefined ? "; nobody saw the clamps come off" : ""}`,
        evidence,
      ),
      bounds: { low: 0, high: mostA * hours },
    };
  },
};

function whyUnknown({ stages }: MeasuredRecording): string {
  const stage = stages.at(-1);
  return stage === undefined ? "the recording shows no stages" : tellOffBattery(stage);
}
