/**
 * Running sums of one channel, from which the residual of a straight line over any range comes in constant time.
 */
export type LineSums = {
  readonly length: number;
  /** Sum of squared residuals, in units of σ², of the least-squares line over [from, to). */
  residual(from: number, to: number): number;
  /** How far the samples at `at` and `at + 1` are apart, in units of σ. */
  differ(at: number): number;
  /** Mean over [from, to), in the channel's unit. */
  mean(from: number, to: number): number;
  /** The least-squares line's value at a place, in the channel's unit, for the line over [from, to). */
  lineAt(from: number, to: number, place: number): number;
};

/**
 * @param places  rising; @param values no NaN, same length; @param sigma the noise that a residual of 1 stands for, more than 0
 */
export function lineSums(places: Float64Array, values: Float64Array, sigma: number): LineSums {
  const n = values.length;
  const placeScale = n > 1 ? ((places[n - 1] as number) - (places[0] as number)) / n || 1 : 1;
  const origin = places[0] ?? 0;
  // Sums are taken about the mean and in units of σ, or the squares of a large level would swallow the residuals.
  let centre = 0;
  for (const value of values) centre += value / n;
  const t = new Float64Array(n + 1);
  const tt = new Float64Array(n + 1);
  const x = new Float64Array(n + 1);
  const xx = new Float64Array(n + 1);
  const tx = new Float64Array(n + 1);
  for (let i = 0; i < n; i++) {
    const place = ((places[i] as number) - origin) / placeScale;
    const value = ((values[i] as number) - centre) / sigma;
    t[i + 1] = (t[i] as number) + place;
    tt[i + 1] = (tt[i] as number) + place * place;
    x[i + 1] = (x[i] as number) + value;
    xx[i + 1] = (xx[i] as number) + value * value;
    tx[i + 1] = (tx[i] as number) + place * value;
  }
  const over = (sums: Float64Array, from: number, to: number): number => (sums[to] as number) - (sums[from] as number);
  const moments = (from: number, to: number) => {
    const count = to - from;
    const st = over(t, from, to);
    const sx = over(x, from, to);
    const stt = over(tt, from, to) - (st * st) / count;
    const stx = over(tx, from, to) - (st * sx) / count;
    const sxx = over(xx, from, to) - (sx * sx) / count;
    return { count, st, sx, stt, stx, sxx };
  };
  return {
    length: n,
    residual(from, to) {
      if (to - from < 3) return 0;
      const { stt, stx, sxx } = moments(from, to);
      return Math.max(0, stt > 0 ? sxx - (stx * stx) / stt : sxx);
    },
    differ(at) {
      return Math.abs((values[at + 1] as number) - (values[at] as number)) / sigma;
    },
    mean(from, to) {
      return centre + (sigma * over(x, from, to)) / (to - from);
    },
    lineAt(from, to, place) {
      const { count, st, sx, stt, stx } = moments(from, to);
      const slope = stt > 0 ? stx / stt : 0;
      return centre + sigma * (sx / count + slope * ((place - origin) / placeScale - st / count));
    },
  };
}
