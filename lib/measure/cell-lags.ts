/** How far each cell lags behind its neighbours, over the visits, and what the rest voltage says of them. */
import { restVoltageFromDensity } from "../electrochem/rest-voltage.ts";
import type { MeasuredReading } from "./test-context.ts";

/** Densities of the cells that one visit read, kg/l at 25 °C. */
export type CellDensities = readonly { readonly cell: number; readonly at25C: number }[];

/**
 * How far each cell lies below the median of the others, kg/l; negative for one that stands above them. The median, so that one odd cell
 * does not make all the others look odd.
 * @returns one entry a cell, in the order given; [] for fewer than two cells
 */
export function lagsOf(cells: CellDensities): { readonly cell: number; readonly lag: number }[] {
  if (cells.length < 2) return [];
  return cells.map(({ cell, at25C }) => ({
    cell,
    lag: median(cells.filter((other) => other.cell !== cell).map((other) => other.at25C)) - at25C,
  }));
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = sorted.length / 2;
  return ((sorted[Math.ceil(middle) - 1] ?? Number.NaN) + (sorted[Math.floor(middle)] ?? Number.NaN)) / 2;
}

/**
 * How far a rest voltage lies below what the acid of all cells would give, V of the battery. A cell that nobody read counts as the mean
 * of those read. About 2 V is a whole cell.
 *
 * @param cells  cells in series
 * @returns undefined where the visit has no rest voltage or no density, or the acid is out of the curve's range; negative above it
 */
export function missingVoltageV(reading: MeasuredReading, cells: number): number | undefined {
  const restV = reading.values.rest_V?.value;
  if (restV === undefined || reading.density === undefined) return undefined;
  const { cells: read, meanAt25C } = reading.density;
  const readV = read.reduce((sum, { at25C }) => sum + restVoltageFromDensity(at25C, 1), 0);
  const missing = readV + Math.max(0, cells - read.length) * restVoltageFromDensity(meanAt25C, 1) - restV;
  return Number.isNaN(missing) ? undefined : missing;
}
