/** A settled charger at work: what it offers now, and when it moves to its next step. */
import type { CellSource, CellState } from "./cell.ts";
import type { SettledCharger, SettledStep } from "./charger-behaviour.ts";

/** Where a charger stands in its programme; hours. */
export type ProgrammeState = {
  step: number;
  /** Since the step began, and since the mains came on. */
  inStepH: number;
  poweredH: number;
  /** How often it has begun again after switching off. */
  restarts: number;
  /** When it first left off charging, to hold or to switch off; Infinity until then. */
  leftOffH: number;
};

/** A charger at the moment its mains come on. */
export function startedProgramme(): ProgrammeState {
  return { step: 0, inStepH: 0, poweredH: 0, restarts: 0, leftOffH: Number.POSITIVE_INFINITY };
}

/** The step it is in; past the last one it is off for good. */
export function stepNow({ steps }: SettledCharger, { step }: ProgrammeState): SettledStep {
  return steps[step] ?? { kind: "off", wakeBelowV: 0, wakeTo: 0 };
}

/** What the charger offers to each of so many cells. */
export function offerNow(charger: SettledCharger, state: ProgrammeState, cells: number): CellSource {
  const step = stepNow(charger, state);
  const share = throttleShare(charger, state);
  switch (step.kind) {
    case "current":
      return { kind: "held", limitA: step.currentA * share, limitV: step.ceilingV / cells };
    case "line":
      return { kind: "line", openV: step.openV / cells, ohm: step.ohm / cells };
    case "voltage":
      return { kind: "held", limitA: step.limitA * share, limitV: step.voltageV / cells };
    case "off":
      return { kind: "off" };
  }
}

/** Hours until the clock alone changes what the charger offers: a timer, or the throttle. */
export function hoursToClockEvent(charger: SettledCharger, state: ProgrammeState): number {
  const step = stepNow(charger, state);
  const timerH = step.kind === "off" ? Number.POSITIVE_INFINITY : step.afterH - state.inStepH;
  return Math.min(timerH, hoursToThrottle(charger, state));
}

/** Clock times closer than this are one, h: rounding must not leave an endless row of tiny steps. */
const sameTimeH = 1e-9;
/** A step ends by its current only after it has stood so long, h: the first moments of a held voltage say nothing (our assumption). */
const settleH = 1 / 60;
/** No waking in the first minute off, h: the fall of voltage on switching off would wake it at once (our assumption). */
const wakeAfterH = 1 / 60;

/**
 * How far the present step is from its end: negative before it, 0 or more when it is over; volts, amperes or, for a clock, infinite.
 * @param cell  its voltage and currents at this moment, one cell
 */
export function marginOfEnd(charger: SettledCharger, state: ProgrammeState, cell: CellState, cells: number): number {
  const step = stepNow(charger, state);
  const batteryV = cell.cellV * cells;
  if (step.kind !== "off" && isTimeUp(step.afterH, state)) return Number.POSITIVE_INFINITY;
  switch (step.kind) {
    case "current":
      return step.endsAtCeiling ? batteryV - step.ceilingV + sameVoltageV : Number.NEGATIVE_INFINITY;
    case "line":
      return batteryV - step.untilV + sameVoltageV;
    case "voltage":
      // A float has no end by current: right after the limit it gives none at all.
      return state.inStepH < settleH || !(step.belowA > 0) ? Number.NEGATIVE_INFINITY : step.belowA - cell.reactionA - cell.gassingA;
    case "off":
      return state.inStepH < wakeAfterH ? Number.NEGATIVE_INFINITY : step.wakeBelowV - batteryV;
  }
}

/** Voltages closer than this are one, V: a source that holds its ceiling stands exactly on it but for rounding. */
const sameVoltageV = 1e-6;

/** Whether the present step is over. */
export function isStepOver(charger: SettledCharger, state: ProgrammeState, cell: CellState, cells: number): boolean {
  return marginOfEnd(charger, state, cell, cells) >= 0;
}

function isTimeUp(afterH: number, state: ProgrammeState): boolean {
  return state.inStepH >= afterH - sameTimeH;
}

/** Moves to the next step; off goes back to where it wakes. */
export function moveOn(charger: SettledCharger, state: ProgrammeState): void {
  const step = stepNow(charger, state);
  if (step.kind === "off") state.restarts += 1;
  state.step = step.kind === "off" ? step.wakeTo : state.step + 1;
  state.inStepH = 0;
  const next = stepNow(charger, state);
  if (next.kind === "off" || (next.kind === "voltage" && next.isFloat)) state.leftOffH = Math.min(state.leftOffH, state.poweredH);
}

function throttleShare({ throttle }: SettledCharger, { poweredH }: ProgrammeState): number {
  if (throttle === undefined) return 1;
  return poweredH % (throttle.afterH + throttle.forH) >= throttle.afterH - sameTimeH ? throttle.share : 1;
}

function hoursToThrottle({ throttle }: SettledCharger, { poweredH }: ProgrammeState): number {
  if (throttle === undefined) return Number.POSITIVE_INFINITY;
  const inRoundH = poweredH % (throttle.afterH + throttle.forH);
  const edgeH = inRoundH >= throttle.afterH - sameTimeH ? throttle.afterH + throttle.forH : throttle.afterH;
  return Math.max(sameTimeH, edgeH - inRoundH);
}
