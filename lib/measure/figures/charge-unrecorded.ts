import { combine } from "../../units/uncertainty.ts";
import { chargeNeeded } from "../charge-needed.ts";
import { type FigureDefinition, notMeasured } from "../define.ts";
import { chargeOfAll, countedOnce } from "../integrals.ts";
import { evidenceOf } from "../recording.ts";
import type { TestContext } from "../test-context.ts";
import { leftOutDoubts, missingAccuracy } from "./shared-doubts.ts";

export const chargeUnrecorded: FigureDefinition<TestContext> = {
  id: "charge-unrecorded",
  label: "Charge that nobody recorded",
  unit: "Ah",
  version: 1,
  explain:
    "What the density says went in, less what was recorded between the first and the last density. More than nothing means that the charger worked while no recorder did. Where more was recorded than the density needs, nothing unrecorded shows: gassing, stratified acid and warmth take the rest.",
  formula: "Q_density − Q_recorded, not below 0",
  source: "Faraday's law against the log.",
  checkedBy: ["W060", "Demo logs against the generator's truth"],
  compute: (context) => {
    const needed = chargeNeeded(context);
    if ("why" in needed) return notMeasured(needed.absent, needed.why, [context.recordEvidence]);
    const recordings = context.connections.flatMap((connection) => connection.recordings);
    const usable = recordings.filter((recording) => recording.trace.hasCurrent && recording.trace.elapsedS.length > 1);
    const unplaced = usable.find((recording) => recording.startMs === undefined);
    if (unplaced !== undefined)
      return notMeasured("cannot tell", `nobody noted when ${unplaced.id} began, so it cannot be set against the visits`, needed.evidence);
    const read = context.readings.filter((reading) => reading.density !== undefined);
    const counted = countedOnce(usable, read[0]?.atMs, read.at(-1)?.atMs);
    const recorded = chargeOfAll(counted);
    const difference = needed.value - recorded.value;
    const doubts = [
      ...(needed.doubts ?? []),
      ...missingAccuracy(usable, "current"),
      ...leftOutDoubts(recordings, usable, "it logs no current"),
    ];
    const evidence = [...needed.evidence, ...usable.map((recording) => evidenceOf(recording))];
    // Without the recorder's accuracy no interval can be defended: taking it as nought would make a worse recorder look surer.
    if (recorded.standardUncertainty === undefined) return { value: Math.max(0, difference), evidence, doubts };
    const halfWidth = context.rules.coverageFactor * combine(needed.standardUncertainty ?? 0, recorded.standardUncertainty);
    if (difference + halfWidth <= 0)
      return notMeasured(
        "not applicable",
        `more was recorded (${recorded.value.toFixed(1)} Ah) than the density needs (${needed.value.toFixed(1)} Ah), so no unrecorded charge shows`,
        needed.evidence,
      );
    return {
      value: Math.max(0, difference),
      interval: { low: Math.max(0, difference - halfWidth), high: Math.max(0, difference + halfWidth) },
      evidence,
      doubts,
    };
  },
};
