import { type FigureDefinition, notMeasured } from "../define.ts";
import { countedOnce, coveredHoursOfAll } from "../integrals.ts";
import { evidenceOf } from "../recording.ts";
import type { MeasuredConnection } from "../test-context.ts";

export const recordedShare: FigureDefinition<MeasuredConnection> = {
  id: "recorded-share",
  label: "Share of the connection that was recorded",
  unit: "%",
  version: 2,
  explain:
    "Time recorded, gaps and hours with the leads off the battery taken off, over time connected. What the charger did in the rest was not seen, and every figure of the connection leans on what was.",
  formula: "time recorded / time connected",
  source: "Definition.",
  checkedBy: ["Small invented test records"],
  compute: ({ onMs, offMs, lastKnownMs, recordings }) => {
    const evidence = recordings.map((recording) => evidenceOf(recording));
    const untilMs = offMs ?? lastKnownMs;
    if (onMs === undefined || untilMs === undefined || untilMs <= onMs)
      return notMeasured("cannot tell", "nobody noted when the connection began or ended", evidence);
    const share = Math.min(100, (100 * coveredHoursOfAll(countedOnce(recordings))) / ((untilMs - onMs) / 3_600_000));
    if (offMs === undefined)
      return {
        ...notMeasured("cannot tell", `nobody noted when the clamps came off; at most ${share.toFixed(0)} % was recorded`, evidence),
        bounds: { low: 0, high: share },
      };
    return { value: share, evidence };
  },
};
