/** The stages of a recorded charge, and which of them the charger was seen to end. */
import type { Ender, Stage } from "../nouns/stage.ts";

/** One recorded charge by the charger in question, on any battery of the same nominal voltage. */
export type RecordedCharge = { readonly stages: readonly Stage[]; readonly endedBy: Ender };

/** A stage, and whether the charger was seen to end it. */
export type SeenStage = { readonly stage: Stage; readonly isEndSeen: boolean; readonly hours: number };

/**
 * The stages of a recording that carry numbers, in order, each with whether the charger ended it.
 * @param holdsOnOff  whether this charger is known to go on and off by itself: a pause then is its own doing
 */
export function seenStages({ stages: recorded, endedBy }: RecordedCharge, holdsOnOff: boolean): SeenStage[] {
  const stages = withoutFalseLimits(recorded);
  return stages
    .filter((stage) => stage.currentMeanA !== null && stage.voltageMeanV !== null)
    .map((stage) => {
      const next = stages[stages.indexOf(stage) + 1];
      return { stage, isEndSeen: isEndedByCharger(next, endedBy, holdsOnOff), hours: (stage.endS - stage.startS) / 3600 };
    });
}

/**
 * Whether what follows a stage shows that the charger ended it. A pause in mid-charge may be the mains, unless the charger is one that
 * pauses; a rest after which a person or the mains ended the recording may be theirs; leads that come off, or change places, are nobody's but
 * a person's.
 */
function isEndedByCharger(next: Stage | undefined, endedBy: Ender, holdsOnOff: boolean): boolean {
  switch (next?.kind) {
    case undefined:
      return endedBy === "charger";
    case "interrupted":
      return holdsOnOff;
    case "rest":
      return endedBy !== "person" && endedBy !== "mains";
    case "unexplained":
    case "discharge":
    case "no-battery":
    case "reversed":
      return false;
    default:
      return true;
  }
}

/** How far a current may lie from the falling line and still belong to it, as a share of the current at the line's beginning. */
const onLineShare = 0.06;

/**
 * A falling current comes to rest where the battery's voltage does, which looks like a held voltage. Where the current there is the one
 * that the line gives for that voltage, the charger holds nothing: the stage is joined to the falling one.
 */
function withoutFalseLimits(stages: readonly Stage[]): Stage[] {
  const joined: Stage[] = [];
  for (const stage of stages) {
    const before = joined.at(-1);
    if (before !== undefined && before.kind === "drooping" && stage.kind === "constant-voltage" && isOnLine(before, stage))
      joined[joined.length - 1] = { ...before, endS: stage.endS, voltageEndV: stage.voltageEndV, currentEndA: stage.currentEndA };
    else joined.push(stage);
  }
  return joined;
}

function isOnLine(line: Stage, held: Stage): boolean {
  const { voltageStartV, voltageEndV, currentStartA, currentEndA } = line;
  if (voltageStartV === null || voltageEndV === null || currentStartA === null || currentEndA === null) return false;
  const slopeAPerV = (currentEndA - currentStartA) / (voltageEndV - voltageStartV);
  const expectedA = currentEndA + slopeAPerV * ((held.voltageMeanV ?? Number.NaN) - voltageEndV);
  return Math.abs((held.currentMeanA ?? Number.NaN) - expectedA) < onLineShare * currentStartA;
}
