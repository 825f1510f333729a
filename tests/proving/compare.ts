/** Holds what was found in one recording against what was true, by the rules that stand below and head docs/proving.md. */
import type { Ender, Stage, StageKind } from "../../lib/nouns/stage.ts";
import type { Charge, TruthStage } from "./programme.ts";
import type { Recorded } from "./recorders.ts";

/** How a recording is judged; printed as they stand here. */
export const comparisonRules: readonly string[] = [
  "A boundary between two true stages is right where a found one lies within one minute of it, or 1 % of the shorter of the two stages, or from the second row before it to the second row behind it, whichever reaches furthest. (Two rows are two sample intervals where the pace is even, and the whole of a gap where there is one.) A change that has no one instant, as a rounded corner, is a range, widened likewise. A train of pulses begins anywhere up to the first row that falls between two pulses, and may be over from the last row that falls into one: before and behind, a recorder that looks seldom sees nothing of it.",
  "A stage of fewer than 5 rows or less than 2 min is not asked for, nor is a boundary with such a stage.",
  "A stage's kind is that of the found stage with which it overlaps most.",
  "Where the recording cannot tell two kinds apart, both are right. An interruption that the recording does not see the end of may be rest, and so may a lower voltage that the battery has not come down to. A throttled current that is not seen to begin, or does not go back to the full one, may be any held current. A current that droops while the voltage moves by less than half a per cent may be the taper of a held voltage. A charger that holds by off and on may be anything to a recorder that sees it start again less than twice (two rows of each): nothing is then asked of it. Nothing is asked either of a throttled current whose voltage stays within half a per cent of the limit held beside it.",
  "A found boundary within reach of no true one, and not inside such a doubtful stage, is counted as false. Boundaries beside stages too short to be asked for are no false ones.",
  "An ending is right, unknown or wrong. A charger that holds by off and on may be said to have ended its charge, whoever ended the recording. A recorder that had fallen silent while the charge went on ended its recording itself; to name whoever took the clamps off meanwhile is right too. The facts beside the recording are when the clamps came off and, in some behaviours, what a visitor noted. Unknown is never wrong: most tails do not tell.",
];

export type Asked = {
  readonly kind: StageKind;
  readonly mayBe: readonly StageKind[];
  /** Seconds from the recording's first row. */
  readonly startS: number;
  /** The change into it may be seen from here … to here; both are `startS` where it has an instant that shows. */
  readonly startsFromS: number;
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
/** Less than this no recorder in use could tell from a held voltage: 0.07 V of 14.4 V. */
const leastMovedShare = 0.005;

/** Returns the true stages as far as a recording saw them. */
export function stagesSeen(charge: Charge, recorded: Recorded): Asked[] {
  const { samples, fromS, toS } = recorded;
  return charge.stages
    .filter((stage) => stage.endS > fromS && stage.startS < toS)
    .map((stage, index, seen) => {
      const startS = Math.max(0, stage.startS - fromS);
      const endS = Math.min(toS, stage.endS) - fromS;
      const isDoubtful =
        (stage.kind === "on-off-holding" && flowsSeen(stage, recorded).length < 2) ||
        (stage.kind === "throttled" && isAtHeldVoltage(stage, charge));
      return {
        kind: stage.kind,
        mayBe: [...stage.mayBe, ...alsoTrue(stage, charge, recorded)],
        startS,
        startsFromS: seen[index - 1]?.kind === "pulses" ? lastPulseSeenS(seen[index - 1] as TruthStage, recorded) : startS,
        startsByS: Math.max(startS, Math.min(endS, stage.kind === "pulses" ? firstPauseSeenS(stage, recorded) : startRange(stage) - fromS)),
        endS,
        isAsked: !isDoubtful && endS - startS >= leastS && rowsWithin(samples.elapsedS, startS, endS) >= leastRows,
        isDoubtful,
      };
    });
}

/** Holding off and on begins when the charge ends, or with the first time that it starts again: both are fair readings. */
function startRange(stage: TruthStage): number {
  return stage.kind === "on-off-holding" ? (stage.flows[0]?.fromS ?? stage.endS) : stage.startsByS;
}

/** The last row that falls into a pulse, s from the first row; the stage's start where none does. */
function lastPulseSeenS(stage: TruthStage, { samples, fromS }: Recorded): number {
  const startS = Math.max(0, stage.startS - fromS);
  for (let row = firstAtOrAfter(samples.elapsedS, stage.endS - fromS) - 1; row >= 0; row--) {
    const atS = samples.elapsedS[row] ?? Number.NaN;
    if (atS < startS) break;
    if (flowsAt(stage, atS + fromS)) return atS;
  }
  return startS;
}

/** The first row that falls between two pulses, s from the first row; the stage's end where none does. */
function firstPauseSeenS(stage: TruthStage, { samples, fromS }: Recorded): number {
  const endS = stage.endS - fromS;
  for (let row = firstAtOrAfter(samples.elapsedS, stage.startS - fromS); row < samples.elapsedS.length; row++) {
    const atS = samples.elapsedS[row] ?? Number.NaN;
    if (atS >= endS) break;
    if (!flowsAt(stage, atS + fromS)) return atS;
  }
  return endS;
}

function flowsAt(stage: TruthStage, second: number): boolean {
  return stage.flows.some((flow) => second >= flow.fromS && second < flow.toS);
}

/** Whether a throttled stage hardly left the voltage that is held before or behind it: its middle is looked at. */
function isAtHeldVoltage(stage: TruthStage, { stages, voltagesV }: Charge): boolean {
  const middleV = voltagesV[Math.floor((stage.startS + stage.endS) / 2)] ?? Number.NaN;
  return stages.some((other) => {
    const isBeside = other.endS === stage.startS || other.startS === stage.endS;
    const heldV = voltagesV[Math.floor((other.startS + other.endS) / 2)] ?? Number.NaN;
    return isBeside && other.kind === "constant-voltage" && Math.abs(middleV / heldV - 1) < leastMovedShare;
  });
}

/** The times that current flowed and at least two rows told of it. */
function flowsSeen(stage: TruthStage, { samples, fromS }: Recorded): TruthStage["flows"] {
  return stage.flows.filter((flow) => rowsWithin(samples.elapsedS, flow.fromS - fromS, flow.toS - fromS) >= 2);
}

/** Other kinds that the recording cannot tell from the true one; rule 4. */
function alsoTrue(stage: TruthStage, charge: Charge, { fromS, toS }: Recorded): StageKind[] {
  const isCutBefore = stage.startS < fromS;
  const isCutBehind = stage.endS >= toS;
  switch (stage.kind) {
    case "interrupted":
      return isCutBehind ? ["rest"] : [];
    case "throttled":
      return isCutBefore ? ["constant-current", "soft-start"] : isCutBehind || !goesBack(stage, charge) ? ["constant-current"] : [];
    case "float":
    case "constant-voltage":
      return (stage.flows[0]?.fromS ?? toS) >= toS ? ["rest"] : [];
    case "drooping":
      return movedShare(charge.voltagesV, Math.max(stage.startS, fromS), Math.min(stage.endS, toS)) < leastMovedShare
        ? ["constant-voltage"]
        : [];
    default:
      return [];
  }
}

/** Whether a throttled stage is followed by full current, long enough to be asked for, rather than by a held voltage. */
function goesBack(stage: TruthStage, { stages }: Charge): boolean {
  return stages.some((next) => next.startS === stage.endS && next.kind === "constant-current" && next.endS - next.startS >= leastS);
}

/** By what share of itself a true voltage changed between two seconds. */
function movedShare(voltagesV: Float64Array, fromS: number, toS: number): number {
  const [startV, endV] = [voltagesV[Math.ceil(fromS) + 1], voltagesV[Math.floor(toS)]];
  return startV === undefined || endV === undefined ? 0 : Math.abs(endV / startV - 1);
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
      const nearestS = [...foundS].sort((a, b) => Math.abs(a - middleS) - Math.abs(b - middleS))[0] ?? Number.NaN;
      return { atS: window.atS, nearestS, isHit: foundS.some((at) => at >= window.fromS && at <= window.toS) };
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

function windowAround(before: Asked, after: Asked, elapsedS: Float64Array): { atS: number; fromS: number; toS: number; isAsked: boolean } {
  const shorterS = Math.min(before.endS - before.startS, after.endS - after.startS);
  const reachS = Math.max(allowedS, allowedShare * shorterS);
  const rowAt = (index: number): number => elapsedS[Math.max(0, Math.min(elapsedS.length - 1, index))] ?? Number.NaN;
  const rowBefore = rowAt(firstAtOrAfter(elapsedS, after.startsFromS) - 2);
  const rowAfter = rowAt(firstAtOrAfter(elapsedS, after.startsByS) + 1);
  return {
    atS: after.startS,
    fromS: Math.min(after.startsFromS - reachS, rowBefore),
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
