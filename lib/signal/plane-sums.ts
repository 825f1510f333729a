/**
 * How far points in a plane lie from a straight line, over any range of them, in constant time.
 *
 * The line is the one of least squared distance across it (total least squares): what is left is the smaller eigenvalue of the scatter
 * matrix. Source: Golub and Van Loan, SIAM Journal on Numerical Analysis 17 (1980) 883 (from memory).
 */
export type PlaneSums = {
  readonly length: number;
  /** Sum of squared distances from the best line over [from, to), in units of σ² of both channels. */
  residual(from: number, to: number): number;
};

/**
 * @param x, y              same length, no NaN
 * @param sigmaX, sigmaY    the noise of each that a distance of 1 stands for, more than 0
 */
export function planeSums(x: Float64Array, y: Float64Array, sigmaX: number, sigmaY: number): PlaneSums {
  const n = x.length;
  const [centreX, centreY] = [meanOf(x), meanOf(y)];
  const [sx, sy, sxx, syy, sxy] = [0, 1, 2, 3, 4].map(() => new Float64Array(n + 1)) as [
    Float64Array,
    Float64Array,
    Float64Array,
    Float64Array,
    Float64Array,
  ];
  for (let i = 0; i < n; i++) {
    const a = ((x[i] as number) - centreX) / sigmaX;
    const b = ((y[i] as number) - centreY) / sigmaY;
    sx[i + 1] = (sx[i] as number) + a;
    sy[i + 1] = (sy[i] as number) + b;
    sxx[i + 1] = (sxx[i] as number) + a * a;
    syy[i + 1] = (syy[i] as number) + b * b;
    sxy[i + 1] = (sxy[i] as number) + a * b;
  }
  const over = (sums: Float64Array, from: number, to: number): number => (sums[to] as number) - (sums[from] as number);
  return {
    length: n,
    residual(from, to) {
      const count = to - from;
      if (count < 3) return 0;
      const [meanX, meanY] = [over(sx, from, to) / count, over(sy, from, to) / count];
      const xx = Math.max(0, over(sxx, from, to) - count * meanX * meanX);
      const yy = Math.max(0, over(syy, from, to) - count * meanY * meanY);
      const xy = over(sxy, from, to) - count * meanX * meanY;
      // The smaller eigenvalue as a quotient: as a difference it would drown in the larger one.
      const larger = (xx + yy) / 2 + Math.hypot((xx - yy) / 2, xy);
      return larger > 0 ? Math.max(0, (xx * yy - xy * xy) / larger) : 0;
    },
  };
}

function meanOf(values: Float64Array): number {
  let mean = 0;
  for (const value of values) mean += value / values.length;
  return mean;
}
