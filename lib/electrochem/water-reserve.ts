/** How long the water above the plates lasts under a holding current. Plates that run dry fail, and a dry cell can spark in hydrogen. */
import { waterElectrolysedG } from "./faraday.ts";

/**
 * Days until a reserve of water is gone.
 * @param reserveG  grams of water a cell may lose before its level is at the lowest mark
 * @param holdingCurrentA  A that flow all the time into a full battery, all of it taken to go into gas: the shortest time
 * @returns days; Infinity for no current; NaN for a reserve or current below nought, or NaN
 * Faraday's law; evaporation shortens it, recombination and grid corrosion lengthen it. No estimate at all for a sealed battery.
 */
export function daysOfWater(reserveG: number, holdingCurrentA: number): number {
  if (!(reserveG >= 0 && holdingCurrentA >= 0)) return Number.NaN;
  return holdingCurrentA === 0 ? Number.POSITIVE_INFINITY : reserveG / waterElectrolysedG(24 * holdingCurrentA, 1);
}
