/** Sets a voltage beside a current that was read at another moment: on a straight line between its own neighbours, and no further than one interval. */
import { median } from "../../signal/order-statistics.ts";

/** Values of one quantity over time; times in s, rising, NaN never; values NaN where a row has none. */
export type Series = { readonly timesS: Float64Array; readonly values: Float64Array };

/** A pause longer than this many usual intervals is not bridged. */
const bridgedIntervals = 1.5;

/**
 * A series' values at other moments.
 *
 * @param atS  moments on the same clock, s
 * @returns one value a moment; NaN where no row stands within one interval on either side, or the moment lies outside the series
 */
export function valuesAt(series: Series, atS: Float64Array): { values: Float64Array; intervalS: number } {
  const kept = rowsWithValues(series);
  const steps = kept.slice(1).map((row, index) => (series.timesS[row] as number) - (series.timesS[kept[index] as number] as number));
  const rising = steps.filter((step) => step > 0);
  const intervalS = rising.length === 0 ? 0 : median(Float64Array.from(rising));
  const values = new Float64Array(atS.length).fill(Number.NaN);
  let next = 0;
  for (let i = 0; i < atS.length; i++) {
    const timeS = atS[i] as number;
    while (next < kept.length && (series.timesS[kept[next] as number] as number) < timeS) next++;
    // Moments may step back where a clock was set: look again from the start.
    if (next > 0 && (series.timesS[kept[next - 1] as number] as number) >= timeS) next = 0;
    while (next < kept.length && (series.timesS[kept[next] as number] as number) < timeS) next++;
    values[i] = between(series, kept[next - 1], kept[next], timeS, bridgedIntervals * intervalS);
  }
  return { values, intervalS };
}

function between(
  { timesS, values }: Series,
  before: number | undefined,
  after: number | undefined,
  timeS: number,
  longestS: number,
): number {
  if (after === undefined) return Number.NaN;
  const afterS = timesS[after] as number;
  if (afterS === timeS) return values[after] as number;
  if (before === undefined) return Number.NaN;
  const beforeS = timesS[before] as number;
  if (!(afterS > beforeS) || afterS - beforeS > longestS) return Number.NaN;
  const share = (timeS - beforeS) / (afterS - beforeS);
  return (values[before] as number) + share * ((values[after] as number) - (values[before] as number));
}

function rowsWithValues({ timesS, values }: Series): number[] {
  const rows: number[] = [];
  for (let i = 0; i < timesS.length; i++) if (!Number.isNaN(values[i])) rows.push(i);
  return rows;
}

/** Rows that have a voltage or a current but not both must be at least this share of a log whose rows alternate. */
const alternatingShare = 0.9;

/** Whether a log writes voltage and current in rows of their own, by turns. */
export function isAlternating(voltagesV: Float64Array, currentsA: Float64Array): boolean {
  let onlyV = 0;
  let onlyA = 0;
  let both = 0;
  for (let i = 0; i < voltagesV.length; i++) {
    const hasV = !Number.isNaN(voltagesV[i]);
    const hasA = !Number.isNaN(currentsA[i]);
    if (hasV && hasA) both++;
    else if (hasV) onlyV++;
    else if (hasA) onlyA++;
  }
  const single = onlyV + onlyA;
  return single >= 4 && single >= alternatingShare * (single + both) && Math.min(onlyV, onlyA) >= 0.2 * single;
}
