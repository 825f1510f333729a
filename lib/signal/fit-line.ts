/** The straight line of least squares, with everything needed to use it at any x. */
import { finitePairs, type Refused } from "./fit-result.ts";

/** y = intercept + slope · (x - origin), in y's unit and y's per x's. */
export type Line = {
  readonly intercept: number;
  readonly slope: number;
  readonly origin: number;
  readonly interceptError: number;
  readonly slopeError: number;
  /** Covariance of intercept and slope. */
  readonly covariance: number;
  readonly residualStandardDeviation: number;
  readonly points: number;
};

/**
 * Fits y = intercept + slope · (x - origin), all points weighing alike and x without error.
 * @param x  n abscissae, any order
 * @param y  n ordinates; pairs with NaN in either are left out
 * @param origin  the x at which the intercept is taken, 0 unless given
 * @returns the line with standard errors and their covariance, or a refusal for fewer than three points or for one and the same x
 * Source: JCGM 100:2008, H.3.
 */
export function fitLine(x: ArrayLike<number>, y: ArrayLike<number>, origin = 0): Line | Refused {
  const data = finitePairs(x, y);
  const points = data.x.length;
  if (points < 3) return { refused: `${points} points are too few for a line with its uncertainty` };
  const meanX = data.x.reduce((sum, value) => sum + value, 0) / points;
  const meanY = data.y.reduce((sum, value) => sum + value, 0) / points;
  let spreadX = 0;
  let together = 0;
  for (let i = 0; i < points; i++) {
    const dx = (data.x[i] ?? 0) - meanX;
    spreadX += dx * dx;
    together += dx * ((data.y[i] ?? 0) - meanY);
  }
  if (!(spreadX > 0)) return { refused: "all points have the same x" };

  const slope = together / spreadX;
  const intercept = meanY + slope * (origin - meanX);
  let squares = 0;
  for (let i = 0; i < points; i++) squares += ((data.y[i] ?? 0) - meanY - slope * ((data.x[i] ?? 0) - meanX)) ** 2;
  const variance = squares / (points - 2);
  const slopeVariance = variance / spreadX;
  return {
    intercept,
    slope,
    origin,
    interceptError: Math.sqrt(variance / points + slopeVariance * (origin - meanX) ** 2),
    slopeError: Math.sqrt(slopeVariance),
    covariance: slopeVariance * (origin - meanX),
    residualStandardDeviation: Math.sqrt(variance),
    points,
  };
}

/** The line's value at x and its standard uncertainty, both in y's unit; of the line, not of a single further point. JCGM 100, H.3.4. */
export function valueOnLine(line: Line, x: number): { readonly value: number; readonly standardUncertainty: number } {
  const from = x - line.origin;
  const variance = line.interceptError ** 2 + (from * line.slopeError) ** 2 + 2 * from * line.covariance;
  return { value: line.intercept + line.slope * from, standardUncertainty: Math.sqrt(Math.max(0, variance)) };
}
