/** A quantity that rises from nothing towards a ceiling: charge taken in against time, density gained against charge. */
import { fitNonlinear } from "./fit-nonlinear.ts";
import { searchLogarithmically } from "./fit-rate-search.ts";
import { type Fitted, finitePairs, isRefused, type Refused } from "./fit-result.ts";

/** The ceiling, in y's unit, and the rate towards it, per x. */
export type SaturatingParameters = readonly [ceiling: number, rate: number];

/** Exponents searched for at the last x: from all but straight (0.005) to a ceiling reached 500 times over. */
const rateSearch = { low: 0.005, high: 500 } as const;

/**
 * Fits y = b1·(1 - exp(-b2·x)).
 * @param x  n values from 0 up, any order, any unit
 * @param y  n values; pairs with NaN in either are left out
 * @param start  b1 and b2 to start from; left out, the rate is searched for over five decades
 * @returns parameters [b1, b2] with standard errors, or a refusal: fewer than three points, no positive x, no bend to be seen (the
 *   ceiling is then anybody's guess), or no convergence. Never throws. Standard errors assume independent scatter.
 * Source: form and checks as NIST's Misra1a and BoxBOD.
 */
export function fitSaturating(
  x: ArrayLike<number>,
  y: ArrayLike<number>,
  start?: SaturatingParameters,
): Fitted<SaturatingParameters> | Refused {
  const data = finitePairs(x, y);
  if (data.x.length < 3) return { refused: `${data.x.length} points are too few for a ceiling with its uncertainty` };
  const farthest = data.x.reduce((most, value) => Math.max(most, value), 0);
  if (!(farthest > 0)) return { refused: "no x above zero" };

  const begin = start ?? findStart(data.x, data.y, farthest);
  if (isRefused(begin)) return begin;
  const fit = fitNonlinear(saturating, data.x, data.y, begin);
  if (isRefused(fit)) return fit;
  const [ceiling, rate] = fit.parameters;
  const [ceilingError, rateError] = fit.standardErrors;
  if (ceiling === undefined || rate === undefined || ceilingError === undefined || rateError === undefined) {
    return { refused: "the fit lost a parameter" };
  }
  return {
    parameters: [ceiling, rate],
    standardErrors: [ceilingError, rateError],
    residualStandardDeviation: fit.residualStandardDeviation,
    converged: true,
  };
}

function findStart(x: Float64Array, y: Float64Array, farthest: number): SaturatingParameters | Refused {
  const low = rateSearch.low / farthest;
  const high = rateSearch.high / farthest;
  const rate = searchLogarithmically((trial) => project(x, y, trial).squares, low, high);
  if (rate < low * 1.01) return { refused: "no bend can be seen: the values rise as along a straight line" };
  if (rate > high * 0.99) return { refused: "the ceiling is reached before the first point" };
  return [project(x, y, rate).ceiling, rate];
}

function saturating(parameters: readonly number[], x: number): number {
  const [ceiling = Number.NaN, rate = Number.NaN] = parameters;
  return -ceiling * Math.expm1(-rate * x);
}

/** The best ceiling for one rate, and what it leaves over. */
function project(x: Float64Array, y: Float64Array, rate: number): { ceiling: number; squares: number } {
  let spread = 0;
  let together = 0;
  for (let i = 0; i < x.length; i++) {
    const shape = -Math.expm1(-rate * (x[i] ?? 0));
    spread += shape * shape;
    together += shape * (y[i] ?? 0);
  }
  const ceiling = spread > 0 ? together / spread : 0;
  let squares = 0;
  for (let i = 0; i < x.length; i++) squares += ((y[i] ?? 0) + ceiling * Math.expm1(-rate * (x[i] ?? 0))) ** 2;
  return { ceiling, squares };
}
