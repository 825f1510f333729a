import { combine } from "../../units/uncertainty.ts";
import { chargeNeeded } from "../charge-needed.ts";
import { type FigureDefinition, notMeasured } from "../define.ts";
import { addAmounts, chargeOf } from "../integrals.ts";
import { evidenceOf } from "../recording.ts";
import type { TestContext } from "../test-context.ts";

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
    const read = context.readings.filter((reading) => reading.density !== undefined);
    const fromMs = read[0]?.atMs ?? 0;
    const toMs = read.at(-1)?.atMs ?? 0;
    const between = context.connections
      .flatMap((connection) => connection.recordings)
      .filter(
        (recording) =>
          recording.trace.hasCurrent && recording.startMs !== undefined && recording.startMs >= fromMs && recording.startMs <= toMs,
      );
    const recorded = addAmounts(between.map((recording) => ({ ...chargeOf(recording), meter: recording.recorderId ?? recording.id })));
    const difference = needed.value - recorded.value;
    const halfWidth = context.rules.coverageFactor * combine(needed.standardUncertainty ?? 0, recorded.standardUncertainty ?? 0);
    if (difference + halfWidth <= 0)
      return notMeasured(
        "not applicable",
        `more was recorded (${recorded.value.toFixed(1)} Ah) than the density needs (${needed.value.toFixed(1)} Ah), so no unrecorded charge shows`,
        needed.evidence,
      );
    return {
      value: Math.max(0, difference),
      interval: { low: Math.max(0, difference - halfWidth), high: Math.max(0, difference + halfWidth) },
      evidence: [...needed.evidence, ...between.map((recording) => evidenceOf(recording))],
      doubts: [...(needed.doubts ?? []), ...(needed.standardUncertainty === undefined ? ["no interval of the hydrometer is known"] : [])],
    };
  },
};
