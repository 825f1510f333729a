/** Non-linear least squares. */
import { solveLeastSquares } from "./fit-least-squares.ts";
import { type Fitted, finitePairs, type Refused } from "./fit-result.ts";

/** A model: y at x for these parameters. */
export type Model = (parameters: readonly number[], x: number) => number;

const maximumSteps = 1000;
/** A step this small against every parameter ends the search; central differences bear no more. */
const smallestStep = 1e-9;
/** Step of the numerical derivatives, relative: the cube root of the double's spacing, best for central differences. */
const derivativeStep = 6e-6;

/**
 * Fits a model to data by least squares, all points weighing alike.
 * @param model  pure function of parameters and x
 * @param x  n abscissae, any order
 * @param y  n ordinates; pairs with NaN in either are left out
 * @param start  one starting value a parameter
 * @returns parameters with standard errors (residual scatter through the linearised model, as NIST certifies them), or a refusal: fewer
 *   points than parameters plus one, a model that is not finite at the start, parameters that the data cannot tell apart, or no
 *   convergence in 1000 steps. Never throws. Errors assume independent scatter: a recorder's samples follow each other too closely for
 *   that, and the true errors are then larger.
 *
 * Source: Levenberg 1944, Marquardt 1963; scaling by the largest column norm seen, after Moré 1978; damping after Nielsen 1999 (all from
 * memory). Checked against certified results of NIST's reference sets from both of their starting points (tests/lib/signal). Our own,
 * since ml-levenberg-marquardt 5.1 failed there: from the first starting point of BoxBOD, Eckerle4 and MGH17 it threw or ended elsewhere
 * (its damping knows no scaling of parameters), reached four digits on Kirby2, and it does not say whether it has converged.
 */
export function fitNonlinear(model: Model, x: ArrayLike<number>, y: ArrayLike<number>, start: readonly number[]): Fitted | Refused {
  const data = finitePairs(x, y);
  const points = data.x.length;
  if (points <= start.length) return { refused: `${points} points are too few for ${start.length} parameters` };

  const residualsAt = (parameters: readonly number[]): Float64Array =>
    data.y.map((yi, i) => yi - model(parameters, data.x[i] ?? Number.NaN));
  let parameters = [...start];
  let residuals = residualsAt(parameters);
  let squares = sumOfSquares(residuals);
  if (!Number.isFinite(squares)) return { refused: "the model has no finite value at the starting point" };

  const scales = start.map(() => 0);
  let damping = 1e-2;
  let dampingGrowth = 2;
  let columns = derivatives(model, parameters, data.x);
  for (let step = 0; step < maximumSteps; step++) {
    for (const [j, column] of columns.entries()) scales[j] = Math.max(scales[j] ?? 0, Math.sqrt(sumOfSquares(column)));
    let move = dampedMove(columns, residuals, scales, damping);
    while (move !== undefined && isTooLong(move, parameters, scales)) {
      damping *= 4;
      move = dampedMove(columns, residuals, scales, damping);
    }
    if (move === undefined) return { refused: "the data do not determine all parameters" };

    const candidate = parameters.map((parameter, j) => parameter + (move[j] ?? 0));
    const candidateResiduals = residualsAt(candidate);
    const candidateSquares = sumOfSquares(candidateResiduals);
    const settled = move.every((change, j) => Math.abs(change) <= smallestStep * Math.abs(candidate[j] ?? 0));
    const promised = promisedGain(columns, residuals, move);
    const gain = promised > 0 ? (squares - candidateSquares) / promised : 0;

    if (candidateSquares <= squares) {
      parameters = candidate;
      residuals = candidateResiduals;
      squares = candidateSquares;
      columns = derivatives(model, parameters, data.x);
      damping *= Math.max(1 / 3, 1 - (2 * gain - 1) ** 3);
      dampingGrowth = 2;
    } else {
      damping *= dampingGrowth;
      dampingGrowth *= 2;
    }
    // A refused step may be small only because damping has grown; it settles nothing unless the promise itself has gone.
    if (settled && (candidateSquares <= squares || promised <= 1e-14 * squares)) return describe(parameters, columns, squares, points);
  }
  return { refused: `no convergence in ${maximumSteps} steps` };
}

function describe(parameters: readonly number[], columns: readonly Float64Array[], squares: number, points: number): Fitted | Refused {
  const solved = solveLeastSquares(columns, new Float64Array(points));
  if (solved === undefined) return { refused: "the data do not determine all parameters" };
  const residualStandardDeviation = Math.sqrt(squares / (points - parameters.length));
  const standardErrors = parameters.map((_, j) => residualStandardDeviation * Math.sqrt(solved.inverseNormal[j]?.[j] ?? Number.NaN));
  return { parameters, standardErrors, residualStandardDeviation, converged: true };
}

/** Least-squares step with damping, as extra rows below the derivatives. */
function dampedMove(
  columns: readonly Float64Array[],
  residuals: Float64Array,
  scales: readonly number[],
  damping: number,
): readonly number[] | undefined {
  const rows = residuals.length + columns.length;
  const extended = columns.map((column, j) => {
    const longer = new Float64Array(rows);
    longer.set(column);
    longer[residuals.length + j] = Math.sqrt(damping) * (scales[j] ?? 0);
    return longer;
  });
  const target = new Float64Array(rows);
  target.set(residuals);
  return solveLeastSquares(extended, target)?.solution;
}

/**
 * Whether a move is longer than the parameters themselves, in the scale of their effect. A poor start otherwise leaps, in one step, onto a
 * plateau where the model no longer feels a parameter, and stays there: NIST's BoxBOD from its first starting point.
 */
function isTooLong(move: readonly number[], parameters: readonly number[], scales: readonly number[]): boolean {
  const lengthOf = (values: readonly number[]): number => Math.hypot(...values.map((value, j) => value * (scales[j] ?? 0)));
  const allowed = lengthOf(parameters);
  return allowed > 0 && lengthOf(move) > allowed;
}

/** How much the linearised model says the sum of squares falls by this move. */
function promisedGain(columns: readonly Float64Array[], residuals: Float64Array, move: readonly number[]): number {
  let gain = 0;
  for (let i = 0; i < residuals.length; i++) {
    let change = 0;
    for (let j = 0; j < columns.length; j++) change += (columns[j]?.[i] ?? 0) * (move[j] ?? 0);
    const residual = residuals[i] ?? 0;
    gain += change * (2 * residual - change);
  }
  return gain;
}

function derivatives(model: Model, parameters: readonly number[], x: Float64Array): Float64Array[] {
  return parameters.map((parameter, j) => {
    const step = derivativeStep * (Math.abs(parameter) || derivativeStep);
    const above = parameters.with(j, parameter + step);
    const below = parameters.with(j, parameter - step);
    return x.map((xi) => (model(above, xi) - model(below, xi)) / (2 * step));
  });
}

function sumOfSquares(values: Float64Array): number {
  let sum = 0;
  for (const value of values) sum += value * value;
  return sum;
}
