/** Temperatures between which a lead-acid battery may be charged. The battery maker's own limits come first. */
import { freezingPointC } from "./freezing.ts";

/** Above this acid temperature charging is stopped, °C: 50 to 52 in vehicle and military manuals (from memory), the lower taken. */
export const hottestChargingC = 50;

/** So far above its freezing point acid should be before a charge, K: the spread of the freezing tables with a margin; our rule. */
export const frostMarginK = 5;

export type ChargingTemperature = "may be charged" | "too hot" | "near freezing" | "may be frozen" | "not known";

/**
 * Whether a battery's temperature lets it be charged at all.
 * @param densityAt25C  kg/l at 25 °C of the weakest acid in it; layered acid freezes first at its weak top
 * @param temperatureC  °C of the acid
 * @returns in words; "not known" where a value is NaN. Acid stronger than the freezing table (1.276) fears no frost above -50 °C. A
 *   battery that may be frozen must never be charged: it can burst.
 */
export function judgeChargingTemperature(densityAt25C: number, temperatureC: number): ChargingTemperature {
  if (Number.isNaN(densityAt25C) || Number.isNaN(temperatureC)) return "not known";
  if (temperatureC >= hottestChargingC) return "too hot";
  const freezesAtC = densityAt25C > strongestTabled ? coldestTabledC : freezingPointC(densityAt25C);
  if (Number.isNaN(freezesAtC)) return "not known";
  if (temperatureC <= freezesAtC) return "may be frozen";
  return temperatureC < freezesAtC + frostMarginK ? "near freezing" : "may be charged";
}

/** Where the freezing table ends, kg/l at 25 °C, and what is taken beyond it, °C (from memory). */
const strongestTabled = 1.276;
const coldestTabledC = -50;
