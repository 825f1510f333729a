/** A charge log thinned to as many points as a fit can use, without losing charge. */

/** Part of a stretch over which the current hardly changes: its end, and the mean current over it. */
export type LogPart = { readonly endH: number; readonly currentA: number };

/**
 * A stretch of a log: its end, the mean current over it, the voltage at its end, and the parts in which a simulation follows it. A mean over
 * an hour in which the current falls by a tenth is too much for the voltage at its end, and for all that hangs on voltage meanwhile.
 */
export type LogPoint = LogPart & { readonly voltageV: number; readonly parts: readonly LogPart[] };

/** Halves whose mean currents differ by no more than this share are one part. */
const steadyShare = 0.03;
/** A part is not cut below this length, h: most of the polarisation follows within it (see cell.ts). */
const shortestPartH = 1 / 12;

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
  const { length, sampleAt } = wholeSamples(elapsedS, voltagesV, currentsA);
  if (length < 3) return [];
  const first = sampleAt(0);
  const last = sampleAt(length - 1);
  const hoursAt = (i: number): number => ((elapsedS[i] ?? 0) - (elapsedS[first] ?? 0)) / 3600;
  const chargeAh = new Float64Array(length);
  for (let k = 1; k < length; k++) {
    const [i, j] = [sampleAt(k - 1), sampleAt(k)];
    const meanA = ((currentsA[i] ?? 0) + (currentsA[j] ?? 0)) / 2;
    chargeAh[k] = (chargeAh[k - 1] ?? 0) + meanA * (hoursAt(j) - hoursAt(i));
  }
  const meanBetween = (a: number, b: number): number =>
    ((chargeAh[b] ?? 0) - (chargeAh[a] ?? 0)) / (hoursAt(sampleAt(b)) - hoursAt(sampleAt(a)));
  const wholeH = hoursAt(last);
  const wholeAh = chargeAh.at(-1) ?? 0;
  const progress = (k: number): number => hoursAt(sampleAt(k)) / wholeH + (wholeAh > 0 ? (chargeAh[k] ?? 0) / wholeAh : 0);
  const all = progress(length - 1);
  const points: LogPoint[] = [];
  let from = 0;
  for (let k = 1; k < length; k++) {
    if (progress(k) < (all * (points.length + 1)) / count && k < length - 1) continue;
    const [startH, endH] = [hoursAt(sampleAt(from)), hoursAt(sampleAt(k))];
    if (!(endH > startH)) continue;
    const parts = partsOf(from, k, meanBetween, (sample) => hoursAt(sampleAt(sample)));
    points.push({ endH, currentA: meanBetween(from, k), voltageV: voltagesV[sampleAt(k)] ?? Number.NaN, parts });
    from = k;
  }
  return points;
}

/** The samples that have both values, by their order; where all have, as in most logs, nothing is written down of them. */
function wholeSamples(
  elapsedS: ArrayLike<number>,
  voltagesV: ArrayLike<number>,
  currentsA: ArrayLike<number>,
): { readonly length: number; sampleAt(order: number): number } {
  const isWhole = (i: number): boolean => Number.isFinite(voltagesV[i]) && Number.isFinite(currentsA[i]);
  let length = 0;
  for (let i = 0; i < elapsedS.length; i++) if (isWhole(i)) length++;
  if (length === elapsedS.length) return { length, sampleAt: (order) => order };
  const samples = new Uint32Array(length);
  let kept = 0;
  for (let i = 0; i < elapsedS.length; i++) if (isWhole(i)) samples[kept++] = i;
  return { length, sampleAt: (order) => samples[order] ?? 0 };
}

/** Cuts the stretch between two kept samples in halves until both carry about the same current, or are short. */
function partsOf(
  from: number,
  to: number,
  meanBetween: (from: number, to: number) => number,
  hoursAt: (sample: number) => number,
): LogPart[] {
  const currentA = meanBetween(from, to);
  const whole = [{ endH: hoursAt(to), currentA }];
  const half = (from + to) >> 1;
  if (half === from || hoursAt(to) - hoursAt(from) < 2 * shortestPartH) return whole;
  const differenceA = Math.abs(meanBetween(from, half) - meanBetween(half, to));
  if (differenceA <= steadyShare * currentA) return whole;
  return [...partsOf(from, half, meanBetween, hoursAt), ...partsOf(half, to, meanBetween, hoursAt)];
}
