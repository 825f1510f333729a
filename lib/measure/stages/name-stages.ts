/** Gives each stretch the trade's name, which needs to know what came before and after. */
import type { StageKind } from "../../nouns/stage.ts";
import { quantile } from "../../signal/order-statistics.ts";
import type { BatteryScale } from "./battery-scale.ts";
import { highestRestVPerCell, isBelow } from "./cell-levels.ts";
import { describeChange } from "./describe-change.ts";
import { fallsToHold, isKeptUp, kindOfNextHold } from "./floats.ts";
import { nameFalling, nameHeldCurrent } from "./name-flowing.ts";
import { nameHeldVoltage } from "./name-held-voltage.ts";
import { nameIdle, nameWithoutBattery } from "./name-pauses.ts";
import { tellNearestKinds } from "./nearest-kinds.ts";
import { describePulses } from "./pulses.ts";
import { type Confidence, confidenceOf, isFlowing, type Naming, newStory, type Scene } from "./scene.ts";
import type { Segment } from "./segments.ts";
import type { Series } from "./series.ts";

/** A stage before its figures are added up: where it stands and what decided. Half-open range. */
export type FoundStage = {
  readonly kind: StageKind;
  readonly from: number;
  readonly to: number;
  readonly confidence: Confidence;
  readonly why: string;
};

type Named = FoundStage & { readonly leadsIn: boolean };

/**
 * Names the segments of a series.
 *
 * @returns a stage for each segment, neighbours of one kind joined where they are one thing
 */
export function nameStages(segments: readonly Segment[], series: Series, battery: BatteryScale): FoundStage[] {
  const story = newStory();
  const named = segments.map((segment, index): Named => {
    const scene: Scene = { segment, before: segments.slice(0, index), later: segments.slice(index + 1), series, battery, story };
    const { kind, sure, because, leadsIn = false } = nameOne(scene);
    const told = segment.regime === "pulses" ? describePulses(series, segment.from, segment.to) : describeChange(segment, series);
    const remark = segment.remark === undefined ? "" : `; ${segment.remark}`;
    return { kind, from: segment.from, to: segment.to, confidence: sure, why: `${because}: ${told}${remark}`, leadsIn };
  });
  return joinNeighbours(named);
}

function nameOne(scene: Scene): Naming {
  const withoutBattery = nameWithoutBattery(scene);
  if (withoutBattery !== undefined) return withoutBattery;
  if (isFlowing(scene.segment) && isKeptUp(scene.segment, scene)) return nameKeptUp(scene);
  switch (scene.segment.regime) {
    case "I":
      return nameHeldCurrent(scene);
    case "W":
      return nameFalling(scene);
    case "U":
    case "steady":
      return nameHeldVoltage(scene);
    case "idle":
      return nameIdle(scene);
    case "discharge":
      return nameDischarge(scene);
    case "pulses":
      return namePulses(scene);
    case "on-off":
      return nameOnOffHolding(scene);
    case "unexplained":
      return nameLettingGo(scene);
  }
}

function nameKeptUp(scene: Scene): Naming {
  return {
    kind: "float",
    sure: scene.segment.regime === "U" ? confidenceOf(scene) : "likely",
    because: `the voltage stays below the ${scene.story.reachedV.toFixed(2)} V reached before, with little current`,
  };
}

/** A discharge begins another story. */
function nameDischarge(scene: Scene): Naming {
  Object.assign(scene.story, newStory());
  return { kind: "discharge", sure: confidenceOf(scene), because: "current flows out of the battery" };
}

function namePulses(scene: Scene): Naming {
  const { segment, series, story } = scene;
  story.reachedV = Math.max(story.reachedV, quantile(series.voltagesV.subarray(segment.from, segment.to), 0.9));
  story.isFinished = true;
  return { kind: "pulses", sure: confidenceOf(scene), because: "the current goes up and down more than six times in ten minutes" };
}

function nameOnOffHolding({ segment, story }: Scene): Naming {
  story.isFinished = true;
  return { kind: "on-off-holding", sure: "clear", because: segment.remark ?? "it waits, lifts the battery, and waits again" };
}

/** Current and voltage fall together: a charger that lets go of its limit, or what fits no kind. */
function nameLettingGo(scene: Scene): Naming {
  const { segment, later, story, battery } = scene;
  const endsHigh = isBelow(segment.ends.endV, story.reachedV) && segment.ends.endV / battery.cells > highestRestVPerCell;
  if (fallsToHold(scene) || (later.length === 0 && endsHigh))
    return {
      kind: kindOfNextHold(scene),
      sure: "likely",
      because: "the voltage comes down from the limit and a little current returns",
      leadsIn: true,
    };
  return {
    kind: "unexplained",
    sure: "doubtful",
    because: `fits no kind; ${tellNearestKinds(segment.ends, battery.noneA)}`,
  };
}

/** Stretches that are one thing to a person, though something small parted them. */
const joined: ReadonlySet<StageKind> = new Set(["float", "rest", "interrupted", "soft-start", "pulses", "no-battery", "reversed"]);

function joinNeighbours(stages: readonly Named[]): FoundStage[] {
  const result: Named[] = [];
  for (const stage of stages) {
    const last = result.at(-1);
    const isOne = last?.kind === stage.kind && (joined.has(stage.kind) || last.leadsIn);
    if (last !== undefined && isOne) result[result.length - 1] = { ...last, to: stage.to, leadsIn: stage.leadsIn };
    else result.push(stage);
  }
  return result.map(({ leadsIn: _, ...stage }) => stage);
}
