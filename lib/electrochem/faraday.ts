/** Faraday's law for the lead-acid cell: how much matter an ampere-hour turns over. All exact stoichiometry; NaN stays NaN. */
import {
  acidKgPerAh,
  ampereHoursPerMol,
  gasConstantJPerMolK,
  standardAtmosphereKPa,
  waterGPerMol,
  waterKgPerAh,
  zeroCelsiusK,
} from "./constants.ts";

/** Electrolysis frees half a mole of hydrogen, and takes half a mole of water, a mole of electrons: 2 H2O = 2 H2 + O2 passes four. */
const gasElectronsPerMol = 2;

/** Acid in grams that a charge in Ah releases from the plates (or a discharge binds): 3.6595 g per Ah and cell. */
export function acidReleasedG(chargeAh: number, cells: number): number {
  return acidKgPerAh * 1000 * chargeAh * cells;
}

/** Water in grams that a discharge in Ah forms (or a charge uses up) in the main reaction: 0.6722 g per Ah and cell. */
export function waterFormedG(chargeAh: number, cells: number): number {
  return waterKgPerAh * 1000 * chargeAh * cells;
}

/**
 * Water in grams that a charge in Ah takes away where all of it goes into gassing: 0.3361 g per Ah and cell.
 * For a vented battery the upper bound on electrolytic loss. For a sealed one no estimate at all, since most gas recombines.
 */
export function waterElectrolysedG(overchargeAh: number, cells: number): number {
  return (waterGPerMol / (gasElectronsPerMol * ampereHoursPerMol)) * overchargeAh * cells;
}

/**
 * Overcharge in Ah that would explain a weighed loss, were all of it electrolysed water: nothing spilt, evaporated or recombined.
 * @param lossG  grams the whole battery lost
 * @param cells  cells in series; each passes the same charge
 */
export function overchargeFromLossAh(lossG: number, cells: number): number {
  return lossG / waterElectrolysedG(1, cells);
}

/** Mean gassing current in A over `hours` that would explain a weighed loss, on the terms of overchargeFromLossAh. NaN for no time. */
export function meanGassingCurrentA(lossG: number, cells: number, hours: number): number {
  return hours > 0 ? overchargeFromLossAh(lossG, cells) / hours : Number.NaN;
}

/**
 * Hydrogen in litres that a charge going wholly into gassing frees: 0.418 L per Ah and cell at 0 °C, 0.456 at 25 °C. Oxygen is half
 * of that. Four per cent of hydrogen in air can explode: ventilate, keep sparks and flames away.
 * @param overchargeAh  Ah through each cell
 * @param temperatureC  °C of the gas
 * @param pressureKPa  kPa, one atmosphere unless given
 * Source: Faraday's law and the ideal gas.
 */
export function hydrogenVolumeL(overchargeAh: number, cells: number, temperatureC: number, pressureKPa = standardAtmosphereKPa): number {
  const hydrogenMol = (overchargeAh * cells) / (gasElectronsPerMol * ampereHoursPerMol);
  return (hydrogenMol * gasConstantJPerMolK * (temperatureC + zeroCelsiusK)) / pressureKPa;
}
