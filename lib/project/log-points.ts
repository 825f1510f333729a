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
 * @param voltagesV  n voltages at the posts or more, V; a sample with NaN in either column is left out
 * @param currentsA  n currents into the battery or more, A
 * @param count  how many stretches at most
 * @returns stretches in time order, currents by the trapezoidal rule so that their charges add up to the log's; [] for fewer than 3 samples
 */
export function thinLog(elapsedS: Float64Array, voltagesV: Float64Array, currentsA: Float64Array, count: number): LogPoint[] {
  const log = wholeSamples({ elapsedS, voltagesV, currentsA });
  const { length } = log.elapsedS;
  if (length < 3) return [];
  const charged = chargeUntil(log);
  const firstS = log.elapsedS[0] as number;
  const hoursAt = (sample: number): number => ((log.elapsedS[sample] as number) - firstS) / 3600;
  const ampHoursAt = (sample: number): number => charged[sample] as number;
  const meanBetween = (a: number, b: number): number => (ampHoursAt(b) - ampHoursAt(a)) / (hoursAt(b) - hoursAt(a));
  const wholeH = hoursAt(length - 1);
  const wholeAh = ampHoursAt(length - 1);
  const progress = (sample: number): number => hoursAt(sample) / wholeH + (wholeAh > 0 ? ampHoursAt(sample) / wholeAh : 0);
  const all = progress(length - 1);
  const points: LogPoint[] = [];
  let from = 0;
  let enough = all / count;
  for (let sample = 1; sample < length; sample++) {
    if (progress(sample) < enough && sample < length - 1) continue;
    const endH = hoursAt(sample);
    if (!(endH > hoursAt(from))) continue;
    const parts = partsOf(from, sample, meanBetween, hoursAt);
    points.push({ endH, currentA: meanBetween(from, sample), voltageV: log.voltagesV[sample] as number, parts });
    from = sample;
    enough = (all * (points.length + 1)) / count;
  }
  return points;
}

type Columns = { readonly elapsedS: Float64Array; readonly voltagesV: Float64Array; readonly currentsA: Float64Array };

/** The samples that have both values; where all have, as in most logs, nothing is copied. */
function wholeSamples({ elapsedS, voltagesV, currentsA }: Columns): Columns {
  const isWhole = (_: unknown, sample: number): boolean => Number.isFinite(voltagesV[sample]) && Number.isFinite(currentsA[sample]);
  let length = 0;
  for (let sample = 0; sample < elapsedS.length; sample++) if (isWhole(0, sample)) length++;
  if (length === elapsedS.length) return { elapsedS, voltagesV, currentsA };
  const kept = (values: Float64Array): Float64Array => values.subarray(0, elapsedS.length).filter(isWhole);
  return { elapsedS: kept(elapsedS), voltagesV: kept(voltagesV), currentsA: kept(currentsA) };
}

/** The charge up to each sample, Ah. */
function chargeUntil({ elapsedS, currentsA }: Columns): Float64Array {
  const chargedAh = new Float64Array(elapsedS.length);
  const firstS = elapsedS[0] as number;
  let sumAh = 0;
  let beforeH = 0;
  let beforeA = currentsA[0] as number;
  for (let sample = 1; sample < chargedAh.length; sample++) {
    const hours = ((elapsedS[sample] as number) - firstS) / 3600;
    const currentA = currentsA[sample] as number;
    sumAh += ((beforeA + currentA) / 2) * (hours - beforeH);
    chargedAh[sample] = sumAh;
    beforeH = hours;
    beforeA = currentA;
  }
  return chargedAh;
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
