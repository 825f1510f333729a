/**
 * A charger's programme as a list of phases, run second by second on a plant, with the truth noted as it happens.
 *
 * The truth says what the charger did, from its programme alone; it knows nothing of how stages are searched for.
 */
import type { StageKind } from "../../lib/nouns/stage.ts";
import type { Source } from "../generator/battery.ts";
import type { Plant } from "./plant.ts";

/** What a charger can see. */
export type Moment = {
  readonly voltageV: number;
  readonly currentA: number;
  readonly airC: number;
  /** Since the phase began, and since the clamps went on. */
  readonly phaseS: number;
  readonly totalS: number;
};

export type Phase = {
  /** What the charger does in this phase, and what it does while its current limit decides instead. */
  readonly kind: StageKind;
  readonly atLimit?: StageKind;
  /** Kinds that would not mislead a reader either. */
  readonly mayBe?: readonly StageKind[];
  /** Where its corner is rounded, the voltage from which the limit counts as reached, V: the change has no one instant. */
  readonly reachedV?: number;
  readonly offer: (now: Moment) => Source | undefined;
  /** The phase ends when this has held for `holdsS`, or after `maxH`. */
  readonly ends?: (now: Moment) => boolean;
  readonly holdsS?: number;
  readonly maxH?: number;
  /** Where it goes on; the next phase if left out. Behind the last phase the clamps come off. */
  readonly next?: number;
};

export type Connection = {
  readonly plant: Plant;
  readonly phases: readonly Phase[];
  readonly airC: (totalS: number) => number;
  /** The clamps come off then, at the latest. */
  readonly maxH: number;
  /** The recorder goes on so long after the clamps came off, in hours. */
  readonly recordedAfterH?: number;
  /** Mains away: the charger stops, forgets its phase and begins again. */
  readonly dark?: { readonly fromS: number; readonly toS: number };
  /** Share of its current that a hot charger allows itself. */
  readonly heatShare?: (totalS: number) => number;
};

export type TruthStage = {
  readonly kind: StageKind;
  readonly mayBe: readonly StageKind[];
  readonly phase: number;
  readonly startS: number;
  endS: number;
  /** The change into this stage has no one instant: it lies between `startS` and here. */
  startsByS: number;
  /** Each time within the stage that current flowed into the battery, from its first second to behind its last. */
  readonly flows: { readonly fromS: number; toS: number }[];
};

/** What was true at the posts, one value a second, and what the charger was doing. */
export type Charge = {
  readonly voltagesV: Float64Array;
  readonly currentsA: Float64Array;
  readonly stages: readonly TruthStage[];
  readonly clampsOffS: number;
  /** When the charger switched off for good; undefined where it never did. */
  readonly finishedS: number | undefined;
};

/** Within this share of its limit a charger's current is at the limit. */
const atLimitShare = 0.999;

/** Less current than this is none: no recorder here could see it, and the solver leaves dust of that kind. */
const flowingA = 0.001;

/** Runs a connection from clamps on until the recorder has nothing more to see. */
export function runConnection(connection: Connection): Charge {
  const { plant, phases, dark } = connection;
  const voltagesV: number[] = [];
  const currentsA: number[] = [];
  const stages: TruthStage[] = [];
  let phase = 0;
  let phaseS = 0;
  let heldS = 0;
  let currentA = 0;
  let clampsOffS: number | undefined;
  let finishedS: number | undefined;
  for (let totalS = 0; ; totalS++) {
    voltagesV.push(plant.voltageV());
    currentsA.push(currentA);
    if (clampsOffS === undefined && (phases[phase] === undefined || totalS >= connection.maxH * 3600)) clampsOffS = totalS;
    if (clampsOffS !== undefined && totalS >= clampsOffS + (connection.recordedAfterH ?? 0) * 3600) break;
    const airC = connection.airC(totalS);
    const current = phases[phase];
    const isDark = dark !== undefined && totalS >= dark.fromS && totalS < dark.toS;
    if (current === undefined || clampsOffS !== undefined || isDark) {
      currentA = plant.step(undefined, airC);
      noteSecond(stages, { kind: isDark ? "interrupted" : "rest", mayBe: [], phase: -1 }, totalS, 0);
      if (isDark) {
        phase = 0;
        phaseS = 0;
        heldS = 0;
      }
      continue;
    }
    const before: Moment = { voltageV: plant.voltageV(), currentA, airC, phaseS, totalS };
    const heatShare = connection.heatShare?.(totalS) ?? 1;
    const source = throttle(current.offer(before), heatShare);
    currentA = plant.step(source, airC);
    const doing = doingNow(current, source, currentA, heatShare, phase);
    noteSecond(stages, doing, totalS, currentA);
    if (current.reachedV !== undefined && doing.kind === current.kind && plant.voltageV() < current.reachedV) {
      const last = stages.at(-1);
      if (last !== undefined) last.startsByS = totalS + 1;
    }
    phaseS++;
    const after: Moment = { voltageV: plant.voltageV(), currentA, airC, phaseS, totalS: totalS + 1 };
    heldS = current.ends?.(after) === true ? heldS + 1 : 0;
    const isOver = (heldS > 0 && heldS >= (current.holdsS ?? 5)) || (current.maxH !== undefined && phaseS >= current.maxH * 3600);
    // Off for good is a phase of rest with nothing behind it.
    if (current.kind === "rest" && phases[phase + 1] === undefined && current.next === undefined) finishedS ??= totalS - phaseS + 1;
    if (!isOver) continue;
    phase = current.next ?? phase + 1;
    phaseS = 0;
    heldS = 0;
  }
  return {
    voltagesV: Float64Array.from(voltagesV),
    currentsA: Float64Array.from(currentsA),
    stages,
    clampsOffS: clampsOffS ?? voltagesV.length,
    finishedS,
  };
}

type Doing = Pick<TruthStage, "kind" | "mayBe" | "phase">;

function throttle(source: Source | undefined, share: number): Source | undefined {
  return source === undefined ? undefined : { ...source, limitA: source.limitA * share };
}

function doingNow(phase: Phase, source: Source | undefined, currentA: number, heatShare: number, index: number): Doing {
  const mayBe = phase.mayBe ?? [];
  const isAtLimit = source !== undefined && Number.isFinite(source.limitA) && currentA >= source.limitA * atLimitShare;
  if (!isAtLimit || source === undefined) return { kind: phase.kind, mayBe, phase: index };
  if (heatShare < 1) return { kind: "throttled", mayBe, phase: -1 };
  return { kind: phase.atLimit ?? phase.kind, mayBe, phase: index };
}

/** Lengthens the last stage, or opens another. Two phases of one kind are one stage, save held voltages, which are each their own. */
function noteSecond(stages: TruthStage[], doing: Doing, second: number, currentA: number): void {
  const last = stages.at(-1);
  const isSame = last?.kind === doing.kind && (doing.kind !== "constant-voltage" || last.phase === doing.phase);
  const stage: TruthStage = isSame ? last : { ...doing, startS: second, endS: second, startsByS: second, flows: [] };
  if (!isSame) stages.push(stage);
  stage.endS = second + 1;
  if (currentA < flowingA) return;
  const flow = stage.flows.at(-1);
  if (flow?.toS === second) flow.toS = second + 1;
  else stage.flows.push({ fromS: second, toS: second + 1 });
}
