/** A charge log thinned to as many points as a fit can use, without losing charge. */

/**
 * A stretch of a log: its end, the mean current over it, and the voltage at its end; and, since that voltage hangs on the current of the
 * last minutes while the mean may be that of hours, where its last part begins and the mean current over that.
 */
export type LogPoint = {
  readonly endH: number;
  readonly currentA: number;
  readonly voltageV: number;
  readonly lastFromH: number;
  readonly lastA: number;
};

/** How long the last part of a stretch is at most, h: twice the time in which most of the polarisation follows (see cell.ts). */
const lastPartH = 1 / 6;

/**
 * Cuts a log into stretches that carry about the same share of charge and of time each, so that neither the bulk nor the tail is starved.
 * @param elapsedS  n times, rising, s
 * @param voltagesV  n voltages at the posts, V; a sample with NaN in either column is left out
 * @param currentsA  n currents into the battery, A
 * @param count  how many stretches at most
 * @returns stretches in time order, currents by the trapezoidal rule so that their charges add up to the log's; [] for fewer than 3 samples
 */
export function thinLog(
  elapsedS: ArrayLike<number>,
  voltagesV: ArrayLike<number>,
  currentsA: ArrayLike<number>,
  count: number,
): LogPoint[] {
  const kept: number[] = [];
  for (let i = 0; i < elapsedS.length; i++) if (Number.isFinite(voltagesV[i]) && Number.isFinite(currentsA[i])) kept.push(i);
  const first = kept[0];
  const last = kept.at(-1);
  if (kept.length < 3 || first === undefined || last === undefined) return [];
  const hoursAt = (i: number): number => ((elapsedS[i] ?? 0) - (elapsedS[first] ?? 0)) / 3600;
  const chargeAh = [0];
  for (let k = 1; k < kept.length; k++) {
    const [i, j] = [kept[k - 1] ?? 0, kept[k] ?? 0];
    const meanA = ((currentsA[i] ?? 0) + (currentsA[j] ?? 0)) / 2;
    chargeAh.push((chargeAh[k - 1] ?? 0) + meanA * (hoursAt(j) - hoursAt(i)));
  }
  const wholeH = hoursAt(last);
  const wholeAh = chargeAh.at(-1) ?? 0;
  const progress = (k: number): number => hoursAt(kept[k] ?? 0) / wholeH + (wholeAh > 0 ? (chargeAh[k] ?? 0) / wholeAh : 0);
  const all = progress(kept.length - 1);
  const points: LogPoint[] = [];
  let from = 0;
  for (let k = 1; k < kept.length; k++) {
    if (progress(k) < (all * (points.length + 1)) / count && k < kept.length - 1) continue;
    const [startH, endH] = [hoursAt(kept[from] ?? 0), hoursAt(kept[k] ?? 0)];
    if (!(endH > startH)) continue;
    const last = lastPartFrom(kept, from, k, hoursAt);
    const meanFrom = (start: number): number => ((chargeAh[k] ?? 0) - (chargeAh[start] ?? 0)) / (endH - hoursAt(kept[start] ?? 0));
    points.push({
      endH,
      currentA: meanFrom(from),
      voltageV: voltagesV[kept[k] ?? 0] ?? Number.NaN,
      lastFromH: hoursAt(kept[last] ?? 0),
      lastA: meanFrom(last),
    });
    from = k;
  }
  return points;
}

/** Where the last part of the stretch from one kept sample to another begins: the first sample in its last minutes, or its whole. */
function lastPartFrom(kept: readonly number[], from: number, to: number, hoursAt: (i: number) => number): number {
  const endH = hoursAt(kept[to] ?? 0);
  let last = to - 1;
  while (last > from && endH - hoursAt(kept[last - 1] ?? 0) <= lastPartH) last--;
  return last;
}
