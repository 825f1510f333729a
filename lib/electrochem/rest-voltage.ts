/** Rest (open-circuit) voltage of the lead-acid cell against the strength and temperature of its acid. */
import { densityOfAcid, molalityFromWeightFraction, weightFractionFromMolality, weightFractionOfAcid } from "./acid.ts";
import { bisectRising } from "./bisect.ts";
import { referenceTemperatureC } from "./constants.ts";
import { monotoneCubic } from "./monotone-cubic.ts";

/** Molality over which the polynomial holds, mol/kg: 1 to 56 wt %. */
export const bodeRange = { low: 0.1, high: 13 } as const;

/** Coefficients in powers of log10 of molality, V. */
const bodeCoefficients = [1.9228, 0.147519, 0.063552, 0.073772, 0.033612] as const;

/** Temperatures for which a rest voltage is given, °C; beyond them the slope below is no guide. */
export const restTemperatureRange = { low: 0, high: 50 } as const;

/**
 * Slope of the rest voltage with temperature, V per K and cell, by molality: 0.15 to 0.28 mV, positive. Derived from activities (Clegg,
 * Rard and Pitzer 1994) with dE0/dT = 1.40 mV/K, itself known to ±0.05. Weaker and stronger acid takes the nearest row's slope.
 */
const slopeByMolality = monotoneCubic([1, 2, 3, 4, 5, 6], [0.000_15, 0.000_25, 0.000_28, 0.000_27, 0.000_24, 0.000_21]);

/**
 * Rest voltage of one cell, fully rested, acid evenly mixed.
 * @param molality  mol of H2SO4 per kg of water, 0.1 to 13
 * @param temperatureC  °C of the acid, 0 to 50; 25 unless given
 * @returns V per cell; NaN outside these ranges and for NaN. Rises with strength.
 * The real cell is within about 2 mV at 25 °C: the coefficients (Bode 1977, from memory) agree with a three-digit set read elsewhere
 * within 1.8 mV, and in shape with measured activities (Clegg, Rard and Pitzer 1994) within 0.6 mV from 0.1 to 6 mol/kg. From 10 to
 * 40 °C the straight slope adds up to 1.7 mV, at 0 and 50 °C up to 4.5. It says nothing of a cell charged or loaded in the last hours.
 */
export function restVoltagePerCell(molality: number, temperatureC: number = referenceTemperatureC): number {
  if (!(molality >= bodeRange.low && molality <= bodeRange.high)) return Number.NaN;
  if (!(temperatureC >= restTemperatureRange.low && temperatureC <= restTemperatureRange.high)) return Number.NaN;
  const logMolality = Math.log10(molality);
  const voltageAt25C = bodeCoefficients.reduceRight((sum, coefficient) => sum * logMolality + coefficient, 0);
  return voltageAt25C + slopeByMolality(Math.min(6, Math.max(1, molality))) * (temperatureC - referenceTemperatureC);
}

/**
 * Rest voltage of a battery from the density of its acid.
 * @param densityAt25C  kg/l, referred to 25 °C
 * @param cells  cells in series, a positive whole number
 * @param temperatureC  °C of the battery, 0 to 50; 25 unless given
 * @returns V of the battery; NaN outside the range of acid or polynomial, or for an impossible number of cells
 */
export function restVoltageFromDensity(densityAt25C: number, cells: number, temperatureC: number = referenceTemperatureC): number {
  if (!isCellCount(cells)) return Number.NaN;
  const molality = molalityFromWeightFraction(weightFractionOfAcid(densityAt25C, referenceTemperatureC));
  return cells * restVoltagePerCell(molality, temperatureC);
}

/**
 * Mean density of the acid from a battery's rest voltage: the inverse of restVoltageFromDensity.
 * @param restV  V across the whole battery, rested
 * @param cells  cells in series, a positive whole number
 * @param temperatureC  °C of the battery, 0 to 50; 25 unless given
 * @returns kg/l, referred to 25 °C; NaN where no acid gives that voltage. 0.01 V on a 12 V battery is 0.0018 kg/l.
 */
export function densityFromRestVoltage(restV: number, cells: number, temperatureC: number = referenceTemperatureC): number {
  if (!isCellCount(cells)) return Number.NaN;
  const voltageAt = (molality: number): number => restVoltagePerCell(molality, temperatureC);
  const molality = bisectRising(voltageAt, restV / cells, bodeRange.low, bodeRange.high);
  return densityOfAcid(weightFractionFromMolality(molality), referenceTemperatureC);
}

/** The trade's rule: volts per cell are density plus 0.84 (some add 0.845). Read on several trade pages. */
export function restVoltageByRuleOfThumb(density: number): number {
  return density + 0.84;
}

/**
 * How far the rule of thumb lands from the polynomial: -9 mV at 1.29, -15 at 1.20, -26 at 1.10. It serves strong acid only.
 * @param densityAt25C  kg/l at 25 °C
 * @returns V per cell, rule minus polynomial; NaN outside the range
 */
export function errorOfRuleOfThumb(densityAt25C: number): number {
  return restVoltageByRuleOfThumb(densityAt25C) - restVoltageFromDensity(densityAt25C, 1);
}

function isCellCount(cells: number): boolean {
  return Number.isInteger(cells) && cells > 0;
}
