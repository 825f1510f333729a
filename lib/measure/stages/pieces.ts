/**
 * What the charger does over one stretch, told from how much current and voltage changed.
 *
 * The measure is the elasticity |Δ ln I| / |Δ ln V|. A charger that holds its current lets the voltage climb (elasticity near 0); one
 * that holds its voltage lets the current fall (a large one, even where the leads add a little slope); an unregulated charger has
 * both (the W curve of DIN 41774 falls to half between about 2.05 and 2.40 V a cell: 4.4, and to a quarter at 2.65 V: 7).
 */
import { median } from "../../signal/order-statistics.ts";

/** What is regulated: I the current, U the voltage, W neither, steady: both stand still, so it cannot be told; idle: no current. */
export type Regime = "I" | "U" | "W" | "steady" | "idle" | "discharge" | "pulses" | "on-off" | "unexplained";

/** Ends and middle of a stretch, from medians over its first and last bins. */
export type Ends = {
  readonly startV: number;
  readonly endV: number;
  readonly startA: number;
  readonly endA: number;
  readonly meanV: number;
  readonly meanA: number;
};

export type Scales = {
  /** Noise or step of the channel, whichever is larger. */
  readonly noiseV: number;
  readonly noiseA: number;
  /** Below this a current is no current: what the instrument cannot tell from zero. */
  readonly idleA: number;
  /** The highest sustained current. */
  readonly topA: number;
};

/** Between these elasticities neither current nor voltage is held. */
export const currentHeldBelow = 1.5;
export const voltageHeldAbove = 12;

/** A change of less than this share is taken as none, however quiet the log: no charger regulates better. */
export const stillShareV = 0.0015;
const stillShareA = 0.01;
/** A held voltage may drift by this share, as where the drop on the leads shrinks with the current; more is not held. */
export const heldShareV = 0.015;
/** A soft limit lets the voltage creep further, but then the current falls by far more than any unregulated charger's. */
export const softlyHeldAbove = 40;
const softlyHeldShareV = 0.04;
/** A current under this share of the top that stands still while the voltage moves is a battery resting, read with an offset. */
const offsetShareA = 0.02;

/** Medians over the first and last bins of [from, to), at most five each and at most a quarter of the stretch. */
export function endsOf(voltagesV: Float64Array, currentsA: Float64Array, from: number, to: number): Ends {
  const edge = Math.max(1, Math.min(5, Math.floor((to - from) / 4)));
  return {
    startV: median(voltagesV.subarray(from, from + edge)),
    endV: median(voltagesV.subarray(to - edge, to)),
    startA: median(currentsA.subarray(from, from + edge)),
    endA: median(currentsA.subarray(to - edge, to)),
    meanV: median(voltagesV.subarray(from, to)),
    meanA: median(currentsA.subarray(from, to)),
  };
}

/** Elasticity of current on voltage between two ends; NaN where a logarithm has no meaning, Infinity where the voltage stood still. */
export function elasticityOf({ startV, endV, startA, endA }: Ends): number {
  if (startV <= 0 || endV <= 0 || startA <= 0 || endA <= 0) return Number.NaN;
  return Math.abs(Math.log(endA / startA)) / Math.abs(Math.log(endV / startV));
}

/** Which regime the ends of a stretch show, taken alone. */
export function regimeOf(ends: Ends, scales: Scales): Regime {
  const { startV, endV, startA, endA, meanV, meanA } = ends;
  if (meanA < -Math.max(scales.idleA, offsetShareA * scales.topA)) return "discharge";
  if (meanA <= scales.idleA) return "idle";
  const movedV = Math.abs(endV - startV) > Math.max(3 * scales.noiseV, stillShareV * meanV);
  const movedA = Math.abs(endA - startA) > Math.max(3 * scales.noiseA, stillShareA * Math.abs(meanA), scales.idleA);
  if (!movedV && !movedA) return "steady";
  if (!movedV) return "U";
  if (!movedA) return Math.abs(meanA) < offsetShareA * scales.topA ? "idle" : "I";
  const elasticity = elasticityOf(ends);
  if (Number.isNaN(elasticity)) return endA < startA ? "U" : "I";
  if (elasticity < currentHeldBelow) return "I";
  const driftShare = Math.abs(endV - startV) / meanV;
  if ((elasticity > voltageHeldAbove && driftShare < heldShareV) || (elasticity > softlyHeldAbove && driftShare < softlyHeldShareV))
    return "U";
  const rises = endV > startV;
  if (rises && endA < startA) return "W";
  // Current and voltage climbing together is a charger coming up; falling together, one letting go of its limit.
  return rises && endA > startA ? "I" : "unexplained";
}
