/** How a charger behaves, as plain data: a programme of steps, each with what it offers and what ends it. Unknown numbers are ranges. */
import { type Range, within } from "./spread.ts";

/** What ends a step, beside its voltage. Of two rules that both fit what was seen, one holds: which is not known. */
export type EndRules = {
  /** The current has fallen to this, A. A range that starts at 0 says that nobody saw the end: it may never come. */
  readonly belowA?: Range;
  /** So long after the step began, h. */
  readonly afterH?: Range;
};

export type ProgrammeStep =
  /** A current held, first a low one or the full one; the voltage that ends it is also never passed. */
  | {
      readonly kind: "soft-start" | "constant-current" | "finishing-current";
      readonly currentA: Range;
      readonly untilV?: Range;
      readonly end: EndRules;
    }
  /** Current that falls as the voltage climbs, through two points of a straight line. */
  | {
      readonly kind: "drooping";
      readonly lowV: number;
      readonly currentAtLowA: Range;
      readonly highV: number;
      readonly currentAtHighA: Range;
      readonly untilV?: Range;
      readonly end: EndRules;
    }
  /** A voltage held, never with more than a current. */
  | { readonly kind: "constant-voltage" | "float"; readonly voltageV: Range; readonly limitA: Range; readonly end: EndRules }
  /** Off; with `wakeBelowV` it begins again at step `wakeTo` once the battery has sunk that far. */
  | { readonly kind: "off"; readonly wakeBelowV?: Range; readonly wakeTo?: number };

export type ChargerBehaviour = {
  readonly steps: readonly ProgrammeStep[];
  /** It turns its current down when hot: after so long at full current, for so long, to this share. */
  readonly throttle?: { readonly afterH: Range; readonly forH: Range; readonly share: Range };
  /** DC energy at the battery over mains energy, 0 to 1. */
  readonly efficiency: Range;
  /** Mains power that it takes all the time beside what it passes on, W; left out where nobody stated or measured it. */
  readonly standbyW?: Range;
  /** What the records do not say, in words fit for a reader. */
  readonly unknowns: readonly string[];
};

/** Whether the programme ends in "off" only for want of a record: nobody saw the step before it come to an end. */
export function isHoldingUnknown({ steps }: Pick<ChargerBehaviour, "steps">): boolean {
  const [before, last] = [steps.at(-2), steps.at(-1)];
  if (last?.kind !== "off" || last.wakeBelowV !== undefined || before === undefined || before.kind === "off") return false;
  return !hasSeenEnd(before);
}

/** Whether anything that was seen, a voltage, a current or a time, ends a step that gives current. */
function hasSeenEnd(step: Exclude<ProgrammeStep, { kind: "off" }>): boolean {
  const { belowA, afterH } = step.end;
  return afterH !== undefined || (belowA !== undefined && belowA.low > 0) || ("untilV" in step && step.untilV !== undefined);
}

/** One charger with every unknown settled, as one draw of a forecast sees it. */
export type SettledStep =
  | {
      readonly kind: "current";
      readonly currentA: number;
      readonly ceilingV: number;
      readonly endsAtCeiling: boolean;
      readonly afterH: number;
    }
  | { readonly kind: "line"; readonly openV: number; readonly ohm: number; readonly untilV: number; readonly afterH: number }
  | {
      readonly kind: "voltage";
      readonly voltageV: number;
      readonly limitA: number;
      readonly belowA: number;
      readonly afterH: number;
      readonly isFloat: boolean;
    }
  | { readonly kind: "off"; readonly wakeBelowV: number; readonly wakeTo: number };

export type SettledCharger = {
  readonly steps: readonly SettledStep[];
  readonly throttle?: { readonly afterH: number; readonly forH: number; readonly share: number };
  readonly efficiency: number;
  readonly standbyW: number;
};

/** Numbers between 0 and 1 that settle a charger: one for each group of unknowns, since one cause moves a group together. */
export type ChargerDraw = {
  readonly current: number;
  readonly voltage: number;
  readonly end: number;
  readonly rule: number;
  readonly conversion: number;
};
export const middleDraw: ChargerDraw = { current: 0.5, voltage: 0.5, end: 0.5, rule: 0.5, conversion: 0.5 };

/**
 * Settles every unknown of a behaviour.
 * @returns numbers inside the behaviour's ranges; Infinity where a step has no such end. Where two end rules fit, `rule` below a half
 *   takes the current.
 */
export function settleCharger(behaviour: ChargerBehaviour, draw: ChargerDraw): SettledCharger {
  const { throttle, standbyW } = behaviour;
  return {
    steps: behaviour.steps.map((step) => settleStep(step, draw)),
    ...(throttle === undefined
      ? {}
      : {
          throttle: {
            afterH: within(throttle.afterH, draw.end),
            forH: within(throttle.forH, draw.end),
            share: within(throttle.share, draw.current),
          },
        }),
    efficiency: within(behaviour.efficiency, draw.conversion),
    standbyW: standbyW === undefined ? 0 : within(standbyW, draw.conversion),
  };
}

function settleStep(step: ProgrammeStep, draw: ChargerDraw): SettledStep {
  const never = Number.POSITIVE_INFINITY;
  switch (step.kind) {
    case "soft-start":
    case "constant-current":
    case "finishing-current":
      return {
        kind: "current",
        currentA: within(step.currentA, draw.current),
        ceilingV: step.untilV === undefined ? never : within(step.untilV, draw.voltage),
        endsAtCeiling: step.untilV !== undefined,
        afterH: step.end.afterH === undefined ? never : within(step.end.afterH, draw.end),
      };
    case "drooping": {
      const lowA = within(step.currentAtLowA, draw.current);
      const highA = within(step.currentAtHighA, draw.current);
      const ohm = (step.highV - step.lowV) / Math.max(1e-3, lowA - highA);
      return {
        kind: "line",
        ohm,
        openV: step.highV + ohm * highA,
        untilV: step.untilV === undefined ? never : within(step.untilV, draw.voltage),
        afterH: step.end.afterH === undefined ? never : within(step.end.afterH, draw.end),
      };
    }
    case "constant-voltage":
    case "float": {
      const { belowA, afterH } = step.end;
      const byCurrent = belowA !== undefined && (afterH === undefined || draw.rule < 0.5);
      return {
        kind: "voltage",
        voltageV: within(step.voltageV, draw.voltage),
        limitA: within(step.limitA, draw.current),
        belowA: byCurrent ? within(belowA, draw.end) : 0,
        afterH: !byCurrent && afterH !== undefined ? within(afterH, draw.end) : never,
        isFloat: step.kind === "float",
      };
    }
    case "off":
      return {
        kind: "off",
        wakeBelowV: step.wakeBelowV === undefined ? 0 : within(step.wakeBelowV, draw.voltage),
        wakeTo: step.wakeTo ?? 0,
      };
  }
}
