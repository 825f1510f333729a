/** A trace at an even pace, and the scales by which to read it: what the search for stages works on. */
import { binned } from "../../signal/condense.ts";
import { noiseOf, stepOf } from "../../signal/noise.ts";
import { quantile } from "../../signal/order-statistics.ts";
import { highestSlidingMean } from "../../signal/sliding-mean.ts";
import type { Trace } from "../trace.ts";
import type { Scales } from "./pieces.ts";

/** What helps to read a trace, where it is known. */
export type StageHints = {
  /** The current that the recorder cannot tell from none, A: its fixed error. */
  readonly zeroA?: number;
  /** The battery's capacity, Ah: what is little current for it. */
  readonly capacityAh?: number;
};

/** A log is looked at in at most this many bins; ten days at a bin of ten seconds. */
const mostBins = 90_000;
/** Two rows apart by less than this share of the usual voltage and of the top current have a straight line between them. */
const alikeShare = 0.02;

/** A trace at an even pace: what the search works on. Segments count its places; `samples` leads back to the trace. */
export type Series = {
  readonly timesS: Float64Array;
  readonly voltagesV: Float64Array;
  readonly currentsA: Float64Array;
  /** The trace's first sample at or behind each place; one more at the end. */
  readonly samples: Uint32Array;
  readonly stepS: number;
  /** Noise of a place's values: lower than a sample's where many were averaged, and as the samples say where places were filled in. */
  readonly noiseV: number;
  readonly noiseA: number;
  /** The steps in which the recorder writes; a change of one step may be a change of nothing. */
  readonly stepV: number;
  readonly stepA: number;
};

/** Brings a trace to an even pace: bins of equal width, quiet pauses filled in. */
export function evenSeries(trace: Trace, topA: number): Series {
  const { elapsedS, voltagesV, currentsA } = trace;
  const stepS = Math.max(trace.shortIntervalS * 0.999, trace.spanS / mostBins, 1e-6);
  const bins = binned(elapsedS, voltagesV, currentsA, trace.stretches, stepS, [alikeShare * quantile(voltagesV, 0.5), alikeShare * topA]);
  const isFilled = bins.times.length > elapsedS.length;
  const [stepV, stepA] = [stepOf(voltagesV), stepOf(currentsA)];
  return {
    timesS: bins.times,
    voltagesV: bins.first,
    currentsA: bins.second,
    samples: bins.samples,
    stepS,
    noiseV: Math.max(noiseOf(isFilled ? voltagesV : bins.first), stepV / Math.sqrt(12)),
    noiseA: Math.max(noiseOfCurrent(isFilled ? currentsA : bins.second, trace, topA), stepA / Math.sqrt(12)),
    stepV,
    stepA,
  };
}

/**
 * A recorder that writes when something moves writes mostly edges, and a train of pulses would pass for noise: there, no more than this
 * share of the highest current is noise.
 */
const mostNoiseShare = 0.05;

/** Noise of a current, A. */
function noiseOfCurrent(values: Float64Array, trace: Trace, topA: number): number {
  const noiseA = noiseOf(values);
  return trace.isUneven ? Math.min(noiseA, mostNoiseShare * topA) : noiseA;
}

/** However coarse the recorder, a current above this share of the highest is a current. */
const mostIdleShare = 0.1;

/** The scales of a trace: noise, the current that is none, the highest sustained current. */
export function scalesOf(trace: Trace, { zeroA = 0 }: StageHints): Scales {
  const stepA = stepOf(trace.currentsA);
  const topA = topCurrent(trace);
  const noiseA = Math.max(noiseOfCurrent(trace.currentsA, trace, topA), stepA / Math.sqrt(12));
  const noiseV = Math.max(noiseOf(trace.voltagesV), stepOf(trace.voltagesV) / Math.sqrt(12));
  // A hundredth of the highest current is common practice for "off"; a finer recorder lowers it, a coarser one raises it.
  const offA = Math.min(zeroA > 0 ? zeroA : 0.01 * topA, mostIdleShare * topA);
  return { noiseV, noiseA, idleA: Math.max(offA, 2 * stepA, 3 * noiseA, 0.002 * topA), topA };
}

/** The highest current held for a minute, or the highest at all where the log is shorter or coarser. */
function topCurrent(trace: Trace): number {
  const held = highestSlidingMean(trace.elapsedS, trace.currentsA, trace.stretches, 60);
  return Math.max(held?.mean ?? 0, held === undefined ? Math.max(...trace.currentsA.subarray(0, 10_000)) : 0, 0);
}
