/**
 * The battery of a forecast: one cell's voltage against current, state of charge and temperature, and how both currents move its state.
 *
 *   charging current ──┬──► charge reaction, through a resistance that rises towards full   (Copetti, Lorenzo and Chenlo 1993)
 *                      └──► gassing, e-fold for each 91 mV a cell                           (Schiffer et al. 2007)
 *
 * All cells are alike. docs/projection.md tells the whole model and what it leaves out.
 */
import { chargeForDensityRise, densityAfterCharge } from "../electrochem/acid-balance.ts";
import { waterElectrolysedG } from "../electrochem/faraday.ts";
import { gassingGrowth } from "../electrochem/gassing.ts";
import { restVoltageFromDensity } from "../electrochem/rest-voltage.ts";
import type { BatteryParameters } from "./battery-priors.ts";

/** Everything about one battery that stays the same while it charges, worked out once. */
export type Cell = {
  readonly cells: number;
  readonly capacityAh: number;
  readonly parameters: BatteryParameters;
  /** Rest voltage of one cell at 25 °C, a + b·q + c·q², V. */
  readonly rest: readonly [number, number, number];
  readonly heatCapacityJPerK: number;
  readonly heatLossWPerK: number;
};

/** What moves. Voltage is that at the end of the last step, currents are those that flowed over it. */
export type CellState = {
  /** Charge held, Ah. */
  storedAh: number;
  /** Charge still bound in hard sulphate, Ah. */
  hardAh: number;
  /** Polarisation that comes and goes in minutes, and the surface charge that takes hours; V a cell. */
  minutesV: number;
  surfaceV: number;
  temperatureC: number;
  /** Volts a cell at the posts; amperes of charge reaction and of gassing. */
  cellV: number;
  reactionA: number;
  gassingA: number;
};

/** Volts a cell at which gassing currents are stated, at 25 °C (Schiffer et al. 2007, as read in open code). */
const anchorGassingVoltageV = 2.23;
/** Where the resistance would become infinite, as a share of the charge: Schiffer et al. 2007 have 1.001 (from memory). */
const resistancePole = 1.001;
/** Missing share at which the rise stops: only so that a full battery divides by nothing; what still flows into it then is nothing. */
const leastMissing = 1e-5;
/** The part of the resistance that is there at once, one cell, Ω·Ah: testers show 5 to 7 mΩ on a 12 V, 60 Ah battery (common practice). */
const ohmicOhmAh = 0.06;
/**
 * The rest of it shows with a delay: most of it in minutes, as the acid in the plates follows, and some as surface charge in hours. Shares
 * and times are our assumption; that surface charge takes hours to go is common practice.
 */
const minutesShare = 0.75;
const minutesH = 5 / 60;
const surfaceShare = 1 - minutesShare;
const surfaceH = 2;
/** Missing share of the charge at which nearFullOhmAh is stated. */
const nearFullMissing = 0.1;
/** Volts a cell at which the time constant of hard sulphate is stated. */
const softeningAnchorV = 2.4;
/** Below this voltage splitting water takes heat in, above it gives heat off (thermoneutral, from memory). */
const thermoneutralV = 1.48;
/** J/K for each Ah and cell: about 0.04 kg/Ah of lead and acid at 1 kJ/(kg·K) (common practice for the mass). */
const heatCapacityJPerKAhCell = 40;
/** W/K of a 60 Ah battery of six cells: 0.2 m² in still air at 6 W/(m²·K), our assumption; it grows as the surface does. */
const heatLossOf60AhWPerK = 1.2;

/**
 * Works out what stays the same.
 * @param ratedAh  capacity as printed, Ah
 * @param density  kg/l at 25 °C of its acid full and empty; NaN or an impossible acid gives a cell whose voltages are NaN
 */
export function makeCell(
  ratedAh: number,
  cells: number,
  density: { readonly full: number; readonly empty: number },
  parameters: BatteryParameters,
): Cell {
  const emptyDensity = density.empty + parameters.emptyDensityOffset;
  const densities = [emptyDensity, halfwayDensity(emptyDensity, density.full), density.full];
  const [empty = Number.NaN, half = Number.NaN, full = Number.NaN] = densities.map((density25) => restVoltageFromDensity(density25, 1));
  return {
    cells,
    capacityAh: ratedAh * parameters.capacityShare,
    parameters,
    rest: [empty, 4 * half - 3 * empty - full, 2 * (empty + full) - 4 * half],
    heatCapacityJPerK: heatCapacityJPerKAhCell * ratedAh * cells,
    heatLossWPerK: heatLossOf60AhWPerK * ((ratedAh * cells) / 360) ** (2 / 3),
  };
}

/** Density of the acid at half of the charge, kg/l: a little above the mean of both, since charging takes water out of the acid. */
function halfwayDensity(empty: number, full: number): number {
  // Only the shape is asked for, so any mass will do.
  return densityAfterCharge(1, empty, chargeForDensityRise(1, empty, full) / 2);
}

/**
 * A rested cell.
 * @param stateOfCharge  0 to 1, of what the battery can hold; it cannot start above what hard sulphate leaves free
 */
export function restedCell(cell: Cell, stateOfCharge: number, temperatureC: number): CellState {
  const hardAh = cell.capacityAh * Math.min(cell.parameters.hardShare, Math.max(0, 1 - stateOfCharge) * 0.95);
  const state: CellState = {
    storedAh: Math.min(1, Math.max(0, stateOfCharge)) * cell.capacityAh,
    hardAh,
    minutesV: 0,
    surfaceV: 0,
    temperatureC,
    cellV: 0,
    reactionA: 0,
    gassingA: 0,
  };
  state.cellV = restVoltage(cell, state);
  return state;
}

/** Rest voltage of one cell, V: the quadratic through empty, half and full, within 2 mV of the acid's own curve. */
export function restVoltage({ rest, capacityAh }: Cell, { storedAh }: CellState): number {
  const q = storedAh / capacityAh;
  return rest[0] + q * (rest[1] + q * rest[2]);
}

/** Resistance of one cell to charging, Ω. */
export function chargeOhm({ capacityAh, parameters }: Cell, { storedAh, hardAh, temperatureC }: CellState): number {
  const missing = Math.max(leastMissing, resistancePole - storedAh / (capacityAh - hardAh));
  // Schiffer et al. 2007 (from memory): an empty plate lacks no sulphate, so what rises towards full is nothing there.
  const filled = (resistancePole - missing) / (resistancePole - nearFullMissing);
  const byState = parameters.baseOhmAh + parameters.nearFullOhmAh * filled * (missing / nearFullMissing) ** -parameters.polePower;
  return (byState * Math.exp(-parameters.resistancePerK * (temperatureC - 25))) / capacityAh;
}

/** What stands at the posts of one cell: a current, never with more than a voltage; or a voltage behind a resistance. */
export type CellSource =
  | { readonly kind: "held"; readonly limitA: number; readonly limitV: number }
  | { readonly kind: "line"; readonly openV: number; readonly ohm: number }
  | { readonly kind: "off" };

/**
 * Lets a source act on a cell for a while.
 * @param at  the state whose charge, hard sulphate and temperature count for rest voltage and resistance: the step's own middle, or start
 * @param hours  how long; 0 gives the first instant
 * @returns nothing: writes into `state` the voltage at the end and the currents over the step, with which `passTime` then goes on
 *
 * Polarisation is taken implicitly, so that no length of step makes it swing. The sum of charge reaction and gassing rises with voltage,
 * so there is one answer; it obeys both limits exactly.
 */
export function applySource(cell: Cell, state: CellState, at: CellState, source: CellSource, hours: number): void {
  actOn(cell, state, at, source, chargeOhm(cell, at), minutesLeftAfter(hours), surfaceLeftAfter(hours));
}

/** Shares of the two polarisations that are left after so many hours. */
const minutesLeftAfter = (hours: number): number => Math.exp(-hours / minutesH);
const surfaceLeftAfter = (hours: number): number => Math.exp(-hours / surfaceH);

/** As `applySource`, given what it shares with `flow`: the resistance at `at`, and what is left of both polarisations. */
function actOn(
  cell: Cell,
  state: CellState,
  at: CellState,
  source: CellSource,
  ohmAt: number,
  minutesLeft: number,
  surfaceLeft: number,
): void {
  const { capacityAh, parameters } = cell;
  const gasScaleA = (capacityAh / 100) * (parameters.gassingMA / 1000) * Math.exp(gassingGrowth.perK * (at.temperatureC - 25));
  const backV = restVoltage(cell, at) + state.minutesV * minutesLeft + state.surfaceV * surfaceLeft;
  if (source.kind !== "off") {
    const delayedOhm = Math.max(0, ohmAt - ohmicOhmAh / capacityAh);
    const ohm = ohmicOhmAh / capacityAh + delayedOhm * (1 - minutesShare * minutesLeft - surfaceShare * surfaceLeft);
    state.cellV =
      source.kind === "held"
        ? heldVoltage(source, state.cellV, backV, ohm, gasScaleA)
        : lineVoltage(source, state.cellV, backV, ohm, gasScaleA);
    state.gassingA = gasScaleA * Math.exp(gassingGrowth.perV * (state.cellV - anchorGassingVoltageV));
    state.reactionA = (state.cellV - backV) / ohm;
    // A charger draws nothing from the battery: above its voltage it gives nothing.
    if (state.reactionA + state.gassingA > 0) return;
  }
  // At rest the plates feed their own gassing. The steep part of the resistance is a lack of sulphate and hinders no discharge.
  state.cellV = solveVoltage(backV, backV, parameters.baseOhmAh / capacityAh, gasScaleA, 0, 0);
  state.gassingA = gasScaleA * Math.exp(gassingGrowth.perV * (state.cellV - anchorGassingVoltageV));
  state.reactionA = -state.gassingA;
}

type Held = Extract<CellSource, { kind: "held" }>;
type Line = Extract<CellSource, { kind: "line" }>;

/** The voltage limit where the cell takes less than the current limit at it; else the voltage at which it takes just that. */
function heldVoltage({ limitA, limitV }: Held, startV: number, backV: number, ohm: number, gasScaleA: number): number {
  if (!(limitA > 0)) return backV;
  const gassingAtLimitA = gasScaleA * Math.exp(gassingGrowth.perV * (limitV - anchorGassingVoltageV));
  if ((limitV - backV) / ohm + gassingAtLimitA <= limitA) return limitV;
  return solveVoltage(startV, backV, ohm, gasScaleA, limitA, 0);
}

function lineVoltage({ openV, ohm: lineOhm }: Line, startV: number, backV: number, ohm: number, gasScaleA: number): number {
  return solveVoltage(startV, backV, ohm, gasScaleA, openV / lineOhm, 1 / lineOhm);
}

/** Newton's method on (V - back)/ohm + gassing(V) = fixed - slope·V; the left side bends upwards, so it cannot go astray from above. */
function solveVoltage(startV: number, backV: number, ohm: number, gasScaleA: number, fixedA: number, slopeS: number): number {
  let voltageV = Math.min(3.2, Math.max(startV, backV));
  for (let round = 0; round < 50; round++) {
    const gassingA = gasScaleA * Math.exp(gassingGrowth.perV * (voltageV - anchorGassingVoltageV));
    const excessA = (voltageV - backV) / ohm + gassingA - fixedA + slopeS * voltageV;
    const moveV = excessA / (1 / ohm + gassingGrowth.perV * gassingA + slopeS);
    voltageV -= moveV;
    if (Math.abs(moveV) < 1e-10) break;
  }
  return voltageV;
}

/**
 * Lets the currents that `applySource` found flow for so long.
 * @param at  the same state as given there
 * @param isCharging  false where nothing is connected: hard sulphate dissolves only under charge
 */
export function passTime(cell: Cell, state: CellState, at: CellState, hours: number, airC: number, isCharging: boolean): void {
  flow(cell, state, at, hours, airC, isCharging, chargeOhm(cell, at), minutesLeftAfter(hours), surfaceLeftAfter(hours));
}

/** As `passTime`, given what it shares with `actOn`. */
function flow(
  cell: Cell,
  state: CellState,
  at: CellState,
  hours: number,
  airC: number,
  isCharging: boolean,
  ohmAt: number,
  minutesLeft: number,
  surfaceLeft: number,
): void {
  const fullV = Math.max(0, ohmAt - ohmicOhmAh / cell.capacityAh) * Math.max(0, state.reactionA);
  state.minutesV = minutesShare * fullV * (1 - minutesLeft) + state.minutesV * minutesLeft;
  state.surfaceV = surfaceShare * fullV * (1 - surfaceLeft) + state.surfaceV * surfaceLeft;
  const heatW = cell.cells * ((state.cellV - restVoltage(cell, at)) * state.reactionA + (state.cellV - thermoneutralV) * state.gassingA);
  if (isCharging) {
    const rate = Math.exp((state.cellV - softeningAnchorV) / cell.parameters.softeningV) / cell.parameters.softeningH;
    state.hardAh *= Math.exp(-hours * rate);
  }
  state.storedAh += state.reactionA * hours;
  const settledC = airC + heatW / cell.heatLossWPerK;
  const decay = Math.exp((-hours * 3600 * cell.heatLossWPerK) / cell.heatCapacityJPerK);
  state.temperatureC = settledC + (state.temperatureC - settledC) * decay;
}

/**
 * One step of second order: a first try with the state at its beginning finds its middle, and the middle decides.
 * @param middle  room for the middle state; overwritten
 */
export function stepCell(cell: Cell, state: CellState, middle: CellState, source: CellSource, hours: number, airC: number): void {
  const isCharging = source.kind !== "off";
  const [minutesLeft, surfaceLeft] = [minutesLeftAfter(hours), surfaceLeftAfter(hours)];
  const startOhm = chargeOhm(cell, state);
  copyState(state, middle);
  actOn(cell, middle, state, source, startOhm, minutesLeft, surfaceLeft);
  flow(cell, middle, state, hours / 2, airC, isCharging, startOhm, minutesLeftAfter(hours / 2), surfaceLeftAfter(hours / 2));
  const middleOhm = chargeOhm(cell, middle);
  actOn(cell, state, middle, source, middleOhm, minutesLeft, surfaceLeft);
  flow(cell, state, middle, hours, airC, isCharging, middleOhm, minutesLeft, surfaceLeft);
}

/** Copies one state into another. Field by field: this runs some hundred thousand times a forecast. */
export function copyState(from: CellState, to: CellState): void {
  to.storedAh = from.storedAh;
  to.hardAh = from.hardAh;
  to.minutesV = from.minutesV;
  to.surfaceV = from.surfaceV;
  to.temperatureC = from.temperatureC;
  to.cellV = from.cellV;
  to.reactionA = from.reactionA;
  to.gassingA = from.gassingA;
}

/** Water that gassing takes from the whole battery, g: the upper bound for a vented one, none of it lost where all gas recombines. */
export function waterLostG(cell: Cell, gassedAh: number): number {
  return waterElectrolysedG(gassedAh, cell.cells);
}
