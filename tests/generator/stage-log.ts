/** Keeps the stages of a connection as they happen, and cuts them to the span of a recording. */
import type { StageKind } from "../../lib/nouns/stage.ts";
import type { Look } from "./recorder.ts";
import { roundTruth, type StageTruth } from "./truth.ts";

/** What had passed through the posts at one moment. */
export type Passed = { readonly passedAh: number; readonly passedWh: number };

/** What the charger does in one second; `limitA` is the current that it allows itself, stated for constant current only. */
export type Doing = { readonly kind: StageKind; readonly limitA: number | undefined };

/** Seconds count from clamps on. */
export type LoggedStage = Doing & { readonly startS: number; endS: number; readonly from: Passed; to: Passed };

/** Notes one second: it lengthens the last stage, or opens another where the charger began to do something else. */
export function logSecond(stages: LoggedStage[], doing: Doing, second: number, from: Passed, to: Passed): void {
  const last = stages.at(-1);
  if (last?.kind !== doing.kind || last.limitA !== doing.limitA) {
    stages.push({ ...doing, startS: second, endS: second + 1, from, to });
    return;
  }
  last.endS = second + 1;
  last.to = to;
}

/**
 * Returns the part of the stages that lies between two looks, in seconds from the first; [] where none does.
 * @param onS when the clamps went on, on the looks' clock
 */
export function cutStages(stages: readonly LoggedStage[], first: Look, last: Look, onS: number): StageTruth[] {
  const [spanStartS, spanEndS] = [first.atS - onS, last.atS - onS];
  return stages
    .filter((stage) => stage.endS > spanStartS && stage.startS < spanEndS)
    .map((stage) => {
      const startsBefore = stage.startS < spanStartS;
      const endsAfter = stage.endS > spanEndS;
      const cut: LoggedStage = {
        kind: stage.kind,
        limitA: stage.limitA,
        startS: startsBefore ? spanStartS : stage.startS,
        endS: endsAfter ? spanEndS : stage.endS,
        from: startsBefore ? first : stage.from,
        to: endsAfter ? last : stage.to,
      };
      return stageTruth(cut, spanStartS);
    });
}

/** Returns a stage as the truth states it, its seconds counted from the given one. */
export function stageTruth(stage: LoggedStage, zeroS: number): StageTruth {
  return {
    kind: stage.kind,
    ...(stage.limitA === undefined ? {} : { limitA: roundTruth(stage.limitA, 4) }),
    startS: stage.startS - zeroS,
    endS: stage.endS - zeroS,
    chargeAh: roundTruth(stage.to.passedAh - stage.from.passedAh, 5),
    energyWh: roundTruth(stage.to.passedWh - stage.from.passedWh, 4),
  };
}
