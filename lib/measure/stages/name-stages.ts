/** Gives each stretch the trade's name, which needs to know what came before and after. */
import type { StageKind } from "../../nouns/stage.ts";
import { quantile } from "../../signal/order-statistics.ts";
import { trapezoid } from "../../signal/trapezoid.ts";
import { durationS, near, sameCurrentShare, sameVoltageShare } from "./merging.ts";
import { type Ends, elasticityOf, endsOf } from "./pieces.ts";
import { describePulses } from "./pulses.ts";
import type { Segment } from "./segments.ts";
import type { Series } from "./series.ts";

/** A stage before its figures are added up: where it stands and what decided. Half-open range. */
export type FoundStage = {
  readonly kind: StageKind;
  readonly from: number;
  readonly to: number;
  readonly confidence: "clear" | "likely" | "doubtful";
  readonly why: string;
};

/** What is little current for this battery, and how large it is. */
export type BatteryScale = {
  /** Below this a charge at its limit has finished, A. */
  readonly finishedA: number;
  readonly capacityAh: number | undefined;
};

/** A held voltage lower than the highest reached before it by more than this share is another step. 1 % is 0.14 V of 14.4 V. */
const stepBelowShare = 0.01;
/**
 * A lower step is a second absorption where another, lower one follows, or where a cell still gasses (2.40 V less the convention's
 * tolerance) with more than a finished charge's current; else it is a float.
 */
const absorptionVPerCell = 2.33;
/** A stage whose current falls by more than this share while its voltage climbs is called drooping, not constant. */
const droopShare = 0.25;
/** A current under this share of the one before and after it is throttled, or a soft start. */
const throttledShare = 0.85;
/** A soft start is over within this time, s; a charger that gives little for longer is giving what it has. */
const longestSoftStartS = 3600;
/** A finishing current is under this share of the highest. */
const finishingShare = 0.6;
/** Mean current that only keeps a battery full, A for each Ah: IEC 62485-2, vented, boost, safety factor included. */
const keepingFullAPerAh = 0.004;
/** A voltage that moves less than this share over a stretch without current is held, not relaxing. */
const flatShare = 0.0015;
/** After this long without current, s, no cell rests above this voltage, V. */
const longRestS = 5400;
const longRestVPerCell = 2.2;
/** No cell rests above this voltage: the strongest acid in use gives 2.17 V (AGM makers' figure), surface charge a little more. */
const highestRestVPerCell = 2.22;

/** What has happened so far. */
type Story = {
  /** The highest voltage that the charger has brought the battery to: what a float lies below. */
  reachedV: number;
  /** The voltage limit, once it was held. */
  heldV: number;
  /** Whether the charge had come to its end: a pause after that is rest, one before it an interruption. */
  isFinished: boolean;
  /** The highest held current so far, A. */
  heldA: number;
};

type Naming = {
  readonly kind: StageKind;
  readonly sure: FoundStage["confidence"];
  readonly because: string;
  /** The stage that follows has begun: the charger had changed over, and only waits for the battery to come down. */
  readonly leadsIn?: boolean;
};

/**
 * Names the segments of a series.
 *
 * @returns a stage for each segment, neighbours of one kind joined where they are one thing
 */
export function nameStages(segments: readonly Segment[], series: Series, battery: BatteryScale): FoundStage[] {
  const cells = likelyCells(series);
  const story: Story = { reachedV: 0, heldV: 0, isFinished: false, heldA: 0 };
  const named = segments.map((segment, index): Named => {
    const scene: Scene = { segment, before: segments.slice(0, index), later: segments.slice(index + 1), series, battery, cells, story };
    const { kind, sure, because, leadsIn = false } = nameOne(scene);
    const told = segment.regime === "pulses" ? describePulses(series, segment.from, segment.to) : describeChange(segment, series);
    const remark = segment.remark === undefined ? "" : `; ${segment.remark}`;
    return { kind, from: segment.from, to: segment.to, confidence: sure, why: `${because}: ${told}${remark}`, leadsIn };
  });
  return joinNeighbours(named);
}

type Named = FoundStage & { readonly leadsIn: boolean };

/** One segment in its surroundings. */
type Scene = {
  readonly segment: Segment;
  readonly before: readonly Segment[];
  readonly later: readonly Segment[];
  readonly series: Series;
  readonly battery: BatteryScale;
  readonly cells: number;
  readonly story: Story;
};

function nameOne(scene: Scene): Naming {
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
      Object.assign(scene.story, { reachedV: 0, heldV: 0, isFinished: false, heldA: 0 } satisfies Story);
      return { kind: "discharge", sure: confidenceOf(scene), because: "current flows out of the battery" };
    case "pulses":
      scene.story.reachedV = Math.max(
        scene.story.reachedV,
        quantile(scene.series.voltagesV.subarray(scene.segment.from, scene.segment.to), 0.9),
      );
      scene.story.isFinished = true;
      return { kind: "pulses", sure: confidenceOf(scene), because: "the current goes up and down more than six times in ten minutes" };
    case "unexplained":
      return nameLettingGo(scene);
  }
}

function nameHeldCurrent(scene: Scene): Naming {
  const { segment, before, later, series, story } = scene;
  const { ends } = segment;
  const sure = confidenceOf(scene);
  if (story.heldV > 0 && ends.endV < ends.startV && fallsToHold(scene))
    return { kind: kindOfNextHold(scene), sure: "likely", because: "the voltage comes down to the one that is held next", leadsIn: true };
  const highestA = Math.max(story.heldA, ...later.filter((other) => other.regime === "I").map((other) => other.ends.meanA));
  const nextHeld = later.find((other) => other.regime === "I");
  story.isFinished = false;
  if (story.heldV > 0 && ends.meanA < finishingShare * highestA && ends.endV > story.heldV * (1 + stepBelowShare)) {
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

function nameFalling(scene: Scene): Naming {
  const { segment, story, battery } = scene;
  story.reachedV = Math.max(story.reachedV, segment.ends.endV);
  story.isFinished = segment.ends.endA < battery.finishedA;
  return { kind: "drooping", sure: confidenceOf(scene), because: "current falls as voltage climbs, so neither is held" };
}

function nameHeldVoltage(scene: Scene): Naming {
  const { segment, before, later, series, story, battery, cells } = scene;
  const { ends } = segment;
  const next = later[0];
  const isBeforeLimit =
    next?.regime === "I" && next.ends.startA > ends.endA && later.some((other) => other.ends.endV > ends.endV * (1 + stepBelowShare));
  const tapers = segment.regime === "U" && ends.endA < 0.9 * ends.startA;
  if (story.heldV === 0 && isBeforeLimit && story.heldA > 0 && !tapers)
    return { kind: "throttled", sure: "likely", because: "nothing moves at a lower current than before and after" };
  if (story.heldV === 0 && isBeforeLimit && !tapers) {
    if (durationS(segment, series) <= longestSoftStartS && before.every((other) => other.regime === "idle" || other.regime === "discharge"))
      return { kind: "soft-start", sure: "likely", because: "a low current before the full one" };
    return { kind: "constant-current", sure: "likely", because: "nothing moves, below the limit that is reached later" };
  }
  const last = before.at(-1);
  if (
    segment.regime === "steady" &&
    last?.regime === "U" &&
    next?.regime === "U" &&
    last.ends.endA > ends.meanA &&
    next.ends.startA > ends.meanA
  )
    return { kind: "throttled", sure: "likely", because: "a still current, lower than the battery took before and after" };
  const isLower = isBelow(ends.meanV, story.reachedV);
  const falls = ends.endA < 0.95 * ends.startA;
  // Where nothing moves it cannot be told what is held, unless a higher voltage was reached before.
  const sure = falls && segment.regime !== "steady" ? confidenceOf(scene) : isLower ? "likely" : "doubtful";
  const because = `the voltage is held below the ${story.reachedV.toFixed(2)} V reached before`;
  const isFloat = isLower && isLastHold(segment, later, battery, cells);
  story.reachedV = Math.max(story.reachedV, ends.meanV);
  story.heldV = Math.max(story.heldV, ends.meanV);
  story.isFinished = ends.endA < battery.finishedA;
  if (isFloat) return { kind: "float", sure, because };
  if (isLower) return { kind: "constant-voltage", sure, because: `${because}, and is not the last: a second limit` };
  return { kind: "constant-voltage", sure, because: "the voltage is held and the battery sets the current" };
}

function nameIdle(scene: Scene): Naming {
  const { segment, before, later, story } = scene;
  const { ends } = segment;
  const isHeld = staysUp(scene) || (near(ends.startV, ends.endV, flatShare) && near(ends.meanV, story.reachedV, sameVoltageShare));
  if (fallsToHold(scene))
    return {
      kind: kindOfNextHold(scene),
      sure: "likely",
      because: "no current until the battery has come down to the lower voltage",
      leadsIn: true,
    };
  if (isHeld)
    return {
      kind: isBelow(ends.endV, story.reachedV) ? "float" : "constant-voltage",
      sure: "likely",
      because: "the voltage is held, with a current too small to tell from none",
    };
  const isBesideDischarge = before.at(-1)?.regime === "discharge" || later[0]?.regime === "discharge";
  if (before.length > 0 && !isBesideDischarge && goesOn(scene))
    return { kind: "interrupted", sure: "likely", because: "no current for a while in the middle of a charge that then goes on" };
  return { kind: "rest", sure: confidenceOf(scene), because: "no current that can be told from none" };
}

function nameLettingGo(scene: Scene): Naming {
  const { segment, later, story, cells } = scene;
  const endsHigh = isBelow(segment.ends.endV, story.reachedV) && segment.ends.endV / cells > highestRestVPerCell;
  if (fallsToHold(scene) || (later.length === 0 && endsHigh))
    return {
      kind: later.length === 0 ? "float" : kindOfNextHold(scene),
      sure: "likely",
      because: "the voltage comes down from the limit and a little current returns",
      leadsIn: true,
    };
  return {
    kind: "unexplained",
    sure: "doubtful",
    because: "current and voltage fall together, which is neither a held voltage nor a rest; those two come closest",
  };
}

/**
 * Whether the voltage stays where no battery rests, although no current can be told from none: then something holds it.
 *
 * A battery left alone sinks below 2.20 V a cell within an hour or so, even after a long charge (surface charge; common practice); over
 * a shorter time it must stand still, above 2.22 V.
 */
function staysUp({ segment, series, cells }: Scene): boolean {
  const half = segment.from + Math.floor((segment.to - segment.from) / 2);
  const laterEnds = endsOf(series.voltagesV, series.currentsA, half, segment.to);
  const lowestV = Math.min(laterEnds.startV, laterEnds.endV, laterEnds.meanV);
  if (durationS(segment, series) >= longRestS) return lowestV / cells > longRestVPerCell;
  return near(laterEnds.startV, laterEnds.endV, flatShare) && lowestV / cells > highestRestVPerCell;
}

/** Whether a lower held voltage is the one held for good: no lower one follows, and little of the charge is left. */
function isLastHold({ ends }: Segment, later: readonly Segment[], battery: BatteryScale, cells: number): boolean {
  const lowerFollows = later.some((other) => isBelow(other.ends.endV, ends.meanV) && other.ends.endV / cells > longRestVPerCell);
  return !lowerFollows && (ends.meanV / cells < absorptionVPerCell || ends.endA < battery.finishedA);
}

function kindOfNextHold({ later, battery, cells }: Scene): StageKind {
  const next = later[0];
  return next === undefined || isLastHold(next, later.slice(1), battery, cells) ? "float" : "constant-voltage";
}

function isBelow(voltageV: number, reachedV: number): boolean {
  return reachedV > 0 && voltageV < reachedV * (1 - stepBelowShare);
}

/** Whether the voltage comes down to a lower one that is then held: the charger had changed over and waits. */
function fallsToHold({ segment, later, story }: Scene): boolean {
  const next = later[0];
  if (next === undefined || (next.regime !== "U" && next.regime !== "steady")) return false;
  return isBelow(next.ends.meanV, story.reachedV) && segment.ends.endV > next.ends.meanV * (1 - stepBelowShare);
}

/**
 * Whether the charge goes on after a pause: not only the little that keeps a full battery full.
 *
 * Where the capacity is known, the mean current over the pause and the charge after it decides: 4 mA for each Ah is what IEC 62485-2
 * reckons with for a battery gassing at boost voltage, so more than that goes into the plates. Else it goes on unless it had finished.
 */
function goesOn({ segment, later, series, battery, story }: Scene): boolean {
  const end = later.findIndex((other) => other.regime === "idle");
  const charging = end < 0 ? later : later.slice(0, end);
  const first = charging[0];
  const last = charging.at(-1);
  if (first === undefined || last === undefined) return false;
  if (battery.capacityAh === undefined) return !story.isFinished;
  const chargeAs = trapezoid(series.timesS, series.currentsA, first.from, last.to);
  const overS = (series.timesS[last.to - 1] as number) - (series.timesS[segment.from] as number);
  return chargeAs / overS > keepingFullAPerAh * battery.capacityAh;
}

/** Cells in series, from the highest voltage: no charger gives a lead-acid cell 2.9 V. */
function likelyCells(series: Series): number {
  let highestV = 0;
  for (const voltageV of series.voltagesV) if (voltageV > highestV) highestV = voltageV;
  return [3, 6, 12, 24].find((cells) => highestV / cells < 2.9) ?? 6;
}

function confidenceOf({ segment, series }: Scene): FoundStage["confidence"] {
  const places = segment.to - segment.from;
  if (places < 5) return "doubtful";
  const elasticity = elasticityOf(segment.ends);
  const decides = segment.regime === "I" || segment.regime === "U" || segment.regime === "W";
  const isBorderline = decides && ((elasticity > 1 && elasticity < 2.2) || (elasticity > 8 && elasticity < 16));
  return places < 20 || isBorderline || durationS(segment, series) < 600 ? "likely" : "clear";
}

/** Stretches that are one thing to a person, though something small parted them. */
const joined: ReadonlySet<StageKind> = new Set(["float", "rest", "interrupted", "soft-start", "pulses"]);

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

function describeChange(segment: Segment, series: Series): string {
  const ends: Ends = endsOf(series.voltagesV, series.currentsA, segment.from, segment.to);
  const elasticity = elasticityOf(ends);
  const decides = segment.regime === "I" || segment.regime === "U" || segment.regime === "W";
  const ratio = decides && Number.isFinite(elasticity) ? `, elasticity ${elasticity < 100 ? elasticity.toFixed(1) : "over 100"}` : "";
  return `voltage ${fixed(ends.startV)} → ${fixed(ends.endV)} V, current ${fixed(ends.startA)} → ${fixed(ends.endA)} A${ratio}`;
}

/** Two decimals, with a real minus, and never a nought with a sign. */
function fixed(value: number): string {
  const text = value.toFixed(2);
  return text === "-0.00" ? "0.00" : text.replace("-", "−");
}
