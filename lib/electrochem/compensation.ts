/** Charge voltage against battery temperature: what a compensating charger should hold. */
import { referenceTemperatureC } from "./constants.ts";

/**
 * Slopes in use, V per K and cell. Float is commonly held at -3 mV, boost at -4 to -5 (both read on several pages). They have nothing to
 * do with the rest voltage's own slope, which is positive and ten times smaller.
 */
export const compensationSlopesVPerK = { float: -0.003, boost: -0.005 } as const;

/** Beyond these temperatures chargers commonly compensate no further, °C (read). */
export const compensationClipC = { low: 5, high: 40 } as const;

/**
 * Charge voltage at a battery temperature: U(T) = U25 + slope · cells · (T - 25).
 * @param voltageAt25C  V of the battery at 25 °C
 * @param temperatureC  °C of the battery
 * @param cells  cells in series
 * @param slopeVPerKPerCell  V per K and cell, negative
 * @param clipC  temperatures beyond which the voltage stays; left out, it goes on
 * @returns V of the battery; NaN for NaN
 */
export function compensatedVoltageV(
  voltageAt25C: number,
  temperatureC: number,
  cells: number,
  slopeVPerKPerCell: number,
  clipC?: { readonly low: number; readonly high: number },
): number {
  const effectiveC = clipC === undefined ? temperatureC : Math.min(clipC.high, Math.max(clipC.low, temperatureC));
  return voltageAt25C + slopeVPerKPerCell * cells * (effectiveC - referenceTemperatureC);
}
