/** The one rule by which a measured value is held against what was claimed. After JCGM 106:2012 and ILAC-G8:09/2019 (partly from memory). */
import { normalCdf } from "../units/normal-distribution.ts";

/** What the rule needs to know. A limit that is null does not exist; values, limits and uncertainty are in one unit. */
export type DecisionInput = {
  readonly value: number;
  /** Standard uncertainty of the value, not negative. */
  readonly standardUncertainty: number;
  /** The lowest and highest true value that still meet the claim. */
  readonly acceptLow: number | null;
  readonly acceptHigh: number | null;
  /** simple: the value itself decides. guarded: it must be clear of a limit by the guard band w = U. */
  readonly rule: "simple" | "guarded";
  /** k in U = k·u; 2 is usual. */
  readonly coverageFactor: number;
};

export type Decision = {
  readonly outcome: "meets" | "short of" | "above" | "cannot tell";
  /** Probability that the true value lies within the limits, given the value, a normal distribution and no other knowledge. */
  readonly probabilityWithin: number;
  /** Why, in words, without the numbers. */
  readonly words: string;
};

/**
 * Judges a value against limits.
 * @returns the outcome with its probability. Guarded: "meets" where the value is inside every limit by U or more, "short of" or "above"
 *   where it is outside one by more than U, "cannot tell" between. Simple: a value on a limit meets it. "cannot tell" with probability
 *   NaN where anything is missing or impossible: no limit, limits crossed, a value or uncertainty that is no number. Never throws.
 * A guard band of U = 2u holds the chance of a wrong "meets" below 2.3 % at each limit (falseAcceptBound).
 */
export function decide(input: DecisionInput): Decision {
  const impossible = findImpossible(input);
  if (impossible !== undefined) return { outcome: "cannot tell", probabilityWithin: Number.NaN, words: impossible };

  const { value, standardUncertainty, rule, coverageFactor } = input;
  const low = input.acceptLow ?? Number.NEGATIVE_INFINITY;
  const high = input.acceptHigh ?? Number.POSITIVE_INFINITY;
  const probabilityWithin = findProbabilityWithin(value, standardUncertainty, low, high);
  const guardBand = rule === "guarded" ? coverageFactor * standardUncertainty : 0;
  const clear = rule === "guarded" ? ` by more than the expanded uncertainty (k = ${coverageFactor})` : "";

  if (value - guardBand >= low && value + guardBand <= high) {
    const inside = rule === "guarded" ? ` by at least the expanded uncertainty (k = ${coverageFactor})` : "";
    return { outcome: "meets", probabilityWithin, words: `inside the tolerance${inside}` };
  }
  if (value + guardBand < low) return { outcome: "short of", probabilityWithin, words: `below the lower limit${clear}` };
  if (value - guardBand > high) return { outcome: "above", probabilityWithin, words: `above the upper limit${clear}` };
  return {
    outcome: "cannot tell",
    probabilityWithin,
    words: `nearer to a limit than the expanded uncertainty (k = ${coverageFactor}), so the measurement cannot tell`,
  };
}

function findImpossible({ value, standardUncertainty, acceptLow, acceptHigh, coverageFactor }: DecisionInput): string | undefined {
  if (acceptLow === null && acceptHigh === null) return "no limit is stated, and a claim without a tolerance cannot be tested";
  if (Number.isNaN(acceptLow) || Number.isNaN(acceptHigh)) return "a limit is not a number";
  if (acceptLow !== null && acceptHigh !== null && acceptLow > acceptHigh) return "the limits are crossed";
  if (!Number.isFinite(value)) return "no value was measured";
  if (!(standardUncertainty >= 0 && Number.isFinite(standardUncertainty))) return "the uncertainty of the value is not known";
  if (!(coverageFactor > 0)) return "the coverage factor is not positive";
  return undefined;
}

function findProbabilityWithin(value: number, standardUncertainty: number, low: number, high: number): number {
  if (standardUncertainty === 0) return value >= low && value <= high ? 1 : 0;
  // Each tail by itself: their sum keeps its digits where the probability is near one, and the difference below where it is near nought.
  const below = normalCdf((low - value) / standardUncertainty);
  const above = normalCdf((value - high) / standardUncertainty);
  return Math.max(0, 1 - below - above);
}

/**
 * The highest probability that a value accepted behind a guard band is wrong, at one limit: the value stands at the band's edge.
 * @param guardBandInU  w/U, the guard band over the expanded uncertainty; 0 is simple acceptance, with up to one half
 * @param coverageFactor  k in U = k·u
 * Source: ILAC-G8:09/2019, table of decision rules; normal distribution.
 */
export function falseAcceptBound(guardBandInU: number, coverageFactor: number): number {
  return normalCdf(-guardBandInU * coverageFactor);
}

/** A kind of item, a limit on it, and how it is accepted: what the global risks depend on. */
export type RiskInput = {
  /** Probability density of the true value over items, zero below 0; it must be smooth and negligible beyond priorUpTo. */
  readonly priorDensity: (trueValue: number) => number;
  readonly priorUpTo: number;
  /** The highest true value that conforms. */
  readonly upperLimit: number;
  /** The highest measured value that is accepted. */
  readonly acceptUpTo: number;
  /** Standard uncertainty of the measurement, positive. */
  readonly standardUncertainty: number;
};

/**
 * Global risks of a one-sided test on a non-negative quantity, over all items of a kind.
 * @returns nonconforming: share of items beyond the limit; consumers: share that is beyond it and accepted all the same; producers:
 *   share that conforms and is rejected. Integrated by Simpson's rule, to about 1e-8 for a smooth prior.
 * Source: JCGM 106:2012, 9.5.
 */
export function globalRisk(input: RiskInput): { readonly nonconforming: number; readonly consumers: number; readonly producers: number } {
  const { priorDensity, priorUpTo, upperLimit, acceptUpTo, standardUncertainty } = input;
  const accepted = (trueValue: number): number => normalCdf((acceptUpTo - trueValue) / standardUncertainty);
  return {
    nonconforming: integrate(priorDensity, upperLimit, priorUpTo),
    consumers: integrate((trueValue) => priorDensity(trueValue) * accepted(trueValue), upperLimit, priorUpTo),
    producers: integrate((trueValue) => priorDensity(trueValue) * (1 - accepted(trueValue)), 0, upperLimit),
  };
}

/**
 * The acceptance limit at which the consumer's global risk takes the value wanted.
 * @returns in the limit's unit, between 0 and the limit plus five standard uncertainties; NaN where no such limit exists
 * Source: JCGM 106:2012, 9.5.
 */
export function acceptanceLimitForRisk(input: Omit<RiskInput, "acceptUpTo">, consumersRisk: number): number {
  const riskAt = (acceptUpTo: number): number => globalRisk({ ...input, acceptUpTo }).consumers;
  let low = 0;
  let high = input.upperLimit + 5 * input.standardUncertainty;
  if (!(riskAt(low) <= consumersRisk && riskAt(high) >= consumersRisk)) return Number.NaN;
  for (let i = 0; i < 40; i++) {
    const middle = (low + high) / 2;
    if (riskAt(middle) < consumersRisk) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

function integrate(f: (x: number) => number, from: number, to: number): number {
  const intervals = 1000;
  const width = (to - from) / intervals;
  let sum = f(from) + f(to);
  for (let i = 1; i < intervals; i++) sum += (i % 2 === 1 ? 4 : 2) * f(from + i * width);
  return (sum * width) / 3;
}
