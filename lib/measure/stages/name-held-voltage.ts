/** Names a voltage that stands still: a limit, a second one, a float, or a current so low that nothing moves. */
import { isBelow, stepBelowShare } from "./cell-levels.ts";
import { isFloatLevel } from "./floats.ts";
import { durationS, jumpShareA, near, sameVoltageShare } from "./merging.ts";
import { longestSoftStartS } from "./name-flowing.ts";
import { confidenceOf, type Naming, type Scene } from "./scene.ts";

/** A current that falls below this share of what it began with tapers. */
const taperedShare = 0.9;
/** … and one that falls below this share falls at all. */
const fallenShare = 0.95;

/** Names a segment in which the voltage is held, or in which neither voltage nor current moves. */
export function nameHeldVoltage(scene: Scene): Naming {
  const { segment, later, story, battery } = scene;
  const { ends } = segment;
  const lowered = nameBelowLimit(scene) ?? nameThrottledAtLimit(scene);
  if (lowered !== undefined) return lowered;
  const isLower = isBelow(ends.meanV, story.reachedV);
  const falls = ends.endA < fallenShare * ends.startA;
  // Where nothing moves it cannot be told what is held, unless a higher voltage was reached before.
  const sure = falls && segment.regime !== "steady" ? confidenceOf(scene) : isLower ? "likely" : "doubtful";
  const because = `the voltage is held below the ${story.reachedV.toFixed(2)} V reached before`;
  const isFloat = isLower && isFloatLevel(segment, later, battery);
  story.reachedV = Math.max(story.reachedV, ends.meanV);
  story.heldV = Math.max(story.heldV, ends.meanV);
  story.isFinished = ends.endA < battery.finishedA;
  if (isFloat) return { kind: "float", sure, because };
  if (isLower) return { kind: "constant-voltage", sure, because: `${because}, and is not the last: a second limit` };
  return { kind: "constant-voltage", sure, because: "the voltage is held and the battery sets the current" };
}

/** What a voltage that hardly moves below a limit reached later is: the current decides there, not the voltage. */
function nameBelowLimit({ segment, before, later, series, story }: Scene): Naming | undefined {
  const { ends } = segment;
  const next = later[0];
  const isBeforeLimit =
    next?.regime === "I" && next.ends.startA > ends.endA && later.some((other) => other.ends.endV > ends.endV * (1 + stepBelowShare));
  const tapers = segment.regime === "U" && ends.endA < taperedShare * ends.startA;
  if (story.heldV > 0 || !isBeforeLimit || tapers) return undefined;
  if (story.heldA > 0) return { kind: "throttled", sure: "likely", because: "nothing moves at a lower current than before and after" };
  if (durationS(segment, series) <= longestSoftStartS && before.every((other) => other.regime === "idle" || other.regime === "discharge"))
    return { kind: "soft-start", sure: "likely", because: "a low current before the full one" };
  return { kind: "constant-current", sure: "likely", because: "nothing moves, below the limit that is reached later" };
}

/** A still current between two stretches at one limit, lower than what the battery took there by a jump. */
function nameThrottledAtLimit({ segment, before, later }: Scene): Naming | undefined {
  const last = before.at(-1);
  const next = later[0];
  if (segment.regime !== "steady" || last?.regime !== "U" || next?.regime !== "U") return undefined;
  if (last.ends.endA <= jumpShareA * segment.ends.startA || !near(last.ends.meanV, next.ends.meanV, sameVoltageShare)) return undefined;
  return { kind: "throttled", sure: "likely", because: "a still current, suddenly lower than the battery took at the same limit" };
}
