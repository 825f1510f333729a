/** Freezing of battery acid. A battery left discharged in the cold freezes and cracks; a frozen battery must never be charged. */
import { weightFractionOfAcid } from "./acid.ts";
import { referenceTemperatureC } from "./constants.ts";
import { monotoneCubic } from "./monotone-cubic.ts";

/**
 * Freezing point in °C by weight percent. To 34 wt %: CRC Handbook, freezing-point depression (read). The last two rows: trade tables
 * (read), -75 and -90 °F at specific gravity 1.265 and 1.280 by 80 °F, turned into strength.
 */
const freezingPoints = [
  [0, 0],
  [5, -2.05],
  [10, -4.64],
  [15, -8.35],
  [20, -13.64],
  [26, -24.29],
  [30, -36.21],
  [34, -55.28],
  [35.66, -59.4],
  [37.44, -67.8],
] as const;

const freezingPointByPercent = monotoneCubic(
  freezingPoints.map(([weightPercent]) => weightPercent),
  freezingPoints.map(([, temperatureC]) => temperatureC),
);

/**
 * Temperature at which the first ice forms in evenly mixed acid.
 * @param densityAt25C  kg/l at 25 °C, from water's to 1.276; acid layered in the cell freezes earlier at its weak top
 * @returns °C, within 1 K up to 1.15 and some 3 K above (trade tables differ by that); NaN outside the range. Stronger acid than that,
 *   up to 1.32, stays liquid to about -50 °C (from memory): no frost for a battery to fear.
 */
export function freezingPointC(densityAt25C: number): number {
  return freezingPointByPercent(100 * weightFractionOfAcid(densityAt25C, referenceTemperatureC));
}

/** Below this density (kg/l at 25 °C) a report warns of frost: such acid freezes near -15 °C. Common practice. */
export const frostWarningDensity = 1.15;
