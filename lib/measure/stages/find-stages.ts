/**
 * Splits a recording into stages.
 *
 *   trace → pulses set apart → bins → places where something may change → cheapest pieces → regimes → merged stages → edges refined
 */
import type { StageKind } from "../../nouns/stage.ts";
import { binned, changeableEdges } from "../../signal/condense.ts";
import { type LineSums, lineSums } from "../../signal/line-sums.ts";
import { noiseOf, stepOf } from "../../signal/noise.ts";
import { median } from "../../signal/order-statistics.ts";
import { type PieceModel, partition } from "../../signal/partition.ts";
import { highestSlidingMean } from "../../signal/sliding-mean.ts";
import type { Trace } from "../trace.ts";
import { currentHeldBelow, type Ends, elasticityOf, endsOf, type Regime, regimeOf, type Scales } from "./pieces.ts";
import { findPulses } from "./pulses.ts";
import { refineCut } from "./refine.ts";

/** A stage before its figures are added up: where it stands in the trace and what decided. */
export type FoundStage = {
  readonly kind: StageKind;
  /** Half-open range of the trace's samples. */
  readonly from: number;
  readonly to: number;
  readonly confidence: "clear" | "likely" | "doubtful";
  readonly why: string;
};

/** A log is looked at in at most this many bins; ten days at a bin of ten seconds. */
const mostBins = 90_000;
/** More possible cuts than this would make the search slow; the noise is then taken to be larger until there are fewer. */
const mostEdges = 3_000;
/** No held level is called straight to better than this share of itself: no charger regulates so finely. */
const finestShareV = 0.0004;
const finestShareA = 0.004;
/** Two stretches at held currents (voltages) within this share of each other are one stage. */
const sameCurrentShare = 0.06;
const sameVoltageShare = 0.006;
/** A held voltage lower than the highest before it by more than this share is a float. 1 % is 0.14 V of 14.4 V. */
const floatBelowShare = 0.01;
/** A stage whose current falls by more than this share while its voltage climbs is called drooping, not constant. */
const droopShare = 0.25;
/** A falling stretch between a held current and a held voltage is a rounded corner where it is this much shorter than the former. */
const kneeShare = 0.5;
/** A voltage limit counts as reached within this share of it, once the current has fallen by that share. */
const reachShareV = 0.007;
const fallenShareA = 0.03;
/** A voltage that moves less than this share over a stretch without current is held, not relaxing. */
const flatShare = 0.0015;
/** No cell rests above this voltage: the strongest acid in use gives 2.17 V (AGM makers' figure), surface charge a little more. */
const highestRestVPerCell = 2.22;

/**
 * Finds the stages of a trace.
 *
 * @param trace     samples in order, with voltage and current
 * @param zeroA     the current that the recorder cannot tell from none, A (its offset accuracy); 0 where not known
 * @returns stages in time order that together cover every sample once; [] for a trace without samples, voltage or current
 * Never throws. What fits no kind is `unexplained`.
 */
export function findStages(trace: Trace, zeroA: number): FoundStage[] {
  const { elapsedS, voltagesV, currentsA } = trace;
  const count = elapsedS.length;
  if (count < 3 || !trace.hasVoltage || !trace.hasCurrent) return [];
  const stepA = stepOf(currentsA);
  const sampleNoiseA = Math.max(noiseOf(currentsA), stepA / Math.sqrt(12));
  const topA = topCurrent(trace);
  const scales = (noiseV: number, noiseA: number): Scales => ({
    noiseV,
    noiseA,
    // A hundredth of the highest current is common practice for "off"; a finer recorder lowers it, a coarser one raises it.
    idleA: Math.max(Math.min(zeroA > 0 ? zeroA : 0.01 * topA, 0.02 * topA), 2 * stepA, 3 * noiseA, 0.002 * topA),
    topA,
  });

  const segments: Segment[] = [];
  let from = 0;
  for (const [start, end] of [...findPulses(trace, topA, sampleNoiseA), [count, count] as const]) {
    if (start - from >= 1) segments.push(...findSegments(trace, from, start, scales));
    if (end > start) segments.push({ regime: "pulses", from: start, to: end, ends: endsOf(voltagesV, currentsA, start, end) });
    from = end;
  }
  const settled = mergeAlike(settleSteady(mergeAlike(segments, trace)), trace);
  const whole = mergeAlike(absorbKnees(mergeAlike(absorbSplinters(settled, trace), trace), trace), trace);
  return nameStages(placeVoltageStarts(refineCuts(whole, trace), trace), trace);
}

/** Moves each cut to where the samples themselves put it, since bins and blocks only find the neighbourhood. */
function refineCuts(segments: readonly Segment[], trace: Trace): Segment[] {
  const refined = [...segments];
  for (let i = 1; i < refined.length; i++) {
    const before = refined[i - 1] as Segment;
    const after = refined[i] as Segment;
    if (before.regime === "pulses" || after.regime === "pulses") continue;
    const binSamples = Math.ceil(trace.elapsedS.length / mostBins);
    const cut = refineCut(trace, after.from, before.from, after.to, 4 * binSamples);
    refined[i - 1] = { ...before, to: cut };
    refined[i] = { ...after, from: cut };
  }
  return refined;
}

/** The highest current held for a minute, or the highest at all where the log is shorter or coarser. */
function topCurrent(trace: Trace): number {
  const held = highestSlidingMean(trace.elapsedS, trace.currentsA, trace.stretches, 60);
  return Math.max(held?.mean ?? 0, held === undefined ? Math.max(...trace.currentsA.subarray(0, 10_000)) : 0, 0);
}

type Segment = { readonly regime: Regime; readonly from: number; readonly to: number; readonly ends: Ends; readonly remark?: string };

/** The cheapest pieces of one range of samples, each with its regime. */
function findSegments(trace: Trace, from: number, to: number, scalesOf: (noiseV: number, noiseA: number) => Scales): Segment[] {
  const { elapsedS, voltagesV, currentsA } = trace;
  const spanS = (elapsedS[to - 1] as number) - (elapsedS[from] as number);
  const bins = binned(elapsedS, voltagesV, currentsA, from, to, Math.max(trace.intervalS * 0.999, spanS / mostBins, 1e-6));
  const n = bins.times.length;
  const noiseV = Math.max(noiseOf(bins.first), stepOf(voltagesV.subarray(from, to)) / Math.sqrt(12));
  const noiseA = Math.max(noiseOf(bins.second), stepOf(currentsA.subarray(from, to)) / Math.sqrt(12));
  const scales = scalesOf(noiseV, noiseA);
  const levelV = Math.abs(endsOf(bins.first, bins.second, 0, n).meanV);

  let sigmaV = Math.max(noiseV, finestShareV * levelV);
  let sigmaA = Math.max(noiseA, finestShareA * scales.topA, 1e-9);
  let sums: readonly [LineSums, LineSums];
  let edges: number[];
  for (;;) {
    sums = [lineSums(bins.times, bins.first, sigmaV), lineSums(bins.times, bins.second, sigmaA)];
    edges = changeableEdges(sums, Math.max(2, 2 ** Math.floor(Math.log2(n / 32))));
    if (edges.length <= mostEdges) break;
    sigmaV *= 1.5;
    sigmaA *= 1.5;
  }
  const pieces = partition(edges, pieceModels(sums, n));
  return pieces.map((piece) => {
    const ends = endsOf(bins.first, bins.second, piece.from, piece.to);
    return {
      regime: regimeOf(ends, scales),
      from: bins.samples[piece.from] as number,
      to: bins.samples[piece.to] as number,
      ends,
    };
  });
}

/**
 * Three ways to describe a piece: a straight current with any voltage, a straight voltage with any current, both straight.
 * A channel that may do anything costs what noise alone would (1 a bin), and more to start.
 */
function pieceModels([voltage, current]: readonly [LineSums, LineSums], n: number): PieceModel<"I" | "U" | "both" | "neither">[] {
  // Twice the Schwarz criterion's ln n for each number a piece needs: noise in real logs is not quite white.
  const each = 2 * Math.log(Math.max(n, 3));
  return [
    { kind: "both", penalty: 5 * each, cost: (from, to) => voltage.residual(from, to) + current.residual(from, to) },
    { kind: "I", penalty: 7 * each, cost: (from, to) => current.residual(from, to) + (to - from) },
    { kind: "U", penalty: 7 * each, cost: (from, to) => voltage.residual(from, to) + (to - from) },
    { kind: "neither", penalty: 9 * each, cost: (from, to) => 9 * (to - from) },
  ];
}

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
function mergeAlike(segments: readonly Segment[], trace: Trace): Segment[] {
  const merged: Segment[] = [];
  for (const segment of segments) {
    const last = merged.at(-1);
    if (last !== undefined && continues(last, segment)) merged[merged.length - 1] = join(last, segment, last.regime, trace);
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
    case "steady":
      return near(a.ends.meanA, b.ends.meanA, sameCurrentShare) && near(a.ends.meanV, b.ends.meanV, sameVoltageShare);
    default:
      return true;
  }
}

function join(a: Segment, b: Segment, regime: Regime, trace: Trace): Segment {
  return { regime, from: a.from, to: b.to, ends: endsOf(trace.voltagesV, trace.currentsA, a.from, b.to) };
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

function touches(start: number, end: number, value: number, share: number): boolean {
  return near(start, value, share) || near(end, value, share);
}

/**
 * A falling stretch beside a held current is part of it where the two together still count as held: chargers droop as the
 * battery's voltage climbs, and round off the corner to the voltage limit.
 */
function absorbKnees(segments: readonly Segment[], trace: Trace): Segment[] {
  const kept: Segment[] = [];
  segments.forEach((segment, index) => {
    const last = kept.at(-1);
    const next = segments[index + 1];
    if (last !== undefined && (isHeldTogether(last, segment, trace) || (last.regime === "I" && continues(last, segment)))) {
      kept[kept.length - 1] = join(last, segment, "I", trace);
      return;
    }
    if (
      last?.regime === "I" &&
      segment.regime === "W" &&
      next?.regime === "U" &&
      durationS(segment, trace) < kneeShare * durationS(last, trace)
    ) {
      kept[kept.length - 1] = { ...last, to: segment.to, remark: "the corner to the voltage limit is rounded" };
      return;
    }
    kept.push(segment);
  });
  return kept;
}

function isHeldTogether(a: Segment, b: Segment, trace: Trace): boolean {
  const isPair = (a.regime === "I" && b.regime === "W") || (a.regime === "W" && b.regime === "I");
  if (!isPair || !near(a.ends.endA, b.ends.startA, sameCurrentShare)) return false;
  return elasticityOf(endsOf(trace.voltagesV, trace.currentsA, a.from, b.to)) < currentHeldBelow;
}

function durationS(segment: { from: number; to: number }, trace: Trace): number {
  return (trace.elapsedS[segment.to - 1] as number) - (trace.elapsedS[segment.from] as number);
}

/** A stretch of a few samples between two stages is the change itself, not a stage; it goes to the stage that follows. */
function absorbSplinters(segments: readonly Segment[], trace: Trace): Segment[] {
  const shortestS = Math.max(3 * trace.intervalS, 30);
  const queue = [...segments];
  const kept: Segment[] = [];
  while (queue.length > 0) {
    const segment = queue.shift() as Segment;
    const next = queue[0];
    const isEvent = segment.regime === "idle" || segment.regime === "discharge" || segment.regime === "pulses";
    if (durationS(segment, trace) >= shortestS || isEvent || next === undefined) {
      kept.push(segment);
      continue;
    }
    const last = kept.at(-1);
    if (last !== undefined && continues(last, next)) {
      kept[kept.length - 1] = join(last, next, last.regime, trace);
      queue.shift();
    } else queue[0] = { ...next, from: segment.from };
  }
  return kept;
}

/**
 * Moves each start of a held voltage to where the voltage came within reach of its level and the current had begun to fall.
 *
 * With a sharp corner that is the corner. With a rounded one the current falls first, and the limit is taken as reached when the
 * voltage is within 0.7 % of it (0.10 V of 14.4 V).
 */
function placeVoltageStarts(segments: readonly Segment[], trace: Trace): Segment[] {
  const placed = [...segments];
  for (let i = 1; i < placed.length; i++) {
    const before = placed[i - 1] as Segment;
    const held = placed[i] as Segment;
    if ((held.regime !== "U" && held.regime !== "steady") || (before.regime !== "I" && before.regime !== "W")) continue;
    const levelV = held.ends.meanV;
    let start = held.from;
    for (let at = before.from + 2; at < held.from; at++) {
      if (medianOfFive(trace.voltagesV, at) < levelV * (1 - reachShareV)) continue;
      if (medianOfFive(trace.currentsA, held.from) < medianOfFive(trace.currentsA, at) * (1 - fallenShareA)) start = at;
      break;
    }
    if (start === held.from) continue;
    placed[i - 1] = { ...before, to: start };
    placed[i] = { ...held, from: start };
  }
  return placed;
}

function medianOfFive(values: Float64Array, at: number): number {
  return median(values.subarray(Math.max(0, at - 2), at + 3));
}

/** Gives each stretch the trade's name, which needs to know what came before and after. */
function nameStages(segments: readonly Segment[], trace: Trace): FoundStage[] {
  const stages: FoundStage[] = [];
  const cells = likelyCells(trace);
  let highestHeldV = 0;
  segments.forEach((segment, index) => {
    const { ends } = segment;
    const next = segments[index + 1];
    const confidence = confidenceOf(segment, trace);
    const add = (kind: StageKind, sure: FoundStage["confidence"], why: string): void => {
      const change = describeChange(endsOf(trace.voltagesV, trace.currentsA, segment.from, segment.to));
      const remark = segment.remark === undefined ? "" : `; ${segment.remark}`;
      stages.push({ kind, from: segment.from, to: segment.to, confidence: sure, why: `${why}: ${change}${remark}` });
    };
    const isBelowHeld = (voltageV: number): boolean => highestHeldV > 0 && voltageV < highestHeldV * (1 - floatBelowShare);
    switch (segment.regime) {
      case "I":
        if (ends.startA > 0 && (ends.startA - ends.endA) / ends.startA > droopShare)
          add("drooping", "likely", "the current falls by more than a quarter while the voltage climbs");
        else add("constant-current", confidence, "the current is held while the voltage moves");
        return;
      case "W":
        add("drooping", confidence, "current falls as voltage climbs, so neither is held");
        return;
      case "U":
      case "steady": {
        // Where nothing moves it cannot be told what is held, unless a higher voltage was held before.
        const sure = segment.regime !== "steady" ? confidence : isBelowHeld(ends.meanV) ? "likely" : "doubtful";
        if (isBelowHeld(ends.meanV)) add("float", sure, `the voltage is held below the ${highestHeldV.toFixed(2)} V held before`);
        else add("constant-voltage", sure, "the voltage is held and the battery sets the current");
        highestHeldV = Math.max(highestHeldV, ends.meanV);
        return;
      }
      case "idle": {
        const holdsNext = next !== undefined && (next.regime === "U" || next.regime === "steady") && isBelowHeld(next.ends.meanV);
        const isHeld =
          near(ends.startV, ends.endV, flatShare) &&
          (ends.meanV / cells > highestRestVPerCell || near(ends.meanV, highestHeldV, sameVoltageShare));
        if (holdsNext && near(ends.endV, next.ends.startV, 2 * sameVoltageShare))
          add("float", "likely", "no current until the battery has come down to the float voltage");
        else if (isHeld)
          add(
            isBelowHeld(ends.meanV) ? "float" : "constant-voltage",
            "likely",
            "the voltage is held, with a current too small to tell from none",
          );
        else if (index > 0 && segments.slice(index + 1).some(({ regime }) => regime === "I" || regime === "U" || regime === "W"))
          add("interrupted", "likely", "no current for a while, then the charge goes on");
        else add("rest", confidence, "no current that can be told from none");
        return;
      }
      case "discharge":
        highestHeldV = 0;
        add("discharge", confidence, "current flows out of the battery");
        return;
      case "pulses":
        add("pulses", confidence, "the current goes up and down more than six times in ten minutes");
        return;
      case "unexplained":
        add("unexplained", "doubtful", "current and voltage fall together");
    }
  });
  return joinNeighbours(restAroundDischarge(stages));
}

/** Idle time beside a discharge is the battery resting, not a charge interrupted. */
function restAroundDischarge(stages: readonly FoundStage[]): FoundStage[] {
  return stages.map((stage, index) => {
    const isBeside = stages[index - 1]?.kind === "discharge" || stages[index + 1]?.kind === "discharge";
    return stage.kind === "interrupted" && isBeside
      ? {
          ...stage,
          kind: "rest",
          why: stage.why.replace("no current for a while, then the charge goes on", "no current beside a discharge"),
        }
      : stage;
  });
}

/** Cells in series, from the highest voltage: no charger gives a lead-acid cell 2.9 V. */
function likelyCells(trace: Trace): number {
  let highestV = 0;
  for (const voltageV of trace.voltagesV) if (voltageV > highestV) highestV = voltageV;
  return [3, 6, 12, 24].find((cells) => highestV / cells < 2.9) ?? 6;
}

function confidenceOf(segment: Segment, trace: Trace): FoundStage["confidence"] {
  const samples = segment.to - segment.from;
  if (samples < 5) return "doubtful";
  const elasticity = elasticityOf(segment.ends);
  const isBorderline = (elasticity > 1 && elasticity < 2.2) || (elasticity > 8 && elasticity < 16);
  return samples < 20 || isBorderline || durationS(segment, trace) < 600 ? "likely" : "clear";
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
