/**
 * Splits a recording into stages.
 *
 *   trace ──► even, smooth series ──► holding by off and on, and pulses, set apart ──► cheapest pieces
 *         ──► merged ──► changes placed ──► named
 */
import type { Trace } from "../trace.ts";
import { batteryScale } from "./battery-scale.ts";
import { placeBends } from "./bends.ts";
import { placeVoltageStarts } from "./corners.ts";
import { mergeSegments } from "./merging.ts";
import { type FoundStage, nameStages } from "./name-stages.ts";
import { findOnOffHolding } from "./on-off-holding.ts";
import type { Scales } from "./pieces.ts";
import { findPulses } from "./pulses.ts";
import { type Event, findSegments } from "./segments.ts";
import { evenSeries, type StageHints, scalesOf } from "./series.ts";

export type { FoundStage, StageHints };

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
  const battery = batteryScale(scales, hints, series);
  const segments = findSegments(series, findEvents(trace, scales, battery.cells), scales);
  const placed = placeBends(placeVoltageStarts(mergeSegments(segments, series), series), series);
  const named = nameStages(placed, series, battery);
  return named.map((stage) => ({
    ...stage,
    from: series.samples[stage.from] as number,
    to: series.samples[stage.to] as number,
  }));
}

/** Holding by off and on, and trains of pulses, in order; what belongs to the former is none of the latter. */
function findEvents(trace: Trace, scales: Scales, cells: number): Event[] {
  const holdings = findOnOffHolding(trace, scales, cells);
  const pulses = findPulses(trace, scales.topA, scales.noiseA, holdings);
  return [
    ...holdings.map(({ from, to, told }): Event => ({ regime: "on-off", from, to, remark: told })),
    ...pulses.map(([from, to]): Event => ({ regime: "pulses", from, to })),
  ].sort((a, b) => a.from - b.from);
}
