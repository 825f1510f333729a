/** Names what charges without holding a voltage: held, lowered and falling currents. */
import { stepBelowShare } from "./cell-levels.ts";
import { fallsToHold, kindOfNextHold } from "./floats.ts";
import { durationS, near, sameCurrentShare } from "./merging.ts";
import { confidenceOf, type Naming, type Scene } from "./scene.ts";

/** A stage whose current falls by more than this share while its voltage climbs is called drooping, not constant. */
const droopShare = 0.25;
/** A current under this share of the full one is a lowered one: throttled, a soft start, or a finishing current. */
const throttledShare = 0.85;
/** A soft start is over within this time, s; a charger that gives little for longer is giving what it has. */
export const longestSoftStartS = 3600;

/** Names a held current: the full one, a lower one before, within or after it, or the last of a charger that lets go of its limit. */
export function nameHeldCurrent(scene: Scene): Naming {
  const { segment, before, later, series, story } = scene;
  const { ends } = segment;
  const sure = confidenceOf(scene);
  if (story.heldV > 0 && ends.endV < ends.startV && fallsToHold(scene))
    return { kind: kindOfNextHold(scene), sure: "likely", because: "the voltage comes down to the one that is held next", leadsIn: true };
  const highestA = Math.max(story.heldA, ...later.filter((other) => other.regime === "I").map((other) => other.ends.meanA));
  const nextHeld = later.find((other) => other.regime === "I");
  story.isFinished = false;
  if (story.heldV > 0 && ends.meanA < throttledShare * highestA && ends.endV > story.heldV * (1 + stepBelowShare)) {
    story.reachedV = Math.max(story.reachedV, ends.endV);
    return {
      kind: "finishing-current",
      sure: "likely",
      because: "after the limit a small current is held and the voltage climbs above it",
    };
  }
  const isLow = nextHeld !== undefined && ends.meanA < throttledShare * nextHeld.ends.meanA;
  story.reachedV = Math.max(story.reachedV, ends.endV);
  if (isLow && story.heldA === 0 && durationS(segment, series) <= longestSoftStartS && !before.some((other) => other.regime === "U"))
    return { kind: "soft-start", sure: "likely", because: "a low current before the full one" };
  if (story.heldA > 0 && ends.meanA < throttledShare * story.heldA && isLow && near(nextHeld.ends.meanA, story.heldA, 3 * sameCurrentShare))
    return { kind: "throttled", sure: "likely", because: `a lower current than the ${story.heldA.toFixed(2)} A before and after` };
  story.heldA = Math.max(story.heldA, ends.meanA);
  if (ends.startA > 0 && (ends.startA - ends.endA) / ends.startA > droopShare)
    return { kind: "drooping", sure: "likely", because: "the current falls by more than a quarter while the voltage climbs" };
  return { kind: "constant-current", sure, because: "the current is held while the voltage moves" };
}

/** Names a current that falls as the voltage climbs. */
export function nameFalling(scene: Scene): Naming {
  const { segment, story, battery } = scene;
  story.reachedV = Math.max(story.reachedV, segment.ends.endV);
  story.isFinished = segment.ends.endA < battery.finishedA;
  return { kind: "drooping", sure: confidenceOf(scene), because: "current falls as voltage climbs, so neither is held" };
}
