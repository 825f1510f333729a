/** Whether the visits show that the test's own stop rule was met: so many equal readings, so far apart, on charge. */
import type { StopRuleOfTarget, Test } from "../nouns/test.ts";

/** One density reading on the way to the target. */
export type ReadingOnTheWay = {
  /** The visit's number. */
  readonly number: number;
  /** Hours known to be connected by then. */
  readonly hours: number;
  /** kg/l at 25 °C. */
  readonly meanAt25C: number;
};

export type StopRuleOutcome = {
  /**
   * `none`: no rule is stated. `in words`: a rule that only a reader can hold against the visits. `shown`, `not shown`, `contradicted`:
   * what the visits say of a rule in numbers.
   */
  readonly kind: "none" | "in words" | "shown" | "not shown" | "contradicted";
  /** Place, in the readings given, of the one that decides: the first, unless the rule was completed, or met anew, later. */
  readonly decidedAt: number;
  readonly words: string;
};

/** A reading at the target within this counts as at it: half of the last digit that a density is stated with, kg/l. */
export const targetRoundingKgPerL = 0.0005;

/** Readings count as apart enough from this share of the minutes asked for, and as too far apart beyond this multiple; our rule. */
const nearestShare = 0.9;
const furthestShare = 2;

/**
 * Holds the readings from the first at the target against the test's stop rule.
 *
 * The rule means readings *on charge*: density that stays while nothing is charged says that the acid has settled, not that the charge
 * is complete. So readings are as far apart as the charger worked between them.
 *
 * @param readings     in order of time, the first being the first at the target; not empty
 * @param target       the test's target with its rule
 * @param stepKgPerL   step of the hydrometer, kg/l; undefined where not stated
 * @returns the first run of readings that shows the rule; else a run with the rule's spacing that breaks it, unless a reading much later
 *   starts anew; else why neither is there. Never throws.
 * Source: three readings 15 min apart, corrected for temperature, that stay constant: IEC 60095-1:2006, 8.2.1 (from memory); one hour
 * apart in vehicle service manuals (common practice).
 */
export function holdAgainstStopRule(
  readings: readonly ReadingOnTheWay[],
  target: NonNullable<Test["target"]>,
  stepKgPerL: number | undefined,
): StopRuleOutcome {
  const { stop, stopRule } = target;
  if (stop === undefined && stopRule === undefined)
    return { kind: "none", decidedAt: 0, words: "no stop rule is stated: the first mean reading at the target counts" };
  if (stop === undefined)
    return {
      kind: "in words",
      decidedAt: 0,
      words: `counted as reached by: ${stopRule}. The rule is stated in words only, so the first mean reading at the target counts; whether the rule was met the readings alone do not show`,
    };
  const asked = `${stop.equalReadings} equal readings (within ${stop.withinKgPerL.toFixed(3)} kg/l) ${stop.apartMin} min apart on charge`;
  const runs = readings.map((_, place) => runFrom(readings, place, stop));
  const complete = runs.find((run) => run.length === stop.equalReadings && isSettled(run, target, stop));
  const closing = complete?.at(-1);
  if (complete !== undefined && closing !== undefined) {
    const coarse =
      stepKgPerL !== undefined && stepKgPerL > stop.withinKgPerL ? `, as far as a scale in steps of ${stepKgPerL} kg/l can show it` : "";
    return {
      kind: "shown",
      decidedAt: readings.indexOf(closing),
      words: `the test's stop rule was met: ${asked}, at visits ${complete.map(({ number }) => number).join(", ")}${coarse}`,
    };
  }
  const isBroken = (run: readonly ReadingOnTheWay[]): boolean => run.length > 1 && !isSettled(run, target, stop);
  const broken = runs.find(isBroken);
  if (broken === undefined)
    return {
      kind: "not shown",
      decidedAt: 0,
      words: `the test's stop rule asks for ${asked}, and the visits do not show it: ${whyNotShown(readings, stop)}`,
    };
  const values = broken.map(({ number, meanAt25C }) => `${meanAt25C.toFixed(3)} at visit ${number}`).join(", ");
  const moved = `the test's stop rule asks for ${asked}; the readings that far apart differ: ${values}`;
  // What was still moving then may have come to rest by a visit much later, which then counts as a first reading does.
  const anew = runs.findIndex(
    (run, place) =>
      place > runs.indexOf(broken) && isFarFrom(readings, place, stop) && !isBroken(run) && isSettled(run.slice(0, 1), target, stop),
  );
  const later = readings[anew];
  return later === undefined
    ? { kind: "contradicted", decidedAt: 0, words: moved }
    : {
        kind: "not shown",
        decidedAt: anew,
        words: `${moved}. Visit ${later.number}, much later, reads the target again, and no visit shows that it had settled`,
      };
}

/** Whether a reading stands too far from the one before to belong to a run with it. */
function isFarFrom(readings: readonly ReadingOnTheWay[], place: number, stop: StopRuleOfTarget): boolean {
  const [before, reading] = [readings[place - 1], readings[place]];
  return before !== undefined && reading !== undefined && (reading.hours - before.hours) * 60 > furthestShare * stop.apartMin;
}

/** Readings from one place on, each apart from the one before as the rule asks; those nearer than that are passed over. */
function runFrom(readings: readonly ReadingOnTheWay[], place: number, stop: StopRuleOfTarget): ReadingOnTheWay[] {
  const run = readings.slice(place, place + 1);
  for (const reading of readings.slice(place + 1)) {
    const before = run.at(-1);
    if (before === undefined || run.length === stop.equalReadings) break;
    const apartMin = (reading.hours - before.hours) * 60;
    if (apartMin > furthestShare * stop.apartMin) break;
    if (apartMin >= nearestShare * stop.apartMin) run.push(reading);
  }
  return run;
}

function isSettled(run: readonly ReadingOnTheWay[], target: NonNullable<Test["target"]>, stop: StopRuleOfTarget): boolean {
  const values = run.map(({ meanAt25C }) => meanAt25C);
  const lowest = Math.min(...values);
  // A difference of two decimals is no exact number: 1.282 less 1.280 is a hair above 0.002.
  return lowest >= target.densityAt25C - targetRoundingKgPerL && Math.max(...values) - lowest <= stop.withinKgPerL + 1e-9;
}

function whyNotShown(readings: readonly ReadingOnTheWay[], stop: StopRuleOfTarget): string {
  const [first, second] = readings;
  if (first === undefined || second === undefined) return "there is one reading at the target, and none after it";
  const charged = readings.slice(1).filter((reading, place) => reading.hours > (readings[place]?.hours ?? reading.hours));
  if (charged.length === 0) return "the readings at the target were taken with no charge between them";
  const apartMin = (second.hours - first.hours) * 60;
  const moved = second.meanAt25C - first.meanAt25C;
  if (apartMin > furthestShare * stop.apartMin) {
    const apart = apartMin < 120 ? `${apartMin.toFixed(0)} min` : `${(apartMin / 60).toFixed(0)} h`;
    const rose = moved > stop.withinKgPerL ? `, and between them the density still rose by ${moved.toFixed(3)} kg/l` : "";
    return `visits ${first.number} and ${second.number} lie ${apart} of charge apart${rose}`;
  }
  return `too few readings lie as far apart as that (${readings.length} were taken from the target on)`;
}
