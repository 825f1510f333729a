/** Learns one battery's parameters from the logs of its charges: which resistance, which acceptance near full, how much gassing. */
import { type BatteryBeliefs, type BatteryParameters, parameterNames, parametersAt } from "./battery-priors.ts";
import { type CellSource, makeCell, restedCell, stepCell } from "./cell.ts";
import { fitMap, type MapFit } from "./fit-map.ts";
import type { LogPoint } from "./log-points.ts";
import { lowerFactor } from "./lower-factor.ts";
import { partsOfStart } from "./parts-of-start.ts";

/** What is known of the battery beside its log. */
export type KnownBattery = {
  readonly ratedAh: number;
  readonly cells: number;
  /** kg/l at 25 °C of its acid, full and empty. */
  readonly density: { readonly full: number; readonly empty: number };
  /** State of charge at the log's start, 0 to 1, and its standard uncertainty. */
  readonly startShare: number;
  readonly startShareUncertainty: number;
  /** How it hangs on the battery's own empty density; not at all where left out. See StartShare. */
  readonly startSharePerEmptyDensity?: number;
  readonly airC: number;
};

/** One test of a battery: what was known before it, and stretches of its log from clamps on (see thinLog); none for a test to come. */
export type BatteryTest = { readonly points: readonly LogPoint[]; readonly known: KnownBattery };

export type FittedBattery = {
  readonly parameters: BatteryParameters;
  /** In prior standard deviations from the prior's middle, by parameterNames, and how sure: 1 says that the log told nothing. */
  readonly z: readonly number[];
  readonly standardDeviations: readonly number[];
  /** Turns normal numbers into what the log leaves open of z and of the start, all together; see fitMap. */
  readonly factor: readonly (readonly number[])[];
  readonly startShare: number;
  readonly startShareUncertainty: number;
  /** The start's uncertainty before the log: the unit in which `factor` moves it. */
  readonly startShareScale: number;
  /** Root mean square of what the model misses, V a cell. */
  readonly rmsV: number;
  readonly converged: boolean;
};

/** Points of a log resemble their neighbours; they count as so many independent ones at most. Our judgement. */
const independentPoints = 25;
/**
 * How far model and battery may be apart before any log, V a cell: the model's own failing, larger than any recorder's. Our judgement. The
 * logs then say how far they are: this first guess counts as much as one log.
 */
const modelErrorV = 0.02;
const guessPoints = independentPoints;
/** Fewer points of a log than this tell nothing. */
const fewestPoints = 5;
/**
 * Share of the variance of hard sulphate that is new at each test of one battery: every discharge and every night spent flat makes some
 * anew, every charge dissolves some. The rest is the battery's own level. Our assumption.
 */
const freshHardShare = 0.1;

/**
 * Fits one battery to its log under the beliefs for its kind.
 * The measured current drives the model, so that no charge is invented; what is compared is the voltage.
 * @param points  stretches of the log (see thinLog), from clamps on
 * @returns the most probable parameters, or undefined for fewer than 5 points
 */
export function fitBattery(points: readonly LogPoint[], known: KnownBattery, beliefs: BatteryBeliefs): FittedBattery | undefined {
  return fitBatteryTests([], { points, known }, beliefs);
}

/**
 * Fits one battery to the logs of several of its charges together, as it is at the test asked for.
 *
 *   the battery's own     all parameters, of its hard sulphate the level
 *   each test's own       its hard sulphate about that level, its start about what was read
 *
 * @param earlier  its other tests, in any order
 * @param asked  the test to be known or forecast: with its log, with the first hours of it, or with no points at all
 * @returns parameters and start of the test asked for, with all that the logs tie together; undefined where no log has 5 points
 * Source: least squares with normal priors (see fitMap); marginals of a normal distribution through the linear map from shared and own
 *   numbers to the asked test's (textbook form).
 */
export function fitBatteryTests(earlier: readonly BatteryTest[], asked: BatteryTest, beliefs: BatteryBeliefs): FittedBattery | undefined {
  const tests = [asked, ...earlier.filter(({ points }) => points.length >= fewestPoints)];
  if (tests.length === 1 && asked.points.length < fewestPoints) return undefined;
  const maps = tests.map(({ known }, index) => mapOfTest(known, beliefs, index, tests.length));
  const simulated = tests.map(({ points, known }) =>
    rememberingTwo((own) => voltageMisses(points, known, parametersAt(beliefs, own), startOf(known, beliefs, own))),
  );
  const missesOf = (z: readonly number[]): Float64Array[] => simulated.map((misses, index) => misses(apply(maps[index] ?? [], z)));
  const independent = tests.map(({ points }) => Math.min(1, independentPoints / points.length));
  const size = sharedCount + 2 * tests.length;
  const fitWith = (errorV: number, from?: readonly number[]): MapFit =>
    fitMap((z) => concatenate(missesOf(z).map((misses, i) => scaled(misses, Math.sqrt(independent[i] ?? 1) / errorV))), size, from);
  const first = fitWith(modelErrorV);
  const fit = fitWith(errorSeen(missesOf(first.z), independent), first.z);

  const map = maps[0] ?? [];
  const z = apply(map, fit.z);
  const covariance = spreadThrough(map, fit.factor);
  const standardDeviations = covariance.map((row, j) => Math.sqrt(Math.min(1, row[j] ?? 1)));
  const misses = concatenate(missesOf(fit.z));
  return {
    parameters: parametersAt(beliefs, z),
    z: z.slice(0, startPlace),
    standardDeviations: standardDeviations.slice(0, startPlace),
    factor: lowerFactor(covariance),
    startShare: startOf(asked.known, beliefs, z),
    startShareUncertainty: asked.known.startShareUncertainty * (standardDeviations[startPlace] ?? 1),
    startShareScale: asked.known.startShareUncertainty,
    rmsV: Math.sqrt(misses.reduce((sum, missV) => sum + missV * missV, 0) / misses.length),
    converged: fit.converged,
  };
}

/**
 * The model's error as the logs show it, V a cell: the first guess and what was missed, each by its number of independent points.
 * Source: the scaled inverse chi-squared distribution, conjugate for a variance (textbook form); its mode but for one part in the count.
 */
function errorSeen(misses: readonly Float64Array[], independent: readonly number[]): number {
  let [squares, count] = [guessPoints * modelErrorV ** 2, guessPoints];
  for (const [i, ofTest] of misses.entries()) {
    const share = independent[i] ?? 1;
    for (const missV of ofTest) squares += share * missV ** 2;
    count += share * ofTest.length;
  }
  return Math.sqrt(squares / count);
}

function scaled(values: Float64Array, by: number): Float64Array {
  return values.map((value) => value * by);
}

/** Place of the start behind the parameters, in what describes one test. */
const startPlace = parameterNames.length;
const hardPlace = parameterNames.indexOf("hardShare");
const emptyPlace = parameterNames.indexOf("emptyDensityOffset");
/** What a battery's tests share comes first: its parameters. */
const sharedCount = parameterNames.length;

/**
 * From all numbers of a fit (shared first, then two a test) to one test's parameters and start.
 * @returns one row a parameter and one for the start, each as long as all numbers
 */
function mapOfTest(known: KnownBattery, beliefs: BatteryBeliefs, index: number, testCount: number): number[][] {
  const length = sharedCount + 2 * testCount;
  const rows = Array.from({ length: startPlace + 1 }, (_, j) => Array.from({ length }, (_, k) => (j === k && j < startPlace ? 1 : 0)));
  const [ownHard, ownStart] = [sharedCount + 2 * index, sharedCount + 2 * index + 1];
  put(rows, hardPlace, hardPlace, Math.sqrt(1 - freshHardShare));
  put(rows, hardPlace, ownHard, Math.sqrt(freshHardShare));
  const { ofEmptyDensity, ownUncertainty } = partsOfStart(known, beliefs);
  // A start that is known exactly has no part that any log could move.
  const unit = known.startShareUncertainty > 0 ? known.startShareUncertainty : Number.POSITIVE_INFINITY;
  put(rows, startPlace, emptyPlace, ofEmptyDensity / unit);
  put(rows, startPlace, ownStart, ownUncertainty / unit);
  return rows;
}

function put(rows: number[][], row: number, column: number, value: number): void {
  const target = rows[row];
  if (target !== undefined) target[column] = value;
}

function apply(map: readonly (readonly number[])[], z: readonly number[]): number[] {
  return map.map((row) => row.reduce((sum, value, k) => sum + value * (z[k] ?? 0), 0));
}

/** M·L·Lᵀ·Mᵀ: the covariance of what a map makes of numbers whose covariance is L·Lᵀ. */
function spreadThrough(map: readonly (readonly number[])[], factor: readonly (readonly number[])[]): number[][] {
  const moved = map.map((row) => factor.map((_, column) => row.reduce((sum, value, k) => sum + value * (factor[k]?.[column] ?? 0), 0)));
  return moved.map((one) => moved.map((other) => one.reduce((sum, value, k) => sum + value * (other[k] ?? 0), 0)));
}

function concatenate(parts: readonly Float64Array[]): Float64Array {
  const whole = new Float64Array(parts.reduce((length, part) => length + part.length, 0));
  let from = 0;
  for (const part of parts) {
    whole.set(part, from);
    from += part.length;
  }
  return whole;
}

function startOf(known: KnownBattery, beliefs: BatteryBeliefs, ofTest: readonly number[]): number {
  const { middle } = partsOfStart(known, beliefs);
  return Math.min(0.99, Math.max(0.005, middle + known.startShareUncertainty * (ofTest[startPlace] ?? 0)));
}

/** A simulation that keeps its last two results: where another test's own numbers are tried, this one's are the same again. */
function rememberingTwo(simulate: (own: readonly number[]) => Float64Array): (own: readonly number[]) => Float64Array {
  let kept: { own: readonly number[]; misses: Float64Array }[] = [];
  return (own) => {
    const known = kept.find((one) => one.own.every((value, j) => value === own[j]));
    const found = known ?? { own, misses: simulate(own) };
    kept = [found, ...kept.filter((one) => one !== found)].slice(0, 2);
    return found.misses;
  };
}

/** Model less measured voltage at the end of each stretch, V a cell, when the measured current flows. */
function voltageMisses(points: readonly LogPoint[], known: KnownBattery, parameters: BatteryParameters, startShare: number): Float64Array {
  const cell = makeCell(known.ratedAh, known.cells, known.density, parameters);
  const state = restedCell(cell, startShare, known.airC);
  const middle = { ...state };
  const misses = new Float64Array(points.length);
  let fromH = 0;
  for (const [k, point] of points.entries()) {
    for (const { endH, currentA } of point.parts) {
      stepCell(cell, state, middle, sourceOf(currentA), endH - fromH, known.airC);
      fromH = endH;
    }
    misses[k] = state.cellV - point.voltageV / known.cells;
  }
  return misses;
}

/** A measured current as a source: whatever voltage it takes. */
function sourceOf(currentA: number): CellSource {
  return currentA > 0 ? { kind: "held", limitA: currentA, limitV: Number.POSITIVE_INFINITY } : { kind: "off" };
}
