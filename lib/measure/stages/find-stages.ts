/**
 * Splits a recording into stages.
 *
 *   trace ──► even series ──► pulses set apart ──► cheapest pieces ──► merged ──► corners placed ──► named ──► rounds joined
 */
import type { Trace } from "../trace.ts";
import { placeVoltageStarts } from "./corners.ts";
import { mergeSegments } from "./merging.ts";
import { type FoundStage, nameStages } from "./name-stages.ts";
import { joinOnOffHolding } from "./on-off-holding.ts";
import { findPulses } from "./pulses.ts";
import { findSegments } from "./segments.ts";
import { evenSeries, type StageHints, scalesOf } from "./series.ts";

export type { FoundStage, StageHints };

/** A charge counts as finished where the current at its end is below this share of the highest. */
const finishedShare = 0.2;
/** … or below this share of the capacity: C/50, about the end current of a starter battery at its limit (common practice). */
const finishedShareOfC = 0.02;

/**
 * Finds the stages of a trace.
 *
 * @param trace     samples in order, with voltage and current
 * @param hints     what the records say of recorder and battery, where they do
 * @returns stages in time order that together cover every sample once; [] for a trace without samples, voltage or current
 * Never throws. What fits no kind is `unexplained`.
 */
export function findStages(trace: Trace, hints: StageHints = {}): FoundStage[] {
  if (trace.elapsedS.length < 3 || !trace.hasVoltage || !trace.hasCurrent) return [];
  const scales = scalesOf(trace, hints);
  const series = evenSeries(trace, scales.topA);
  const segments = findSegments(series, findPulses(trace, scales.topA, scales.noiseA), scales);
  const placed = placeVoltageStarts(mergeSegments(segments, series), series);
  const finishedA = Math.max(finishedShare * scales.topA, finishedShareOfC * (hints.capacityAh ?? 0));
  const named = nameStages(placed, series, { finishedA, capacityAh: hints.capacityAh });
  return joinOnOffHolding(named, series).map((stage) => ({
    ...stage,
    from: series.samples[stage.from] as number,
    to: series.samples[stage.to] as number,
  }));
}
