/**
 * A lead-acid battery in one-second steps: charge reaction, gassing, polarisation, layered acid, heat.
 *
 * All cells are alike here; a cell's own deviation is added where its acid is read. docs/demo.md tells the whole model
 * and what it leaves out.
 */
import { massFractionOf, openCircuitVoltage } from "./acid.ts";

/** Per ampere-hour of the charge reaction and cell, in grams: Faraday's law, M(H2SO4) = 98.079, M(H2O) = 18.01528. */
export const acidPerAhG = 3.6595;
export const waterBoundPerAhG = 0.6722;
/** Water split by one ampere-hour of gassing current, grams a cell. */
export const waterSplitPerAhG = 0.33609;

export type BatteryModel = {
  readonly cells: number;
  /** What this battery really holds; the label may say more. */
  readonly capacityAh: number;
  readonly fullDensityAt25C: number;
  /** Electrolyte in one cell when full. */
  readonly electrolyteFullG: number;
  /** One cell's purely ohmic part. */
  readonly ohmicOhm: number;
  /** Charge resistance times capacity, one cell: 0.42 Ω·Ah in Schiffer 2007; more for an aged battery. */
  readonly chargeOhmAh: number;
  /** How much that resistance rises towards full, and with which power of the missing share (1 in Schiffer 2007). */
  readonly acceptance: number;
  readonly tailPower: number;
  /** Hard sulphate at the start, from age and from standing flat: charge that can only go in as it dissolves … */
  readonly hardAh: number;
  /** … with this time constant at 2.40 V a cell, shorter above and longer below. */
  readonly softeningH: number;
  /** Gassing current at 2.23 V a cell and 25 °C, for 100 Ah. */
  readonly gasA: number;
  /** Share of the acid released on charge that sinks past the upper layer instead of staying where it was made. */
  readonly sinkingShare: number;
  /** Rated cranking current, and the share of it that is left in this battery at full charge. */
  readonly crankingA: number;
  readonly crankingHealth: number;
  /** Heat capacity (J/K) and heat loss (W/K) of the whole battery. */
  readonly heatCapacityJPerK: number;
  readonly heatLossWPerK: number;
};

export type BatteryState = {
  /** Charge held; the charge reaction alone moves it. */
  storedAh: number;
  /** What is left of the hard sulphate, as charge. */
  hardAh: number;
  upperAcidG: number;
  upperWaterG: number;
  lowerAcidG: number;
  lowerWaterG: number;
  /** Polarisation of one cell, in volts: a part that dies in minutes and the surface charge that takes hours. */
  fastV: number;
  slowV: number;
  temperatureC: number;
  /** One cell's terminal voltage at the last step. */
  cellV: number;
  /** Since the state was made: current through the posts, its two shares, and energy at the posts. */
  passedAh: number;
  reactedAh: number;
  gassedAh: number;
  passedWh: number;
  /** Running sums of voltage, and of current squared, over time: what a meter's offset and lead resistance act on. */
  passedVh: number;
  passedA2h: number;
};

/** What is offered at the battery's posts: a voltage behind a resistance, never more than the limit. */
export type Source = { readonly limitA: number; readonly voltageV: number; readonly ohm: number };

/** Share of a cell's acid that a hydrometer's tube reaches. */
export const upperShare = 0.3;

/** The plates reach deeper than the hydrometer: their voltage follows the lower, stronger acid a little more than its share. */
const lowerVoltageWeight = 0.75;

const fastS = 300;
const slowS = 3 * 3600;
/** Share of the polarisation that is slow; sized so that a battery taken off 14.4 V passes 12.9 V after some hours. */
const slowShare = 0.22;
/** Where the charge resistance would become infinite, as a state of charge (Schiffer 2007). */
const resistancePole = 1.001;
/** Layers even out by diffusion alone with this time constant (common practice: weeks). */
const diffusionS = 40 * 86_400;
/** … and with this one when the gassing current is a hundredth of the capacity. */
const gasMixingS = 1.5 * 3600;

/**
 * Returns a battery at rest, long enough for its polarisation to be gone.
 * @param storedAh charge held, 0 to capacity
 * @param upperDeficit how much lower the upper layer's mass fraction stands than the mean; 0 for mixed acid
 */
export function restedBattery(model: BatteryModel, storedAh: number, temperatureC: number, upperDeficit = 0): BatteryState {
  const missingAh = model.capacityAh - storedAh;
  const acidG = model.electrolyteFullG * massFractionOf(model.fullDensityAt25C) - acidPerAhG * missingAh;
  const massG = model.electrolyteFullG - (acidPerAhG - waterBoundPerAhG) * missingAh;
  const upperAcidG = upperShare * massG * (acidG / massG - upperDeficit);
  const state: BatteryState = {
    storedAh,
    hardAh: model.hardAh,
    upperAcidG,
    upperWaterG: upperShare * massG - upperAcidG,
    lowerAcidG: acidG - upperAcidG,
    lowerWaterG: (1 - upperShare) * massG - (acidG - upperAcidG),
    fastV: 0,
    slowV: 0,
    temperatureC,
    cellV: 0,
    passedAh: 0,
    reactedAh: 0,
    gassedAh: 0,
    passedWh: 0,
    passedVh: 0,
    passedA2h: 0,
  };
  state.cellV = platesV(state);
  return state;
}

/** Returns the acid's mass fraction in the upper layer, in the lower layer, and over the whole cell. */
export function massFractions(state: BatteryState): { upper: number; lower: number; mean: number } {
  const acidG = state.upperAcidG + state.lowerAcidG;
  return {
    upper: state.upperAcidG / (state.upperAcidG + state.upperWaterG),
    lower: state.lowerAcidG / (state.lowerAcidG + state.lowerWaterG),
    mean: acidG / (acidG + state.upperWaterG + state.lowerWaterG),
  };
}

/** Evens out the layers, as bubbling or tilting does; acid and water of the cell stay what they were. */
export function mixAcid(state: BatteryState): void {
  const { mean } = massFractions(state);
  const acidG = state.upperAcidG + state.lowerAcidG;
  const upperG = state.upperAcidG + state.upperWaterG;
  state.upperWaterG += state.upperAcidG - mean * upperG;
  state.lowerWaterG += state.lowerAcidG - (acidG - mean * upperG);
  state.upperAcidG = mean * upperG;
  state.lowerAcidG = acidG - mean * upperG;
}

/** Returns the open-circuit voltage of one cell with its polarisation gone, in volts. */
export function platesV(state: BatteryState): number {
  const upper = state.upperAcidG / (state.upperAcidG + state.upperWaterG);
  const lower = state.lowerAcidG / (state.lowerAcidG + state.lowerWaterG);
  return openCircuitVoltage(lower + (1 - lowerVoltageWeight) * (upper - lower));
}

/**
 * Moves the battery on by one step and returns the current into its posts, in amperes.
 * @param source undefined while nothing is connected
 * @param stepS seconds; up to 60 at rest, 1 with a source, since a charger's control looks once a second
 * Sources: charge resistance and gassing current after Schiffer et al., J. Power Sources 168 (2007) 66; acid by Faraday's law.
 * Polarisation is taken implicitly, so no step length makes it swing.
 */
export function stepBattery(model: BatteryModel, state: BatteryState, source: Source | undefined, airC: number, stepS: number): number {
  const ocvV = platesV(state);
  const perAh = model.chargeOhmAh / model.capacityAh;
  const filled = state.storedAh / (model.capacityAh - state.hardAh);
  // The steep rise towards full is a lack of sulphate to convert: it hinders charging, not the small discharge of a rest.
  const rise = source === undefined ? 0 : (model.acceptance * filled) / (resistancePole - Math.min(filled, 1.0009)) ** model.tailPower;
  const polarOhm = Math.max(0, perAh * (1 + rise) - model.ohmicOhm);
  const fastPart = stepS / fastS;
  const slowPart = stepS / slowS;
  const fastOhm = (1 - slowShare) * polarOhm;
  const slowOhm = slowShare * polarOhm;
  const backV = ocvV + state.fastV / (1 + fastPart) + state.slowV / (1 + slowPart);
  const stepOhm = model.ohmicOhm + (fastOhm * fastPart) / (1 + fastPart) + (slowOhm * slowPart) / (1 + slowPart);
  const gasScaleA = (model.capacityAh / 100) * model.gasA * Math.exp(0.06 * (state.temperatureC - 25));

  const cellV = solveCellVoltage(state.cellV, backV, stepOhm, gasScaleA, source, model.cells);
  const gasA = gasScaleA * Math.exp(11 * (cellV - 2.23));
  const reactionA = (cellV - backV) / stepOhm;
  const currentA = source === undefined ? 0 : reactionA + gasA;

  state.fastV = (state.fastV + fastPart * fastOhm * reactionA) / (1 + fastPart);
  state.slowV = (state.slowV + slowPart * slowOhm * reactionA) / (1 + slowPart);
  state.cellV = cellV;
  const hours = stepS / 3600;
  if (source !== undefined) state.hardAh -= state.hardAh * (hours / model.softeningH) * Math.exp((cellV - 2.4) / softeningV);
  state.storedAh += reactionA * hours;
  state.reactedAh += reactionA * hours;
  state.gassedAh += gasA * hours;
  state.passedAh += currentA * hours;
  state.passedWh += currentA * cellV * model.cells * hours;
  state.passedVh += cellV * model.cells * hours;
  state.passedA2h += currentA * currentA * hours;
  moveAcid(model, state, reactionA * hours, gasA * hours, stepS);

  const heatW = model.cells * ((cellV - ocvV) * reactionA + (cellV - thermoneutralV) * gasA);
  state.temperatureC += ((heatW - model.heatLossWPerK * (state.temperatureC - airC)) * stepS) / model.heatCapacityJPerK;
  return currentA;
}

/** Volts a cell by which dissolving speeds up e-fold; invented, so that 13.4 V takes some five times as long as 14.4 V. */
const softeningV = 0.1;

/** Below this voltage splitting water takes heat in, above it gives heat off (from memory). */
const thermoneutralV = 1.48;

function moveAcid(model: BatteryModel, state: BatteryState, reactedAh: number, gassedAh: number, stepS: number): void {
  const releasedG = acidPerAhG * reactedAh;
  const upperReleasedG = releasedG * upperShare * (reactedAh > 0 ? 1 - model.sinkingShare : 1);
  const waterG = waterBoundPerAhG * reactedAh + waterSplitPerAhG * gassedAh;
  state.upperAcidG += upperReleasedG;
  state.lowerAcidG += releasedG - upperReleasedG;
  state.upperWaterG -= upperShare * waterG;
  state.lowerWaterG -= (1 - upperShare) * waterG;

  const { upper, lower } = massFractions(state);
  const massG = state.upperAcidG + state.upperWaterG + state.lowerAcidG + state.lowerWaterG;
  const gasRatePerS = ((gassedAh / stepS) * 3600) / model.capacityAh / 0.01 / gasMixingS;
  // The layers swap equal masses; the difference then dies with the rate asked for.
  const swappedG = massG * upperShare * (1 - upperShare) * (lower - upper) * Math.min(1, (1 / diffusionS + gasRatePerS) * stepS);
  state.upperAcidG += swappedG;
  state.upperWaterG -= swappedG;
  state.lowerAcidG -= swappedG;
  state.lowerWaterG += swappedG;
}

/** The cell voltage at which reaction and gassing together take what the source gives. Newton's method: the sum only rises with voltage. */
function solveCellVoltage(
  startV: number,
  backV: number,
  stepOhm: number,
  gasScaleA: number,
  source: Source | undefined,
  cells: number,
): number {
  const solve = (fixedA: number, sourceV: number, sourceS: number): number => {
    let voltageV = Math.min(startV, 3);
    for (let round = 0; round < 40; round++) {
      const gasA = gasScaleA * Math.exp(11 * (voltageV - 2.23));
      const excessA = (voltageV - backV) / stepOhm + gasA - fixedA - (sourceV - voltageV) * sourceS;
      const changeV = excessA / (1 / stepOhm + 11 * gasA + sourceS);
      voltageV -= changeV;
      if (Math.abs(changeV) < 1e-12) break;
    }
    return voltageV;
  };
  if (source === undefined || source.limitA <= 0) return solve(0, 0, 0);
  const cellSourceV = source.voltageV / cells;
  const cellOhm = source.ohm / cells;
  if (Number.isFinite(source.limitA)) {
    const limitedV = solve(source.limitA, 0, 0);
    if (limitedV + source.limitA * cellOhm <= cellSourceV) return limitedV;
  }
  const heldV = solve(0, cellSourceV, 1 / cellOhm);
  // A charger does not draw from the battery: above its voltage it gives nothing.
  return heldV > cellSourceV ? solve(0, 0, 0) : heldV;
}
