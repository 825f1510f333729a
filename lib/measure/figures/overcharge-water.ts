import { waterElectrolysedG } from "../../electrochem/faraday.ts";
import { combine } from "../../units/uncertainty.ts";
import { chargeNeeded } from "../charge-needed.ts";
import { type FigureDefinition, notMeasured } from "../define.ts";
import { chargeOfAll, countedOnce } from "../integrals.ts";
import { evidenceOf } from "../recording.ts";
import { isSealed, type TestContext } from "../test-context.ts";
import { missingAccuracy } from "./shared-doubts.ts";

export const overchargeWater: FigureDefinition<TestContext> = {
  id: "overcharge-water",
  label: "Water that overcharge can have cost, at most",
  unit: "g",
  version: 1,
  explain:
    "Charge recorded between the first and the last density beyond what the density needs, taken as if all of it had split water: an upper bound for a vented battery. Unrecorded charge is not in it. Weighing is the measurement; this is a plausibility check.",
  formula: "m = 0.336 g/Ah · cells · (Q_recorded − Q_density)",
  source: "Faraday's law; says nothing for sealed batteries, which recombine the gas.",
  checkedBy: ["W005 to W008"],
  compute: (context) => {
    if (isSealed(context.battery))
      return notMeasured("not applicable", "a sealed battery recombines the gas, so the charge says nothing of its water");
    const needed = chargeNeeded(context);
    if ("why" in needed) return notMeasured(needed.absent, needed.why, [context.recordEvidence]);
    const recordings = context.connections
      .flatMap((connection) => connection.recordings)
      .filter((recording) => recording.trace.hasCurrent && recording.trace.elapsedS.length > 1);
    if (recordings.length === 0) return notMeasured("not recorded", "no current was recorded", [context.recordEvidence]);
    const unplaced = recordings.find((recording) => recording.startMs === undefined);
    if (unplaced !== undefined)
      return notMeasured("cannot tell", `nobody noted when ${unplaced.id} began, so it cannot be set against the visits`, needed.evidence);
    const read = context.readings.filter((reading) => reading.density !== undefined);
    const recorded = chargeOfAll(countedOnce(recordings, read[0]?.atMs, read.at(-1)?.atMs));
    const excessAh = recorded.value - needed.value;
    const doubts = ["an upper bound: charge not yet mixed into the acid counts as water here", ...missingAccuracy(recordings, "current")];
    const evidence = [...needed.evidence, ...recordings.map((recording) => evidenceOf(recording))];
    if (recorded.standardUncertainty === undefined)
      return excessAh > 0
        ? { value: waterElectrolysedG(excessAh, context.battery.cells), evidence, doubts }
        : notMeasured("cannot tell", "less was recorded than the density needs, so part of the charge was not seen", needed.evidence);
    const halfWidthAh = context.rules.coverageFactor * combine(recorded.standardUncertainty, needed.standardUncertainty ?? 0);
    if (excessAh + halfWidthAh <= 0)
      return notMeasured("cannot tell", "less was recorded than the density needs, so part of the charge was not seen", needed.evidence);
    return {
      value: waterElectrolysedG(Math.max(0, excessAh), context.battery.cells),
      interval: {
        low: waterElectrolysedG(Math.max(0, excessAh - halfWidthAh), context.battery.cells),
        high: waterElectrolysedG(Math.max(0, excessAh + halfWidthAh), context.battery.cells),
      },
      evidence,
      doubts,
    };
  },
};
