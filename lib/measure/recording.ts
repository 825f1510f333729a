/** A recording as measured: its trace, its stages and who ended it. Computed once and shared by every figure of it. */
import type { Evidence } from "../nouns/evidence.ts";
import type { Instrument } from "../nouns/instrument.ts";
import type { RowCounts } from "../nouns/samples.ts";
import { type Ender, isOffBattery, type Stage } from "../nouns/stage.ts";
import { findHoldingThresholds, type HoldingThresholds, type LogPoint, samplesBeforeFirstRestart, thinLog } from "../project/index.ts";
import type { ReadAs } from "../read/dialect.ts";
import type { Log } from "../read/log.ts";
import { standardUncertaintyOf } from "../units/uncertainty.ts";
import { type Characteristic, spellCharacteristic } from "./characteristic.ts";
import type { BatteryTemperature } from "./span-temperature.ts";
import { findStages } from "./stages/find-stages.ts";
import { measureStages } from "./stages/measure-stages.ts";
import { makeTrace, type Trace } from "./trace.ts";

/** What the records say of a log file, before it is looked into. */
export type RecordingFacts = {
  /** The file's name without its folder. */
  readonly id: string;
  readonly file: string;
  readonly sha256: string;
  readonly bytes: number;
  readonly connection: string;
  readonly recorderId: string | undefined;
  readonly recorder: Instrument | undefined;
  /** The battery's capacity, Ah. */
  readonly capacityAh: number;
  /** Its cells in series. */
  readonly cells: number;
};

export type Ending = { readonly by: Ender; readonly words: string; readonly why: readonly string[]; readonly wouldSettle: string | null };

export type MeasuredRecording = RecordingFacts & {
  readonly counts: RowCounts;
  readonly readAs: readonly ReadAs[];
  readonly sampleRead: string | undefined;
  readonly trace: Trace;
  /** Instant of the trace's first sample, ms since 1970 UTC; undefined where the log only counts and nobody noted its start. */
  readonly startMs: number | undefined;
  readonly stages: readonly Stage[];
  /** The voltages between which the charger holds by going on and off, where the recording shows that it does. */
  readonly holding: HoldingThresholds | undefined;
  /** From the first row to the first gap or restart, or to where the leads came off, thinned: what a battery is learnt from. */
  readonly logPoints: readonly LogPoint[];
  /** The battery's temperature by the visits around the recording; undefined where none read it. Set once the test is put together. */
  readonly visitTemperature: BatteryTemperature | undefined;
  /** As far as the recording alone shows it; the ending may add that the charger switched off. */
  readonly characteristic: Characteristic;
};

/** Measures a log: makes its trace and finds its stages. */
export function measureRecording(facts: RecordingFacts, log: Log): MeasuredRecording {
  const trace = makeTrace(log.samples, facts.recorder?.longestIntervalS);
  const accuracyA = facts.recorder?.measures?.current;
  const zeroA = accuracyA === undefined ? 0 : Math.sqrt(3) * standardUncertaintyOf(accuracyA, 0);
  const stages = measureStages(trace, findStages(trace, { zeroA, capacityAh: facts.capacityAh, cells: facts.cells }));
  return {
    ...facts,
    counts: log.counts,
    readAs: log.readAs,
    sampleRead: log.sampleRead,
    trace,
    startMs: log.samples.startMs === undefined ? undefined : log.samples.startMs + trace.firstRowS * 1000,
    stages,
    holding: stages.some((stage) => stage.kind === "on-off-holding") ? findHoldingThresholds(trace.voltagesV, trace.currentsA) : undefined,
    logPoints: logPointsOf(trace, stages),
    visitTemperature: undefined,
    characteristic: spellCharacteristic(stages, false),
  };
}

/** Stretches that a battery is learnt from: more of them tell no more, since a log's points resemble their neighbours. */
const mostLogPoints = 60;

function logPointsOf({ elapsedS, voltagesV, currentsA, stretches }: Trace, stages: readonly Stage[]): LogPoint[] {
  const offS = stages.find(isOffBattery)?.startS;
  const off = offS === undefined ? -1 : elapsedS.indexOf(offS);
  const seen = currentsA.subarray(0, Math.min(stretches[0]?.[1] ?? 0, off < 0 ? elapsedS.length : off));
  return thinLog(elapsedS.subarray(0, samplesBeforeFirstRestart(seen)), voltagesV, currentsA, mostLogPoints);
}

/** Evidence of a whole recording, or of some of its samples. */
export function evidenceOf(
  recording: Pick<MeasuredRecording, "file" | "sha256" | "trace">,
  from = 0,
  to = recording.trace.lines.length,
): Evidence {
  const { lines } = recording.trace;
  const first = lines[from];
  const last = lines[Math.max(from, to - 1)];
  const place =
    first === undefined || last === undefined ? {} : { lines: [Math.min(first, last), Math.max(first, last)] as [number, number] };
  return { file: recording.file, sha256: recording.sha256, ...place };
}
