/** The cheapest pieces that a series can be cut into, each with what was regulated in it. */
import { changeableEdges } from "../../signal/condense.ts";
import { type LineSums, lineSums } from "../../signal/line-sums.ts";
import { type PieceModel, partition } from "../../signal/partition.ts";
import { type PlaneSums, planeSums } from "../../signal/plane-sums.ts";
import { roughness } from "../../signal/roughness.ts";
import { runningMedian } from "../../signal/running-median.ts";
import { type Ends, endsOf, type Regime, regimeOf, type Scales } from "./pieces.ts";
import type { Series } from "./series.ts";

/** More possible cuts than this would make the search slow; the noise is then taken to be larger until there are fewer. */
const mostEdges = 3_000;
/** No held level is called straight to better than this share of itself: no charger regulates so finely. */
const finestShareV = 0.0004;
const finestShareA = 0.004;

/** A stretch of the series in which one thing is regulated. Half-open range of places. */
export type Segment = {
  readonly regime: Regime;
  readonly from: number;
  readonly to: number;
  readonly ends: Ends;
  readonly remark?: string;
};

/** A range of samples known to be something that no search for pieces could see. Half-open. */
export type Event = {
  readonly regime: "pulses" | "on-off";
  readonly from: number;
  readonly to: number;
  readonly remark?: string;
};

/**
 * The cheapest pieces of the series, each with its regime; each event is one segment.
 * @param events  in order, not overlapping
 */
export function findSegments(series: Series, events: readonly Event[], scales: Scales): Segment[] {
  const placeOf = (sample: number): number => {
    let place = 0;
    while (place + 1 < series.samples.length && (series.samples[place + 1] as number) <= sample) place++;
    return place;
  };
  const count = series.timesS.length;
  const segments: Segment[] = [];
  let from = 0;
  const search = (to: number): void => {
    for (const [a, b] of unbroken(series.breaks, from, to)) segments.push(...findPieces(series, a, b, scales));
  };
  for (const event of events) {
    const [start, end] = [Math.max(from, placeOf(event.from)), event.to >= (series.samples.at(-1) ?? 0) ? count : placeOf(event.to)];
    if (end <= start) continue;
    search(start);
    segments.push({ ...event, from: start, to: end, ends: endsOf(series.voltagesV, series.currentsA, start, end) });
    from = end;
  }
  search(count);
  return segments;
}

/** The parts of [from, to) that no break divides. A piece that bridged one would have to guess where the change within it came. */
function unbroken(breaks: readonly number[], from: number, to: number): [number, number][] {
  const edges = [from, ...breaks.filter((at) => at > from && at < to), to];
  return edges
    .slice(1)
    .map((end, index): [number, number] => [edges[index] as number, end])
    .filter(([a, b]) => b > a);
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
  const plane = planeSums(evenV, evenA, sigmaV, sigmaA);
  return partition(edges, pieceModels(sums, plane, [roughness(evenV, sigmaV), roughness(evenA, sigmaA)], n)).map((piece) => {
    const ends = endsOf(voltages, currents, piece.from, piece.to);
    return {
      regime: regimeOf(ends, {
        ...scales,
        noiseV: Math.max(series.noiseV, series.stepV / 2),
        noiseA: Math.max(series.noiseA, series.stepA / 2),
      }),
      from: from + piece.from,
      to: from + piece.to,
      ends,
    };
  });
}

/**
 * Ways to describe a piece: a straight current with any smooth voltage, a straight voltage with any smooth current, both straight, both
 * on one straight line against each other (an unregulated charger's, however the battery moves along it), or none of these. What may do
 * anything costs what noise alone would (about 1 a place), and more to start.
 */
function pieceModels(
  [voltage, current]: readonly [LineSums, LineSums],
  plane: PlaneSums,
  [roughV, roughA]: readonly [Roughness, Roughness],
  n: number,
): PieceModel<"I" | "U" | "both" | "line" | "neither">[] {
  // Twice the Schwarz criterion's ln n for each number a piece needs: noise in real logs is not quite white.
  const each = 2 * Math.log(Math.max(n, 3));
  return [
    { kind: "both", penalty: 5 * each, cost: (from, to) => voltage.residual(from, to) + current.residual(from, to) },
    { kind: "I", penalty: 7 * each, cost: (from, to) => current.residual(from, to) + roughV(from, to) },
    { kind: "U", penalty: 7 * each, cost: (from, to) => voltage.residual(from, to) + roughA(from, to) },
    { kind: "line", penalty: 7 * each, cost: (from, to) => plane.residual(from, to) + (roughV(from, to) + roughA(from, to)) / 2 },
    { kind: "neither", penalty: 9 * each, cost: (from, to) => 9 * (to - from) },
  ];
}

type Roughness = (from: number, to: number) => number;
