/** When the target density is met, or will be: hours on charge and connections, as distributions, from what a hydrometer showed. */
import { normalCdf } from "../units/normal-distribution.ts";
import { ceilingOf, type GrowthCurve, type GrowthVisit, hoursAtDensity, hoursBeyondKnee, weighCurves } from "./growth-grid.ts";
import { normalQuantile } from "./normal-quantile.ts";
import { type Range, type Spread, spreadOf } from "./spread.ts";

export type { GrowthVisit } from "./growth-grid.ts";

export type ToTarget =
  | {
      readonly kind: "reached";
      /** A visit only says "by now": met after the visit before (hours known by then; 0 where there was none) and by this one. */
      readonly hours: Range;
      readonly connections: Range;
      /** Place of the visit that read it, from 0, and of the visit before, if any. */
      readonly visit: number;
      readonly visitBefore: number | null;
      /** Probability that the true density was at the target at that visit: the instrument's error and the scale's step allowed for. */
      readonly probabilityTrue: number;
    }
  | {
      readonly kind: "likely between";
      readonly hours: Spread;
      readonly connections: Spread | null;
      /** Nothing is said beyond these hours: three times those seen. An Infinity in `hours` stands for "more than this, or never". */
      readonly limitH: number;
      readonly isBeyondSeen: boolean;
      /** Probability that the ceiling stays below the target, and of the straight model. */
      readonly probabilityNever: number;
      readonly probabilityStraight: number;
      readonly why: string;
    }
  | {
      readonly kind: "not reachable as it goes";
      readonly probability: number;
      /** The density at which it levels off, as read on this hydrometer, kg/l. */
      readonly ceiling: Spread;
      readonly why: string;
    }
  | { readonly kind: "cannot tell"; readonly why: string };

/** Density of this battery when full, kg/l at 25 °C, where it is known. */
export type FullDensity = { readonly densityAt25C: number; readonly standardUncertainty: number };

/** A projection is not carried further than this many times the hours seen: our rule. */
export const furthestShare = 3;
/** "Not reachable" is said from this probability on. */
export const neverProbability = 0.9;
/** Fewer visits than this show no bend. */
const fewestVisits = 3;
/** Where hours may be longer than known by more than this share, nothing is projected. */
const mostUnseenShare = 0.25;
/** A reading this close below the target meets it, kg/l: half of the third decimal. */
const roundingSlack = 0.0005;
/** A full battery's density where nobody states it, kg/l at 25 °C, and its standard uncertainty: starter batteries (common practice). */
const usualFull: FullDensity = { densityAt25C: 1.278, standardUncertainty: 0.01 };
/** Density of an empty battery, kg/l: only to place the knee. Trade defaults (read). */
const emptyDensity = 1.12;
/** Shares of the charge at which growth that is straight so far begins to bend, each as likely: where chargers reach their limit (common practice). */
const kneeShares = [0.65, 0.75, 0.85, 0.95] as const;
/** Even draws of the full density, in standard uncertainties. */
const fullDraws = [1 / 6, 1 / 2, 5 / 6].map(normalQuantile);
/** Even draws of the error that all readings share. */
const commonErrors = Array.from({ length: 9 }, (_, k) => normalQuantile((k + 0.5) / 9));

/**
 * When the target is met.
 * @param visits  in order of time; those read without charge in between may share their hours
 * @param targetDensityAt25C  kg/l
 * @param full  the battery's density when full; what starter batteries have where left out. No growth goes on beyond it
 * @returns reached (between two visits), likely between two numbers of hours, not reachable as it goes, or cannot tell, with the reason
 *
 * The instrument's own error is common to all visits, so it moves no curve: it moves the reading at which the target is truly met.
 * A visit with a NaN is left out. Never throws.
 */
export function projectToTarget(visits: readonly GrowthVisit[], targetDensityAt25C: number, full: FullDensity = usualFull): ToTarget {
  const reached = visits.findIndex(
    ({ connections, densityAt25C }) => connections > 0 && densityAt25C >= targetDensityAt25C - roundingSlack,
  );
  if (reached >= 0) return tellReached(visits, reached, targetDensityAt25C);
  const usable = chargingVisits(visits.filter(isUsable));
  const last = usable.at(-1);
  if (last === undefined || usable.length < fewestVisits)
    return {
      kind: "cannot tell",
      why: `${usable.length} visits are too few to see where the density is going; ${fewestVisits} are needed`,
    };
  if (last.hoursHigh > last.hoursLow * (1 + mostUnseenShare))
    return {
      kind: "cannot tell",
      why: `between ${last.hoursLow.toFixed(0)} and ${last.hoursHigh.toFixed(0)} h on charge went by, since nobody saw every end`,
    };
  const curves = belowFull(weighCurves(usable), full, last.standardUncertainty);
  if (curves.length === 0) return { kind: "cannot tell", why: "no time on charge lies between the visits" };
  return tellProjected(usable, last, curves, targetDensityAt25C, full);
}

function isUsable(visit: GrowthVisit): boolean {
  return [visit.hoursLow, visit.hoursHigh, visit.densityAt25C, visit.step, visit.standardUncertainty].every(Number.isFinite);
}

/** From the last visit before the first connection on: what happened before says nothing about charging. */
function chargingVisits(visits: readonly GrowthVisit[]): readonly GrowthVisit[] {
  const lastBefore = visits.findLastIndex(({ connections }) => connections === 0);
  return visits.slice(Math.max(0, lastBefore));
}

function tellReached(visits: readonly GrowthVisit[], reached: number, target: number): ToTarget {
  const at = visits[reached];
  const before = visits[reached - 1];
  if (at === undefined) return { kind: "cannot tell", why: "no visit" };
  return {
    kind: "reached",
    hours: { low: before?.hoursLow ?? 0, high: at.hoursHigh },
    connections: { low: Math.min(at.connections, (before?.connections ?? 0) + 1), high: at.connections },
    visit: reached,
    visitBefore: before === undefined ? null : reached - 1,
    probabilityTrue: normalCdf((at.densityAt25C - target) / Math.max(1e-9, Math.hypot(at.standardUncertainty, at.step / Math.sqrt(12)))),
  };
}

/** Curves weighed once more: a ceiling above the battery's full density is the less likely the further above. */
function belowFull(curves: readonly GrowthCurve[], full: FullDensity, commonUncertainty: number): GrowthCurve[] {
  const spread = Math.max(1e-4, Math.hypot(full.standardUncertainty, commonUncertainty));
  const weighed = curves.map((curve) => {
    if (curve.model === "straight") return curve;
    const above = (ceilingOf(curve.firstDensity, curve.lastDensity, curve.bend) - full.densityAt25C) / spread;
    return { ...curve, weight: curve.weight * normalCdf(-above) };
  });
  const total = weighed.reduce((sum, { weight }) => sum + weight, 0);
  return total > 0 ? weighed.map((curve) => ({ ...curve, weight: curve.weight / total })) : [...curves];
}

/** Every moment at which a curve may meet a density, each as likely: one for a bent curve, one a way of going on for a straight one. */
function momentsOf(curve: GrowthCurve, density: number, error: number, full: FullDensity): number[] {
  if (curve.model === "saturating") return [hoursAtDensity(curve, density)];
  return fullDraws.flatMap((draw) => {
    // The instrument's error moves full and target alike, so it leaves what lies between them alone.
    const ceiling = full.densityAt25C + draw * full.standardUncertainty + error;
    return kneeShares.map((share) => hoursBeyondKnee(curve, density, { knee: emptyDensity + share * (ceiling - emptyDensity), ceiling }));
  });
}

function tellProjected(
  visits: readonly GrowthVisit[],
  last: GrowthVisit,
  curves: readonly GrowthCurve[],
  target: number,
  full: FullDensity,
): ToTarget {
  const limitH = furthestShare * last.hoursHigh;
  const hours: number[] = [];
  const weights: number[] = [];
  let never = 0;
  for (const curve of curves) {
    for (const draw of commonErrors) {
      const error = draw * last.standardUncertainty;
      const moments = momentsOf(curve, target + error, error, full);
      const weight = curve.weight / commonErrors.length / moments.length;
      for (const atH of moments) {
        if (atH === Number.POSITIVE_INFINITY) never += weight;
        // Not reached by the last visit: an earlier moment contradicts what was read there.
        hours.push(atH > limitH ? Number.POSITIVE_INFINITY : Math.max(last.hoursLow, atH));
        weights.push(weight);
      }
    }
  }
  const probabilityStraight = curves.filter(({ model }) => model === "straight").reduce((sum, { weight }) => sum + weight, 0);
  const ceiling = spreadOf(
    curves.map(({ firstDensity, lastDensity, bend }) => ceilingOf(firstDensity, lastDensity, bend)),
    curves.map(({ weight }) => weight),
  );
  if (never >= neverProbability)
    return {
      kind: "not reachable as it goes",
      probability: never,
      ceiling,
      why: `the density levels off at about ${ceiling.median.toFixed(3)} kg/l, below the target of ${target.toFixed(3)}`,
    };
  const spread = spreadOf(hours, weights);
  if (!Number.isFinite(spread.median))
    return {
      kind: "cannot tell",
      why: `it would more likely than not take more than ${limitH.toFixed(0)} h, ${furthestShare} times what was seen, or never come`,
    };
  const connections = connectionsAt(visits, last, hours, weights);
  return {
    kind: "likely between",
    hours: spread,
    connections,
    limitH,
    isBeyondSeen: !Number.isFinite(spread.middle95.high),
    probabilityNever: never,
    probabilityStraight,
    why: `${(100 * (1 - probabilityStraight)).toFixed(0)} % of the weight lies on curves that level off, ${(100 * probabilityStraight).toFixed(0)} % on growth that is straight so far`,
  };
}

/** Connections go on at the length of those seen: shortest, mean and longest between two visits, each as likely. */
function connectionsAt(
  visits: readonly GrowthVisit[],
  last: GrowthVisit,
  hours: readonly number[],
  weights: readonly number[],
): Spread | null {
  const lengths = visits.slice(1).flatMap((visit, index) => {
    const before = visits[index];
    const connections = visit.connections - (before?.connections ?? 0);
    const length = (visit.hoursLow - (before?.hoursLow ?? 0)) / connections;
    return connections > 0 && length > 0 ? [length] : [];
  });
  if (lengths.length === 0) return null;
  const mean = lengths.reduce((sum, length) => sum + length, 0) / lengths.length;
  const counts: number[] = [];
  const shares: number[] = [];
  for (const [index, atH] of hours.entries()) {
    for (const length of [Math.min(...lengths), mean, Math.max(...lengths)]) {
      counts.push(last.connections + Math.ceil(Math.max(0, atH - last.hoursLow) / length));
      shares.push((weights[index] ?? 0) / 3);
    }
  }
  return spreadOf(counts, shares);
}
