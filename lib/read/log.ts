/** Reads one recorder's log into typed columns, streamed; csv-parse is the reference reader for every dialect. */
import { CsvError, parse } from "csv-parse";
import type { Dialect, quantityUnits } from "../nouns/instrument.ts";
import type { Place, Problem } from "../nouns/problem.ts";
import type { RowCounts, Samples } from "../nouns/samples.ts";
import { parseClockS, parseInstantMs, parseWallClockMs } from "./clock.ts";
import { GrowingFloats, GrowingLines } from "./columns.ts";
import { decodeFile, detectEncoding, linesOfFile, readHead } from "./decode.ts";
import { emptyLog, type ReadAs, type ResolvedDialect, resolveDialect } from "./dialect.ts";
import { columnOfField } from "./field-place.ts";
import { parseNumber } from "./numbers.ts";
import { readWallClock } from "./wall-clock.ts";

export type LogRequest = {
  readonly absolutePath: string;
  /** From the workspace's root, for messages. */
  readonly file: string;
  readonly dialect: Dialect | undefined;
  /** Where the recorder's record describes the dialect. */
  readonly dialectPlace: Place | undefined;
  /** IANA zone in which wall-clock times are read. */
  readonly zone: string;
  /** Instant of the first row, for logs that only count. */
  readonly startedAtMs: number | undefined;
  /** Lines not to be used, counted from 1, both ends included. */
  readonly badRows: readonly { readonly from: number; readonly to: number }[];
};

export type Log = {
  readonly samples: Samples;
  readonly counts: RowCounts;
  readonly readAs: readonly ReadAs[];
  /** One row read back in words, so that a reader can see that the numbers mean what they should. */
  readonly sampleRead: string | undefined;
};

/** How much of a file is looked at to find out how it is written. */
const headBytes = 128 * 1024;

/** Problems of one kind that are told one by one; the rest are counted. */
const problemsTold = 20;

/**
 * Reads a log.
 *
 * @returns the samples, or `undefined` with the problems that stopped it. A row whose fields cannot be read is a problem, never a
 * silent skip; rows may lack some values (NaN there), blank lines are counted.
 */
export async function readLog(request: LogRequest): Promise<{ value: Log | undefined; problems: Problem[] }> {
  const head = await readHead(request.absolutePath, headBytes);
  const encoding = request.dialect?.encoding ?? detectEncoding(head);
  const headLines = wholeLines(head, encoding);
  if (headLines === undefined) return { value: undefined, problems: [wrongEncoding(request, encoding)] };
  const { value: dialect, problems } = resolveDialect(headLines, encoding, request.dialect, request.file, request.dialectPlace);
  if (dialect === undefined) return { value: undefined, problems };

  const rows = new RowReader(request, dialect);
  try {
    await parseRows(request.absolutePath, dialect, (fields, line) => rows.take(fields, line));
  } catch (error) {
    if (error instanceof TypeError) return { value: undefined, problems: [wrongEncoding(request, encoding)] };
    if (error instanceof CsvError) return { value: undefined, problems: [await openQuote(request, encoding)] };
    throw error;
  }
  const found = [...problems, ...(await rows.problems())];
  if (found.some((problem) => problem.level === "error")) return { value: undefined, problems: found };
  return { value: rows.finish(), problems: found };
}

/** The lines that stand whole in the first bytes of a file; undefined where the bytes are not of the encoding. */
function wholeLines(head: Uint8Array, encoding: string): string[] | undefined {
  try {
    const text = new TextDecoder(encoding, { fatal: true }).decode(head, { stream: true });
    const lines = text.split(/\r\n|\n|\r/);
    if (head.length === headBytes) lines.pop();
    else if (lines.at(-1) === "") lines.pop();
    return lines;
  } catch {
    return undefined;
  }
}

function wrongEncoding(request: LogRequest, encoding: string): Problem {
  const common = { id: "log-encoding", level: "error", place: { file: request.file } } as const;
  if (!isKnownEncoding(encoding))
    return {
      ...common,
      found: `"${encoding}"`,
      expected: "a name of the WHATWG Encoding Standard, such as utf-8, utf-16le, windows-1250 or iso-8859-2",
      mend: "correct dialect: encoding: in the recorder's record, or leave it out",
    };
  return {
    ...common,
    found: `bytes that are not ${encoding}`,
    expected: `text in ${encoding}`,
    mend: "name the right encoding in the recorder's record: dialect: encoding: utf-16le, windows-1250 …",
  };
}

function isKnownEncoding(label: string): boolean {
  try {
    new TextDecoder(label);
    return true;
  } catch {
    return false;
  }
}

/** The first line with a quotation mark that nothing on it closes. */
async function openQuote(request: LogRequest, encoding: string): Promise<Problem> {
  const at = { line: 1, column: 1 };
  let line = 0;
  for await (const text of linesOfFile(request.absolutePath, encoding)) {
    line++;
    if (text.split('"').length % 2 === 1) continue;
    at.line = line;
    at.column = text.lastIndexOf('"') + 1;
    break;
  }
  return {
    id: "log-quotes",
    level: "error",
    place: { file: request.file, ...at },
    found: "a quotation mark that is not closed",
    expected: "quotation marks in pairs around a field",
    mend: "copy the file from the recorder once more; logs themselves are never edited, and rows inside a quotation cannot be told from words",
  };
}

/**
 * Feeds a log's rows of data to `take`, one array of fields a row, with the line of the file on which the row ends.
 *
 * The lines above the data are taken off before csv-parse sees them, since a preamble may hold a lone quotation mark.
 */
async function parseRows(absolutePath: string, dialect: ResolvedDialect, take: (fields: string[], line: number) => void): Promise<void> {
  const parser = parse({
    delimiter: dialect.delimiter,
    // Told, not found out from the first line: some recorders change their line endings in the middle of a file.
    record_delimiter: ["\r\n", "\n", "\r"],
    relax_column_count: true,
    relax_quotes: true,
    skip_empty_lines: false,
    on_record: (fields: string[], context: { lines: number }) => {
      take(fields, context.lines + dialect.linesBeforeData);
      return null;
    },
  });
  const done = new Promise<void>((resolve, reject) => {
    parser.on("error", reject);
    parser.on("end", resolve);
  });
  // A fault is thrown below, where it is awaited; until then it must not count as unhandled.
  done.catch(() => undefined);
  parser.resume();
  let linesToSkip = dialect.linesBeforeData;
  let pending = "";
  for await (const text of decodeFile(absolutePath, dialect.encoding)) {
    let body = text;
    if (linesToSkip > 0) {
      pending += text;
      let from = 0;
      while (linesToSkip > 0) {
        const end = lineEnd(pending, from);
        if (end < 0) break;
        from = end;
        linesToSkip--;
      }
      if (linesToSkip > 0) {
        pending = pending.slice(from);
        continue;
      }
      body = pending.slice(from);
      pending = "";
    }
    if (body.length > 0 && !parser.write(body)) await Promise.race([new Promise<void>((resolve) => parser.once("drain", resolve)), done]);
  }
  parser.end();
  await done;
}

/** Where the line that starts at `from` ends, its ending included; -1 where the text stops before that can be told. */
function lineEnd(text: string, from: number): number {
  for (let i = from; i < text.length; i++) {
    const code = text.charCodeAt(i);
    if (code === 10) return i + 1;
    if (code === 13) {
      if (i + 1 === text.length) return -1;
      return text.charCodeAt(i + 1) === 10 ? i + 2 : i + 1;
    }
  }
  return -1;
}

/** What a field should have been, and the problem that it is when it is not. */
const problemIds = {
  "a time": "log-time",
  "a voltage": "log-number",
  "a current": "log-number",
  "a temperature": "log-number",
  "the end of the row": "log-fields",
} as const;

type BadField = { readonly line: number; readonly field: number; readonly text: string; readonly what: keyof typeof problemIds };

/** Takes rows one at a time and keeps their numbers; what it cannot read it keeps as a problem. */
class RowReader {
  readonly #request: LogRequest;
  readonly #dialect: ResolvedDialect;
  readonly #timesS = new GrowingFloats();
  readonly #voltagesV = new GrowingFloats();
  readonly #currentsA = new GrowingFloats();
  readonly #temperaturesC = new GrowingFloats();
  readonly #lines = new GrowingLines();
  readonly #bad: BadField[] = [];
  #badCount = 0;
  #rows = 0;
  #blank = 0;
  #excluded = 0;
  #empty = 0;
  #sampleRow: { fields: readonly string[]; line: number; voltageV: number; currentA: number } | undefined;
  #chargeSign = 0;

  constructor(request: LogRequest, dialect: ResolvedDialect) {
    this.#request = request;
    this.#dialect = dialect;
  }

  take(fields: string[], line: number): void {
    this.#rows++;
    if (fields.every((field) => field.trim() === "")) {
      this.#blank++;
      return;
    }
    if (this.#request.badRows.some((range) => line >= range.from && line <= range.to)) {
      this.#excluded++;
      return;
    }
    const dialect = this.#dialect;
    const surplus = fields.findIndex((field, index) => index >= dialect.fieldCount && field.trim() !== "");
    if (surplus >= 0) {
      this.#refuse({ line, field: surplus, text: fields[surplus] ?? "", what: "the end of the row" });
      return;
    }
    const timeS = this.#timeS(fields);
    if (Number.isNaN(timeS)) {
      this.#refuse({ line, field: dialect.timeField, text: fields[dialect.timeField] ?? "", what: "a time" });
      return;
    }
    const voltageV = this.#number(fields, dialect.voltage, line, "a voltage");
    const currentA = this.#number(fields, dialect.current, line, "a current");
    const temperatureC = this.#temperature(fields, line);
    if (Number.isNaN(voltageV) && Number.isNaN(currentA)) this.#empty++;
    this.#timesS.push(timeS);
    this.#voltagesV.push(voltageV);
    this.#currentsA.push(currentA);
    this.#temperaturesC.push(temperatureC);
    this.#lines.push(line);
    if (!Number.isNaN(currentA)) this.#chargeSign += currentA;
    if (this.#sampleRow === undefined && this.#isWhole(voltageV, currentA)) this.#sampleRow = { fields, line, voltageV, currentA };
  }

  /** Whether a row has a value for each column that this recorder logs. */
  #isWhole(voltageV: number, currentA: number): boolean {
    const { voltage, current } = this.#dialect;
    return (voltage === undefined || !Number.isNaN(voltageV)) && (current === undefined || !Number.isNaN(currentA));
  }

  /** Seconds on the file's own scale: from its start, since 1970 UTC, or wall-clock time as if it were UTC. */
  #timeS(fields: readonly string[]): number {
    const { time, timeField, dateField, decimalMark } = this.#dialect;
    const clockText = (fields[timeField] ?? "").trim();
    const text = dateField === undefined ? clockText : `${(fields[dateField] ?? "").trim()} ${clockText}`;
    switch (time.kind) {
      case "elapsed":
      case "unix":
        return parseNumber(text, decimalMark) * time.unitS;
      case "clock":
        return parseClockS(text);
      case "iso":
        return parseInstantMs(text) / 1000;
      case "local":
        return parseWallClockMs(text, time.order) / 1000;
    }
  }

  #number(fields: readonly string[], column: ResolvedDialect["voltage"], line: number, what: BadField["what"]): number {
    if (column === undefined) return Number.NaN;
    const text = (fields[column.field] ?? "").trim();
    if (text === "" || this.#dialect.missing.has(text)) return Number.NaN;
    const value = parseNumber(text, this.#dialect.decimalMark);
    if (Number.isNaN(value)) this.#refuse({ line, field: column.field, text, what });
    return value / column.divisor;
  }

  #temperature(fields: readonly string[], line: number): number {
    const { temperature } = this.#dialect;
    if (temperature === undefined) return Number.NaN;
    return toCelsius(this.#number(fields, { field: temperature.field, divisor: 1 }, line, "a temperature"), temperature.unit);
  }

  #refuse(bad: BadField): void {
    this.#badCount++;
    if (this.#bad.length < problemsTold) this.#bad.push(bad);
  }

  /** The sample row in words, its current with the sign that this project gives it: into the battery is positive. */
  #readBack(sign: 1 | -1): string | undefined {
    if (this.#sampleRow === undefined) return undefined;
    const { fields, line, voltageV, currentA } = this.#sampleRow;
    const { voltage, current } = this.#dialect;
    const parts = [
      voltage === undefined ? undefined : `"${(fields[voltage.field] ?? "").trim()}" as ${voltageV} V`,
      current === undefined ? undefined : `"${(fields[current.field] ?? "").trim()}" as ${sign * currentA} A`,
    ];
    return `line ${line}: ${parts.filter((part) => part !== undefined).join(", ")}`;
  }

  /** The problems found, each at its line and character. Reads the file's lines once more where there are any. */
  async problems(): Promise<Problem[]> {
    const { file } = this.#request;
    if (this.#timesS.length === 0 && this.#badCount === 0) return [emptyLog(file, "no rows of data")];
    if (this.#bad.length === 0) return [];
    const columns = await columnsOf(this.#request.absolutePath, this.#dialect, this.#bad);
    const told: Problem[] = this.#bad.map((bad, index) => ({
      id: problemIds[bad.what],
      level: "error",
      place: { file, line: bad.line, column: columns[index] ?? 1 },
      found: bad.text === "" ? "nothing" : `"${bad.text.slice(0, 40)}"`,
      expected: this.#expectationOf(bad),
      mend: `if the recorder wrote this, list line ${bad.line} under badRows of this recording in test.yaml; logs themselves are never edited`,
    }));
    if (this.#badCount > told.length)
      told.push({
        id: "log-more",
        level: "error",
        place: { file },
        found: `${this.#badCount - told.length} more fields that cannot be read`,
        expected: "rows written in one way",
        mend: "mend the first ones; where most rows are like this, the recorder's dialect is described wrongly",
      });
    return told;
  }

  #expectationOf({ what }: BadField): string {
    if (what === "a time") return what;
    if (what === "the end of the row") return `${what} after ${this.#dialect.fieldCount} fields`;
    return `${what} with "${this.#dialect.decimalMark}" as decimal mark`;
  }

  finish(): Log {
    const timesS = this.#timesS.finish();
    const readAs: ReadAs[] = [...this.#dialect.readAs];
    if (this.#dialect.time.kind === "local") {
      const { instantsMs, summerTime } = readWallClock(
        timesS.map((timeS) => timeS * 1000),
        this.#request.zone,
      );
      timesS.set(instantsMs.map((ms) => ms / 1000));
      if (summerTime !== "either")
        readAs.push({
          what: "summer time",
          value: summerTime === "fixed" ? "the recorder's clock does not follow it" : "the recorder's clock follows it",
          from: "detected",
        });
    }
    const isElapsed = this.#dialect.time.kind === "elapsed" || this.#dialect.time.kind === "clock";
    const firstS = timesS[0] ?? 0;
    const elapsedS = timesS.map((timeS) => timeS - firstS);
    const currentsA = this.#currentsA.finish();
    const sign = this.#dialect.currentSign ?? (this.#chargeSign < 0 ? -1 : 1);
    if (sign < 0) for (let i = 0; i < currentsA.length; i++) currentsA[i] = -(currentsA[i] ?? Number.NaN);
    if (this.#dialect.current !== undefined && this.#dialect.currentSign === undefined)
      readAs.push({ what: "sign of charging current", value: sign > 0 ? "positive" : "negative", from: "detected" });
    const temperatures = this.#temperaturesC.finish();
    return {
      samples: {
        elapsedS,
        voltagesV: this.#voltagesV.finish(),
        currentsA,
        temperaturesC: this.#dialect.temperature === undefined ? new Float64Array(0) : temperatures,
        lines: this.#lines.finish(),
        hasVoltage: this.#dialect.voltage !== undefined,
        hasCurrent: this.#dialect.current !== undefined,
        startMs: isElapsed ? this.#request.startedAtMs : firstS * 1000,
      },
      counts: {
        lines: this.#rows + this.#dialect.linesBeforeData,
        samples: elapsedS.length,
        blank: this.#blank,
        excluded: this.#excluded,
        empty: this.#empty,
      },
      readAs,
      sampleRead: this.#readBack(sign),
    };
  }
}

function toCelsius(value: number, unit: (typeof quantityUnits.temperature)[number]): number {
  if (unit === "K") return value - 273.15;
  return unit === "°F" ? ((value - 32) * 5) / 9 : value;
}

/** The character column, counted from 1, at which each field stands in its line. */
async function columnsOf(absolutePath: string, dialect: ResolvedDialect, wanted: readonly BadField[]): Promise<number[]> {
  const columns = wanted.map(() => 1);
  const last = Math.max(...wanted.map((bad) => bad.line));
  let line = 0;
  for await (const text of linesOfFile(absolutePath, dialect.encoding)) {
    line++;
    wanted.forEach((bad, index) => {
      if (bad.line === line) columns[index] = columnOfField(text, dialect.delimiter, bad.field);
    });
    if (line >= last) break;
  }
  return columns;
}
