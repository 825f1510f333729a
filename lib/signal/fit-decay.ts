/** A quantity that falls (or rises) exponentially towards a level: the current of a battery held at constant voltage, a cell at rest. */
import { inflationByAutocorrelation } from "./fit-autocorrelation.ts";
import { fitNonlinear } from "./fit-nonlinear.ts";
import { searchLogarithmically } from "./fit-rate-search.ts";
import { type Fitted, finitePairs, isRefused, type Refused } from "./fit-result.ts";

const fewestPoints = 6;
/** A time constant longer than this many spans of the data looks like a straight line. */
const longestInSpans = 20;
/** A time constant whose standard error is larger than this share of itself says nothing. */
const largestRelativeError = 0.5;

/** The level approached, the distance from it at the first t, and the time constant. */
export type DecayParameters = readonly [level: number, amplitude: number, timeConstant: number];

/**
 * Fits y = c + a·exp(-(t - t[0])/tau).
 * @param t  n times, never falling, any unit; tau is in the same
 * @param y  n values; pairs with NaN in either are left out
 * @returns parameters [c, a, tau], a being the distance from the level at the *first* t (so a late start cannot overflow); standard
 *   errors alike; or a refusal: fewer than six points, times that run backwards, values all alike, no bend to be seen within the
 *   data, a drop within one sample, or a tau uncertain by half of itself. Never throws.
 * For a given tau the model is linear in c and a, so tau alone is searched for, over all its decades, and then polished: no starting
 * values, no false minima, and 5,000 points take some hundredths of a second. Standard errors are widened by the likeness of neighbouring
 * residuals, since a recorder's samples do not scatter freely about a curve that no battery follows exactly.
 * Source: variable projection, Golub and Pereyra 1973 (from memory).
 */
export function fitDecay(t: ArrayLike<number>, y: ArrayLike<number>): Fitted<DecayParameters> | Refused {
  const data = finitePairs(t, y);
  const points = data.x.length;
  if (points < fewestPoints) return { refused: `${points} points are too few for a decay; ${fewestPoints} are needed` };
  const first = data.x[0] ?? 0;
  const elapsed = data.x.map((time) => time - first);
  const shortestGap = findShortestGap(elapsed);
  if (shortestGap === undefined) return { refused: "the times run backwards or stand still" };
  if (data.y.every((value) => value === data.y[0])) return { refused: "the values are all alike" };

  const span = elapsed[points - 1] ?? 0;
  const shortest = shortestGap / 3;
  const longest = span * longestInSpans;
  const tau = searchLogarithmically((trial) => project(elapsed, data.y, trial).squares, shortest, longest);
  if (tau > longest * 0.99) return { refused: "no bend can be seen: over this span the decay looks like a straight line" };
  if (tau < shortest * 1.01) return { refused: "the drop is over within one sample" };

  const start = project(elapsed, data.y, tau);
  const fit = fitNonlinear(decay, elapsed, data.y, [start.level, start.amplitude, tau]);
  if (isRefused(fit)) return fit;
  const [level, amplitude, timeConstant] = fit.parameters;
  const [levelError, amplitudeError, timeConstantError] = fit.standardErrors;
  if (level === undefined || amplitude === undefined || timeConstant === undefined) return { refused: "the fit lost a parameter" };
  if (levelError === undefined || amplitudeError === undefined || timeConstantError === undefined)
    return { refused: "the fit lost an error" };
  const residuals = data.y.map((value, i) => value - decay(fit.parameters, elapsed[i] ?? Number.NaN));
  const inflation = inflationByAutocorrelation(residuals);
  if (!(timeConstant > 0 && inflation * timeConstantError < largestRelativeError * timeConstant)) {
    return { refused: "the time constant is uncertain by more than half of itself" };
  }
  return {
    parameters: [level, amplitude, timeConstant],
    standardErrors: [inflation * levelError, inflation * amplitudeError, inflation * timeConstantError],
    residualStandardDeviation: fit.residualStandardDeviation,
    converged: true,
  };
}

function decay(parameters: readonly number[], elapsed: number): number {
  const [level = Number.NaN, amplitude = Number.NaN, timeConstant = Number.NaN] = parameters;
  return level + amplitude * Math.exp(-elapsed / timeConstant);
}

/** The best level and amplitude for one time constant, and what they leave over: a straight line through (exp(-t/tau), y). */
function project(elapsed: Float64Array, y: Float64Array, tau: number): { level: number; amplitude: number; squares: number } {
  const shape = elapsed.map((time) => Math.exp(-time / tau));
  const n = shape.length;
  let meanShape = 0;
  let meanY = 0;
  for (let i = 0; i < n; i++) {
    meanShape += (shape[i] ?? 0) / n;
    meanY += (y[i] ?? 0) / n;
  }
  let spread = 0;
  let together = 0;
  let total = 0;
  for (let i = 0; i < n; i++) {
    const dShape = (shape[i] ?? 0) - meanShape;
    const dY = (y[i] ?? 0) - meanY;
    spread += dShape * dShape;
    together += dShape * dY;
    total += dY * dY;
  }
  const amplitude = spread > 0 ? together / spread : 0;
  return { level: meanY - amplitude * meanShape, amplitude, squares: total - amplitude * together };
}

function findShortestGap(rising: Float64Array): number | undefined {
  let shortest = Number.POSITIVE_INFINITY;
  for (let i = 1; i < rising.length; i++) {
    const gap = (rising[i] ?? 0) - (rising[i - 1] ?? 0);
    if (gap < 0) return undefined;
    if (gap > 0 && gap < shortest) shortest = gap;
  }
  return Number.isFinite(shortest) ? shortest : undefined;
}
