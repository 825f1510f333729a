/** How density has grown with hours connected, and whether it will reach the target as it goes. */
import { isRefused } from "../signal/fit-result.ts";
import { fitSaturating } from "../signal/fit-saturating.ts";
import type { DensityReading, MeasuredReading, TestContext } from "./test-context.ts";

export type GrowthPoint = {
  readonly reading: MeasuredReading;
  readonly density: DensityReading;
  /** Hours known to be connected by then. */
  readonly hours: number;
  /** Hours that it can have been connected by then at most: more than `hours` where nobody saw an end. */
  readonly mostHours: number;
  readonly connections: number;
};

/**
 * Readings with a density, in order, each with the hours connected by then.
 *
 * A reading taken after the reviewer mixed the acid is left out: it tells of the charge that went in, not of what the charger did to
 * the density that a hydrometer finds.
 */
export function growthPoints(context: TestContext): GrowthPoint[] {
  return context.readings.flatMap((reading) =>
    reading.density === undefined || reading.mixed === true
      ? []
      : [
          {
            reading,
            density: reading.density,
            hours: hoursBefore(context, reading.atMs, "known"),
            mostHours: hoursBefore(context, reading.atMs, "possible"),
            connections: reading.connectionsBefore,
          },
        ],
  );
}

/**
 * Hours connected until an instant. Of a connection whose end nobody saw, those known (to the last sign of it), or those possible (to
 * the instant, or to the next connection).
 */
function hoursBefore(context: TestContext, atMs: number, which: "known" | "possible"): number {
  return context.connections.reduce((sum, { onMs, offMs, lastKnownMs }, index) => {
    if (onMs === undefined || onMs >= atMs) return sum;
    const nextOnMs = context.connections[index + 1]?.onMs ?? Number.POSITIVE_INFINITY;
    const untilMs = offMs ?? (which === "known" ? (lastKnownMs ?? onMs) : nextOnMs);
    return sum + Math.max(0, Math.min(atMs, untilMs) - onMs) / 3_600_000;
  }, 0);
}

export type TargetOutcome =
  | { readonly kind: "no target" | "no density" | "unplaced"; readonly why: string }
  | { readonly kind: "reached"; readonly at: GrowthPoint; readonly before: GrowthPoint | undefined; readonly doubts: readonly string[] }
  | {
      readonly kind: "projected";
      readonly hours: { readonly value: number; readonly low: number; readonly high: number };
      readonly why: string;
    }
  | { readonly kind: "not reachable"; readonly why: string }
  | { readonly kind: "cannot tell"; readonly why: string };

/** Fewer visits than this say nothing about a curve. */
const fewestPoints = 3;
/** Hours that may be this share longer than known are known well enough to project from. */
const hoursSlack = 0.2;
/** A projection is not carried further than this many times the hours seen. */
const furthestShare = 3;

/**
 * Whether and when the target density was, or will be, reached.
 *
 * Reached: the first visit whose mean density is at the target; a visit only says "by now", so the true moment lies between it and
 * the visit before. Where nobody noted when a connection began, visits cannot be placed and nothing is said.
 * Not reached: hours and density are fitted with d₀ + a·(1 − exp(−h/τ)); where even the ceiling stays below the target, the
 * hydrometer's error allowed for, or the last day's charge did not move the density, it is not reachable as it goes. Where the curve
 * reaches the target, the hours are given between that curve and a straight line through the last visits, which grows too fast.
 *
 * @returns the outcome; a projection never goes further than three times the hours seen
 */
export function findTargetOutcome(context: TestContext): TargetOutcome {
  const target = context.test.target;
  if (target === undefined) return { kind: "no target", why: "the test names no target density" };
  if (!context.readings.some((reading) => reading.density !== undefined)) return { kind: "no density", why: "no density was read" };
  const unplaced = context.connections.find((connection) => connection.onMs === undefined);
  if (unplaced !== undefined)
    return {
      kind: "unplaced",
      why: `nobody noted when connection ${unplaced.number} began, so it is not known how long the charger had worked at each visit`,
    };
  const points = growthPoints(context);
  if (points.length === 0) return { kind: "no density", why: "no density was read without mixing the acid first" };
  const goal = target.densityAt25C;
  const reachedAt = points.findIndex((point) => point.connections > 0 && point.density.meanAt25C >= goal - 0.0005);
  const reached = points[reachedAt];
  if (reached !== undefined) {
    const u = reached.density.standardUncertainty;
    const doubts =
      u !== undefined && Math.abs(reached.density.meanAt25C - goal) < 2 * u
        ? [`the density read is within the hydrometer's error (±${(2 * u).toFixed(3)} kg/l) of the target`]
        : [];
    return { kind: "reached", at: reached, before: points[reachedAt - 1], doubts };
  }
  const charged = points.filter(
    (point, index) => point.connections > 0 || index === points.findLastIndex((other) => other.connections === 0),
  );
  const last = charged.at(-1);
  const first = charged[0];
  if (charged.length < fewestPoints || last === undefined || first === undefined)
    return {
      kind: "cannot tell",
      why: `${charged.length === 1 ? "one visit is" : `${charged.length} visits are`} too few to see where the density is going; ${fewestPoints} are needed`,
    };
  if (last.mostHours > last.hours * (1 + hoursSlack))
    return {
      kind: "cannot tell",
      why: `between ${last.hours.toFixed(0)} and ${last.mostHours.toFixed(0)} h of connection went by, since nobody saw every end, so nothing can be projected`,
    };
  return project(charged, goal, first, last);
}

function project(points: readonly GrowthPoint[], goal: number, first: GrowthPoint, last: GrowthPoint): TargetOutcome {
  const stepKgPerL = 2 * (last.density.standardUncertainty ?? 0.0025);
  const stalledFrom = points.findLast((point) => last.hours - point.hours >= 24 && point !== first);
  if (
    stalledFrom !== undefined &&
    last.density.meanAt25C - stalledFrom.density.meanAt25C <= 0.001 &&
    goal - last.density.meanAt25C > stepKgPerL
  )
    return {
      kind: "not reachable",
      why: `in the last ${(last.hours - stalledFrom.hours).toFixed(0)} h connected the density moved from ${stalledFrom.density.meanAt25C.toFixed(3)} to ${last.density.meanAt25C.toFixed(3)} kg/l, ${(goal - last.density.meanAt25C).toFixed(3)} short of the target`,
    };
  const hours = points.map((point) => point.hours - first.hours);
  const gains = points.map((point) => point.density.meanAt25C - first.density.meanAt25C);
  const needed = goal - first.density.meanAt25C;
  const fit = fitSaturating(hours, gains);
  if (!isRefused(fit)) {
    const [ceiling, rate] = fit.parameters;
    const [ceilingError] = fit.standardErrors;
    const most = Math.max(ceiling + 2 * ceilingError, highestCeiling(hours, gains, stepKgPerL / 2));
    if (most < needed)
      return {
        kind: "not reachable",
        why: `the density levels off at ${(first.density.meanAt25C + ceiling).toFixed(3)} kg/l (at most ${(first.density.meanAt25C + most).toFixed(3)}), below the target`,
      };
    const before = points.at(-2) ?? first;
    const slope = (last.density.meanAt25C - before.density.meanAt25C) / Math.max(1e-9, last.hours - before.hours);
    const straight = slope > 0 ? last.hours + (goal - last.density.meanAt25C) / slope : Number.POSITIVE_INFINITY;
    const curve = ceiling > needed ? first.hours - Math.log(1 - needed / ceiling) / rate : Number.POSITIVE_INFINITY;
    const furthest = furthestShare * last.hours;
    if (straight > furthest)
      return {
        kind: "cannot tell",
        why: `at the pace of the last visits it would take more than ${furthest.toFixed(0)} h, further than ${furthestShare} times what was seen`,
      };
    // Hours that may have gone by unseen are so many more that the target may take.
    const high = Math.min(furthest, Math.max(curve, straight) + last.mostHours - last.hours);
    const low = Math.max(last.hours, Math.min(straight, curve));
    return {
      kind: "projected",
      hours: { value: Math.min(high, Math.max(low, Number.isFinite(curve) ? curve : high)), low, high },
      why:
        curve > furthest
          ? "a saturating curve may never get there; the upper end is as far as we project"
          : "between a saturating curve and a straight line through the last visits",
    };
  }
  return { kind: "cannot tell", why: `no curve fits the visits: ${fit.refused}` };
}

/**
 * The ceiling, above the first density, where the hydrometer's error bends the curve as little as it can: early visits read too high,
 * late ones too low, each by `errorKgPerL`. Infinity where no bend is left. Scatter about the curve alone would be taken for certainty
 * where a few rounded readings happen to lie on one.
 */
function highestCeiling(hours: readonly number[], gains: readonly number[], errorKgPerL: number): number {
  const last = gains.length - 1;
  const unbent = gains.map((gain, index) => gain + errorKgPerL * ((2 * index) / last - 1));
  const fit = fitSaturating(hours, unbent);
  return isRefused(fit) ? Number.POSITIVE_INFINITY : fit.parameters[0] + 2 * fit.standardErrors[0];
}
