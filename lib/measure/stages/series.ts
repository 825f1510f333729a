/** A trace at an even pace, and the scales by which to read it: what the search for stages works on. */
import { type Bins, binned } from "../../signal/condense.ts";
import { noiseBetweenJumps, stepOf } from "../../signal/noise.ts";
import { median } from "../../signal/order-statistics.ts";
import { smoothSteps } from "../../signal/smooth-steps.ts";
import { highestHeld } from "../held-mean.ts";
import type { Trace } from "../trace.ts";
import type { Scales } from "./pieces.ts";

/** What helps to read a trace, where it is known. */
export type StageHints = {
  /** The current that the recorder cannot tell from none, A: its fixed error. */
  readonly zeroA?: number;
  /** The battery's capacity, Ah: what is little current for it. */
  readonly capacityAh?: number;
  /** The battery's cells in series. */
  readonly cells?: number;
};

/** A log is looked at in at most this many bins; ten days at a bin of ten seconds. */
const mostBins = 90_000;
/** The usual voltage of a log is told by no more rows than this. */
const valuesLookedAt = 20_000;
/** Two rows apart by less than this share of the usual voltage and of the top current have a straight line between them. */
const alikeShare = 0.02;

/** A trace at an even pace: what the search works on. Segments count its places; `samples` leads back to the trace. */
export type Series = {
  readonly timesS: Float64Array;
  readonly voltagesV: Float64Array;
  readonly currentsA: Float64Array;
  /** The trace's first sample at or behind each place; one more at the end. */
  readonly samples: Uint32Array;
  /** Places that follow a gap. */
  readonly gapEnds: readonly number[];
  /** … and of these, places that follow a gap over which the voltage fell: something changed in it, and nobody saw when. */
  readonly breaks: readonly number[];
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
  const { elapsedS } = trace;
  const [stepV, stepA] = [stepOf(trace.voltagesV), stepOf(trace.currentsA)];
  // The treads of a coarse recorder's stairs would each look like something held.
  const voltagesV = smoothSteps(elapsedS, trace.voltagesV, stepV);
  const currentsA = smoothSteps(elapsedS, trace.currentsA, stepA);
  const stepS = Math.max(trace.shortIntervalS * 0.999, trace.spanS / mostBins, 1e-6);
  const alike = [alikeShare * usualOf(voltagesV), alikeShare * topA] as const;
  const bins = binned(elapsedS, voltagesV, currentsA, trace.stretches, stepS, alike);
  const gapEnds = gapEndsOf(bins, trace.stretches);
  const isFilled = bins.times.length > elapsedS.length;
  return {
    timesS: bins.times,
    voltagesV: bins.first,
    currentsA: bins.second,
    samples: bins.samples,
    gapEnds,
    breaks: gapEnds.filter((at) => fallsInto(at, bins.first, alike[0])),
    stepS,
    noiseV: noiseOrStep(isFilled ? voltagesV : bins.first, stepV),
    noiseA: noiseOrStep(isFilled ? currentsA : bins.second, stepA),
    stepV,
    stepA,
  };
}

/** The usual value of a channel: the median of as many as tell it. */
function usualOf(values: Float64Array): number {
  const stride = Math.max(1, Math.ceil(values.length / valuesLookedAt));
  return median(Float64Array.from({ length: Math.ceil(values.length / stride) }, (_, place) => values[place * stride] as number));
}

/** Places at which a stretch begins, save the first. */
function gapEndsOf({ samples }: Bins, stretches: Trace["stretches"]): number[] {
  const begins = new Set(stretches.slice(1).map(([from]) => from));
  const places: number[] = [];
  for (let at = 1; at + 1 < samples.length; at++) if (begins.has(samples[at] as number) && samples[at] !== samples[at - 1]) places.push(at);
  return places;
}

/**
 * Whether the voltage at a place is clearly lower than at the one before. A voltage that rises over a gap may be one charge going on, and
 * so may a current that falls; only a charge that stopped or went over to another step lets the voltage fall.
 */
function fallsInto(at: number, voltagesV: Float64Array, alikeV: number): boolean {
  return (voltagesV[at] as number) < (voltagesV[at - 1] as number) - alikeV;
}

/** Noise of a channel, and never less than what writing it in steps does to it. */
function noiseOrStep(values: Float64Array, step: number): number {
  return Math.max(noiseBetweenJumps(values, step), step / Math.sqrt(12));
}

/** However coarse the recorder, a current above this share of the highest is a current. */
const mostIdleShare = 0.1;

/** The scales of a trace: noise, the current that is none, the highest sustained current. */
export function scalesOf(trace: Trace, { zeroA = 0 }: StageHints): Scales {
  const stepA = stepOf(trace.currentsA);
  const topA = topCurrent(trace);
  const noiseA = noiseOrStep(trace.currentsA, stepA);
  const noiseV = noiseOrStep(trace.voltagesV, stepOf(trace.voltagesV));
  // A hundredth of the highest current is common practice for "off"; a finer recorder lowers it, a coarser one raises it.
  const offA = Math.min(zeroA > 0 ? zeroA : 0.01 * topA, mostIdleShare * topA);
  return { noiseV, noiseA, idleA: Math.max(offA, 2 * stepA, 3 * noiseA, 0.002 * topA), topA };
}

/** The highest current held for a minute, or the highest at all where the log is shorter or coarser. */
function topCurrent(trace: Trace): number {
  const held = highestHeld(trace, "current", 60);
  return Math.max(held?.mean ?? 0, held === undefined ? Math.max(...trace.currentsA.subarray(0, 10_000)) : 0, 0);
}
