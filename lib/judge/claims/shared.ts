/** What the claims have in common: limits from tolerances, and the published form of a verdict. */
import type { TestContext } from "../../measure/test-context.ts";
import type { Claims } from "../../nouns/charger.ts";
import type { JudgedClaim } from "../../nouns/finding.ts";
import type { Rules, Tolerance } from "../../nouns/rules.ts";
import { decide } from "../decision-rule.ts";

/** A claim about a number: what is printed, and how far from it a true value may be. */
export type NumberClaim = NonNullable<Claims["currentA"]>;

/** What was measured to hold against a number claim. */
export type Held = {
  readonly value: number;
  readonly standardUncertainty: number | undefined;
  readonly figure: string | null;
  readonly why: string;
  readonly doubts: readonly string[];
};

export type Subject = { readonly id: string; readonly label: string; readonly unit: string };

function limitsOf(claim: NumberClaim, siteTolerance: Tolerance, movedBy = 0): { low: number; high: number; words: string } {
  const tolerance = claim.tolerance ?? siteTolerance;
  const whose = claim.tolerance === undefined ? "the site's tolerance" : "the tolerance declared for this claim";
  return {
    low: claim.value * (1 - tolerance.below) + movedBy,
    high: claim.value * (1 + tolerance.above) + movedBy,
    words: `${whose}, ${percent(tolerance.below)} below to ${percent(tolerance.above)} above`,
  };
}

const percent = (share: number): string => `${Number((share * 100).toFixed(2))} %`;

/**
 * Judges a measured value against a number claim by the site's rule.
 *
 * @param movedBy  how far the claim's limits move, in its unit, where it means another value under the conditions of the test
 */
export function judgeNumber(
  subject: Subject,
  claim: NumberClaim,
  held: Held,
  siteTolerance: Tolerance,
  rules: Rules,
  movedBy = 0,
): JudgedClaim {
  const limits = limitsOf(claim, siteTolerance, movedBy);
  const rule = `${rules.decision === "guarded" ? `guarded, w = U, k = ${rules.coverageFactor}` : "simple acceptance"}; ${limits.words}`;
  const common = {
    ...subject,
    claimed: claim.value,
    claimedWords: claim.words ?? null,
    claimedFrom: claim.from,
    acceptLow: limits.low,
    acceptHigh: limits.high,
    measured: held.value,
    measuredWords: null,
    rule,
    figure: held.figure,
    doubts: [...held.doubts],
  };
  if (held.standardUncertainty === undefined)
    return {
      ...common,
      low: null,
      high: null,
      outcome: "cannot tell",
      probability: null,
      why: `${held.why}; the instrument's accuracy is not stated, so the value cannot be held against the claim`,
      wouldSettle: "the recorder's accuracy, from its data sheet or a calibration",
    };
  const decision = decide({
    value: held.value,
    standardUncertainty: held.standardUncertainty,
    acceptLow: limits.low,
    acceptHigh: limits.high,
    rule: rules.decision,
    coverageFactor: rules.coverageFactor,
  });
  const halfWidth = rules.coverageFactor * held.standardUncertainty;
  return {
    ...common,
    low: held.value - halfWidth,
    high: held.value + halfWidth,
    outcome: decision.outcome,
    probability: Number.isNaN(decision.probabilityWithin) ? null : decision.probabilityWithin,
    why: `${held.why}; ${decision.words}`,
    wouldSettle: decision.outcome === "cannot tell" ? "a more accurate recorder, or its calibration" : null,
  };
}

/**
 * Why no recording of a test shows stages at all: there is none, or none logs both voltage and current.
 *
 * @returns undefined where at least one recording shows stages
 */
export function whyNoStages(context: TestContext): string | undefined {
  const recordings = context.connections.flatMap((connection) => connection.recordings);
  if (recordings.length === 0) return "nothing was recorded";
  if (recordings.some((recording) => recording.stages.length > 0)) return undefined;
  const both = recordings.some(({ trace }) => trace.hasVoltage && trace.hasCurrent);
  return both ? "no recording is long enough to show what the charger does" : "no recorder logged both voltage and current";
}

/** A number claim that nothing measured bears on. */
export function notTested(subject: Subject, claim: NumberClaim, siteTolerance: Tolerance, why: string, wouldSettle: string): JudgedClaim {
  const limits = limitsOf(claim, siteTolerance);
  return {
    ...subject,
    claimed: claim.value,
    claimedWords: claim.words ?? null,
    claimedFrom: claim.from,
    acceptLow: limits.low,
    acceptHigh: limits.high,
    measured: null,
    low: null,
    high: null,
    measuredWords: null,
    outcome: "not put to the test",
    probability: null,
    rule: "a claim is judged only where the test could have shown it",
    why,
    wouldSettle,
    figure: null,
    doubts: [],
  };
}
