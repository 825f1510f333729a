/** A charger as it behaves, whatever its label says: a list of steps, each with what it offers and what ends it. */
import type { StageKind } from "../../lib/nouns/stage.ts";
import type { Source } from "./battery.ts";

export type ChargerStep =
  | {
      readonly kind: "current";
      readonly currentA: number;
      /** The step ends when the posts have stood at this voltage for five seconds; the charger never drives them higher. */
      readonly untilV?: number;
      /** A voltage that it never exceeds but that does not end the step. */
      readonly ceilingV?: number;
      readonly maxH?: number;
      /** The current goes on and off, in seconds. */
      readonly pulse?: { readonly onS: number; readonly offS: number };
    }
  | {
      readonly kind: "voltage";
      readonly voltageV: number;
      readonly limitA: number;
      readonly untilBelowA?: number;
      readonly forS?: number;
      readonly maxH?: number;
    }
  | { readonly kind: "float"; readonly voltageV: number; readonly limitA: number; readonly maxH?: number }
  /** A transformer without regulation: its voltage without load, behind its resistance. */
  | { readonly kind: "droop"; readonly openV: number; readonly ohm: number; readonly untilV?: number; readonly maxH?: number }
  /** Off; with `wakeBelowV` it begins again at step `wakeTo` once the battery has fallen that far. */
  | { readonly kind: "off"; readonly wakeBelowV?: number; readonly wakeTo?: number };

export type ChargerModel = {
  readonly steps: readonly ChargerStep[];
  /** Leads and clamps, both together. */
  readonly leadOhm: number;
  /** Share by which the current sags as the device warms, with a time constant of 20 min. */
  readonly warmSag: number;
  /** It rests by itself: after this long with current it stops for so long, wherever it is in its programme. */
  readonly pause?: { readonly everyS: number; readonly forS: number };
  /** It turns its current down when hot. */
  readonly throttle?: { readonly afterS: number; readonly forS: number; readonly factor: number };
  /** Output over input power while it works, and what it takes from the mains beside that. */
  readonly efficiency: number;
  readonly standbyW: number;
};

export type ChargerState = {
  step: number;
  /** Seconds since the step began, since the mains came on, and how long the step's end condition has held. */
  stepS: number;
  poweredS: number;
  heldS: number;
  finished: boolean;
};

/** Returns a charger at the moment its mains come on. */
export function startedCharger(): ChargerState {
  return { step: 0, stepS: 0, poweredS: 0, heldS: 0, finished: false };
}

const idle: Source = { limitA: 0, voltageV: 0, ohm: 1 };

/** Returns what the charger offers this second, measured at the battery's posts. */
export function offer(model: ChargerModel, state: ChargerState): Source {
  const step = model.steps[state.step];
  if (step === undefined || step.kind === "off" || isPausing(model, state)) return idle;
  const limitA = (currentLimit(model, state) ?? 0) * (1 - model.warmSag * (1 - Math.exp(-state.poweredS / 1200)));
  if (step.kind === "droop") return { limitA: Number.POSITIVE_INFINITY, voltageV: step.openV, ohm: step.ohm + model.leadOhm };
  if (step.kind === "current") {
    const isOff = step.pulse !== undefined && state.stepS % (step.pulse.onS + step.pulse.offS) >= step.pulse.onS;
    // Aimed at the posts: what the leads drop at full current is added.
    const ceilingV = (step.ceilingV ?? step.untilV ?? 40) + limitA * model.leadOhm;
    return isOff ? idle : { limitA, voltageV: ceilingV, ohm: model.leadOhm };
  }
  return { limitA, voltageV: step.voltageV, ohm: model.leadOhm };
}

/**
 * Lets one second pass: moves the charger to its next step where the present one has ended.
 * @param voltageV at the posts, and the current into them, at the end of that second
 */
export function advanceCharger(model: ChargerModel, state: ChargerState, voltageV: number, currentA: number): void {
  state.stepS += 1;
  state.poweredS += 1;
  const step = model.steps[state.step];
  if (step === undefined || isPausing(model, state)) return;
  if (step.kind === "off") {
    state.finished = true;
    // One minute's grace, else the fall of voltage on switching off would wake it at once.
    if (step.wakeBelowV !== undefined && voltageV < step.wakeBelowV && state.stepS > 60) moveTo(state, step.wakeTo ?? 0);
    return;
  }
  const holds = isEndMet(step, voltageV, currentA);
  state.heldS = holds ? state.heldS + 1 : 0;
  const neededS = step.kind === "voltage" ? (step.forS ?? 60) : 5;
  const timedOut = step.maxH !== undefined && state.stepS >= step.maxH * 3600;
  if (timedOut || (holds && state.heldS >= neededS)) moveTo(state, Math.min(state.step + 1, model.steps.length));
}

/** Returns what kind of stage this second belongs to, from what the charger did and what flowed. */
export function stageNow(model: ChargerModel, state: ChargerState, source: Source, currentA: number): StageKind {
  const step = model.steps[state.step];
  if (step === undefined || step.kind === "off") return "rest";
  if (isPausing(model, state)) return "interrupted";
  if (step.kind === "current") return step.pulse === undefined ? "constant-current" : "pulses";
  if (step.kind === "droop") return "drooping";
  // A charger that promises a voltage but is at its current limit is still giving constant current.
  if (currentA >= source.limitA * 0.999) return "constant-current";
  return step.kind === "float" ? "float" : "constant-voltage";
}

/** Returns the current that the charger allows itself just now, in amperes, before the sag of warming; undefined where it sets none. */
export function currentLimit(model: ChargerModel, state: ChargerState): number | undefined {
  const step = model.steps[state.step];
  if (step === undefined || step.kind === "off" || step.kind === "droop") return undefined;
  return (step.kind === "current" ? step.currentA : step.limitA) * throttleFactor(model, state);
}

function isEndMet(step: ChargerStep, voltageV: number, currentA: number): boolean {
  if (step.kind === "current" || step.kind === "droop") return step.untilV !== undefined && voltageV >= step.untilV - 0.001;
  return step.kind === "voltage" && step.untilBelowA !== undefined && currentA < step.untilBelowA;
}

function isPausing(model: ChargerModel, state: ChargerState): boolean {
  if (model.pause === undefined || state.finished) return false;
  return state.poweredS % (model.pause.everyS + model.pause.forS) >= model.pause.everyS;
}

function throttleFactor(model: ChargerModel, state: ChargerState): number {
  if (model.throttle === undefined) return 1;
  const { afterS, forS, factor } = model.throttle;
  return state.poweredS % (afterS + forS) >= afterS ? factor : 1;
}

function moveTo(state: ChargerState, step: number): void {
  state.step = step;
  state.stepS = 0;
  state.heldS = 0;
}
