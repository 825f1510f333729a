/** Measurement uncertainty after the GUM (JCGM 100:2008; clauses from memory): from data sheets to intervals. */
import type { Accuracy } from "../nouns/instrument.ts";
import { studentT } from "./student-t.ts";

/**
 * Standard uncertainty of one reading, from what the instrument's maker promises.
 * @param accuracy  percentOfReading, digits, plusMinus and resolution as written; parts left out count as nothing
 * @param reading  the value read, in its own unit
 * @returns in the reading's unit: the parts' sum over √3 (rectangular), or, where only a resolution is known, resolution over √12; NaN
 *   for a NaN reading
 * Source: JCGM 100:2008, 4.3.7 and F.2.2.1.
 */
export function standardUncertaintyOf(accuracy: Accuracy, reading: number): number {
  const { percentOfReading = 0, digits = 0, plusMinus = 0, resolution = 0 } = accuracy;
  const halfWidth = (percentOfReading * Math.abs(reading)) / 100 + digits * resolution + plusMinus;
  if (Number.isNaN(reading)) return Number.NaN;
  return Math.max(halfWidth / Math.sqrt(3), resolution / Math.sqrt(12));
}

/** Combines independent standard uncertainties of one unit: root of the sum of squares; 0 for none, NaN where one is. JCGM 100, 5.1.2. */
export function combine(...standardUncertainties: readonly number[]): number {
  return Math.hypot(...standardUncertainties);
}

/** Expanded uncertainty U = k·u, in u's unit. JCGM 100, 6.2.1. */
export function expand(standardUncertainty: number, coverageFactor: number): number {
  return coverageFactor * standardUncertainty;
}

/** One part of a combined uncertainty: its standard uncertainty, and the degrees of freedom behind it (Infinity from a data sheet). */
export type UncertaintyPart = { readonly standardUncertainty: number; readonly degreesOfFreedom: number };

/**
 * Effective degrees of freedom of a combined standard uncertainty.
 * @returns positive, Infinity where every part with weight has infinitely many or there is no uncertainty at all
 * Source: Welch-Satterthwaite, JCGM 100, G.4.1.
 */
export function effectiveDegreesOfFreedom(parts: readonly UncertaintyPart[]): number {
  const total = combine(...parts.map((part) => part.standardUncertainty));
  if (total === 0) return Number.POSITIVE_INFINITY;
  return 1 / parts.reduce((sum, part) => sum + (part.standardUncertainty / total) ** 4 / part.degreesOfFreedom, 0);
}

/** The factor k with which k·u covers 95 %, from Student's t: 2.101 for 18 degrees of freedom, 1.960 for infinitely many. JCGM 100, G.3. */
export function coverageFactor95(degreesOfFreedom: number): number {
  return studentT(0.95, degreesOfFreedom);
}

/** Mean of repeats, and its standard uncertainty from their scatter (JCGM 100, 4.2): s/√n. NaN uncertainty for a single value. */
export function meanOfRepeats(values: readonly number[]): UncertaintyPart & { readonly mean: number } {
  const mean = sum(values) / values.length;
  const degreesOfFreedom = values.length - 1;
  const variance = sum(values.map((value) => (value - mean) ** 2)) / degreesOfFreedom;
  return { mean, standardUncertainty: Math.sqrt(variance / values.length), degreesOfFreedom };
}

/**
 * Covariance of the means of quantities that were observed together, from their scatter.
 * @param series  one list of observations a quantity, all of one length n, at least 2
 * @returns square matrix; its diagonal holds the squared standard uncertainties of the means; NaN for n = 1
 * Source: JCGM 100, 5.2.3.
 */
export function covarianceOfMeans(series: readonly (readonly number[])[]): number[][] {
  const deviations = series.map((values) => {
    const mean = sum(values) / values.length;
    return values.map((value) => value - mean);
  });
  return deviations.map((one) =>
    deviations.map((other) => sum(one.map((deviation, i) => deviation * (other[i] ?? Number.NaN))) / (one.length * (one.length - 1))),
  );
}

/**
 * Carries correlated uncertainties through a linear(ised) relation.
 * @param gradient  derivative of the result by each input
 * @param covariance  covariance matrix of the inputs
 * @returns standard uncertainty of the result
 * Source: JCGM 100, 5.2.2, equation 13 in matrix form.
 */
export function propagate(gradient: readonly number[], covariance: readonly (readonly number[])[]): number {
  return Math.sqrt(Math.max(0, covarianceOf(gradient, gradient, covariance)));
}

/** Covariance of two results with gradients `one` and `other` over the same inputs. JCGM 100, H.2.3, equation H.9. */
export function covarianceOf(one: readonly number[], other: readonly number[], covariance: readonly (readonly number[])[]): number {
  return sum(one.map((slope, i) => slope * sum(other.map((otherSlope, j) => otherSlope * (covariance[i]?.[j] ?? Number.NaN)))));
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
