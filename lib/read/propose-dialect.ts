/** Proposes a dialect for a log that no record describes: each choice with its evidence, rows read back, and what stays open. */
import type { Dialect } from "../nouns/instrument.ts";
import type { Problem } from "../nouns/problem.ts";
import { splitLine } from "./dialect/fields.ts";
import type { Question } from "./dialect/questions.ts";
import { joinDateAndTime, type TimeReading } from "./dialect/times.ts";
import type { ReadAs, ResolvedDialect } from "./dialect.ts";
import { detectLog, type Log, type LogRequest, readLog } from "./log.ts";

export type Proposal = {
  /** How the file is read, and why. */
  readonly choices: readonly (ReadAs & { readonly why: string })[];
  /** A few rows in words: the file's own text, and what it was read as. */
  readonly readBack: readonly string[];
  readonly questions: readonly Question[];
  readonly problems: readonly Problem[];
  /** What to write into the recorder's record; undefined while anything is open. */
  readonly dialect: Dialect | undefined;
  readonly log: Log | undefined;
};

/** So many rows show whether numbers and times mean what they should. */
const rowsShown = 3;

/** Makes a proposal. Nothing is written; the log is opened for reading only. */
export async function proposeDialect(request: LogRequest): Promise<Proposal> {
  const { value: detection, problems } = await detectLog(request);
  const resolution = detection?.resolution;
  const resolved = resolution?.value;
  if (detection === undefined || resolved === undefined)
    return { choices: [], readBack: [], questions: resolution?.questions ?? [], problems, dialect: undefined, log: undefined };
  const { value: log, problems: all } = await readLog(request);
  const whyOf = new Map(resolved.evidence.map(({ what, why }) => [what, why]));
  return {
    choices: (log?.readAs ?? resolved.readAs).map((choice) => ({ ...choice, why: whyOf.get(choice.what) ?? "the whole file shows it" })),
    readBack: log === undefined ? [] : readBack(log, detection.head, resolved),
    questions: [],
    problems: all,
    dialect: log === undefined ? undefined : dialectOf(resolved, request.dialect, detection.opened.sheet !== undefined),
    log,
  };
}

function readBack({ samples }: Log, head: readonly string[], dialect: ResolvedDialect): string[] {
  return Array.from(samples.lines.slice(0, rowsShown)).flatMap((line, row) => {
    const text = head[line - 1];
    if (text === undefined) return [];
    const fields = splitLine(text, dialect.splitter).map((field) => field.trim());
    const field = (index: number | undefined): string => (index === undefined ? "" : (fields[index] ?? ""));
    const time =
      dialect.dateField === undefined ? field(dialect.timeField) : joinDateAndTime(field(dialect.dateField), field(dialect.timeField));
    const elapsedS = samples.elapsedS[row] ?? 0;
    const instant =
      samples.startMs === undefined ? `${elapsedS} s from the first row` : new Date(samples.startMs + elapsedS * 1000).toISOString();
    const value = (column: { field: number } | undefined, read: number | undefined, unit: string): string[] =>
      column === undefined
        ? []
        : [`"${field(column.field)}" as ${read === undefined || Number.isNaN(read) ? "no value" : `${read} ${unit}`}`];
    return [
      [
        `line ${line}: "${time}" as ${instant}`,
        ...value(dialect.voltage, samples.voltagesV[row], "V"),
        ...value(dialect.current, samples.currentsA[row], "A into the battery"),
        ...value(dialect.temperature, samples.temperaturesC[row], "°C"),
      ].join(", "),
    ];
  });
}

/** The resolved dialect as a record states it; lines above the data are left to each file, since their number may differ. */
function dialectOf(resolved: ResolvedDialect, declared: Dialect | undefined, isSheet: boolean): Dialect {
  const { splitter, form, headings, time, timeField, dateField } = resolved;
  const isNamed = headings !== undefined && new Set(headings).size === headings.length;
  const column = (field: number): { name: string } | { number: number } => {
    const name = isNamed ? headings[field] : undefined;
    return name === undefined || name === "" ? { number: field + 1 } : { name };
  };
  const valueColumn = (role: "voltage" | "current" | "power" | "charge", units: readonly string[]): Record<string, unknown> => {
    const found = resolved[role];
    return found === undefined ? {} : { [role]: { ...column(found.field), unit: units[found.divisor === 1 ? 0 : 1] } };
  };
  const dateName = dateField === undefined ? undefined : headings?.[dateField];
  return {
    ...(isSheet
      ? declared?.sheet === undefined
        ? {}
        : { sheet: declared.sheet }
      : {
          encoding: resolved.encoding,
          ...(splitter.by === "mark" ? { delimiter: splitter.mark } : { columnStarts: splitter.starts.map((start) => start + 1) }),
        }),
    decimalMark: form.decimalMark,
    ...(form.thousandsMark === undefined ? {} : { thousandsMark: form.thousandsMark }),
    headings: headings !== undefined,
    time: { ...column(timeField), ...(dateName === undefined ? {} : { dateName }), ...timeOf(time) },
    ...valueColumn("voltage", ["V", "mV"]),
    ...valueColumn("current", ["A", "mA"]),
    ...(resolved.temperature === undefined
      ? {}
      : { temperature: { ...column(resolved.temperature.field), unit: resolved.temperature.unit } }),
    ...valueColumn("power", ["W", "mW"]),
    ...valueColumn("charge", ["Ah", "mAh"]),
    ...(resolved.partField === undefined ? {} : { part: headings?.[resolved.partField] ?? "" }),
    ...(declared?.chargingSign === undefined ? {} : { chargingSign: declared.chargingSign }),
    ...(declared?.missing === undefined ? {} : { missing: declared.missing }),
  } as Dialect;
}

const unitNames: ReadonlyMap<number, "s" | "ms" | "min" | "h" | "d"> = new Map([
  [1, "s"],
  [1e-3, "ms"],
  [60, "min"],
  [3600, "h"],
  [86_400, "d"],
]);

function timeOf(time: TimeReading): NonNullable<Dialect["time"]> {
  switch (time.kind) {
    case "elapsed":
    case "unix":
      return { kind: time.kind, unit: unitNames.get(time.unitS) ?? "s" };
    case "clock":
      return { kind: "elapsed", ...(time.short === "mm:ss" ? { clock: "mm:ss" } : {}) };
    case "local":
      return { kind: "local", order: time.order };
    case "iso":
      return { kind: "iso", ...(time.order === "year-month-day" ? {} : { order: time.order }) };
    default:
      return { kind: time.kind };
  }
}
