/**
 * Splits a recording into stages.
 *
 *   trace → pulses set apart → bins → places where something may change → cheapest pieces → regimes → merged stages → edges refined
 */
import type { StageKind } from "../../nouns/stage.ts";
import { binned, changeableEdges } from "../../signal/condense.ts";
import { type LineSums, lineSums } from "../../signal/line-sums.ts";
import { noiseOf, stepOf } from "../../signal/noise.ts";
import { median, quantile } from "../../signal/order-statistics.ts";
import { type PieceModel, partition } from "../../signal/partition.ts";
import { roughness } from "../../signal/roughness.ts";
import { runningMedian } from "../../signal/running-median.ts";
import { highestSlidingMean } from "../../signal/sliding-mean.ts";
import { trapezoid } from "../../signal/trapezoid.ts";
import type { Trace } from "../trace.ts";
import { currentHeldBelow, type Ends, elasticityOf, endsOf, type Regime, regimeOf, type Scales } from "./pieces.ts";
import { findPulses } from "./pulses.ts";

/** A stage before its figures are added up: where it stands in the trace and what decided. */
export type FoundStage = {
  readonly kind: StageKind;
  /** Half-open range of the trace's samples. */
  readonly from: number;
  readonly to: number;
  readonly confidence: "clear" | "likely" | "doubtful";
  readonly why: string;
};

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
/** More possible cuts than this would make the search slow; the noise is then taken to be larger until there are fewer. */
const mostEdges = 3_000;
/** No held level is called straight to better than this share of itself: no charger regulates so finely. */
const finestShareV = 0.0004;
const finestShareA = 0.004;
/** A battery at rest does not jump by more than this from one value to the next. */
const idleJumpShareV = 0.03;
/** Two stretches at held currents (voltages) within this share of each other are one stage. */
const sameCurrentShare = 0.06;
const sameVoltageShare = 0.006;
/** A held voltage lower than the highest before it by more than this share is a float. 1 % is 0.14 V of 14.4 V. */
const floatBelowShare = 0.01;
/** A stage whose current falls by more than this share while its voltage climbs is called drooping, not constant. */
const droopShare = 0.25;
/** Less than this, between two stages, is the change itself. */
const splinterS = 30;
const splinterIntervals = 3.5;
/** A falling stretch between a held current and a held voltage is a rounded corner where it is this much shorter than the former. */
const kneeShare = 0.5;
/** A voltage limit counts as reached within this share of it, once the current has fallen by that share. */
const reachShareV = 0.007;
const fallenShareA = 0.005;
/** A corner is rounded where the current has fallen by this share before the voltage comes within reach. */
const roundedShareA = 0.05;
/** A charge counts as finished where the current at its end is below this share of the highest. */
const finishedShare = 0.2;
/** … or below this share of the capacity: C/50, about the end current of a starter battery at its limit (common practice). */
const finishedShareOfC = 0.02;
/** Mean current that only keeps a battery full, A for each Ah: IEC 62485-2, vented, boost, safety factor included. */
const keepingFullAPerAh = 0.004;
/** A voltage that moves less than this share over a stretch without current is held, not relaxing. */
const flatShare = 0.0015;
/** No cell rests above this voltage: the strongest acid in use gives 2.17 V (AGM makers' figure), surface charge a little more. */
const highestRestVPerCell = 2.22;

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
  const whole = mergeAlike(absorbSplinters(mergeAlike(segments, series), series), series);
  const settled = mergeAlike(reconsider(mergeAlike(settleSteady(whole), series)), series);
  const joined = mergeAlike(absorbKnees(settled, series), series);
  const placed = placeVoltageStarts(joined, series);
  const finishedA = Math.max(finishedShare * scales.topA, finishedShareOfC * (hints.capacityAh ?? 0));
  return nameStages(placed, series, finishedA, hints.capacityAh).map((stage) => ({
    ...stage,
    from: series.samples[stage.from] as number,
    to: series.samples[stage.to] as number,
  }));
}

/** A trace at an even pace: what the search works on. Segments count its places; `samples` leads back to the trace. */
type Series = {
  readonly timesS: Float64Array;
  readonly voltagesV: Float64Array;
  readonly currentsA: Float64Array;
  /** The trace's first sample at or behind each place; one more at the end. */
  readonly samples: Uint32Array;
  readonly stepS: number;
  /** Noise of a place's values: lower than a sample's where many were averaged, and as the samples say where places were filled in. */
  readonly noiseV: number;
  readonly noiseA: number;
};

function evenSeries(trace: Trace, topA: number): Series {
  const { elapsedS, voltagesV, currentsA } = trace;
  const stepS = Math.max(trace.shortIntervalS * 0.999, trace.spanS / mostBins, 1e-6);
  const bins = binned(elapsedS, voltagesV, currentsA, trace.stretches, stepS, [alikeShare * quantile(voltagesV, 0.5), alikeShare * topA]);
  const isFilled = bins.times.length > elapsedS.length;
  return {
    timesS: bins.times,
    voltagesV: bins.first,
    currentsA: bins.second,
    samples: bins.samples,
    stepS,
    noiseV: Math.max(noiseOf(isFilled ? voltagesV : bins.first), stepOf(voltagesV) / Math.sqrt(12)),
    noiseA: Math.max(noiseOf(isFilled ? currentsA : bins.second), stepOf(currentsA) / Math.sqrt(12)),
  };
}

function scalesOf(trace: Trace, { zeroA = 0 }: StageHints): Scales {
  const stepA = stepOf(trace.currentsA);
  const noiseA = Math.max(noiseOf(trace.currentsA), stepA / Math.sqrt(12));
  const noiseV = Math.max(noiseOf(trace.voltagesV), stepOf(trace.voltagesV) / Math.sqrt(12));
  const topA = topCurrent(trace);
  // A hundredth of the highest current is common practice for "off"; a finer recorder lowers it, a coarser one raises it.
  const offA = Math.min(zeroA > 0 ? zeroA : 0.01 * topA, 0.02 * topA);
  return { noiseV, noiseA, idleA: Math.max(offA, 2 * stepA, 3 * noiseA, 0.002 * topA), topA };
}

type Segment = { readonly regime: Regime; readonly from: number; readonly to: number; readonly ends: Ends; readonly remark?: string };

/** The cheapest pieces of the series, each with its regime; stretches with pulses are one segment each. */
function findSegments(series: Series, pulses: readonly (readonly [number, number])[], scales: Scales): Segment[] {
  const placeOf = (sample: number): number => {
    let place = 0;
    while (place + 1 < series.samples.length && (series.samples[place + 1] as number) <= sample) place++;
    return place;
  };
  const count = series.timesS.length;
  const segments: Segment[] = [];
  let from = 0;
  for (const [start, end] of [...pulses.map(([a, b]) => [placeOf(a), placeOf(b)] as const), [count, count] as const]) {
    if (start > from) segments.push(...findPieces(series, from, start, scales));
    if (end > start)
      segments.push({ regime: "pulses", from: start, to: end, ends: endsOf(series.voltagesV, series.currentsA, start, end) });
    from = end;
  }
  return segments;
}

function findPieces(series: Series, from: number, to: number, scales: Scales): Segment[] {
  const times = series.timesS.subarray(from, to);
  const voltages = series.voltagesV.subarray(from, to);
  const currents = series.currentsA.subarray(from, to);
  const n = to - from;
  // Teeth of a sample or two, as a meter or a switching load makes them, are no change of stage.
  const evenV = runningMedian(voltages);
  const evenA = runningMedian(currents);
  let sigmaV = Math.max(series.noiseV, finestShareV * Math.abs(endsOf(voltages, currents, 0, n).meanV));
  let sigmaA = Math.max(series.noiseA, finestShareA * scales.topA, 1e-9);
  let sums: readonly [LineSums, LineSums];
  let edges: number[];
  for (;;) {
    sums = [lineSums(times, evenV, sigmaV), lineSums(times, evenA, sigmaA)];
    edges = changeableEdges(sums, Math.max(2, 2 ** Math.floor(Math.log2(n / 32))));
    if (edges.length <= mostEdges) break;
    sigmaV *= 1.5;
    sigmaA *= 1.5;
  }
  return partition(edges, pieceModels(sums, [roughness(evenV, sigmaV), roughness(evenA, sigmaA)], n)).map((piece) => {
    const ends = endsOf(voltages, currents, piece.from, piece.to);
    return {
      regime: regimeOf(ends, { ...scales, noiseV: series.noiseV, noiseA: series.noiseA }),
      from: from + piece.from,
      to: from + piece.to,
      ends,
    };
  });
}

/** The highest current held for a minute, or the highest at all where the log is shorter or coarser. */
function topCurrent(trace: Trace): number {
  const held = highestSlidingMean(trace.elapsedS, trace.currentsA, trace.stretches, 60);
  return Math.max(held?.mean ?? 0, held === undefined ? Math.max(...trace.currentsA.subarray(0, 10_000)) : 0, 0);
}

/**
 * Ways to describe a piece: a straight current with any smooth voltage, a straight voltage with any smooth current, both straight, or
 * neither. What may do anything costs what noise alone would (about 1 a place), and more to start.
 */
function pieceModels(
  [voltage, current]: readonly [LineSums, LineSums],
  [roughV, roughA]: readonly [Roughness, Roughness],
  n: number,
): PieceModel<"I" | "U" | "both" | "neither">[] {
  // Twice the Schwarz criterion's ln n for each number a piece needs: noise in real logs is not quite white.
  const each = 2 * Math.log(Math.max(n, 3));
  return [
    { kind: "both", penalty: 5 * each, cost: (from, to) => voltage.residual(from, to) + current.residual(from, to) },
    { kind: "I", penalty: 7 * each, cost: (from, to) => current.residual(from, to) + roughV(from, to) },
    { kind: "U", penalty: 7 * each, cost: (from, to) => voltage.residual(from, to) + roughA(from, to) },
    { kind: "neither", penalty: 9 * each, cost: (from, to) => 9 * (to - from) },
  ];
}

type Roughness = (from: number, to: number) => number;

function describeChange(ends: Ends): string {
  const elasticity = elasticityOf(ends);
  const ratio = Number.isFinite(elasticity) ? `, elasticity ${elasticity.toFixed(1)}` : "";
  return `voltage ${ends.startV.toFixed(2)} → ${ends.endV.toFixed(2)} V, current ${ends.startA.toFixed(2)} → ${ends.endA.toFixed(2)} A${ratio}`;
}

/** Whether two values lie within a share of the larger of them. */
function near(a: number, b: number, share: number): boolean {
  return Math.abs(a - b) <= share * Math.max(Math.abs(a), Math.abs(b));
}

/** Joins neighbours that do the same thing at the same level. */
function mergeAlike(segments: readonly Segment[], series: Series): Segment[] {
  const merged: Segment[] = [];
  for (const segment of segments) {
    const last = merged.at(-1);
    if (last !== undefined && continues(last, segment)) merged[merged.length - 1] = join(last, segment, last.regime, series);
    else merged.push(segment);
  }
  return merged;
}

function continues(a: Segment, b: Segment): boolean {
  if (a.regime !== b.regime) return false;
  switch (a.regime) {
    case "I":
      return near(a.ends.endA, b.ends.startA, sameCurrentShare) || near(a.ends.meanA, b.ends.meanA, sameCurrentShare);
    case "U":
      return near(a.ends.endV, b.ends.startV, sameVoltageShare) && near(a.ends.meanV, b.ends.meanV, 2 * sameVoltageShare);
    case "idle":
      // A held voltage with next to no current is no rest: the voltage jumps where the charger lets go or takes up again.
      return near(a.ends.endV, b.ends.startV, idleJumpShareV);
    case "steady":
      return near(a.ends.meanA, b.ends.meanA, sameCurrentShare) && near(a.ends.meanV, b.ends.meanV, sameVoltageShare);
    default:
      return true;
  }
}

function join(a: Segment, b: Segment, regime: Regime, series: Series): Segment {
  return { regime, from: a.from, to: b.to, ends: endsOf(series.voltagesV, series.currentsA, a.from, b.to) };
}

/** A stretch where nothing moves continues what its neighbour holds; alone it stays steady. */
function settleSteady(segments: readonly Segment[]): Segment[] {
  const settled: Segment[] = [];
  segments.forEach((segment, index) => {
    if (segment.regime !== "steady") {
      settled.push(segment);
      return;
    }
    const neighbours = [settled.at(-1), segments[index + 1]].filter((other) => other !== undefined);
    const holdsVoltage = neighbours.some(
      ({ regime, ends }) => regime === "U" && touches(ends.startV, ends.endV, segment.ends.meanV, sameVoltageShare),
    );
    const holdsCurrent = neighbours.some(
      ({ regime, ends }) => regime === "I" && touches(ends.startA, ends.endA, segment.ends.meanA, sameCurrentShare),
    );
    settled.push({ ...segment, regime: holdsVoltage ? "U" : holdsCurrent ? "I" : "steady" });
  });
  return settled;
}

/** A voltage that crept up piece by piece may not have been held after all, now that the pieces are one. */
function reconsider(segments: readonly Segment[]): Segment[] {
  return segments.map((segment) =>
    segment.regime === "U" && regimeOf(segment.ends, quietScales) === "W" ? { ...segment, regime: "W" } : segment,
  );
}

/** Scales for stretches long enough that noise does not matter. */
const quietScales: Scales = { noiseV: 0, noiseA: 0, idleA: 0, topA: 0 };

function touches(start: number, end: number, value: number, share: number): boolean {
  return near(start, value, share) || near(end, value, share);
}

/**
 * A falling stretch beside a held current is part of it where the two together still count as held: chargers droop as the
 * battery's voltage climbs, and round off the corner to the voltage limit.
 */
function absorbKnees(segments: readonly Segment[], series: Series): Segment[] {
  const kept: Segment[] = [];
  segments.forEach((segment, index) => {
    const last = kept.at(-1);
    const next = segments[index + 1];
    if (last !== undefined && (isHeldTogether(last, segment, series) || (last.regime === "I" && continues(last, segment)))) {
      kept[kept.length - 1] = join(last, segment, "I", series);
      return;
    }
    if (
      last?.regime === "I" &&
      segment.regime === "W" &&
      next?.regime === "U" &&
      durationS(segment, series) < kneeShare * durationS(last, series)
    ) {
      kept[kept.length - 1] = { ...last, to: segment.to, remark: "the corner to the voltage limit is rounded" };
      return;
    }
    kept.push(segment);
  });
  return kept;
}

function isHeldTogether(a: Segment, b: Segment, series: Series): boolean {
  const isPair = (a.regime === "I" && b.regime === "W") || (a.regime === "W" && b.regime === "I");
  if (!isPair || !near(a.ends.endA, b.ends.startA, sameCurrentShare)) return false;
  return elasticityOf(endsOf(series.voltagesV, series.currentsA, a.from, b.to)) < currentHeldBelow;
}

function durationS(segment: { from: number; to: number }, series: Series): number {
  return (series.timesS[segment.to - 1] as number) - (series.timesS[segment.from] as number);
}

/** A stretch of a few samples between two stages is the change itself, not a stage; it goes to the stage that follows. */
function absorbSplinters(segments: readonly Segment[], series: Series): Segment[] {
  const queue = [...segments];
  const kept: Segment[] = [];
  while (queue.length > 0) {
    const segment = queue.shift() as Segment;
    const next = queue[0];
    const isEvent = segment.regime === "idle" || segment.regime === "discharge" || segment.regime === "pulses";
    const untilS = (series.timesS[segment.to] ?? series.timesS.at(-1)) as number;
    const isSplinter = untilS - (series.timesS[segment.from] as number) < Math.max(splinterS, splinterIntervals * series.stepS);
    if (!isSplinter || isEvent || next === undefined) {
      kept.push(segment);
      continue;
    }
    const last = kept.at(-1);
    if (last !== undefined && continues(last, next)) {
      kept[kept.length - 1] = join(last, next, last.regime, series);
      queue.shift();
    } else queue[0] = { ...next, from: segment.from };
  }
  return kept;
}

/**
 * Moves each start of a held voltage to where the voltage came within reach of its level and the current began to fall below its trend.
 *
 * With a sharp corner that is the corner: the voltage is near its level some time before, but the current is still held. With a rounded
 * one the current falls first, and the limit counts as reached when the voltage is within 0.7 % of it (0.10 V of 14.4 V).
 */
function placeVoltageStarts(segments: readonly Segment[], series: Series): Segment[] {
  const placed = [...segments];
  for (let i = 1; i < placed.length; i++) {
    const before = placed[i - 1] as Segment;
    const held = placed[i] as Segment;
    if ((held.regime !== "U" && held.regime !== "steady") || before.regime !== "I") continue;
    const near = firstNear(series, before.from + 2, held.from, held.ends.meanV * (1 - reachShareV));
    const start = firstFallen(series, before.from, near, held.to);
    if (start === undefined || start <= before.from + 2 || start >= held.to - 2) continue;
    placed[i - 1] = { ...before, to: start };
    placed[i] = { ...held, from: start };
  }
  return placed;
}

/** The first sample from which the voltage is at least `levelV`, by medians of five; `to` where there is none. */
function firstNear(series: Series, from: number, to: number, levelV: number): number {
  for (let at = from; at < to; at++) if (medianOfFive(series.voltagesV, at) >= levelV) return at;
  return to;
}

/**
 * The first sample at or after `near` at which the current lies below the straight line through the samples before `near`, and stays
 * there; `near` itself where it had fallen already.
 */
function firstFallen(series: Series, from: number, near: number, to: number): number | undefined {
  if (hadFallen(series, from, near)) return near;
  const trendFrom = Math.max(from, near - Math.max(10, Math.floor((near - from) / 3)));
  if (near - trendFrom < 4) return undefined;
  const times = series.timesS.subarray(trendFrom, near);
  const currents = series.currentsA.subarray(trendFrom, near);
  const trend = lineSums(times, currents, 1);
  const scatterA = Math.sqrt(trend.residual(0, near - trendFrom) / Math.max(1, near - trendFrom - 2));
  const levelA = trend.mean(0, near - trendFrom);
  const allowedA = Math.max(3 * scatterA, fallenShareA * Math.abs(levelA));
  const isBelow = (at: number): boolean =>
    medianOfFive(series.currentsA, at) < trend.lineAt(0, near - trendFrom, series.timesS[at] as number) - allowedA;
  for (let at = near; at < to - 5; at++) {
    // Five medians in a row below the line; the first of them saw the fall with its middle sample.
    if (isBelow(at) && isBelow(at + 1) && isBelow(at + 4)) return at;
  }
  return undefined;
}

/** Whether the current at `near` is well below where the middle of its stretch was heading. */
function hadFallen(series: Series, from: number, near: number): boolean {
  const start = from + Math.floor((near - from) / 5);
  const end = from + Math.floor((2 * (near - from)) / 3);
  if (end - start < 5) return false;
  const trend = lineSums(series.timesS.subarray(start, end), series.currentsA.subarray(start, end), 1);
  return medianOfFive(series.currentsA, near) < (1 - roundedShareA) * trend.lineAt(0, end - start, series.timesS[near] as number);
}

function medianOfFive(values: Float64Array, at: number): number {
  return median(values.subarray(Math.max(0, at - 2), at + 3));
}

/** Gives each stretch the trade's name, which needs to know what came before and after. */
function nameStages(segments: readonly Segment[], series: Series, finishedA: number, capacityAh: number | undefined): FoundStage[] {
  const stages: FoundStage[] = [];
  const cells = likelyCells(series);
  // The highest voltage that the charger has brought the battery to so far: what a float lies below.
  let reachedV = 0;
  // Whether the charge had come to its end: a pause after that is rest, one before it an interruption.
  let isFinished = false;
  segments.forEach((segment, index) => {
    const { ends } = segment;
    const later = segments.slice(index + 1);
    const next = later[0];
    const confidence = confidenceOf(segment, series);
    const add = (kind: StageKind, sure: FoundStage["confidence"], why: string): void => {
      const change = describeChange(endsOf(series.voltagesV, series.currentsA, segment.from, segment.to));
      const remark = segment.remark === undefined ? "" : `; ${segment.remark}`;
      stages.push({ kind, from: segment.from, to: segment.to, confidence: sure, why: `${why}: ${change}${remark}` });
    };
    const isBelowReached = (voltageV: number): boolean => reachedV > 0 && voltageV < reachedV * (1 - floatBelowShare);
    const isHolding = (other: Segment | undefined): other is Segment => other?.regime === "U" || other?.regime === "steady";
    const fallsToHold = isHolding(next) && isBelowReached(next.ends.meanV) && ends.endV > next.ends.meanV * (1 - floatBelowShare);
    switch (segment.regime) {
      case "I":
        if (ends.startA > 0 && (ends.startA - ends.endA) / ends.startA > droopShare)
          add("drooping", "likely", "the current falls by more than a quarter while the voltage climbs");
        else add("constant-current", confidence, "the current is held while the voltage moves");
        reachedV = Math.max(reachedV, ends.endV);
        isFinished = false;
        return;
      case "W":
        add("drooping", confidence, "current falls as voltage climbs, so neither is held");
        reachedV = Math.max(reachedV, ends.endV);
        isFinished = ends.endA < finishedA;
        return;
      case "U":
      case "steady": {
        const isBeforeLimit =
          next?.regime === "I" &&
          next.ends.startA > ends.endA &&
          later.some((other) => other.ends.endV > ends.endV * (1 + floatBelowShare));
        if (reachedV === 0 && isBeforeLimit) {
          add("constant-current", "likely", "a low current before the full one, a soft start");
          return;
        }
        // Where nothing moves it cannot be told what is held, unless a higher voltage was reached before.
        const falls = ends.endA < 0.95 * ends.startA;
        const sure = falls && segment.regime !== "steady" ? confidence : isBelowReached(ends.meanV) ? "likely" : "doubtful";
        if (isBelowReached(ends.meanV)) add("float", sure, `the voltage is held below the ${reachedV.toFixed(2)} V reached before`);
        else add("constant-voltage", sure, "the voltage is held and the battery sets the current");
        reachedV = Math.max(reachedV, ends.meanV);
        isFinished = ends.endA < finishedA;
        return;
      }
      case "idle": {
        const isHeld =
          near(ends.startV, ends.endV, flatShare) &&
          (ends.meanV / cells > highestRestVPerCell || near(ends.meanV, reachedV, sameVoltageShare));
        if (fallsToHold) add("float", "likely", "no current until the battery has come down to the float voltage");
        else if (isHeld)
          add(
            isBelowReached(ends.meanV) ? "float" : "constant-voltage",
            "likely",
            "the voltage is held, with a current too small to tell from none",
          );
        else if (index > 0 && goesOn(segment, later, series, capacityAh, isFinished))
          add("interrupted", "likely", "no current for a while in the middle of a charge that then goes on");
        else add("rest", confidence, "no current that can be told from none");
        return;
      }
      case "discharge":
        reachedV = 0;
        isFinished = false;
        add("discharge", confidence, "current flows out of the battery");
        return;
      case "pulses":
        add("pulses", confidence, "the current goes up and down more than six times in ten minutes");
        reachedV = Math.max(reachedV, quantile(series.voltagesV.subarray(segment.from, segment.to), 0.9));
        isFinished = true;
        return;
      case "unexplained":
        if (fallsToHold || (next === undefined && isBelowReached(ends.endV) && ends.endV / cells > highestRestVPerCell))
          add("float", "likely", "the voltage comes down from the limit and a little current returns");
        else add("unexplained", "doubtful", "current and voltage fall together");
    }
  });
  return joinNeighbours(restAroundDischarge(stages));
}

/**
 * Whether the charge goes on after a pause: not only the little that keeps a full battery full.
 *
 * Where the capacity is known, the mean current over the pause and the charge after it decides: 4 mA for each Ah is what IEC 62485-2
 * reckons with for a battery gassing at boost voltage, so more than that goes into the plates. Else it goes on unless it had finished.
 */
function goesOn(pause: Segment, later: readonly Segment[], series: Series, capacityAh: number | undefined, isFinished: boolean): boolean {
  const end = later.findIndex((segment) => segment.regime === "idle");
  const charging = end < 0 ? later : later.slice(0, end);
  const first = charging[0];
  const last = charging.at(-1);
  if (first === undefined || last === undefined) return false;
  if (capacityAh === undefined) return !isFinished;
  const chargeAs = trapezoid(series.timesS, series.currentsA, first.from, last.to);
  const overS = (series.timesS[last.to - 1] as number) - (series.timesS[pause.from] as number);
  return chargeAs / overS > keepingFullAPerAh * capacityAh;
}

/** Idle time beside a discharge is the battery resting, not a charge interrupted. */
function restAroundDischarge(stages: readonly FoundStage[]): FoundStage[] {
  return stages.map((stage, index) => {
    const isBeside = stages[index - 1]?.kind === "discharge" || stages[index + 1]?.kind === "discharge";
    return stage.kind === "interrupted" && isBeside
      ? {
          ...stage,
          kind: "rest",
          why: stage.why.replace("no current for a while in the middle of a charge that then goes on", "no current beside a discharge"),
        }
      : stage;
  });
}

/** Cells in series, from the highest voltage: no charger gives a lead-acid cell 2.9 V. */
function likelyCells(series: Series): number {
  let highestV = 0;
  for (const voltageV of series.voltagesV) if (voltageV > highestV) highestV = voltageV;
  return [3, 6, 12, 24].find((cells) => highestV / cells < 2.9) ?? 6;
}

function confidenceOf(segment: Segment, series: Series): FoundStage["confidence"] {
  const samples = segment.to - segment.from;
  if (samples < 5) return "doubtful";
  const elasticity = elasticityOf(segment.ends);
  const isBorderline = (elasticity > 1 && elasticity < 2.2) || (elasticity > 8 && elasticity < 16);
  return samples < 20 || isBorderline || durationS(segment, series) < 600 ? "likely" : "clear";
}

function joinNeighbours(stages: readonly FoundStage[]): FoundStage[] {
  const joined: FoundStage[] = [];
  for (const stage of stages) {
    const last = joined.at(-1);
    if (last !== undefined && last.kind === stage.kind && (stage.kind === "float" || stage.kind === "rest" || stage.kind === "interrupted"))
      joined[joined.length - 1] = { ...last, to: stage.to };
    else joined.push(stage);
  }
  return joined;
}
