/** What a fit gives back: numbers with their uncertainty, or the reason why there are none. */

/** A fit that converged. Parameters and standard errors stand in the order in which the model names them. */
export type Fitted<P extends readonly number[] = readonly number[]> = {
  readonly parameters: P;
  readonly standardErrors: P;
  /** Root of the residual sum of squares over (points less parameters), in y's unit. */
  readonly residualStandardDeviation: number;
  readonly converged: true;
};

/** No fit, and why, in words fit for a reader. */
export type Refused = { readonly refused: string };

/** Tells a refusal from a fit. */
export function isRefused(fit: object): fit is Refused {
  return "refused" in fit;
}

/** Keeps the pairs of which both members are finite numbers, in order. */
export function finitePairs(x: ArrayLike<number>, y: ArrayLike<number>): { x: Float64Array; y: Float64Array } {
  const length = Math.min(x.length, y.length);
  const keptX = new Float64Array(length);
  const keptY = new Float64Array(length);
  let kept = 0;
  for (let i = 0; i < length; i++) {
    const xi = x[i] ?? Number.NaN;
    const yi = y[i] ?? Number.NaN;
    if (!Number.isFinite(xi) || !Number.isFinite(yi)) continue;
    keptX[kept] = xi;
    keptY[kept] = yi;
    kept++;
  }
  return { x: keptX.subarray(0, kept), y: keptY.subarray(0, kept) };
}
