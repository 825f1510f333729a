/** A start's state of charge taken apart: what hangs on the battery's own empty density, and what is this reading's alone. */
import { type BatteryBeliefs, emptyDensityUncertainty } from "./battery-priors.ts";

/** What is said of a start; see StartShare. */
export type StatedStart = {
  readonly startShare: number;
  readonly startShareUncertainty: number;
  readonly startSharePerEmptyDensity?: number;
};

/**
 * Splits a stated start.
 * @param beliefs  about the battery; other batteries may have moved the middle of its empty density
 * @returns shares of what the battery holds: the middle, how far one standard deviation of the belief about the empty density moves it
 *   (signed), and the standard uncertainty that is left when that density is known. NaN goes through.
 */
export function partsOfStart(
  { startShare, startShareUncertainty, startSharePerEmptyDensity = 0 }: StatedStart,
  { emptyDensityOffset }: BatteryBeliefs,
): { middle: number; ofEmptyDensity: number; ownUncertainty: number } {
  const counted = startSharePerEmptyDensity * emptyDensityUncertainty;
  return {
    middle: startShare + startSharePerEmptyDensity * emptyDensityOffset.mean,
    ofEmptyDensity: startSharePerEmptyDensity * emptyDensityOffset.standardDeviation,
    ownUncertainty: Math.sqrt(Math.max(0, startShareUncertainty ** 2 - counted ** 2)),
  };
}
