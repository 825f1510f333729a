/** What a test heard from its battery's four witnesses, in the form that the cross-examination takes. */
import type { Accuracy, Instrument } from "../nouns/instrument.ts";
import {
  type BatteryWitness,
  type Bounds,
  type CrossExamination,
  crossExamine,
  type IntervalWitness,
  type VisitWitness,
  type Witnesses,
} from "../reconcile/index.ts";
import { standardUncertaintyOf } from "../units/uncertainty.ts";
import { currentAfterLastRow } from "./after-last-row.ts";
import { connectedWithin } from "./connected-time.ts";
import { chargerLimitedCurrent } from "./figures/charger-limited-current.ts";
import { hoursAboveGassing } from "./figures/time-above-gassing.ts";
import { chargeOfAll, countedOnce, coveredHoursOfAll } from "./integrals.ts";
import type { MeasuredRecording } from "./recording.ts";
import { statedDensityAt25C } from "./stated-density.ts";
import type { MeasuredConnection, MeasuredReading, TestContext } from "./test-context.ts";

/** Taken where an instrument's accuracy is not stated, so that it still counts, but little: kg/l, V, share of a current. Our assumptions. */
const unstated = { density: 0.005 / Math.sqrt(3), voltageV: 0.05 / Math.sqrt(3), currentShare: 0.05, crankingShare: 0.1 } as const;

/** How well two readings of one hydrometer or voltmeter agree whatever its scale says: kg/l, V. Our assumptions. */
const leastScatter = { density: 0.001, voltageV: 0.005 } as const;

/** Less time than this between last row and clamps off is the slack of a hand, h. */
const slackH = 0.1;

/** What a charger that has ended the charge may still give on average, as a share of the capacity an hour: C/200, our assumption. */
const afterEndShare = 1 / 200;

/** A stated current may be exceeded by this much, as a share; the tolerance of a rating plate (common practice). */
const aboveRating = 1.1;

/** What was measured of the charge taken out before the test, as a share; our assumption for a timed discharge. */
const dischargeShare = 0.03;

const examinations = new WeakMap<TestContext, CrossExamination>();

/** The cross-examination of a test, made once. */
export function examinationOf(context: TestContext): CrossExamination {
  const known = examinations.get(context);
  if (known !== undefined) return known;
  const made = crossExamine(witnessesOf(context));
  examinations.set(context, made);
  return made;
}

/** Gathers what battery, visits and recordings say, each with its uncertainty. Readings of a connected charger carry no rest voltage. */
export function witnessesOf(context: TestContext): Witnesses {
  const { readings } = context;
  const { dischargedAh } = context.test;
  return {
    battery: batteryWitness(context),
    visits: readings.map((reading) => visitWitness(context, reading)),
    intervals: readings.slice(1).map((reading, place) => intervalWitness(context, readings[place]?.atMs ?? Number.NaN, reading.atMs)),
    ...(dischargedAh === undefined ? {} : { dischargedAh: { value: dischargedAh, standardUncertainty: dischargeShare * dischargedAh } }),
  };
}

function batteryWitness({ battery, instruments }: TestContext): BatteryWitness {
  const tester = instruments.batteryTester?.cranking;
  const rating = battery.crankingRating;
  const comparable = rating !== undefined && rating.standard !== "not stated" && tester?.standard === rating.standard;
  return {
    cells: battery.cells,
    construction: battery.construction,
    capacityAh: battery.capacityAh,
    capacityBasis: battery.capacityBasis,
    ...optional("fullDensityAt25C", statedDensityAt25C(battery.fullDensity)),
    ...optional("emptyDensityAt25C", statedDensityAt25C(battery.emptyDensity)),
    ...optional("electrolyteKgPerCell", battery.electrolyteKgPerCell),
    ...optional("crankingRatingA", comparable ? rating.currentA : undefined),
  };
}

function visitWitness(context: TestContext, reading: MeasuredReading): VisitWitness {
  const { values, density } = reading;
  const temperatureC = values.battery_C?.value ?? values.acid_C?.value;
  const { hydrometer, voltmeter, batteryTester } = context.instruments;
  const parts =
    density === undefined
      ? undefined
      : splitOf(hydrometer?.measures?.density, density.standardUncertainty, unstated.density, leastScatter.density);
  const restV = values.rest_V?.value;
  const accuracyV = voltmeter?.measures?.voltage;
  const partsV =
    restV === undefined
      ? undefined
      : splitOf(
          accuracyV,
          accuracyV === undefined ? undefined : standardUncertaintyOf(accuracyV, restV),
          unstated.voltageV,
          leastScatter.voltageV,
        );
  const crankingA = values.cranking_A?.value;
  return {
    number: reading.number,
    atMs: reading.atMs,
    ...optional("mixed", reading.mixed),
    ...(density === undefined || parts === undefined
      ? {}
      : {
          densityAt25C: {
            mean: density.meanAt25C,
            randomStandardUncertainty: parts.random / Math.sqrt(density.cells.length),
            commonStandardUncertainty: parts.common,
            ...(density.cells.length > 1 ? { cells: density.cells.map((cell) => cell.at25C) } : {}),
            temperatureMeasured: temperatureC !== undefined || hydrometer?.density?.correctsTemperature === true,
          },
        }),
    ...(restV === undefined || partsV === undefined
      ? {}
      : {
          restV: {
            value: restV,
            standardUncertainty: partsV.random,
            commonStandardUncertainty: partsV.common,
            ...optional("restH", values.rest_h?.value ?? hoursSinceOff(context, reading)),
            ...optional("temperatureC", temperatureC),
          },
        }),
    ...(crankingA === undefined ? {} : { crankingA: { value: crankingA, standardUncertainty: crankingError(batteryTester, crankingA) } }),
  };
}

/** An instrument's error split into what every reading shares and what each has by itself: its rounding, and the hand that reads it. */
function splitOf(
  accuracy: Accuracy | undefined,
  total: number | undefined,
  ifUnstated: number,
  leastRandom: number,
): { random: number; common: number } {
  const random = Math.max(leastRandom, (accuracy?.resolution ?? 0) / Math.sqrt(12));
  return { random, common: Math.sqrt(Math.max(0, (total ?? ifUnstated) ** 2 - random ** 2)) };
}

function crankingError(tester: Instrument | undefined, currentA: number): number {
  const accuracy = tester?.measures?.crankingCurrent;
  return accuracy === undefined ? unstated.crankingShare * currentA : standardUncertaintyOf(accuracy, currentA);
}

/** Hours of rest that the records imply where the visit did not note them; undefined while the charger was, or may have been, connected. */
function hoursSinceOff(context: TestContext, reading: MeasuredReading): number | undefined {
  const connection = reading.connection === undefined ? undefined : context.connections[reading.connection];
  const offMs = connection?.offMs;
  return offMs === undefined || offMs > reading.atMs ? undefined : (reading.atMs - offMs) / 3_600_000;
}

function intervalWitness(context: TestContext, fromMs: number, toMs: number): IntervalWitness {
  const recordings = context.connections.flatMap((connection) =>
    connection.recordings.filter((recording) => isWithin(context, connection, recording, fromMs, toMs)),
  );
  const counted = countedOnce(
    recordings.filter((recording) => recording.trace.hasCurrent),
    fromMs,
    toMs,
  );
  const recorded = chargeOfAll(counted);
  const seen = context.connections.map((connection) => unseenOf(context, connection, fromMs, toMs));
  const known = seen.filter((one) => one !== undefined);
  const placed = known.length === seen.length;
  return {
    hours: (toMs - fromMs) / 3_600_000,
    ...(coveredHoursOfAll(counted) === 0
      ? {}
      : {
          recordedAh: {
            value: recorded.value,
            standardUncertainty: recorded.standardUncertainty ?? unstated.currentShare * Math.abs(recorded.value),
          },
        }),
    ...(placed ? { unseenH: sumOf(known.map(({ hours }) => hours)), unseenBoundAh: sumOf(known.map(({ boundAh }) => boundAh)) } : {}),
    ...(recordings.some((recording) => recording.trace.hasVoltage)
      ? { hoursAboveGassing: recordings.reduce((sum, recording) => sum + gassingHours(recording, fromMs, toMs), 0) }
      : {}),
  };
}

/** A recording that only counts is placed with its connection, where all of that lies between the two visits. */
function isWithin(
  context: TestContext,
  connection: MeasuredConnection,
  recording: MeasuredRecording,
  fromMs: number,
  toMs: number,
): boolean {
  if (recording.startMs !== undefined) return recording.startMs < toMs && recording.startMs + recording.trace.spanS * 1000 > fromMs;
  const within = connectedWithin(context, connection, fromMs, toMs);
  const whole = connectedWithin(context, connection, Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY);
  return within !== undefined && whole !== undefined && within.high > 0 && within.low === whole.low;
}

/** Hours of a connection that nobody recorded between two visits, and the charge that they can have brought. */
function unseenOf(
  context: TestContext,
  connection: MeasuredConnection,
  fromMs: number,
  toMs: number,
): { hours: Bounds; boundAh: Bounds } | undefined {
  const connected = connectedWithin(context, connection, fromMs, toMs);
  if (connected === undefined) return undefined;
  const own = connection.recordings.filter((recording) => isWithin(context, connection, recording, fromMs, toMs));
  const counted = countedOnce(own, fromMs, toMs);
  const coveredH = coveredHoursOfAll(counted);
  const unseen = (hours: number): number => (hours - coveredH < slackH ? 0 : hours - coveredH);
  const hours = { low: unseen(connected.low), high: unseen(connected.high) };
  return { hours, boundAh: { low: 0, high: hours.high * mostUnseenA(context, connection) } };
}

function mostUnseenA(context: TestContext, connection: MeasuredConnection): number {
  const endedA = context.battery.capacityAh * afterEndShare;
  const after = currentAfterLastRow(connection);
  if (connection.ending.by === "charger") return Math.max(endedA, after === undefined || after.inPause ? 0 : after.mostA);
  if (after !== undefined) return Math.max(endedA, after.mostA);
  const definition = chargerLimitedCurrent(context.rules);
  const seenA = context.connections
    .flatMap(({ recordings }) => recordings)
    .flatMap((recording) => {
      const outcome = definition.compute(recording);
      return "absent" in outcome ? [] : [outcome.value];
    });
  const ratedA = context.mode.claims.currentA?.value;
  return Math.max(endedA, ...seenA, ...(ratedA === undefined ? [] : [aboveRating * ratedA]));
}

function gassingHours(recording: MeasuredRecording, fromMs: number, toMs: number): number {
  if (!recording.trace.hasVoltage) return 0;
  const { startMs } = recording;
  return startMs === undefined
    ? hoursAboveGassing(recording)
    : hoursAboveGassing(recording, { fromS: (fromMs - startMs) / 1000, toS: (toMs - startMs) / 1000 });
}

function sumOf(bounds: readonly Bounds[]): Bounds {
  return bounds.reduce((sum, { low, high }) => ({ low: sum.low + low, high: sum.high + high }), { low: 0, high: 0 });
}

/** A field that is left out where it has no value, as exact optional types want it. */
function optional<K extends string, V>(key: K, value: V | undefined): { [P in K]?: V } {
  return value === undefined ? {} : ({ [key]: value } as { [P in K]?: V });
}
