/**
 * Reads one recorder's log into typed columns, streamed. Plain rows are scanned from bytes; csv-parse is the reference reader for every file
 * with a separator, and takes over where rows are not plain.
 *
 *   container ──► text ──► dialect ──► rows ──► parts ──► instants ──► samples
 *   gzip, zip,    decoded  told from   numbers  one of    zone, date,  into the battery
 *   sheets                 the head    and bad  the file  coarse       is positive
 *                                      fields             stamps
 *
 * Each step stands in a file of its own under container/, dialect/ and log/.
 */
import { CsvError } from "csv-parse";
import type { Dialect } from "../nouns/instrument.ts";
import type { Place, Problem } from "../nouns/problem.ts";
import type { RowCounts, Samples } from "../nouns/samples.ts";
import { ContainerFault } from "./container/limits.ts";
import { type OpenedLog, openLog } from "./container/open-log.ts";
import { decode, detectEncoding, headOf, linesOf } from "./decode.ts";
import { placeOfField } from "./dialect/fields.ts";
import { emptyLog, type ReadAs, type Resolution, type ResolvedDialect, resolveDialect } from "./dialect.ts";
import { spreadCoarseStamps } from "./log/coarse-stamps.ts";
import { countsFromStart, placeTimes } from "./log/instants.ts";
import { isAlternating, valuesAt } from "./log/pair-columns.ts";
import { findParts, type Part } from "./log/parts.ts";
import { type BadField, problemIds, RowReader, type Rows } from "./log/row-reader.ts";
import { longestRow, readRows } from "./log/rows.ts";

export type LogRequest = {
  readonly absolutePath: string;
  /** From the workspace's root, for messages. */
  readonly file: string;
  readonly dialect: Dialect | undefined;
  /** Where the recorder's record describes the dialect. */
  readonly dialectPlace: Place | undefined;
  /** IANA zone in which wall-clock times are read. */
  readonly zone: string;
  /** Instant of the first row, for logs that only count; about that instant, for times of day without a date. */
  readonly startedAtMs: number | undefined;
  /** Lines not to be used, counted from 1, both ends included. */
  readonly badRows: readonly { readonly from: number; readonly to: number }[];
  /** Which recording of the file, counted from 1, where it holds several. */
  readonly part?: number | undefined;
};

export type Log = {
  readonly samples: Samples;
  readonly counts: RowCounts;
  readonly readAs: readonly ReadAs[];
  /** One row read back in words, so that a reader can see that the numbers mean what they should. */
  readonly sampleRead: string | undefined;
};

/** A file opened and its head looked at. */
export type Detection = {
  readonly opened: OpenedLog;
  readonly encoding: string;
  readonly head: readonly string[];
  readonly resolution: Resolution;
};

/** No more rows than this are reckoned with before they come. */
const mostLikelyRows = 1 << 24;

/** How much of a file is looked at to find out how it is written. */
const headBytes = 128 * 1024;

/**
 * Reads a log.
 *
 * @returns the samples, or `undefined` with the problems that stopped it. A row whose fields cannot be read is a problem, never a
 * silent skip; rows may lack some values (NaN there), blank lines are counted.
 */
export async function readLog(request: LogRequest): Promise<{ value: Log | undefined; problems: Problem[] }> {
  const { value: detection, problems } = await detectLog(request);
  return detection === undefined ? { value: undefined, problems } : readDetectedLog(request, detection);
}

/** As `readLog`, for a file whose head has been looked at; the problems are those of the head and of the rows. */
export async function readDetectedLog(request: LogRequest, detection: Detection): Promise<{ value: Log | undefined; problems: Problem[] }> {
  const { opened } = detection;
  const { value: dialect, problems } = detection.resolution;
  if (dialect === undefined) return { value: undefined, problems };

  const reader = new RowReader(dialect, request.badRows, likelyRows(detection));
  let isCut: boolean;
  try {
    isCut = await readRows(opened.stream(), dialect, reader);
  } catch (error) {
    return { value: undefined, problems: [await problemOfFault(error, request, detection)] };
  }
  const rows = reader.finish(isCut);
  const found = [...problems, ...(await problemsOf(rows, request, detection, dialect))];
  if (found.some((problem) => problem.level === "error")) return { value: undefined, problems: found };
  const parts = findParts(rows, countsFromStart(dialect.time));
  const part = parts.length === 1 && request.part === undefined ? parts[0] : parts[(request.part ?? 0) - 1];
  if (part === undefined) return { value: undefined, problems: [...found, askForPart(parts, rows, request)] };
  return { value: logOf(rows, part, parts.length, request, dialect, opened), problems: found };
}

/** About how many rows a plain file has, by its size and the length of its first lines, a little more rather than less; 0 for a packed one. */
function likelyRows({ opened, head }: Detection): number {
  const bytesOfHead = head.reduce((sum, line) => sum + line.length + 1, 0);
  return opened.size === undefined ? 0 : Math.min(mostLikelyRows, Math.ceil((1.1 * opened.size * head.length) / bytesOfHead));
}

/** Opens a log, looks at its head, and finds out how it is written; for the problems that stop it, `value` is undefined or has no dialect. */
export async function detectLog(request: LogRequest): Promise<{ value: Detection | undefined; problems: Problem[] }> {
  try {
    return await detectOpened(request, await openLog(request.absolutePath, request.dialect?.sheet));
  } catch (error) {
    if (error instanceof ContainerFault) return { value: undefined, problems: [containerProblem(error, request)] };
    throw error;
  }
}

/** As `detectLog`, for a log that has been opened. @throws ContainerFault where what it is packed in is damaged */
export async function detectOpened(request: LogRequest, opened: OpenedLog): Promise<{ value: Detection | undefined; problems: Problem[] }> {
  const head = await headOf(opened.stream(), headBytes);
  const encoding = opened.sheet === undefined ? (request.dialect?.encoding ?? detectEncoding(head)) : "utf-8";
  const lines = wholeLines(head, encoding);
  if (lines === undefined) return { value: undefined, problems: [wrongEncoding(request, encoding)] };
  if (lines.length === 0 && head.length === headBytes) return { value: undefined, problems: [rowTooLong(request, 1)] };
  const declared = opened.sheet === undefined ? request.dialect : ofSheet(request.dialect);
  const resolution = resolveDialect(lines, encoding, declared, request.file, request.dialectPlace);
  return { value: { opened, encoding, head: lines, resolution }, problems: resolution.problems };
}

/** A sheet's text is made here, whatever the record says of separators. */
function ofSheet(dialect: Dialect | undefined): Dialect {
  const { encoding: _encoding, delimiter: _delimiter, columnStarts: _columnStarts, ...rest } = dialect ?? {};
  return { ...rest, delimiter: "\t" };
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

function containerProblem({ found, expected, mend }: ContainerFault, request: LogRequest): Problem {
  return { id: "log-container", level: "error", place: { file: request.file }, found, expected, mend };
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

/** A fault while rows were read, as a problem; one that is none of the file's is thrown on. */
async function problemOfFault(error: unknown, request: LogRequest, { opened, encoding }: Detection): Promise<Problem> {
  if (error instanceof ContainerFault) return containerProblem(error, request);
  if (error instanceof TypeError) return wrongEncoding(request, encoding);
  if (!(error instanceof CsvError)) throw error;
  let line = 0;
  for await (const text of linesOf(decode(opened.stream(), encoding))) {
    line++;
    if (text.length > longestRow) return rowTooLong(request, line);
    if (text.split('"').length % 2 === 0) return openQuote(request, line, text.lastIndexOf('"') + 1);
  }
  return openQuote(request, 1, 1);
}

function rowTooLong(request: LogRequest, line: number): Problem {
  return {
    id: "log-row",
    level: "error",
    place: { file: request.file, line, column: 1 },
    found: "a line without an end",
    expected: "rows of a log, each on a line of its own",
    mend: "look at the file: it is no log as text, or its line endings were lost when it was copied",
  };
}

/** A quotation mark that nothing on its line closes. */
function openQuote(request: LogRequest, line: number, column: number): Problem {
  return {
    id: "log-quotes",
    level: "error",
    place: { file: request.file, line, column },
    found: "a quotation mark that is not closed",
    expected: "quotation marks in pairs around a field",
    mend: "copy the file from the recorder once more; logs themselves are never edited, and rows inside a quotation cannot be told from words",
  };
}

/** The problems of a log's rows, each at its line and character. Reads the file's lines once more where there are any. */
async function problemsOf(rows: Rows, request: LogRequest, detection: Detection, dialect: ResolvedDialect): Promise<Problem[]> {
  const { file } = request;
  if (rows.timesS.length === 0 && rows.badCount === 0) return [emptyLog(file, "no rows of data")];
  if (rows.bad.length === 0) return [];
  const columns = await columnsOf(rows.bad, detection, dialect);
  const told: Problem[] = rows.bad.map((bad, index) => ({
    id: problemIds[bad.what],
    level: "error",
    place: { file, line: bad.line, column: columns[index] ?? 1 },
    found: bad.text.trim() === "" ? "nothing" : `"${bad.text.slice(0, 40)}"`,
    expected: expectationOf(bad, dialect),
    mend: `if the recorder wrote this, list line ${bad.line} under badRows of this recording in test.yaml; logs themselves are never edited`,
  }));
  if (rows.badCount > told.length)
    told.push({
      id: "log-more",
      level: "error",
      place: { file },
      found: `${rows.badCount - told.length} more fields that cannot be read`,
      expected: "rows written in one way",
      mend: "mend the first ones; where most rows are like this, the recorder's dialect is described wrongly",
    });
  return told;
}

function expectationOf({ what, field }: BadField, dialect: ResolvedDialect): string {
  if (what === "a time") return what;
  if (what === "a whole last row") return `${what} of ${dialect.fieldCount} fields, and a line end behind it`;
  if (what === "the end of the row")
    return field < dialect.fieldCount
      ? `${dialect.fieldCount} fields, since blanks cannot show which is left out`
      : `${what} after ${dialect.fieldCount} fields`;
  return `${what} with "${dialect.form.decimalMark}" as decimal mark`;
}

/** The character column, counted from 1, at which each field stands in its line; of a sheet, the cell's own column. */
async function columnsOf(wanted: readonly BadField[], { opened, encoding }: Detection, dialect: ResolvedDialect): Promise<number[]> {
  if (opened.sheet !== undefined) return wanted.map(({ field }) => field + 1);
  const columns = wanted.map(() => 1);
  const last = Math.max(...wanted.map((bad) => bad.line));
  let line = 0;
  for await (const text of linesOf(decode(opened.stream(), encoding))) {
    line++;
    wanted.forEach((bad, index) => {
      if (bad.line === line) columns[index] = placeOfField(text, dialect.splitter, bad.field);
    });
    if (line >= last) break;
  }
  return columns;
}

/** A file of several recordings says which is meant, or how many there are where the number named is none. */
function askForPart(parts: readonly Part[], { lines }: Rows, request: LogRequest): Problem {
  const shown = parts
    .slice(0, 4)
    .map(
      ({ from, to, label }, index) =>
        `${index + 1}: lines ${lines[from]} to ${lines[to - 1]}${label.startsWith("from line") ? "" : ` (${label})`}`,
    );
  const second = parts[1];
  return {
    id: "log-parts",
    level: "error",
    place: { file: request.file, line: lines[second?.from ?? 0] ?? 1, column: 1 },
    found:
      parts.length === 1 ? "one recording" : `${parts.length} recordings: ${shown.join("; ")}${parts.length > shown.length ? "; …" : ""}`,
    expected:
      request.part === undefined ? "one recording in a file, or the number of the one that is meant" : `a recording number ${request.part}`,
    mend:
      parts.length === 1
        ? "take part: out of test.yaml"
        : `say which in test.yaml, each in its own connection: { file: …, part: 1 }${parts.length > 1 ? ` to { file: …, part: ${parts.length} }` : ""}`,
  };
}

/** Samples, counts and what is told of one recording of the file. */
function logOf(all: Rows, part: Part, partCount: number, request: LogRequest, dialect: ResolvedDialect, opened: OpenedLog): Log {
  const cut = (values: Float64Array): Float64Array => values.subarray(part.from, part.to);
  const told: ReadAs[] = [
    ...ofContainer(opened, request),
    ...dialect.readAs.filter(({ what }) => opened.sheet === undefined || !ofText.has(what)),
  ];
  const tell = (what: string, value: string, from: ReadAs["from"] = "detected"): void => {
    told.push({ what, value, from });
  };
  if (partCount > 1) tell("recording of the file", `${request.part} of ${partCount}: ${part.label}`, "test record");

  const placed = placeTimes(cut(all.timesS), dialect.time, request.zone, request.startedAtMs);
  told.push(...placed.told);
  // Where each row stands later than the one before, none shares its stamp.
  const spread = all.isRising ? undefined : spreadCoarseStamps(placed.timesS);
  if (spread !== undefined)
    tell(
      "coarse stamps",
      `${spread.rowsPerStamp} rows share a stamp; they are spread evenly over ${spread.stepS} s, ${Number((spread.stepS / spread.rowsPerStamp).toPrecision(4))} s apart`,
    );
  const timesS = spread?.timesS ?? placed.timesS;

  let voltagesV = cut(all.voltagesV);
  let currentsA = cut(all.currentsA);
  const samples = part.to - part.from;
  const isAll = samples === all.timesS.length;
  const empty = isAll ? all.empty : countEmpty(voltagesV, currentsA);
  const sign = dialect.currentSign ?? ((isAll ? all.sumA : sumOf(currentsA)) < 0 ? -1 : 1);
  // Rows of one file are read for one log, so its columns are its own to change. Nothing added makes 0 of -0, which is nobody's current.
  for (let row = 0; row < currentsA.length; row++) currentsA[row] = sign * (currentsA[row] as number) + 0;
  if (dialect.current !== undefined && dialect.currentSign === undefined)
    tell("sign of charging current", sign > 0 ? "positive" : "negative");
  if (dialect.voltage !== undefined && dialect.current !== undefined && all.single > 0 && isAlternating(voltagesV, currentsA)) {
    const voltages = valuesAt({ timesS, values: voltagesV }, timesS);
    const currents = valuesAt({ timesS, values: currentsA }, timesS);
    voltagesV = voltages.values;
    currentsA = currents.values;
    tell(
      "rows by turns",
      `voltage and current stand in rows of their own; each is set beside the other on a straight line between its neighbours, where these are no more than one and a half times ${Number(Math.max(voltages.intervalS, currents.intervalS).toPrecision(4))} s apart`,
    );
  }
  if (all.nines !== undefined)
    tell("no value", `"${all.nines.text}", ${all.nines.count === 1 ? "once" : `${all.nines.count} times`}: no battery has it`);
  if (all.tail !== undefined)
    tell("lines below the data", `${all.tail.lines} from line ${all.tail.line}, "${all.tail.text.slice(0, 40)}", left out`);

  const firstS = timesS[0] ?? 0;
  for (let row = 0; row < timesS.length; row++) timesS[row] = (timesS[row] as number) - firstS;
  return {
    samples: {
      elapsedS: timesS,
      voltagesV,
      currentsA,
      temperaturesC: dialect.temperature === undefined ? new Float64Array(0) : cut(all.temperaturesC),
      lines: all.lines.subarray(part.from, part.to),
      hasVoltage: dialect.voltage !== undefined,
      hasCurrent: dialect.current !== undefined,
      startMs: placed.isPlaced ? firstS * 1000 : request.startedAtMs,
      ...(dialect.power === undefined ? {} : { powersW: cut(all.powersW) }),
      ...(dialect.charge === undefined ? {} : { chargesAh: cut(all.chargesAh) }),
    },
    counts: {
      lines: all.rows + dialect.linesBeforeData,
      samples,
      blank: all.blank,
      excluded: all.excluded + all.timesS.length - samples,
      empty,
    },
    readAs: told,
    sampleRead: readBack(all, sign),
  };
}

/** Choices that say nothing of a spreadsheet. */
const ofText: ReadonlySet<string> = new Set(["encoding", "delimiter", "decimal mark"]);

function ofContainer({ container, sheet }: OpenedLog, request: LogRequest): ReadAs[] {
  if (container === undefined) return [];
  const kind: ReadAs = { what: "file", value: container, from: "detected" };
  if (sheet === undefined) return [kind];
  return [kind, { what: "sheet", value: sheet.name, from: request.dialect?.sheet === undefined ? "detected" : "instrument record" }];
}

/** The sum of the values that are there. */
function sumOf(values: Float64Array): number {
  let sum = 0;
  for (let row = 0; row < values.length; row++) if (!Number.isNaN(values[row])) sum += values[row] as number;
  return sum;
}

function countEmpty(voltagesV: Float64Array, currentsA: Float64Array): number {
  let empty = 0;
  for (let row = 0; row < voltagesV.length; row++) if (Number.isNaN(voltagesV[row]) && Number.isNaN(currentsA[row])) empty++;
  return empty;
}

/** The sample row in words, its current with the sign that this project gives it: into the battery is positive. */
function readBack({ sample }: Rows, sign: 1 | -1): string | undefined {
  if (sample === undefined) return undefined;
  const parts = [
    sample.voltage === undefined ? undefined : `"${sample.voltage.text}" as ${sample.voltage.value} V`,
    sample.current === undefined ? undefined : `"${sample.current.text}" as ${sign * sample.current.value} A`,
  ];
  return `line ${sample.line}: ${parts.filter((part) => part !== undefined).join(", ")}`;
}
