/**
 * Gassing current against voltage and temperature. Antimony and age move a battery's own gassing tenfold, so this ranks settings of one
 * charger and predicts no battery. Source: Schiffer et al. 2007, J. Power Sources 168, 66, as read in open code.
 */
import { referenceTemperatureC } from "./constants.ts";

/** Growth of the logarithm of the gassing current: per volt and cell, and per kelvin. +0.063 V or +11.6 K doubles it. */
export const gassingGrowth = { perV: 11, perK: 0.06 } as const;

/** The voltage per cell at which the model's gassing current is anchored, V; the model's 298 K is taken as 25 °C. */
const anchorVoltageV = 2.23;

/** Gassing current at the anchor, mA per 100 Ah. Valve-regulated: read in open code; vented: from memory. */
export const anchorGassingMA = { vented: 20, "valve-regulated": 10 } as const;

/** How many times the gassing current grows with a rise of voltage (V per cell) and of temperature (K). NaN stays NaN. */
export function gassingRatio(riseVPerCell: number, riseK: number): number {
  return Math.exp(gassingGrowth.perV * riseVPerCell + gassingGrowth.perK * riseK);
}

/**
 * Gassing current of a typical battery, good to a factor of ten.
 * @param capacityAh  rated capacity, Ah
 * @param voltageVPerCell  V per cell, charging
 * @param temperatureC  °C of the electrolyte
 * @param anchorMA  mA per 100 Ah at 2.23 V and 25 °C
 * @returns mA; NaN for NaN
 */
export function gassingCurrentMA(capacityAh: number, voltageVPerCell: number, temperatureC: number, anchorMA: number): number {
  return (capacityAh / 100) * anchorMA * gassingRatio(voltageVPerCell - anchorVoltageV, temperatureC - referenceTemperatureC);
}

/**
 * Voltage per cell at which gassing is said to set in, by temperature; a convention, since gassing has no threshold.
 * @param temperatureC  °C, 0 to 50
 * @returns V per cell, ±0.02 V, straight between the table's rows; NaN outside
 * Source: German handbook practice (from memory); 2.40 V at 20 °C is common practice.
 */
export function gassingVoltagePerCell(temperatureC: number): number {
  const next = gassingVoltages.findIndex(([rowC]) => rowC >= temperatureC);
  const above = gassingVoltages[next];
  const below = gassingVoltages[Math.max(0, next - 1)];
  if (above === undefined || below === undefined || !(temperatureC >= 0)) return Number.NaN;
  const share = above[0] === below[0] ? 0 : (temperatureC - below[0]) / (above[0] - below[0]);
  return below[1] + share * (above[1] - below[1]);
}

const gassingVoltages: readonly (readonly [temperatureC: number, voltageV: number])[] = [
  [0, 2.49],
  [10, 2.44],
  [20, 2.4],
  [25, 2.385],
  [30, 2.365],
  [40, 2.33],
  [50, 2.3],
];
