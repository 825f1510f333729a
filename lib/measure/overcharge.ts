/** Charge recorded beyond what the density needs: what is left for gassing, at most. */
import type { Evidence } from "../nouns/evidence.ts";
import { combine } from "../units/uncertainty.ts";
import { chargeNeeded } from "./charge-needed.ts";
import { type FigureOutcome, type NotMeasured, notMeasured } from "./define.ts";
import { missingAccuracy } from "./figures/shared-doubts.ts";
import { chargeOfAll, countedOnce } from "./integrals.ts";
import { evidenceOf } from "./recording.ts";
import { isSealed, type TestContext } from "./test-context.ts";

export type Overcharge = {
  /** Ah through each cell, not below nothing. */
  readonly chargeAh: number;
  /** Ah, not below nothing; undefined where the recorder's accuracy is not stated. */
  readonly interval: { readonly low: number; readonly high: number } | undefined;
  readonly evidence: readonly Evidence[];
  readonly doubts: readonly string[];
};

/**
 * Charge recorded between the first and the last density, less what the plates took by that density.
 *
 * For a vented battery an upper bound on the charge that gassed within the recordings: charge not yet mixed into the acid counts as gas
 * here. What nobody recorded is not in it. For a sealed battery nothing can be said, since its density cannot be read.
 *
 * @returns the overcharge, or why it cannot be told
 * Source: Faraday's law against the log.
 */
export function findOvercharge(context: TestContext): Overcharge | NotMeasured {
  if (isSealed(context.battery))
    return notMeasured("not applicable", "a sealed battery recombines most of the gas, so the charge says nothing of what it lost");
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
  const halfWidthAh =
    recorded.standardUncertainty === undefined
      ? undefined
      : context.rules.coverageFactor * combine(recorded.standardUncertainty, needed.standardUncertainty ?? 0);
  if (excessAh + (halfWidthAh ?? 0) <= 0)
    return notMeasured("cannot tell", "less was recorded than the density needs, so part of the charge was not seen", needed.evidence);
  return {
    chargeAh: Math.max(0, excessAh),
    interval:
      halfWidthAh === undefined ? undefined : { low: Math.max(0, excessAh - halfWidthAh), high: Math.max(0, excessAh + halfWidthAh) },
    evidence: [...needed.evidence, ...recordings.map((recording) => evidenceOf(recording))],
    doubts: ["an upper bound: charge not yet mixed into the acid counts as gas here", ...missingAccuracy(recordings, "current")],
  };
}

/** A figure in proportion to the overcharge: grams of water or litres of gas. */
export function inProportion(overcharge: Overcharge | NotMeasured, perAh: number): FigureOutcome {
  if ("absent" in overcharge) return overcharge;
  const { chargeAh, interval, evidence, doubts } = overcharge;
  return {
    value: perAh * chargeAh,
    interval: interval === undefined ? undefined : { low: perAh * interval.low, high: perAh * interval.high },
    evidence,
    doubts,
  };
}
