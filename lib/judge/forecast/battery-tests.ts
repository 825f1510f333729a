/** What the tests of one battery say of it: what was known before each, and the log of its first charge. */
import { densityAt25C } from "../../electrochem/hydrometer.ts";
import type { MeasuredReading, TestContext } from "../../measure/test-context.ts";
import { isSealed } from "../../measure/test-context.ts";
import { type BatteryTest, densitiesByKind, type StatedDensities, startShareFromDensity } from "../../project/index.ts";

/** A battery is known best by its tests of about the same time: so many others at most, the nearest first. Our judgement. */
const mostOthers = 4;
/** A log that begins later than this after clamps on has missed a part of the charge that nobody can place, ms. */
const latestStartMs = 10 * 60_000;
/** Taken where the hydrometer's accuracy is not stated, kg/l, standard; our assumption. */
const unstatedDensity = 0.003;
/** An ordinary room, °C, where nobody read how warm it was. */
const roomC = 20;

/** A test to be forecast, and the other tests of its battery. */
export type OwnBattery = { readonly asked: BatteryTest; readonly others: readonly BatteryTest[] };

/** A test of the bench, by what it says of its battery. */
export type BenchTest = {
  readonly id: string;
  /** The battery's id. */
  readonly battery: string;
  /** When its first charge began, ms since 1970 UTC. */
  readonly firstOnMs: number | undefined;
  /** Undefined where the start is not known. */
  readonly told: BatteryTest | undefined;
};

export function benchTestOf(context: TestContext): BenchTest {
  return { id: context.id, battery: context.test.battery, firstOnMs: context.connections[0]?.onMs, told: batteryTestOf(context) };
}

/**
 * The other tests that a test's battery is known by, the nearest in time first.
 * @param bench  all tests of the shop; the test itself may be among them
 */
export function nearestTests(test: BenchTest, bench: readonly BenchTest[]): (BenchTest & { readonly told: BatteryTest })[] {
  return bench
    .filter((other) => other.id !== test.id && other.battery === test.battery)
    .sort((a, b) => apartMs(a, test) - apartMs(b, test) || (a.id < b.id ? -1 : 1))
    .flatMap((other) => (other.told === undefined || other.told.points.length === 0 ? [] : [{ ...other, told: other.told }]))
    .slice(0, mostOthers);
}

/**
 * Puts together what is known of a test's battery.
 * @param bench  all tests of the shop, or at least the nearest to this one; the test itself may be among them
 * @returns undefined where no density was read before the test, or no test of the battery has a log of its first charge
 */
export function ownBatteryOf(test: BenchTest, bench: readonly BenchTest[]): OwnBattery | undefined {
  const asked = test.told;
  if (asked === undefined) return undefined;
  const others = nearestTests(test, bench).map(({ told }) => told);
  return asked.points.length === 0 && others.length === 0 ? undefined : { asked, others };
}

/** Undefined where the start is not known; without points where its first charge was not logged from the start. */
function batteryTestOf(context: TestContext): BatteryTest | undefined {
  const { battery } = context;
  const before = context.readings.filter(({ connectionsBefore, density }) => connectionsBefore === 0 && density !== undefined).at(-1);
  if (before?.density === undefined || isSealed(battery)) return undefined;
  const density = densitiesOf(battery);
  const { meanAt25C, standardUncertainty } = before.density;
  const start = startShareFromDensity(meanAt25C, standardUncertainty ?? unstatedDensity, density);
  return {
    points: firstLog(context),
    known: {
      ratedAh: battery.capacityAh,
      cells: battery.cells,
      density: { full: density.full, empty: density.empty },
      startShare: start.share,
      startShareUncertainty: start.standardUncertainty,
      startSharePerEmptyDensity: start.perEmptyDensity,
      airC: airAt(before),
    },
  };
}

function firstLog({ connections }: TestContext): BatteryTest["points"] {
  const first = connections[0];
  const recording = first?.recordings[0];
  if (first === undefined || recording === undefined) return [];
  const lateMs = recording.startMs === undefined || first.onMs === undefined ? 0 : recording.startMs - first.onMs;
  return lateMs > latestStartMs ? [] : recording.logPoints;
}

/** The battery's own densities where its record states them, its kind's else. */
function densitiesOf({ construction, fullDensity, emptyDensity }: TestContext["battery"]): StatedDensities {
  const ofKind = densitiesByKind[construction];
  return { full: stated(fullDensity) ?? ofKind.full, empty: stated(emptyDensity) ?? ofKind.empty };
}

function stated(density: TestContext["battery"]["fullDensity"]): number | undefined {
  if (density === undefined) return undefined;
  const { densityAt25C: value } = densityAt25C(density.value, density.convention, undefined, true);
  return Number.isNaN(value) ? undefined : value;
}

function airAt({ values }: MeasuredReading): number {
  return values.air_C?.value ?? values.battery_C?.value ?? values.acid_C?.value ?? roomC;
}

const apartMs = (a: BenchTest, b: BenchTest): number => Math.abs((a.firstOnMs ?? 0) - (b.firstOnMs ?? 0));
