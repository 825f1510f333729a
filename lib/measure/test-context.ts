/** A test as measured: its connections, recordings and readings, ready for figures and findings. */
import { densityAt25C } from "../electrochem/hydrometer.ts";
import type { Battery } from "../nouns/battery.ts";
import type { Charger, Mode } from "../nouns/charger.ts";
import type { Evidence } from "../nouns/evidence.ts";
import type { Instrument } from "../nouns/instrument.ts";
import type { Reading, ReadingColumn } from "../nouns/reading.ts";
import type { Rules } from "../nouns/rules.ts";
import type { Site } from "../nouns/site.ts";
import type { Connection, Test } from "../nouns/test.ts";
import { combine, standardUncertaintyOf } from "../units/uncertainty.ts";
import { temperatureByVisits } from "./battery-temperature.ts";
import { spellCharacteristic } from "./characteristic.ts";
import { type EndingFacts, findEnding } from "./ending.ts";
import type { Ending, MeasuredRecording } from "./recording.ts";
import type { BatteryTemperature } from "./span-temperature.ts";

export type InstrumentRole = keyof Test["instruments"];

/** A density read at a visit, brought to 25 °C. Undefined uncertainty: the hydrometer's accuracy is not stated. */
export type DensityReading = {
  readonly meanAt25C: number;
  readonly standardUncertainty: number | undefined;
  readonly cells: readonly {
    readonly cell: number;
    readonly at25C: number;
    readonly standardUncertainty: number | undefined;
    readonly evidence: Evidence;
  }[];
  readonly doubts: readonly string[];
  readonly evidence: readonly Evidence[];
};

export type MeasuredReading = Reading & {
  readonly density: DensityReading | undefined;
  /** How many connections had begun by then. */
  readonly connectionsBefore: number;
  /** Hours connected by then, known ends only where they are known. */
  readonly hoursConnectedBefore: number | undefined;
  /** Index of the connection that was on at that time, or had last been. */
  readonly connection: number | undefined;
};

export type MeasuredConnection = {
  readonly id: string;
  readonly number: number;
  readonly record: Connection;
  readonly onMs: number | undefined;
  readonly offMs: number | undefined;
  /** The last instant at which the charger is known to have been connected, ms: clamps off, a later reading, or the last row. */
  readonly lastKnownMs: number | undefined;
  readonly recordings: readonly MeasuredRecording[];
  readonly endings: readonly Ending[];
  /** How the connection as a whole ended, as far as can be told. */
  readonly ending: Ending;
};

export type TestContext = {
  readonly id: string;
  readonly test: Test;
  readonly charger: Charger;
  readonly chargerId: string;
  readonly mode: Mode;
  readonly battery: Battery;
  readonly instruments: Readonly<Partial<Record<InstrumentRole, Instrument>>>;
  readonly site: Site;
  readonly rules: Rules;
  readonly connections: readonly MeasuredConnection[];
  readonly readings: readonly MeasuredReading[];
  readonly readingsFile: { readonly file: string; readonly sha256: string } | undefined;
  /** Evidence for what the test record itself says. */
  readonly recordEvidence: Evidence;
};

export type TestInput = Omit<TestContext, "connections" | "readings"> & {
  readonly connections: readonly { readonly id: string; readonly record: Connection; readonly recordings: readonly MeasuredRecording[] }[];
  readonly readings: readonly Reading[];
};

/** Whether density can be read on this battery at all. */
export function isSealed(battery: Battery): boolean {
  return battery.construction === "AGM" || battery.construction === "gel";
}

/** Puts a test together: which reading followed which connection, how each recording and connection ended. */
export function makeTestContext(input: TestInput): TestContext {
  const connections = input.connections.map((connection, index): MeasuredConnection => {
    const onMs = connection.record.on === undefined ? connection.recordings[0]?.startMs : Date.parse(connection.record.on);
    const offMs = connection.record.off === undefined ? undefined : Date.parse(connection.record.off);
    const nextOn = input.connections[index + 1]?.record.on;
    const untilMs = offMs ?? (nextOn === undefined ? Number.POSITIVE_INFINITY : Date.parse(nextOn));
    const during = input.readings.filter((reading) => onMs !== undefined && reading.atMs >= onMs && reading.atMs <= untilMs + 60_000);
    const endings = connection.recordings.map((recording, place) =>
      findEnding(recording, endingFacts(recording, connection, place, offMs, during)),
    );
    const lastSeen = during.filter((reading) => reading.charger === "connected" || (reading.values.clamp_A?.value ?? 0) > 0).at(-1)?.atMs;
    const lastRow = Math.max(
      ...connection.recordings.map((recording) => (recording.startMs ?? Number.NEGATIVE_INFINITY) + recording.trace.spanS * 1000),
    );
    const lastKnown = offMs ?? Math.max(lastRow, lastSeen ?? Number.NEGATIVE_INFINITY);
    return {
      id: connection.id,
      number: index + 1,
      record: connection.record,
      onMs,
      offMs,
      lastKnownMs: Number.isFinite(lastKnown) ? lastKnown : undefined,
      recordings: connection.recordings.map((recording, place) => ({
        ...recording,
        visitTemperature: temperatureAround(recording, input, onMs, offMs),
        characteristic: spellCharacteristic(recording.stages, endings[place]?.by === "charger"),
      })),
      endings,
      ending: endings.at(-1) ?? endingWithoutRecording(connection.record),
    };
  });
  const readings = input.readings.map((reading): MeasuredReading => {
    // A visit noted at the very minute of clamps on was read before them, unless it says that it found the charger connected.
    const hasBegun = ({ onMs }: MeasuredConnection): boolean =>
      onMs !== undefined && (onMs < reading.atMs || (onMs === reading.atMs && reading.charger === "connected"));
    const begun = connections.filter(hasBegun);
    const hours = begun.map((connection) => {
      const until = Math.min(reading.atMs, connection.offMs ?? connection.lastKnownMs ?? Number.NaN);
      return connection.onMs === undefined ? Number.NaN : (until - connection.onMs) / 3_600_000;
    });
    const total = hours.reduce((sum, hour) => sum + hour, 0);
    return {
      ...reading,
      density: densityOf(reading, input),
      connectionsBefore: begun.length,
      hoursConnectedBefore: Number.isNaN(total) ? undefined : total,
      connection: begun.length === 0 ? undefined : begun.length - 1,
    };
  });
  return { ...input, connections, readings };
}

/** A recording that only counts is placed by its connection; where nobody noted that either, no visit can be set beside it. */
function temperatureAround(
  { startMs, trace }: MeasuredRecording,
  input: TestInput,
  onMs: number | undefined,
  offMs: number | undefined,
): BatteryTemperature | undefined {
  const fromMs = startMs ?? onMs;
  if (fromMs === undefined) return undefined;
  const untilMs = startMs === undefined && offMs !== undefined ? offMs : fromMs + trace.spanS * 1000;
  return temperatureByVisits(input.readings, fromMs, untilMs, input.instruments.thermometer, (reading, column) =>
    evidenceOfCell(input, reading, column),
  );
}

function endingFacts(
  recording: MeasuredRecording,
  connection: TestInput["connections"][number],
  place: number,
  offMs: number | undefined,
  during: readonly Reading[],
): EndingFacts {
  const endMs = recording.startMs === undefined ? undefined : recording.startMs + recording.trace.spanS * 1000;
  const later = endMs === undefined ? [] : during.filter((reading) => reading.atMs > endMs);
  const isLast = place === connection.recordings.length - 1;
  const withCurrent = later.map((reading) => reading.values.clamp_A?.value).find((currentA) => currentA !== undefined && currentA > 0);
  return {
    offMs,
    seenRecording: recordedEnding(connection.record, recording.file),
    seen: isLast ? connection.record.endedBy : undefined,
    laterCurrentA: withCurrent,
    laterConnected: later.some((reading) => reading.charger === "connected"),
    followed: !isLast,
  };
}

function recordedEnding(record: Connection, file: string): EndingFacts["seenRecording"] {
  const entry = record.recordings.find((listed) => typeof listed !== "string" && file.endsWith(`/${listed.file}`));
  return typeof entry === "string" ? undefined : entry?.endedBy;
}

function endingWithoutRecording(record: Connection): Ending {
  const why =
    record.endedBy === undefined ? ["nothing was recorded and nobody noted an end"] : [`the test record says so; nothing was recorded`];
  return {
    by: record.endedBy ?? "unknown",
    words: record.endedBy === undefined ? "not known: not recorded" : `the ${record.endedBy}, by the test record`,
    why,
    wouldSettle: "a recording of this connection",
  };
}

/** The cell that a value of a reading stands in. */
export function evidenceOfCell(context: Pick<TestContext, "readingsFile">, reading: Reading, column: ReadingColumn): Evidence[] {
  const cell = reading.values[column];
  const file = context.readingsFile;
  if (cell === undefined || file === undefined) return [];
  return [{ file: file.file, sha256: file.sha256, lines: [cell.line, cell.line], column: cell.column }];
}

/** The density columns that a reading fills, in order of cells. */
export function densityColumns(reading: Reading): ReadingColumn[] {
  return (Object.keys(reading.values) as ReadingColumn[]).filter((name) => name.startsWith("density_"));
}

function densityOf(reading: Reading, input: TestInput): DensityReading | undefined {
  const hydrometer = input.instruments.hydrometer;
  const columns = densityColumns(reading);
  if (columns.length === 0 || hydrometer?.density === undefined) return undefined;
  const acid = reading.values.acid_C ?? reading.values.battery_C;
  const accuracy = hydrometer.measures?.density;
  const doubts: string[] = [];
  if (acid === undefined && !hydrometer.density.correctsTemperature)
    doubts.push("the acid's temperature was not read, so it is taken as 25 °C within 10 K");
  else if (reading.values.acid_C === undefined && acid !== undefined) doubts.push("the battery's temperature stands in for the acid's");
  if (hydrometer.density.convention === "not stated") doubts.push("what the hydrometer's scale means is not stated, which costs ±0.004");
  if (accuracy === undefined) doubts.push("the hydrometer's accuracy is not stated, so no interval is given");
  const cells = columns.flatMap((column) => {
    const cell = reading.values[column];
    if (cell === undefined || hydrometer.density === undefined) return [];
    const converted = densityAt25C(cell.value, hydrometer.density.convention, acid?.value, hydrometer.density.correctsTemperature);
    const [evidence] = evidenceOfCell(input, reading, column);
    if (Number.isNaN(converted.densityAt25C) || evidence === undefined) return [];
    const standardUncertainty =
      accuracy === undefined ? undefined : combine(standardUncertaintyOf(accuracy, cell.value), converted.standardUncertainty);
    return [{ cell: Number(column.slice("density_".length)), at25C: converted.densityAt25C, standardUncertainty, evidence }];
  });
  if (cells.length < columns.length)
    doubts.push("some cells were read outside what the acid's tables cover (0 to 50 °C, up to 60 % acid) and are left out");
  if (cells.length === 0) return undefined;
  const meanAt25C = cells.reduce((sum, cell) => sum + cell.at25C, 0) / cells.length;
  // One hydrometer and one conversion serve all cells, so their error does not average out; only the rounding of the scale does.
  const standardUncertainty = cells[0]?.standardUncertainty;
  return { meanAt25C, standardUncertainty, cells, doubts, evidence: cells.map((cell) => cell.evidence) };
}
