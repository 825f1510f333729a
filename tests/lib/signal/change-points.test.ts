import { describe, expect, it } from "vitest";
import { binned, changeableEdges } from "../../../lib/signal/condense.ts";
import { lineSums } from "../../../lib/signal/line-sums.ts";
import { noiseOf } from "../../../lib/signal/noise.ts";
import { partition } from "../../../lib/signal/partition.ts";
import { readReference } from "../../reference/read-table.ts";

/** The series fed as a current, beside a voltage that never moves; one row a second. */
function cutsOf(currents: readonly number[], penalty: (n: number) => number): number[] {
  const n = currents.length;
  const times = Float64Array.from({ length: n }, (_, i) => i);
  const series = binned(times, new Float64Array(n).fill(14.4), Float64Array.from(currents), [[0, n]], 1, [0.1, 0.1]);
  const voltage = lineSums(series.times, series.first, 0.01);
  const current = lineSums(series.times, series.second, noiseOf(series.second));
  const edges = changeableEdges([voltage, current], 2 ** Math.floor(Math.log2(n / 32)));
  const pieces = partition(edges, [
    { kind: "straight", penalty: penalty(n), cost: (from, to) => voltage.residual(from, to) + current.residual(from, to) },
  ]);
  return pieces.slice(1).map((piece) => piece.from);
}

function seriesOf(number: number): number[] {
  const parsed: { series: { raw: number[] }[] } = JSON.parse(readReference(`change-points/quality_control_${number}.json`));
  const raw = parsed.series[0]?.raw;
  if (raw === undefined) throw new Error(`series ${number} is empty`);
  return raw;
}

/** Schwarz's criterion for one straight line: slope, level and place of the cut, ln n each. */
const plain = (n: number): number => 3 * Math.log(n);
/** What the search for stages asks: two lines and a place, each twice over, since noise in real logs is not quite white. */
const asForStages = (n: number): number => 10 * Math.log(n);
/** Blocks of up to four samples are not cut inside, and people who marked the first series differ by three. */
const allowed = 4;

const nearestTo = (known: number, cuts: readonly number[]): number => Math.min(...cuts.map((cut) => Math.abs(cut - known)));

describe("the search for cheapest pieces, on series whose change is known (Turing Change Point Dataset, tests/reference/change-points)", () => {
  it.each([
    [1, 146],
    [2, 97],
    [3, 179],
    [4, 341],
  ])("finds the change of series %i near sample %i, at the price of Schwarz's criterion", (number, known) => {
    expect(nearestTo(known, cutsOf(seriesOf(number), plain))).toBeLessThanOrEqual(allowed);
  });

  it.each([
    [1, 146],
    [4, 341],
  ])("finds the change of series %i, of several times the noise, at the price asked of stages too", (number, known) => {
    expect(nearestTo(known, cutsOf(seriesOf(number), asForStages))).toBeLessThanOrEqual(allowed);
  });

  it("finds no change in series 5, which has none, at either price", () => {
    expect(cutsOf(seriesOf(5), plain)).toEqual([]);
    expect(cutsOf(seriesOf(5), asForStages)).toEqual([]);
  });
});
