/** One segment in its surroundings, and what has happened so far: all that the rules for names look at. */
import type { StageKind } from "../../nouns/stage.ts";
import type { BatteryScale } from "./battery-scale.ts";
import { durationS } from "./merging.ts";
import { elasticityOf } from "./pieces.ts";
import type { Segment } from "./segments.ts";
import type { Series } from "./series.ts";

export type Confidence = "clear" | "likely" | "doubtful";

/** What has happened so far; the rules write it on as they name. */
export type Story = {
  /** The highest voltage that the charger has brought the battery to: what a float lies below. */
  reachedV: number;
  /** The voltage limit, once it was held. */
  heldV: number;
  /** Whether the charge had come to its end: a pause after that is rest, one before it an interruption. */
  isFinished: boolean;
  /** The highest held current so far, A. */
  heldA: number;
};

/** Returns a story in which nothing has happened yet. */
export function newStory(): Story {
  return { reachedV: 0, heldV: 0, isFinished: false, heldA: 0 };
}

/** One segment in its surroundings. */
export type Scene = {
  readonly segment: Segment;
  readonly before: readonly Segment[];
  readonly later: readonly Segment[];
  readonly series: Series;
  readonly battery: BatteryScale;
  readonly story: Story;
};

/** What a rule calls a segment, and why. */
export type Naming = {
  readonly kind: StageKind;
  readonly sure: Confidence;
  readonly because: string;
  /** The stage that follows has begun: the charger had changed over, and only waits for the battery to come down. */
  readonly leadsIn?: boolean;
};

/** Whether current flows into the battery without a break. */
export function isFlowing({ regime }: Segment): boolean {
  return regime !== "idle" && regime !== "discharge" && regime !== "pulses" && regime !== "on-off";
}

/** Whether the elasticity of a segment decides what it is. */
export function isToldByElasticity({ regime }: Segment): boolean {
  return regime === "I" || regime === "U" || regime === "W";
}

/** How sure a segment's regime is: by its places, its length and how far its elasticity lies from where another regime begins. */
export function confidenceOf({ segment, series }: Scene): Confidence {
  const places = segment.to - segment.from;
  if (places < 5) return "doubtful";
  const elasticity = elasticityOf(segment.ends);
  const isBorderline = isToldByElasticity(segment) && ((elasticity > 1 && elasticity < 2.2) || (elasticity > 8 && elasticity < 16));
  return places < 20 || isBorderline || durationS(segment, series) < 600 ? "likely" : "clear";
}
