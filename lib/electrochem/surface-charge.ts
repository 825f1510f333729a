/**
 * Surface charge: what a battery's voltage carries above its rest voltage after a charge, and how long it takes to go. It sits in the
 * acid within the plates, which is stronger than the rest until diffusion has evened it out.
 */
import { fitDecay } from "../signal/fit-decay.ts";
import { isRefused, type Refused } from "../signal/fit-result.ts";
import { coverageFactor95 } from "../units/uncertainty.ts";

/** Rest before a voltage may be turned into a state of charge, h: 2 to 4 by vehicle manuals (read), 24 by IEC and EN (from memory). */
export const leastRestH = { manuals: 4, standards: 24 } as const;

/** A rest voltage towards which several readings after one charge fall. */
export type RestedVoltage = {
  /** The voltage that the fit settles at, V. */
  readonly restV: number;
  /** Half-width of its 95 % interval, V: Student's t times the standard error. */
  readonly halfWidthV: number;
  /** What was left of the surface charge at the first reading, V. */
  readonly surfaceV: number;
  /** Hours in which it falls to 37 %, with its standard error. */
  readonly timeConstantH: number;
  readonly timeConstantUncertaintyH: number;
};

/** Readings must reach this many time constants, else the level is a guess beyond the data. */
const leastTimeConstants = 1.5;

/**
 * Rest voltage from several readings after one charge, by a single exponential.
 * @param restsH  hours since the end of the charge, rising; at least six readings. The first half hour, in which faster parts die away,
 *   should be left out by the caller
 * @param voltagesV  V of the battery at those hours; pairs with NaN are left out
 * @returns the level with its uncertainty, or a refusal: whatever fitDecay refuses, a voltage that rises (as after a discharge), or readings
 *   that end before the decay does. Never throws.
 * A battery's relaxation is no single exponential; over the hours from half an hour to a day one is a fair description (common practice).
 */
export function fitRestVoltage(restsH: ArrayLike<number>, voltagesV: ArrayLike<number>): RestedVoltage | Refused {
  const fit = fitDecay(restsH, voltagesV);
  if (isRefused(fit)) return fit;
  const [restV, surfaceV, timeConstantH] = fit.parameters;
  const [restUncertaintyV, , timeConstantUncertaintyH] = fit.standardErrors;
  if (surfaceV <= 0) return { refused: "the voltage rises: what goes is not a surface charge" };
  const finite = Array.from(restsH).filter((h, i) => Number.isFinite(h) && Number.isFinite(voltagesV[i] ?? Number.NaN));
  const spanH = (finite.at(-1) ?? Number.NaN) - (finite[0] ?? Number.NaN);
  if (!(spanH >= leastTimeConstants * timeConstantH))
    return { refused: "the readings end before the decay does; the level would be a guess" };
  return {
    restV,
    halfWidthV: coverageFactor95(finite.length - 3) * restUncertaintyV,
    surfaceV,
    timeConstantH,
    timeConstantUncertaintyH,
  };
}

/**
 * What is left of a surface charge after some hours of rest.
 * @param surfaceV  V at the start
 * @param restH  hours since, 0 or more
 * @param timeConstantH  hours to 37 %; 3 to 4 is usual for a starter battery at room temperature (common practice, ±1 h)
 * @returns V; NaN for a time or time constant that cannot be
 */
export function surfaceChargeLeftV(surfaceV: number, restH: number, timeConstantH: number): number {
  return restH >= 0 && timeConstantH > 0 ? surfaceV * Math.exp(-restH / timeConstantH) : Number.NaN;
}

/**
 * Rest that is needed until no more than `tolerableV` of a surface charge is left.
 * @returns hours, 0 where there is no more than that at the start; NaN where a value is not positive
 */
export function leastRestForH(surfaceV: number, tolerableV: number, timeConstantH: number): number {
  if (!(tolerableV > 0 && timeConstantH > 0 && surfaceV >= 0)) return Number.NaN;
  return surfaceV <= tolerableV ? 0 : timeConstantH * Math.log(surfaceV / tolerableV);
}
