/** Rows that share a stamp, because the recorder writes more rows than its clock shows steps: they are spread evenly over the step. */
import { median } from "../../signal/order-statistics.ts";

export type SpreadStamps = { readonly timesS: Float64Array; readonly rowsPerStamp: number; readonly stepS: number };

/** Fewer shared stamps than this may be chance. */
const fewestStamps = 3;
/** So many of the stamps must follow each other at one step, and hold as many rows as the others, give or take one. */
const neededShare = 0.9;

/**
 * Spreads rows of equal stamps.
 *
 * k rows of one stamp stand at k even places between it and the next. The first stamp may have been joined late: its rows are set at the
 * usual distance before the second stamp; those of the last stamp at the usual distance after it.
 *
 * @param timesS  in file order, s; NaN never occurs
 * @returns undefined where stamps are not shared in one regular way: then nothing is moved
 */
export function spreadCoarseStamps(timesS: Float64Array): SpreadStamps | undefined {
  if (!mayShare(timesS)) return undefined;
  const runs = runsOf(timesS);
  const inner = runs.slice(1, -1);
  if (inner.length < fewestStamps) return undefined;
  const rowsPerStamp = median(Float64Array.from(inner, ({ rows }) => rows));
  if (rowsPerStamp < 2 || !Number.isInteger(rowsPerStamp)) return undefined;
  const steps = runs.slice(1).map((run, index) => run.timeS - (runs[index]?.timeS ?? run.timeS));
  const stepS = median(Float64Array.from(steps));
  if (!(stepS > 0)) return undefined;
  const share = (ok: readonly boolean[]): number => ok.filter(Boolean).length / ok.length;
  if (share(inner.map(({ rows }) => Math.abs(rows - rowsPerStamp) <= 1)) < neededShare) return undefined;
  if (share(steps.map((step) => Math.abs(step - stepS) < 1e-6)) < neededShare) return undefined;

  const spread = Float64Array.from(timesS);
  const usualS = stepS / rowsPerStamp;
  runs.forEach(({ from, rows, timeS }, index) => {
    const next = runs[index + 1];
    const isRegular = next !== undefined && Math.abs(next.timeS - timeS - stepS) < 1e-6;
    const apartS = isRegular && index > 0 ? stepS / rows : Math.min(usualS, stepS / rows);
    const startS = index === 0 && isRegular ? next.timeS - rows * apartS : timeS;
    for (let row = 0; row < rows; row++) spread[from + row] = startS + row * apartS;
  });
  return { timesS: spread, rowsPerStamp, stepS };
}

/** Of stamps that two rows or more share, at least two rows in five stand at the time of the row before; most logs are told from that alone. */
function mayShare(timesS: Float64Array): boolean {
  let equal = 0;
  for (let row = 1; row < timesS.length; row++) if (timesS[row] === timesS[row - 1]) equal++;
  return equal >= 0.4 * timesS.length;
}

function runsOf(timesS: Float64Array): { from: number; rows: number; timeS: number }[] {
  const runs: { from: number; rows: number; timeS: number }[] = [];
  for (const [index, timeS] of timesS.entries()) {
    const last = runs.at(-1);
    if (last !== undefined && last.timeS === timeS) last.rows++;
    else runs.push({ from: index, rows: 1, timeS });
  }
  return runs;
}
