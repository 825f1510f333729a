/**
 * Holds what was found in one recording against what was true. The rules:
 *
 * 1. A boundary between two true stages is right where a found one lies within one minute of it, or 1 % of the shorter of the two
 *    stages, or the second row before it to the second row behind it, whichever reaches furthest. (Two rows are two sample intervals
 *    where the pace is even, and the whole of a gap where there is one.) A change that has no one instant, as a rounded corner, is a
 *    range, widened likewise.
 * 2. A stage of fewer than 5 rows or less than 2 min is not asked for, nor is a boundary with such a stage.
 * 3. A stage's kind is that of the found stage with which it overlaps most.
 * 4. Where the recording cannot tell two kinds apart, both are right: an interruption or a pause before a lower voltage is rest to a
 *    recording that ends inside it; a charger that holds by off and on is at rest, or pushing, to one that sees it start again less
 *    than twice. Then the charger may also be said to have ended.
 * 5. A found boundary that is within reach of no true one, and not inside such a doubtful stage, is counted as false.
 * 6. An ending is right, unknown or wrong. `unknown` is never wrong: most tails do not tell.
 */
import type { Ender, Stage, StageKind } from "../../lib/nouns/stage.ts";
import type { Charge, TruthStage } from "./programme.ts";
import type { Recorded } from "./recorders.ts";

export type Asked = {
  readonly kind: StageKind;
  readonly mayBe: readonly StageKind[];
  /** Seconds from the recording's first row. */
  readonly startS: number;
  readonly startsByS: number;
  readonly endS: number;
  readonly isAsked: boolean;
  /** What goes on inside cannot be told from this recording. */
  readonly isDoubtful: boolean;
};

export type FoundStage = Pick<Stage, "kind" | "startS" | "endS">;

export type Verdict = {
  readonly boundaries: readonly { readonly atS: number; readonly nearestS: number; readonly isHit: boolean }[];
  readonly kinds: readonly { readonly truth: Asked; readonly found: StageKind | "none"; readonly isHit: boolean }[];
  readonly falseBoundariesS: readonly number[];
  readonly ending: "right" | "unknown" | "wrong";
};

const leastRows = 5;
const leastS = 120;
const allowedS = 60;
const allowedShare = 0.01;

/** Returns the true stages as far as a recording saw them. */
export function stagesSeen(charge: Charge, { samples, fromS, toS }: Recorded): Asked[] {
  return charge.stages
    .filter((stage) => stage.endS > fromS && stage.startS < toS)
    .map((stage) => {
      const startS = Math.max(0, stage.startS - fromS);
      const endS = Math.min(toS, stage.endS) - fromS;
      const onsets = stage.onsetsS.filter((onsetS) => onsetS < toS).length;
      const isHoldingUnseen = stage.kind === "on-off-holding" && onsets < 2;
      return {
        kind: stage.kind,
        mayBe: [...stage.mayBe, ...alsoTrue(stage, toS, onsets)],
        startS,
        startsByS: Math.max(startS, Math.min(endS, startRange(stage) - fromS)),
        endS,
        isAsked: endS - startS >= leastS && rowsWithin(samples.elapsedS, startS, endS) >= leastRows,
        isDoubtful: isHoldingUnseen,
      };
    });
}

/** Holding off and on begins when the charge ends, or with the first time that it starts again: both are fair readings. */
function startRange(stage: TruthStage): number {
  return stage.kind === "on-off-holding" ? (stage.onsetsS[0] ?? stage.endS) : stage.startsByS;
}

function alsoTrue(stage: TruthStage, toS: number, onsets: number): StageKind[] {
  if (stage.kind === "interrupted" && stage.endS >= toS) return ["rest"];
  if (stage.kind === "on-off-holding" && onsets < 2) return ["rest", "interrupted", "constant-current", "constant-voltage", "float"];
  if ((stage.kind === "float" || stage.kind === "constant-voltage") && onsets === 0) return ["rest"];
  return [];
}

function rowsWithin(elapsedS: Float64Array, startS: number, endS: number): number {
  return firstAtOrAfter(elapsedS, endS) - firstAtOrAfter(elapsedS, startS);
}

/** Index of the first row at or after a time; the number of rows where there is none. */
function firstAtOrAfter(elapsedS: Float64Array, atS: number): number {
  let [low, high] = [0, elapsedS.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((elapsedS[middle] ?? Number.POSITIVE_INFINITY) < atS) low = middle + 1;
    else high = middle;
  }
  return low;
}

/**
 * Compares the stages and the ending of one recording with the truth.
 * @param found  in time order, seconds from the recording's first row
 * @param mayEndBy  every ending that would be right
 */
export function compare(
  truth: readonly Asked[],
  found: readonly FoundStage[],
  elapsedS: Float64Array,
  mayEndBy: readonly Ender[],
  endedBy: Ender,
): Verdict {
  const foundS = found.slice(1).map((stage) => stage.startS);
  const windows = truth.slice(1).map((stage, index) => windowAround(truth[index] ?? stage, stage, elapsedS));
  const boundaries = windows
    .filter((window) => window.isAsked)
    .map((window) => {
      const middleS = (window.fromS + window.toS) / 2;
      const nearestS = foundS.reduce((best, at) => (Math.abs(at - middleS) < Math.abs(best - middleS) ? at : best), Number.NaN);
      const nearest = Number.isNaN(nearestS) ? (foundS[0] ?? Number.NaN) : nearestS;
      return { atS: window.atS, nearestS: nearest, isHit: foundS.some((at) => at >= window.fromS && at <= window.toS) };
    });
  const isExplained = (at: number): boolean =>
    windows.some((window) => at >= window.fromS && at <= window.toS) ||
    truth.some((stage) => stage.isDoubtful && at >= stage.startS && at <= stage.endS);
  return {
    boundaries,
    kinds: truth.filter((stage) => stage.isAsked).map((stage) => compareKind(stage, found)),
    falseBoundariesS: foundS.filter((at) => !isExplained(at)),
    ending: mayEndBy.includes(endedBy) ? "right" : endedBy === "unknown" ? "unknown" : "wrong",
  };
}

function windowAround(
  before: Asked,
  after: Asked,
  elapsedS: Float64Array,
): { atS: number; fromS: number; toS: number; isAsked: boolean } {
  const shorterS = Math.min(before.endS - before.startS, after.endS - after.startS);
  const reachS = Math.max(allowedS, allowedShare * shorterS);
  const rowAt = (index: number): number => elapsedS[Math.max(0, Math.min(elapsedS.length - 1, index))] ?? Number.NaN;
  const rowBefore = rowAt(firstAtOrAfter(elapsedS, after.startS) - 2);
  const rowAfter = rowAt(firstAtOrAfter(elapsedS, after.startsByS) + 1);
  return {
    atS: after.startS,
    fromS: Math.min(after.startS - reachS, rowBefore),
    toS: Math.max(after.startsByS + reachS, rowAfter),
    isAsked: before.isAsked && after.isAsked && !after.isDoubtful && !before.isDoubtful,
  };
}

function compareKind(truth: Asked, found: readonly FoundStage[]): Verdict["kinds"][number] {
  const overlapS = (stage: FoundStage): number => Math.min(stage.endS, truth.endS) - Math.max(stage.startS, truth.startS);
  const best = [...found].sort((a, b) => overlapS(b) - overlapS(a))[0];
  const kind = best?.kind ?? "none";
  return { truth, found: kind, isHit: kind === truth.kind || truth.mayBe.some((other) => other === kind) };
}
