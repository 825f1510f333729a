/** When a lower voltage is a float: one that a battery is left at once its charge has finished. */
import type { StageKind } from "../../nouns/stage.ts";
import type { BatteryScale } from "./battery-scale.ts";
import { absorptionVPerCell, isBelow, longRestVPerCell, stepBelowShare } from "./cell-levels.ts";
import { isFlowing, type Scene } from "./scene.ts";
import type { Segment } from "./segments.ts";

/**
 * Whether a lower held voltage is one that a battery is left at.
 *
 * It is a second absorption where a cell still gasses, unless a battery so cold that it is floated there takes no more than what keeps it
 * full, and no lower voltage follows.
 */
export function isFloatLevel({ ends }: Segment, later: readonly Segment[], { cells, keepingFullA }: BatteryScale): boolean {
  const lowerFollows = later.some((other) => isBelow(other.ends.endV, ends.meanV) && other.ends.endV / cells > longRestVPerCell);
  return ends.meanV / cells < absorptionVPerCell || (!lowerFollows && ends.endA < keepingFullA);
}

/**
 * Whether a charge that had finished is only kept up: below the limit, above where any battery rests, with little current. A float that
 * follows the temperature, or a battery that warms up on it, moves both current and voltage, so that neither looks held.
 *
 * The charge had finished where little flowed at its end; or where the limit was held and no cell is brought to gas any more.
 */
export function isKeptUp({ ends }: Segment, { story, later, battery }: Pick<Scene, "story" | "later" | "battery">): boolean {
  const lowestV = Math.min(ends.meanV, ends.endV);
  const highestV = Math.max(ends.meanV, ends.endV);
  const isOver = story.heldV > 0 && !later.some((other) => other.ends.endV / battery.cells >= absorptionVPerCell);
  return (
    (story.isFinished || isOver) &&
    isBelow(highestV, story.reachedV) &&
    highestV / battery.cells < absorptionVPerCell &&
    lowestV / battery.cells > longRestVPerCell &&
    Math.max(ends.meanA, ends.endA) < battery.finishedA
  );
}

/** Whether the voltage comes down to a lower one that is then held: the charger had changed over and waits. */
export function fallsToHold(scene: Scene): boolean {
  const { segment, later, story } = scene;
  const next = later[0];
  if (next === undefined || !(next.regime === "U" || next.regime === "steady" || (isFlowing(next) && isKeptUp(next, scene)))) return false;
  return isBelow(next.ends.meanV, story.reachedV) && segment.ends.endV > next.ends.meanV * (1 - stepBelowShare);
}

/** What the voltage that comes next is: a float, or a second absorption. A float where nothing comes next. */
export function kindOfNextHold({ later, battery }: Scene): StageKind {
  const next = later[0];
  return next === undefined || isFloatLevel(next, later.slice(1), battery) ? "float" : "constant-voltage";
}
