/** A small invented bench: recordings, visits and tests made in a line or two, for tests of measuring and judging. */
import { type MeasuredRecording, measureRecording } from "../../../lib/measure/recording.ts";
import { makeTestContext, type TestContext } from "../../../lib/measure/test-context.ts";
import { type Battery, battery } from "../../../lib/nouns/battery.ts";
import { type Charger, charger } from "../../../lib/nouns/charger.ts";
import { type Instrument, instrument } from "../../../lib/nouns/instrument.ts";
import type { Reading, ReadingColumn } from "../../../lib/nouns/reading.ts";
import { resolveRules } from "../../../lib/nouns/rules.ts";
import type { Samples } from "../../../lib/nouns/samples.ts";
import { site } from "../../../lib/nouns/site.ts";
import { type Test, test } from "../../../lib/nouns/test.ts";

/** When the bench's recordings start, where a test does not say otherwise. */
export const benchStart = "2026-03-02T08:00:00Z";
export const benchStartMs = Date.parse(benchStart);

export const sha256 = "ab".repeat(32);

/** Columns of a log; a column that is left out is one that the recorder does not write. */
export type FullColumns = { readonly s: number[]; readonly v: number[]; readonly a: number[] };
export type Columns = {
  readonly s: readonly number[];
  readonly v?: readonly number[] | undefined;
  readonly a?: readonly number[] | undefined;
  /** Temperatures, °C. */
  readonly t?: readonly number[] | undefined;
};

/** Samples of a log whose first line is a heading. */
export function samplesOf({ s, v, a, t }: Columns, startMs: number | undefined): Samples {
  const missing = s.map(() => Number.NaN);
  return {
    elapsedS: Float64Array.from(s),
    voltagesV: Float64Array.from(v ?? missing),
    currentsA: Float64Array.from(a ?? missing),
    temperaturesC: Float64Array.from(t ?? []),
    lines: Uint32Array.from(s, (_, row) => row + 2),
    hasVoltage: v !== undefined,
    hasCurrent: a !== undefined,
    startMs,
  };
}

/** ±0.1 V and ±0.1 A, so that a reading's standard uncertainty is 0.1/√3 and intervals can be worked by hand. */
export const plainRecorder: Instrument = instrument.parse({
  name: "Plain recorder (invented)",
  kind: "recorder",
  measures: { voltage: { plusMinus: 0.1 }, current: { plusMinus: 0.1 } },
});

export const unstatedRecorder: Instrument = instrument.parse({ name: "Unstated recorder (invented)", kind: "recorder", measures: {} });

export type RecordingOptions = {
  readonly id?: string;
  readonly recorder?: Instrument;
  readonly recorderId?: string;
  readonly capacityAh?: number;
  readonly startMs?: number | undefined;
};

/** A measured recording of a log. */
export function recordingOf(columns: Columns, options: RecordingOptions = {}): MeasuredRecording {
  const id = options.id ?? "log.csv";
  const samples = samplesOf(columns, "startMs" in options ? options.startMs : benchStartMs);
  return recordingOfSamples(samples, options, id);
}

/** A measured recording of samples that were read or made elsewhere. */
export function recordingOfSamples(samples: Samples, options: RecordingOptions = {}, id = options.id ?? "log.csv"): MeasuredRecording {
  const rows = samples.elapsedS.length;
  return measureRecording(
    {
      id,
      file: `data/tests/bench/logs/${id}`,
      sha256,
      bytes: 1,
      connection: "1",
      recorderId: options.recorderId ?? "plain",
      recorder: options.recorder ?? plainRecorder,
      capacityAh: options.capacityAh ?? 60,
      cells: 6,
    },
    { samples, counts: { lines: rows + 1, samples: rows, blank: 0, excluded: 0, empty: 0 }, readAs: [], sampleRead: undefined },
  );
}

/** A visit some hours after the bench's start. */
export function visit(
  number: number,
  atH: number,
  values: Partial<Record<ReadingColumn, number>>,
  more: Pick<Partial<Reading>, "mixed" | "charger" | "note"> = {},
): Reading {
  const atMs = benchStartMs + atH * 3_600_000;
  const spots = Object.entries(values).map(([column, value], place) => [
    column,
    { value, text: String(value), line: number + 1, column: 20 + place },
  ]);
  return { number, line: number + 1, atMs, atText: new Date(atMs).toISOString(), values: Object.fromEntries(spots), ...more };
}

/** An instant some hours after the bench's start, as records write it. */
export function at(hours: number): string {
  return new Date(benchStartMs + hours * 3_600_000).toISOString();
}

export const benchInstruments = {
  recorder: plainRecorder,
  hydrometer: instrument.parse({
    name: "Hydrometer (invented)",
    kind: "hydrometer",
    measures: { density: { plusMinus: 0.005, resolution: 0.005 } },
    density: { convention: "kg/l at 25 °C" },
  }),
  voltmeter: instrument.parse({ name: "Voltmeter (invented)", kind: "voltmeter", measures: { voltage: { plusMinus: 0.02 } } }),
  clampMeter: instrument.parse({ name: "Clamp meter (invented)", kind: "clamp-meter", measures: { current: { plusMinus: 0.05 } } }),
  energyMeter: instrument.parse({ name: "Energy meter (invented)", kind: "energy-meter", measures: { energy: { percentOfReading: 1 } } }),
  batteryTester: instrument.parse({
    name: "Tester (invented)",
    kind: "battery-tester",
    measures: { crankingCurrent: { percentOfReading: 5 } },
    cranking: { standard: "EN 50342-1", method: "load" },
  }),
} as const;

const plainBattery = { name: "Bench 60 (invented)", nominalVoltageV: 12, cells: 6, construction: "flooded-calcium", capacityAh: 60 };
const plainCharger = {
  name: "Bench charger (invented)",
  price: { amount: 50, currency: "EUR" },
  modes: [{ id: "normal", name: "NORMAL", claims: {} }],
};

export type BenchConnection = {
  /** Hours from the bench's start; null where nobody noted it. */
  readonly onH?: number | null;
  readonly offH?: number | null;
  readonly endedBy?: "charger" | "person" | "mains";
  readonly recordings?: readonly MeasuredRecording[];
};

export type BenchOptions = {
  readonly battery?: Partial<Record<keyof Battery, unknown>>;
  readonly charger?: Partial<Record<keyof Charger, unknown>>;
  readonly claims?: Record<string, unknown>;
  readonly test?: Partial<Record<keyof Test, unknown>>;
  readonly site?: Record<string, unknown>;
  readonly instruments?: TestContext["instruments"];
  readonly connections?: readonly BenchConnection[];
  readonly readings?: readonly Reading[];
};

/** A test as measured: one charger on a 60 Ah battery with a target of 1.280 kg/l, whatever of it a case does not set otherwise. */
export function contextOf(options: BenchOptions = {}): TestContext {
  const siteRecord = site.parse({ title: "Bench", ...options.site });
  const chargerRecord = charger.parse({
    ...plainCharger,
    modes: [{ id: "normal", name: "NORMAL", claims: options.claims ?? {} }],
    ...options.charger,
  });
  const mode = chargerRecord.modes[0];
  if (mode === undefined) throw new Error("the bench's charger has no mode");
  const connections = options.connections ?? [{ onH: 0, offH: 10 }];
  const testRecord = test.parse({
    charger: "bench",
    mode: "normal",
    battery: "bench-60",
    instruments: {},
    zone: "UTC",
    target: { densityAt25C: 1.28 },
    connections: connections.map(({ onH, offH, endedBy, recordings }) => ({
      ...(onH === null || onH === undefined ? {} : { on: at(onH) }),
      ...(offH === null || offH === undefined ? {} : { off: at(offH) }),
      ...(endedBy === undefined ? {} : { endedBy }),
      recordings: (recordings ?? []).map((recording) => `logs/${recording.id}`),
    })),
    ...options.test,
  });
  return makeTestContext({
    id: "bench",
    test: testRecord,
    charger: chargerRecord,
    chargerId: "bench",
    mode,
    battery: battery.parse({ ...plainBattery, ...options.battery }),
    instruments: options.instruments ?? benchInstruments,
    site: siteRecord,
    rules: resolveRules(siteRecord),
    readings: options.readings ?? [],
    readingsFile: { file: "data/tests/bench/readings.csv", sha256 },
    recordEvidence: { file: "data/tests/bench/test.yaml", sha256 },
    connections: testRecord.connections.map((record, index) => ({
      id: String(index + 1),
      record,
      recordings: connections[index]?.recordings ?? [],
    })),
  });
}

/** n evenly spaced numbers: places of a log's rows. */
export function rows(count: number, stepS: number, fromS = 0): number[] {
  return Array.from({ length: count }, (_, row) => fromS + row * stepS);
}

/** One part of an invented charge: for so many hours, voltage and current as functions of the hours since its start. */
export type Part = { readonly hours: number; readonly v: (h: number) => number; readonly a: (h: number) => number };

/** A log of parts, one after the other, with a small ripple so that no two rows are quite alike (seeded by the row's number). */
export function logOf(parts: readonly Part[], stepS = 60): FullColumns {
  const s: number[] = [];
  const v: number[] = [];
  const a: number[] = [];
  let row = 0;
  for (const part of parts) {
    const count = Math.round((part.hours * 3600) / stepS);
    for (let i = 0; i < count; i++, row++) {
      const h = (i * stepS) / 3600;
      // A hash of the row's number, between -1 and 1: the same on every machine.
      const ripple = 2 * (Math.abs(Math.sin(row * 12.9898) * 43758.5453) % 1) - 1;
      s.push(row * stepS);
      v.push(part.v(h) + 0.002 * ripple);
      a.push(part.a(h) + 0.004 * ripple);
    }
  }
  return { s, v, a };
}

/** The three stages of an IUoU charger on a 60 Ah battery: 5 A, 14.4 V, 13.6 V. */
export const bulk: Part = { hours: 5, v: (h) => 12.4 + 0.4 * h, a: () => 5 };
export const absorption: Part = { hours: 5, v: () => 14.4, a: (h) => 0.3 + 4.7 * Math.exp(-h / 1.2) };
export const float: Part = { hours: 4, v: () => 13.6, a: (h) => 0.12 + 0.05 * Math.exp(-h) };
export const rest: Part = { hours: 2, v: (h) => 12.8 + 0.5 * Math.exp(-h), a: () => 0 };

/** A log of n rows a minute apart at one voltage and current. */
export function steadyLog(count: number, voltageV: number, currentA: number, stepS = 60): FullColumns {
  const s = rows(count, stepS);
  return { s, v: s.map(() => voltageV), a: s.map(() => currentA) };
}

/** The value of an outcome; throws where it is absent, so that no test passes on NaN. */
export function valueIn(outcome: object): number {
  if (!("value" in outcome) || typeof outcome.value !== "number") throw new Error(`expected a value, found ${JSON.stringify(outcome)}`);
  return outcome.value;
}
