/** The cheapest pieces that a series can be cut into, each with what was regulated in it. */
import { changeableEdges } from "../../signal/condense.ts";
import { type LineSums, lineSums } from "../../signal/line-sums.ts";
import { type PieceModel, partition } from "../../signal/partition.ts";
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

/** The cheapest pieces of the series, each with its regime; stretches with pulses are one segment each. */
export function findSegments(series: Series, pulses: readonly (readonly [number, number])[], scales: Scales): Segment[] {
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
