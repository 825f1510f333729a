/** How density has grown with hours connected, and whether it will reach the target as it goes. */
import { projectToTarget } from "../project/index.ts";
import { statedDensityAt25C } from "./stated-density.ts";
import { holdAgainstStopRule, type StopRuleOutcome, targetRoundingKgPerL } from "./stop-rule.ts";
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
 * Readings with a density that can be compared with each other, in order, each with the hours connected by then.
 *
 * As found, a hydrometer reads the top of the cell, which lies at or below the mean of its acid; after mixing it reads the mean. The two
 * are never put in one row. Readings as found count, since they are what the charger did to the density; those taken after the reviewer
 * mixed the acid count only where nothing else was read after the first connection.
 */
export function growthPoints(context: TestContext): GrowthPoint[] {
  const points = allPoints(context);
  const asFound = points.filter(({ reading }) => reading.mixed !== true);
  const onlyMixed = !asFound.some(hasCharged) && points.some(hasCharged);
  return onlyMixed ? points.filter((point) => point.connections === 0 || point.reading.mixed === true) : asFound;
}

function hasCharged(point: GrowthPoint): boolean {
  return point.connections > 0;
}

function allPoints(context: TestContext): GrowthPoint[] {
  return context.readings.flatMap((reading) =>
    reading.density === undefined
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

/** A reading of mixed acid, and whether it was at the target. */
export type MixedPoint = GrowthPoint & { readonly isAtTarget: boolean };

/** What is left open where the target was not reached in the readings that count. */
type NotReached = {
  readonly why: string;
  /** The highest reading after a connection that was taken once the acid was mixed by hand; undefined where there is none. */
  readonly mixed: MixedPoint | undefined;
};

export type TargetOutcome =
  | { readonly kind: "no target" | "no density" | "unplaced"; readonly why: string }
  | {
      readonly kind: "reached";
      /** The reading that decided: the first at the target or, where the visits show the stop rule, the one that completes it. */
      readonly at: GrowthPoint;
      /** The last reading before the target was first read. */
      readonly before: GrowthPoint | undefined;
      readonly rule: StopRuleOutcome;
      readonly doubts: readonly string[];
    }
  /** The target was read, but the test's own stop rule says that the density was still moving. */
  | { readonly kind: "unsettled"; readonly at: GrowthPoint; readonly why: string }
  | (NotReached & {
      readonly kind: "projected";
      /** An end at Infinity is open: beyond what is projected, or never. */
      readonly hours: { readonly value: number; readonly low: number; readonly high: number };
      readonly connections: { readonly value: number; readonly low: number; readonly high: number } | null;
    })
  | (NotReached & { readonly kind: "not reachable" | "cannot tell" });

/** How a test stands to its target, for a word beside its name: a test that nobody could read is not one that failed. */
export type TargetStatus = "reached" | "not reached" | "not known" | "no target";

/** The word for an outcome. "Not known" where nothing usable was read, visits cannot be placed, or the density had not settled. */
export function targetStatusOf({ kind }: TargetOutcome): TargetStatus {
  if (kind === "reached" || kind === "no target") return kind;
  return kind === "no density" || kind === "unplaced" || kind === "unsettled" ? "not known" : "not reached";
}

/** Fewer visits than this say nothing about a curve. */
const fewestPoints = 3;
/** Hours that may be this share longer than known are known well enough to project from. */
const hoursSlack = 0.2;
/** A density that rose by no more than this over at least so many hours connected stands still, kg/l and h; our rule. */
const stillKgPerL = 0.001;
const leastStallH = 24;
/** A projection is not carried further than this many times the hours seen. */
const furthestShare = 3;

/**
 * Whether and when the target density was, or will be, reached.
 *
 * Reached: the first visit whose mean density is at the target; a visit only says "by now", so the true moment lies between it and
 * the visit before. Where the visits show the test's own stop rule, the reading that completes it decides; where they contradict it,
 * nothing does. Where nobody noted when a connection began, visits cannot be placed and nothing is said.
 * Not reached: saturating and straight growth are weighed by how well they explain the visits, the hydrometer's steps and error allowed
 * for, and carried on (lib/project/to-target.ts). Where nine in ten parts of the weight stay below the target, or a day's charge or more
 * did not move the density that a slow growth would have moved, it is not reachable as it goes.
 *
 * @returns the outcome; a projection never goes further than three times the hours seen
 */
export function findTargetOutcome(context: TestContext): TargetOutcome {
  const target = context.test.target;
  if (target === undefined) return { kind: "no target", why: "the test names no target density" };
  if (!context.readings.some((reading) => reading.density !== undefined)) return { kind: "no density", why: whyNoDensity(context) };
  const unplaced = context.connections.find((connection) => connection.onMs === undefined);
  if (unplaced !== undefined)
    return {
      kind: "unplaced",
      why: `nobody noted when connection ${unplaced.number} began, so it is not known how long the charger had worked at each visit`,
    };
  const points = growthPoints(context);
  if (!points.some(hasCharged)) return { kind: "no density", why: "no density was read after the first connection" };
  const goal = target.densityAt25C;
  const isAtTarget = (point: GrowthPoint): boolean => hasCharged(point) && point.density.meanAt25C >= goal - targetRoundingKgPerL;
  const reachedAt = points.findIndex(isAtTarget);
  const reached = points[reachedAt];
  if (reached !== undefined) {
    const rule = holdAgainstStopRule(points.slice(reachedAt).map(onTheWay), target, stepOf(context));
    if (rule.kind === "contradicted") return { kind: "unsettled", at: reached, why: rule.words };
    const at = points[reachedAt + rule.decidedAt] ?? reached;
    return { kind: "reached", at, before: points[reachedAt - 1], rule, doubts: doubtsOfDeciding(context, at, goal) };
  }
  const mixed = allPoints(context)
    .filter((point) => point.reading.mixed === true && hasCharged(point))
    .sort((a, b) => b.density.meanAt25C - a.density.meanAt25C)[0];
  return {
    ...outlookFor(points, goal, stepOf(context), fullDensityOf(context)),
    mixed: mixed === undefined ? undefined : { ...mixed, isAtTarget: isAtTarget(mixed) },
  };
}

/** A density that was read and could not be used has another reason than one that nobody read. */
function whyNoDensity({ readings, instruments }: TestContext): string {
  const wasRead = readings.some(({ values }) => Object.keys(values).some((column) => column.startsWith("density_")));
  if (!wasRead) return "no density was read";
  return instruments.hydrometer?.density === undefined
    ? "a density was read, but no hydrometer is named, so what its scale means is not known"
    : "no density that was read lies where the acid's tables hold (0 to 50 °C, up to 60 % acid)";
}

type FullDensity = NonNullable<Parameters<typeof projectToTarget>[2]>;

/** How well a stated full density is known, standard, kg/l: makers print it to two decimals; our assumption. */
const statedFullUncertainty = 0.004;

function fullDensityOf({ battery }: TestContext): FullDensity | undefined {
  const value = statedDensityAt25C(battery.fullDensity);
  return value === undefined ? undefined : { densityAt25C: value, standardUncertainty: statedFullUncertainty };
}

function onTheWay({ reading, density, hours }: GrowthPoint): { number: number; hours: number; meanAt25C: number } {
  return { number: reading.number, hours, meanAt25C: density.meanAt25C };
}

function stepOf(context: TestContext): number | undefined {
  return context.instruments.hydrometer?.measures?.density?.resolution;
}

/** What limits trust in the reading that decided: the hydrometer, the rest, and which acid it dipped into. */
function doubtsOfDeciding(context: TestContext, { reading, density }: GrowthPoint, goal: number): string[] {
  const u = density.standardUncertainty;
  const near =
    u !== undefined && Math.abs(density.meanAt25C - goal) < 2 * u
      ? [`the density read is within the hydrometer's error (±${(2 * u).toFixed(3)} kg/l) of the target`]
      : [];
  const mixedBefore = context.readings.findLast(
    (other) => other.mixed === true && other.atMs < reading.atMs && other.connectionsBefore > 0 && reading.mixed !== true,
  );
  return [
    ...near,
    `visit ${reading.number} decided: ${describeConditions(reading)}`,
    ...(mixedBefore === undefined
      ? []
      : [`the acid had been mixed by hand at visit ${mixedBefore.number}, which lifts what is read later`]),
  ];
}

/** Rest and mixing of a reading in words: the acid as found is the top of the cell, mixed acid is the mean. */
export function describeConditions(reading: Pick<MeasuredReading, "values" | "charger" | "mixed">): string {
  const restH = reading.values.rest_h?.value;
  const rest =
    restH !== undefined
      ? `read after ${restH} h of rest`
      : reading.charger === "connected"
        ? "read with the charger connected"
        : "read after a rest that nobody noted";
  return reading.mixed === true
    ? `${rest}, after the acid was mixed by hand: the mean of the acid, which the charger alone may not have brought to the top`
    : `${rest}, the acid as found: the top of the cells, whose mean is at least that`;
}

type Outlook =
  | {
      readonly kind: "projected";
      /** An end at Infinity is open: beyond what is projected, or never. */
      readonly hours: { readonly value: number; readonly low: number; readonly high: number };
      /** Null where connections differ too much in length to be counted. */
      readonly connections: { readonly value: number; readonly low: number; readonly high: number } | null;
      readonly why: string;
    }
  | { readonly kind: "not reachable" | "cannot tell"; readonly why: string };

/** Where the density is going, of readings that did not come to the target. */
function outlookFor(points: readonly GrowthPoint[], goal: number, stepKgPerL: number | undefined, full: FullDensity | undefined): Outlook {
  const charged = points.filter((point, index) => hasCharged(point) || index === points.findLastIndex((other) => !hasCharged(other)));
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
  const errorKgPerL = 2 * (last.density.standardUncertainty ?? unstatedErrorKgPerL);
  const stalled = stalledSince(charged, goal, first, last, Math.max(stepKgPerL ?? 0, errorKgPerL));
  if (stalled !== undefined)
    return {
      kind: "not reachable",
      why: `in the last ${(last.hours - stalled.from.hours).toFixed(0)} h connected the density moved from ${stalled.from.density.meanAt25C.toFixed(3)} to ${last.density.meanAt25C.toFixed(3)} kg/l, ${(goal - last.density.meanAt25C).toFixed(3)} short of the target; to get there within ${furthestShare} times the hours seen it would have moved by ${stalled.neededKgPerL.toFixed(3)}, which the hydrometer would have shown`,
    };
  return project(charged, goal, last, stepKgPerL, full);
}

/** Standard uncertainty of a density whose hydrometer's accuracy nobody states, kg/l; our assumption. */
const unstatedErrorKgPerL = 0.0025;

/** Saturating and straight growth, weighed by how well they explain the visits, carried on to the target. */
function project(
  points: readonly GrowthPoint[],
  goal: number,
  last: GrowthPoint,
  stepKgPerL: number | undefined,
  full: FullDensity | undefined,
): Outlook {
  const outlook = projectToTarget(
    points.map(({ hours, mostHours, connections, density }) => ({
      hoursLow: hours,
      hoursHigh: mostHours,
      connections,
      densityAt25C: density.meanAt25C,
      standardUncertainty: density.standardUncertainty ?? unstatedErrorKgPerL,
      step: stepKgPerL ?? 0,
    })),
    goal,
    full,
  );
  switch (outlook.kind) {
    case "likely between": {
      const { median, middle95 } = outlook.hours;
      const { connections } = outlook;
      return {
        kind: "projected",
        hours: { value: median, low: Math.max(last.hours, middle95.low), high: middle95.high },
        connections: connections === null ? null : { value: connections.median, ...connections.middle95 },
        why: outlook.isBeyondSeen
          ? `${outlook.why}; the end is open, since nothing is said beyond ${outlook.limitH.toFixed(0)} h, ${furthestShare} times what was seen`
          : outlook.why,
      };
    }
    case "not reachable as it goes":
      return { kind: "not reachable", why: outlook.why };
    case "cannot tell":
      return { kind: "cannot tell", why: outlook.why };
    case "reached":
      throw new Error("a target that was read is no outlook");
  }
}

/**
 * The longest stretch of a day or more, up to the last visit, over which the density stood still though growth would have shown.
 *
 * Standing still means something only where the slowest growth that still gets there would have moved the density, over that stretch, by
 * more than the hydrometer can overlook: a scale in steps of 0.010 hides a month of slow charging.
 *
 * @param overlookedKgPerL  the larger of the hydrometer's step and its expanded error, kg/l
 * @returns undefined where no such stretch is there
 */
function stalledSince(
  points: readonly GrowthPoint[],
  goal: number,
  first: GrowthPoint,
  last: GrowthPoint,
  overlookedKgPerL: number,
): { from: GrowthPoint; neededKgPerL: number } | undefined {
  const toGo = goal - last.density.meanAt25C;
  return points
    .filter((point) => point !== first && last.hours - point.hours >= leastStallH)
    .map((from) => ({ from, neededKgPerL: (toGo * (last.hours - from.hours)) / ((furthestShare - 1) * last.hours) }))
    .find(({ from, neededKgPerL }) => last.density.meanAt25C - from.density.meanAt25C <= stillKgPerL && neededKgPerL > overlookedKgPerL);
}
