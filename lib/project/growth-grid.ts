/**
 * What a row of hydrometer readings says about how density grows: every curve of two families, weighed by how well it explains them.
 *
 * A curve runs through a density at the first visit and one at the last; between and beyond, it is straight or bends towards a ceiling.
 * Its weight is the probability of all readings, each of which only says "between these two marks of the scale".
 */
import { normalCdf } from "../units/normal-distribution.ts";

/** One visit. */
export type GrowthVisit = {
  /** Hours on charge by then: those known, and those possible where nobody saw an end. */
  readonly hoursLow: number;
  readonly hoursHigh: number;
  /** Connections begun by then. */
  readonly connections: number;
  /** Mean over the cells as read, kg/l at 25 °C. */
  readonly densityAt25C: number;
  /** Of the instrument and its conversion, common to all visits, kg/l. */
  readonly standardUncertainty: number;
  /** The hydrometer's scale step, kg/l. */
  readonly step: number;
};

/** One curve with its weight; hours are hours on charge. */
export type GrowthCurve = {
  readonly model: "saturating" | "straight";
  readonly firstH: number;
  readonly lastH: number;
  readonly firstDensity: number;
  readonly lastDensity: number;
  /** Length of first to last over the time constant; 0 for straight. */
  readonly bend: number;
  readonly weight: number;
};

/** Scatter of one reading about the curve beside its step, kg/l: layers, bubbles, the eye. Our assumption, each as likely. */
const scatters = [0.0015, 0.003, 0.006] as const;
/** Curves start and end within this of the readings, kg/l, in so many steps. */
const reach = 0.014;
const nodes = 15;
/** Bends from all but straight to a ceiling reached in a twentieth of the time, evenly in the logarithm: our assumption. */
const bends = Array.from({ length: 22 }, (_, i) => 0.15 * (20 / 0.15) ** (i / 21));
/** No battery's acid is stronger, kg/l, a hydrometer's error included (common practice: 1.30 and 0.02 more). A higher ceiling is none. */
const strongestDensity = 1.32;
/** A reading that fits no curve, a slip of the pen, must not rule out all of them. */
const leastProbability = 1e-4;
/** Shares of the unseen hours that went by, where hours are not known: ends all early, in the middle, all late. */
const unseenShares = [1 / 6, 1 / 2, 5 / 6] as const;
/** Hours that differ by less than this share count as known. */
const knownShare = 0.01;
/** Lighter curves are left out. */
const negligible = 1e-7;

/**
 * Weighs all curves.
 * @param visits  in order, at least two of them with different hours; densities and hours finite
 * @returns curves with weights that add up to 1; half of all weight would go to either family if both explained the readings alike. Empty
 *   for fewer than two visits or no time between them.
 * Source: Bayes' rule on a grid, so that the answer has no chance in it; the prior is even in the densities at both ends.
 */
export function weighCurves(visits: readonly GrowthVisit[]): GrowthCurve[] {
  const [first, last] = [visits[0], visits.at(-1)];
  if (first === undefined || last === undefined || visits.length < 2) return [];
  const areHoursKnown = visits.every(({ hoursLow, hoursHigh }) => hoursHigh - hoursLow <= knownShare * last.hoursHigh);
  const tables = scatters.map((scatter) => visits.map((visit) => tabulate(visit, scatter)));
  const readings = visits.map(({ densityAt25C }) => densityAt25C);
  const curves: GrowthCurve[] = [];
  for (const share of areHoursKnown ? [0.5] : unseenShares) {
    const hours = visits.map(({ hoursLow, hoursHigh }) => hoursLow + share * (hoursHigh - hoursLow));
    const [firstH = 0, lastH = 0] = [hours[0], hours.at(-1)];
    if (!(lastH > firstH)) continue;
    for (const bend of [0, ...bends]) {
      const progress = hours.map((at) => progressAt((at - firstH) / (lastH - firstH), bend));
      for (let i = 0; i < nodes; i++) {
        const firstDensity = first.densityAt25C + reach * ((2 * i) / (nodes - 1) - 1);
        for (let j = 0; j < nodes; j++) {
          const lastDensity = last.densityAt25C + reach * ((2 * j) / (nodes - 1) - 1);
          if (bend > 0 && ceilingOf(firstDensity, lastDensity, bend) > strongestDensity) continue;
          const likelihood = likelihoodOf(tables, readings, progress, firstDensity, lastDensity);
          const weight = bend === 0 ? likelihood : likelihood / bends.length;
          curves.push({ model: bend === 0 ? "straight" : "saturating", firstH, lastH, firstDensity, lastDensity, bend, weight });
        }
      }
    }
  }
  const most = curves.reduce((highest, { weight }) => Math.max(highest, weight), 0);
  const kept = curves.filter(({ weight }) => weight > negligible * most);
  const total = kept.reduce((sum, { weight }) => sum + weight, 0);
  return kept.map((curve) => ({ ...curve, weight: curve.weight / total }));
}

/** Hours on charge at which a curve meets a density; Infinity where it never does. */
export function hoursAtDensity(curve: GrowthCurve, density: number): number {
  const { firstH, lastH, firstDensity, lastDensity, bend } = curve;
  const gain = lastDensity - firstDensity;
  if (density <= firstDensity) return firstH;
  if (!(gain > 0)) return Number.POSITIVE_INFINITY;
  const share = (density - firstDensity) / gain;
  if (bend === 0) return firstH + share * (lastH - firstH);
  const left = 1 + share * Math.expm1(-bend);
  return left > 0 ? firstH - ((lastH - firstH) / bend) * Math.log(left) : Number.POSITIVE_INFINITY;
}

/** How straight growth goes on beyond the last visit: until a knee, then towards a ceiling, both in kg/l. */
export type Continuation = { readonly knee: number; readonly ceiling: number };

/**
 * Hours on charge at which growth that was straight so far meets a density, if it bends at a knee: from there it approaches the ceiling
 * as an exponential that leaves the line without a corner, as a charge does when its current begins to fall.
 * @param curve  a straight one; its last density counts as the knee where the knee lies below it
 * @returns Infinity where it does not rise, or the density is not below the ceiling and above the knee
 */
export function hoursBeyondKnee(curve: GrowthCurve, density: number, { knee, ceiling }: Continuation): number {
  const bendsAt = Math.max(knee, curve.lastDensity);
  if (density <= bendsAt) return hoursAtDensity(curve, density);
  if (!(density < ceiling && curve.lastDensity > curve.firstDensity)) return Number.POSITIVE_INFINITY;
  const slopePerH = (curve.lastDensity - curve.firstDensity) / (curve.lastH - curve.firstH);
  const tauH = (ceiling - bendsAt) / slopePerH;
  return hoursAtDensity(curve, bendsAt) + tauH * Math.log((ceiling - bendsAt) / (ceiling - density));
}

/** The density that a curve levels off at; Infinity for a straight one that rises. */
export function ceilingOf(firstDensity: number, lastDensity: number, bend: number): number {
  const gain = lastDensity - firstDensity;
  if (bend === 0) return gain > 0 ? Number.POSITIVE_INFINITY : lastDensity;
  return firstDensity + gain / -Math.expm1(-bend);
}

/** How much of the way from the first density to the last a curve has gone. */
function progressAt(share: number, bend: number): number {
  return bend === 0 ? share : Math.expm1(-bend * share) / Math.expm1(-bend);
}

const tableStep = 0.0005;
const tableReach = 0.06;

/** Probability of one reading against the density of the curve there: table from tableReach below the reading to as much above. */
function tabulate({ step }: GrowthVisit, scatter: number): Float64Array {
  const size = Math.round((2 * tableReach) / tableStep) + 1;
  return Float64Array.from({ length: size }, (_, k) => {
    const off = k * tableStep - tableReach;
    return Math.max(leastProbability, normalCdf((step / 2 - off) / scatter) - normalCdf((-step / 2 - off) / scatter));
  });
}

function likelihoodOf(
  tables: readonly (readonly Float64Array[])[],
  readings: readonly number[],
  progress: readonly number[],
  firstDensity: number,
  lastDensity: number,
): number {
  let sum = 0;
  for (const row of tables) {
    let product = 1;
    for (let visit = 0; visit < progress.length; visit++) {
      const density = firstDensity + (progress[visit] ?? 0) * (lastDensity - firstDensity);
      product *= lookUp(row[visit], density - (readings[visit] ?? 0));
    }
    sum += product;
  }
  return sum / tables.length;
}

function lookUp(values: Float64Array | undefined, off: number): number {
  const place = (off + tableReach) / tableStep;
  const below = Math.floor(place);
  if (values === undefined || !(below >= 0 && below < values.length - 1)) return leastProbability;
  const low = values[below] ?? leastProbability;
  return low + ((values[below + 1] ?? leastProbability) - low) * (place - below);
}
