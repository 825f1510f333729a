/** One charge, from clamps on to a horizon: one battery, one charger, everything known. */
import { applySource, type Cell, type CellState, copyState, stepCell, waterLostG } from "./cell.ts";
import type { SettledCharger } from "./charger-behaviour.ts";
import {
  hoursToClockEvent,
  isStepOver,
  marginOfEnd,
  moveOn,
  offerNow,
  type ProgrammeState,
  startedProgramme,
  stepNow,
} from "./programme.ts";

/**
 * Shares of what the battery holds that a forecast names. "Full" is 99 %: the last hundredth comes so slowly that no charger waits for
 * it, and standards end a charge by a current that no longer falls, at about that point (common practice).
 */
export const chargeMarks = { "80 %": 0.8, "95 %": 0.95, full: 0.99 } as const;
export type ChargeMark = keyof typeof chargeMarks;

/** One moment of a simulated charge, the whole battery. */
export type ChargeMoment = {
  readonly hours: number;
  readonly voltageV: number;
  readonly currentA: number;
  readonly stateOfCharge: number;
  readonly temperatureC: number;
};

/** Sums over a stretch of time. passedAh = storedAh + gassedAh, exactly. */
export type ChargeSums = {
  readonly hours: number;
  readonly passedAh: number;
  /** Charge that the plates took, and charge that split water. */
  readonly storedAh: number;
  readonly gassedAh: number;
  /** Energy at the posts, and from the mains. */
  readonly dcWh: number;
  readonly mainsWh: number;
  readonly waterG: number;
};

export type ChargeOutcome = {
  /** Hours from clamps on; Infinity where the mark is not reached by the horizon. */
  readonly hoursTo: Readonly<Record<ChargeMark, number>>;
  /** Energy from the mains until each mark, Wh; Infinity where it is not reached by the horizon. */
  readonly mainsWhTo: Readonly<Record<ChargeMark, number>>;
  /** When the charger left off: went to float or switched off; Infinity where it did neither. */
  readonly leftOffH: number;
  readonly restarts: number;
  /** Until the charger left off, or the horizon. */
  readonly charge: ChargeSums;
  /** Until the horizon. */
  readonly whole: ChargeSums;
  readonly stateOfCharge: number;
  /** The highest voltage and current that stood at the posts. */
  readonly highestV: number;
  readonly highestA: number;
  readonly endState: CellState;
  /** Moments for a chart, at least `pathEveryH` apart; empty unless asked for. */
  readonly path: readonly ChargeMoment[];
};

export type SimulationSettings = {
  readonly airC: number;
  readonly horizonH: number;
  /** Stop as soon as the battery is full or the charger has switched off for good, h of sums apart. */
  readonly stopWhenSettled?: boolean;
  readonly pathEveryH?: number;
  /** The longest step, h: 0.5 unless given. */
  readonly longestStepH?: number;
};

/** A step moves the missing charge by no more than this share: the resistance then changes by less than a tenth over it. */
const stepShareOfMissing = 0.07;
/** … and the charge held by no more than this share of the capacity. */
const stepShareOfCapacity = 0.01;
/** Shortest step, h: half a second. Events are placed to this. */
const shortestStepH = 1 / 7200;

/**
 * Simulates a charge.
 * @param cell  the battery; its start state is copied, not changed
 * @param charger  every number settled
 * @returns when each mark is reached, the sums, the end; NaN throughout where the battery's own numbers are NaN
 * Never above the charger's limits: the current over each step and the voltage at its end are solved under both. Ends of steps are
 * placed to half a second or 0.2 mV. Deterministic: no chance, no clock.
 */
export function simulateCharge(cell: Cell, start: CellState, charger: SettledCharger, settings: SimulationSettings): ChargeOutcome {
  const run = startRun(cell, start, charger, settings);
  const { state, programme, sums } = run;
  // A guard against a loop without end; a 60-day hold of an on-off charger needs some thousands.
  for (let steps = 0; steps < 400_000 && programme.poweredH < settings.horizonH - 1e-9; steps++) {
    while (isOver(run) && programme.step < charger.steps.length) {
      const wasLeftOff = Number.isFinite(programme.leftOffH);
      moveOn(charger, programme);
      if (!wasLeftOff && Number.isFinite(programme.leftOffH)) run.sumsAtLeavingOff = closeSums(run);
    }
    if (settings.stopWhenSettled === true && isSettled(run)) break;
    advance(run, stepLengthH(run));
    if (Number.isNaN(state.storedAh) || Number.isNaN(sums.dcWh)) break;
  }
  const whole = closeSums(run);
  return {
    hoursTo: run.hoursTo,
    mainsWhTo: run.mainsWhTo,
    leftOffH: programme.leftOffH,
    restarts: programme.restarts,
    charge: run.sumsAtLeavingOff ?? whole,
    whole,
    stateOfCharge: state.storedAh / cell.capacityAh,
    highestV: run.highestV,
    highestA: run.highestA,
    endState: { ...state },
    path: run.path,
  };
}

type Run = {
  readonly cell: Cell;
  readonly charger: SettledCharger;
  readonly settings: SimulationSettings;
  readonly state: CellState;
  readonly middle: CellState;
  readonly before: CellState;
  readonly programme: ProgrammeState;
  readonly startAh: number;
  readonly sums: { storedAh: number; gassedAh: number; dcWh: number };
  readonly hoursTo: Record<ChargeMark, number>;
  readonly mainsWhTo: Record<ChargeMark, number>;
  readonly path: ChargeMoment[];
  sumsAtLeavingOff: ChargeSums | undefined;
  highestV: number;
  highestA: number;
};

function startRun(cell: Cell, start: CellState, charger: SettledCharger, settings: SimulationSettings): Run {
  const state = { ...start };
  const programme = startedProgramme();
  applySource(cell, state, state, offerNow(charger, programme, cell.cells), 0);
  const [hoursTo, mainsWhTo] = [neverByMark(), neverByMark()];
  for (const mark of markNames) if (state.storedAh >= chargeMarks[mark] * cell.capacityAh) hoursTo[mark] = mainsWhTo[mark] = 0;
  const run: Run = {
    cell,
    charger,
    settings,
    state,
    middle: { ...state },
    before: { ...state },
    programme,
    startAh: state.storedAh,
    sums: { storedAh: 0, gassedAh: 0, dcWh: 0 },
    hoursTo,
    mainsWhTo,
    path: [],
    sumsAtLeavingOff: undefined,
    highestV: Number.NEGATIVE_INFINITY,
    highestA: 0,
  };
  notePath(run);
  return run;
}

const markNames = Object.keys(chargeMarks) as ChargeMark[];

function neverByMark(): Record<ChargeMark, number> {
  return { "80 %": Number.POSITIVE_INFINITY, "95 %": Number.POSITIVE_INFINITY, full: Number.POSITIVE_INFINITY };
}

function isOver({ charger, programme, state, cell }: Run): boolean {
  return isStepOver(charger, programme, state, cell.cells);
}

function isSettled({ charger, programme, hoursTo }: Run): boolean {
  const now = stepNow(charger, programme);
  return Number.isFinite(hoursTo.full) || (now.kind === "off" && now.wakeBelowV <= 0);
}

/** How far the next step may go: until something has changed noticeably, the clock says so, or the horizon. */
function stepLengthH({ cell, state, charger, programme, settings }: Run): number {
  const currentA = Math.max(1e-9, Math.abs(state.reactionA));
  const missingAh = Math.max(0.0005 * cell.capacityAh, cell.capacityAh - state.hardAh - state.storedAh);
  const byChargeH = Math.min(stepShareOfMissing * missingAh, stepShareOfCapacity * cell.capacityAh) / currentA;
  const longestH = settings.longestStepH ?? 0.5;
  // Right after a change the surface charge moves quickly.
  const sinceChangeH = Math.max(0.02, 0.3 * programme.inStepH);
  const clockH = Math.min(hoursToClockEvent(charger, programme), settings.horizonH - programme.poweredH);
  return Math.max(1e-9, Math.min(Math.max(shortestStepH, Math.min(byChargeH, longestH, sinceChangeH)), clockH));
}

/** Takes one step; where the charger's own step ends inside it, only that far. */
function advance(run: Run, wantedH: number): void {
  const { state, before, programme } = run;
  copyState(state, before);
  const inStepH = programme.inStepH;
  const marginAfter = (hours: number): number => {
    copyState(before, state);
    tryStep(run, hours);
    programme.inStepH = inStepH + hours;
    return marginOfEnd(run.charger, programme, state, run.cell.cells);
  };
  const marginNow = marginOfEnd(run.charger, programme, state, run.cell.cells);
  const marginThen = marginAfter(wantedH);
  if (marginThen < 0 || wantedH <= shortestStepH) {
    takeDown(run, wantedH);
    return;
  }
  const hours = findEndH(marginAfter, marginNow, marginThen, wantedH);
  // The search left the state wherever it tried last.
  marginAfter(hours);
  takeDown(run, hours);
}

/**
 * The length of step at which the margin reaches 0, never before it: false position, with halving wherever a margin is not finite.
 * Source: the Illinois variant, which halves the weight of an end that stays (textbook form).
 */
function findEndH(marginAfter: (hours: number) => number, marginNow: number, marginThen: number, wantedH: number): number {
  let [lowH, lowMargin, highH, highMargin] = [0, marginNow, wantedH, marginThen];
  for (let round = 0; round < 12 && highH - lowH > shortestStepH && highMargin > closeMargin; round++) {
    const isSmooth = Number.isFinite(lowMargin) && Number.isFinite(highMargin) && lowMargin < 0;
    const share = isSmooth ? Math.min(0.95, Math.max(0.05, lowMargin / (lowMargin - highMargin))) : 0.5;
    const hours = lowH + share * (highH - lowH);
    const margin = marginAfter(hours);
    if (margin >= 0) {
      [highH, highMargin] = [hours, margin];
      lowMargin /= 2;
    } else {
      [lowH, lowMargin] = [hours, margin];
      highMargin /= 2;
    }
  }
  return highH;
}

/** A margin this small, V or A, is as good as none. */
const closeMargin = 2e-4;

function tryStep({ cell, state, middle, charger, programme, settings }: Run, hours: number): void {
  stepCell(cell, state, middle, offerNow(charger, programme, cell.cells), hours, settings.airC);
}

function takeDown(run: Run, hours: number): void {
  const { cell, state, before, programme, sums, hoursTo, mainsWhTo } = run;
  const storedAh = state.storedAh - before.storedAh;
  const currentA = state.reactionA + state.gassingA;
  sums.storedAh += storedAh;
  sums.gassedAh += state.gassingA * hours;
  const voltageV = state.cellV * cell.cells;
  const dcWh = ((before.cellV + state.cellV) / 2) * cell.cells * currentA * hours;
  run.highestV = Math.max(run.highestV, voltageV);
  run.highestA = Math.max(run.highestA, currentA);
  for (const mark of markNames) {
    const neededAh = chargeMarks[mark] * cell.capacityAh;
    if (Number.isFinite(hoursTo[mark]) || state.storedAh < neededAh) continue;
    const share = (neededAh - before.storedAh) / storedAh;
    hoursTo[mark] = programme.poweredH + hours * share;
    mainsWhTo[mark] = mainsWhOf(run, sums.dcWh + dcWh * share, hoursTo[mark]);
  }
  sums.dcWh += dcWh;
  programme.poweredH += hours;
  notePath(run);
}

function notePath({ path, settings, programme, state, cell }: Run): void {
  const last = path.at(-1);
  if (settings.pathEveryH === undefined || (last !== undefined && programme.poweredH - last.hours < settings.pathEveryH)) return;
  path.push({
    hours: programme.poweredH,
    voltageV: state.cellV * cell.cells,
    currentA: state.reactionA + state.gassingA,
    stateOfCharge: state.storedAh / cell.capacityAh,
    temperatureC: state.temperatureC,
  });
}

/** What the mains gave for so much at the posts, Wh. */
function mainsWhOf({ charger }: Run, dcWh: number, poweredH: number): number {
  return dcWh / charger.efficiency + charger.standbyW * poweredH;
}

function closeSums(run: Run): ChargeSums {
  const { cell, programme, sums } = run;
  return {
    hours: programme.poweredH,
    passedAh: sums.storedAh + sums.gassedAh,
    storedAh: sums.storedAh,
    gassedAh: sums.gassedAh,
    dcWh: sums.dcWh,
    mainsWh: mainsWhOf(run, sums.dcWh, programme.poweredH),
    waterG: waterLostG(cell, sums.gassedAh),
  };
}
