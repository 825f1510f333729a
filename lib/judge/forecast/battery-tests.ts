/** What the tests of one battery say of it: what was known before each, and the log of its first charge. */
import { evidenceOf, type MeasuredRecording } from "../../measure/recording.ts";
import { statedDensityAt25C } from "../../measure/stated-density.ts";
import { type DensityReading, isSealed, type MeasuredReading, type TestContext } from "../../measure/test-context.ts";
import type { Evidence } from "../../nouns/evidence.ts";
import { type BatteryTest, densitiesByKind, type StatedDensities, startShareFromDensity } from "../../project/index.ts";

/** A battery is known best by its tests of about the same time: so many others at most, the nearest first. Our judgement. */
const mostOthers = 4;
/** A log that begins later than this after clamps on has missed a part of the charge that nobody can place, ms. */
const latestStartMs = 10 * 60_000;
/** Taken where the hydrometer's accuracy is not stated, kg/l, standard; our assumption. */
const unstatedDensity = 0.003;
/** An ordinary room, °C, where nobody read how warm it was. */
const roomC = 20;

/** A test to be forecast, the other tests of its battery, and what is known of it from both. */
export type OwnBattery = { readonly asked: BatteryTest; readonly others: readonly BatteryTest[]; readonly evidence: readonly Evidence[] };

/** A test of the bench, by what it says of its battery. */
export type BenchTest = {
  readonly id: string;
  /** The battery's id. */
  readonly battery: string;
  /** When its first charge began, ms since 1970 UTC. */
  readonly firstOnMs: number | undefined;
  /** Undefined where the start is not known. */
  readonly told: BatteryTest | undefined;
  /** The density before the first charge, and that charge's log, as far as they tell of the battery. */
  readonly evidence: readonly Evidence[];
};

export function benchTestOf(context: TestContext): BenchTest {
  const { id, test, connections } = context;
  const log = firstLog(context);
  const before = densityBefore(context);
  return {
    id,
    battery: test.battery,
    firstOnMs: connections[0]?.onMs,
    told: batteryTestOf(context, before, log),
    evidence: [...(before?.density.evidence ?? []), ...(log === undefined ? [] : [evidenceOf(log)])],
  };
}

/**
 * The other tests that a test's battery is known by, the nearest in time first; none where the test's own start is not known, since no
 * forecast can begin there.
 * @param bench  all tests of the shop; the test itself may be among them
 */
export function nearestTests(test: BenchTest, bench: readonly BenchTest[]): (BenchTest & { readonly told: BatteryTest })[] {
  if (test.told === undefined) return [];
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
  const others = nearestTests(test, bench);
  if (asked.points.length === 0 && others.length === 0) return undefined;
  return { asked, others: others.map(({ told }) => told), evidence: [test, ...others].flatMap(({ evidence }) => evidence) };
}

/** Undefined where the start is not known; without points where its first charge was not logged from the start. */
function batteryTestOf(
  { battery }: TestContext,
  before: DensityVisit | undefined,
  log: MeasuredRecording | undefined,
): BatteryTest | undefined {
  if (before === undefined || isSealed(battery)) return undefined;
  const density = densitiesOf(battery);
  const { meanAt25C, standardUncertainty } = before.density;
  const start = startShareFromDensity(meanAt25C, standardUncertainty ?? unstatedDensity, density);
  return {
    points: log?.logPoints ?? [],
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

type DensityVisit = MeasuredReading & { readonly density: DensityReading };

/** The last visit before the first charge at which a density was read. */
function densityBefore({ readings }: TestContext): DensityVisit | undefined {
  return readings
    .flatMap((reading) =>
      reading.connectionsBefore === 0 && reading.density !== undefined ? [{ ...reading, density: reading.density }] : [],
    )
    .at(-1);
}

/** The recording of the first charge, where it begins with it. */
function firstLog({ connections }: TestContext): MeasuredRecording | undefined {
  const first = connections[0];
  const recording = first?.recordings[0];
  if (first === undefined || recording === undefined) return undefined;
  const lateMs = recording.startMs === undefined || first.onMs === undefined ? 0 : recording.startMs - first.onMs;
  return lateMs > latestStartMs ? undefined : recording;
}

/** The battery's own densities where its record states them, its kind's else. */
function densitiesOf({ construction, fullDensity, emptyDensity }: TestContext["battery"]): StatedDensities {
  const ofKind = densitiesByKind[construction];
  return { full: statedDensityAt25C(fullDensity) ?? ofKind.full, empty: statedDensityAt25C(emptyDensity) ?? ofKind.empty };
}

function airAt({ values }: MeasuredReading): number {
  return values.air_C?.value ?? values.battery_C?.value ?? values.acid_C?.value ?? roomC;
}

const apartMs = (a: BenchTest, b: BenchTest): number => Math.abs((a.firstOnMs ?? 0) - (b.firstOnMs ?? 0));
