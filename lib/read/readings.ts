/** Reads a test's readings: one row a visit, as comma- or semicolon-separated text or as a spreadsheet. */
import { parse } from "csv-parse/sync";
import readSheet from "read-excel-file/node";
import type { Checked, Problem } from "../nouns/problem.ts";
import { type Reading, type ReadingColumn, readingColumns, type SpotValue } from "../nouns/reading.ts";
import { parseInstantMs, parseWallClockMs, type ZoneClock, zoneClock } from "./clock.ts";
import { columnOfField } from "./field-place.ts";
import { type DecimalMark, parseNumber } from "./numbers.ts";
import { nearest } from "./record.ts";

/** Columns that are not numbers. */
const wordColumns = ["at", "mixed", "charger", "note"] as const;
const knownColumns: readonly string[] = [...wordColumns, ...Object.keys(readingColumns)];

type Cell = { readonly text: string; readonly line: number; readonly column: number };

/** A table of text cells, each knowing its place. */
type Sheet = { readonly headings: readonly Cell[]; readonly rows: readonly (readonly Cell[])[]; readonly decimalMark: DecimalMark };

/**
 * Reads readings from text.
 *
 * @param text  the file's whole text, semicolon or comma between fields; with semicolons, numbers may have a decimal comma
 * @param file  for messages
 * @param zone  IANA zone of times written without one
 * @returns readings in order of time; rows with a problem are left out and told
 */
export function parseReadings(text: string, file: string, zone: string): Checked<Reading[]> {
  const firstLine = text.split(/\r\n|\n|\r/).find((line) => line.trim() !== "") ?? "";
  const delimiter = [";", "\t", ","].find((mark) => firstLine.includes(mark)) ?? ",";
  let records: { record: string[]; info: { lines: number }; raw: string }[];
  try {
    records = parse(text, {
      delimiter,
      relax_column_count: true,
      bom: true,
      skip_empty_lines: true,
      info: true,
      raw: true,
    }) as unknown as typeof records;
  } catch (error) {
    const line = typeof error === "object" && error !== null && "lines" in error ? Number(error.lines) : 1;
    return {
      value: [],
      problems: [
        {
          id: "readings-quotes",
          level: "error",
          place: { file, line, column: 1 },
          found: "a quotation mark that is not closed",
          expected: "quotation marks in pairs around a field",
          mend: "close the quotation mark, or take it out",
        },
      ],
    };
  }
  const cells = records.map(({ record, info, raw }) => {
    const rawLine = raw.replace(/^\uFEFF/, "").replace(/[\r\n]+$/, "");
    const line = info.lines - (rawLine.match(/\r\n|\n|\r/g)?.length ?? 0);
    return record.map((field, index) => ({ text: field.trim(), line, column: columnOfField(rawLine, delimiter, index) }));
  });
  const [headings = [], ...rows] = cells;
  const usesComma = delimiter !== "," && rows.some((row) => row.some((cell) => /^[+-]?\d+,\d+$/.test(cell.text)));
  return readingsOf({ headings, rows, decimalMark: usesComma ? "," : "." }, file, zone);
}

/**
 * Reads readings from the first sheet of an .xlsx file.
 * @throws where the bytes are no .xlsx file; the caller says so
 */
export async function parseSheetReadings(absolutePath: string, file: string, zone: string): Promise<Checked<Reading[]>> {
  const sheets = await readSheet(absolutePath);
  const table = (Array.isArray(sheets[0]) ? sheets : ((sheets[0] as { data?: unknown[] } | undefined)?.data ?? [])) as unknown[][];
  const cells = table.map((row, rowIndex) => row.map((value, index) => ({ text: cellText(value), line: rowIndex + 1, column: index + 1 })));
  const [headings = [], ...rows] = cells;
  return readingsOf({ headings, rows: rows.filter((row) => row.some((cell) => cell.text !== "")), decimalMark: "." }, file, zone);
}

function cellText(value: unknown): string {
  if (value === null || value === undefined) return "";
  // A spreadsheet's date has no zone; its parts are what the visitor typed.
  if (value instanceof Date) return value.toISOString().slice(0, 19).replace("T", " ");
  return String(value).trim();
}

function readingsOf(sheet: Sheet, file: string, zone: string): Checked<Reading[]> {
  const problems: Problem[] = [];
  const complain = (id: string, cell: { line: number; column: number }, found: string, expected: string, mend: string): void => {
    problems.push({ id, level: "error", place: { file, line: cell.line, column: cell.column }, found, expected, mend });
  };
  const places = new Map<string, number>();
  sheet.headings.forEach((cell, index) => {
    if (cell.text === "") return;
    if (!knownColumns.includes(cell.text)) {
      const near = nearest(cell.text, knownColumns);
      complain(
        "readings-column",
        cell,
        `the column "${cell.text}"`,
        `one of ${knownColumns.filter((name) => !/^density_([2-9]|1\d)$/.test(name)).join(", ")} (density_1 to density_12)`,
        near === undefined ? "rename the column, or move its words into note" : `did you mean "${near}"?`,
      );
    } else if (places.has(cell.text))
      complain("readings-column", cell, `a second column "${cell.text}"`, "each column once", "take one of them out");
    else places.set(cell.text, index);
  });
  const atPlace = places.get("at");
  if (atPlace === undefined) {
    complain(
      "readings-column",
      { line: 1, column: 1 },
      "no column at",
      'a column "at" with date and time of each visit',
      "add it, such as 2026-03-14 09:30",
    );
    return { value: [], problems };
  }
  const clock = zoneClock(zone);
  const readings: Reading[] = [];
  const columnCount = sheet.headings.length;
  for (const row of sheet.rows) {
    const cellAt = (name: string): Cell | undefined => {
      const place = places.get(name);
      const cell = place === undefined ? undefined : row[place];
      return cell === undefined || cell.text === "" ? undefined : cell;
    };
    const surplus = row.slice(columnCount).find((cell) => cell.text !== "");
    if (surplus !== undefined)
      complain(
        "readings-row",
        surplus,
        `${row.length} fields`,
        `${columnCount} fields, as many as the headings`,
        "put text that holds the separator into quotation marks; with a decimal comma, part the fields by semicolons",
      );
    const at = cellAt("at");
    if (at === undefined) {
      const first = row[0] ?? { line: 1, column: 1 };
      complain("readings-time", first, "no date and time", "the date and time of the visit", "fill in the column at");
      continue;
    }
    const atMs = visitMs(at.text, clock);
    if (Number.isNaN(atMs)) {
      complain(
        "readings-time",
        at,
        `"${at.text}"`,
        "a date and time such as 2026-03-14 09:30, or with its offset",
        "write the year in four digits, then month and day, then the time of day",
      );
      continue;
    }
    const values: Partial<Record<ReadingColumn, SpotValue>> = {};
    for (const [name, { low, high, unit }] of Object.entries(readingColumns) as [ReadingColumn, (typeof readingColumns)[ReadingColumn]][]) {
      const cell = cellAt(name);
      if (cell === undefined) continue;
      const value = parseNumber(cell.text, sheet.decimalMark);
      if (Number.isNaN(value)) {
        const other: DecimalMark = sheet.decimalMark === "." ? "," : ".";
        const isOther = !Number.isNaN(parseNumber(cell.text, other));
        complain(
          "readings-number",
          cell,
          `"${cell.text}"`,
          `${name} as a number with "${sheet.decimalMark}" as decimal mark`,
          isOther
            ? `write it as the other rows do: ${cell.text.replace(other, sheet.decimalMark)}`
            : "leave the field empty where nothing was read, and move words into note",
        );
      } else if (value < low || value > high)
        complain(
          "readings-range",
          cell,
          `"${cell.text}"`,
          `${name} between ${low} and ${high} ${unit}`,
          name.startsWith("density") && value > 1000 && value < 1400
            ? `write it in kg/l: ${(value / 1000).toFixed(3)}`
            : "check the reading and its unit",
        );
      else values[name] = { value, text: cell.text, line: cell.line, column: cell.column };
    }
    const mixed = yesNo(cellAt("mixed"), complain);
    const charger = cellAt("charger");
    if (charger !== undefined && charger.text !== "connected" && charger.text !== "disconnected")
      complain(
        "readings-word",
        charger,
        `"${charger.text}"`,
        '"connected", "disconnected" or nothing',
        "say how the charger was found on arrival",
      );
    const note = cellAt("note")?.text;
    readings.push({
      number: 0,
      line: at.line,
      atMs,
      atText: at.text,
      values,
      ...(mixed === undefined ? {} : { mixed }),
      ...(charger?.text === "connected" || charger?.text === "disconnected" ? { charger: charger.text } : {}),
      ...(note === undefined ? {} : { note }),
    });
  }
  readings.sort((a, b) => a.atMs - b.atMs || a.line - b.line);
  return { value: readings.map((reading, index) => ({ ...reading, number: index + 1 })), problems };
}

/**
 * The instant of a visit, in milliseconds since 1970 UTC; NaN where the text is no date with a time of day.
 *
 * A year in two digits is refused, since 03.02.26 would have three meanings.
 */
function visitMs(text: string, clock: ZoneClock): number {
  const instantMs = parseInstantMs(text);
  if (!Number.isNaN(instantMs)) return instantMs;
  const wallMs = /^\d{4}[-./].*:/.test(text) ? parseWallClockMs(text.replace("T", " "), "year-month-day") : Number.NaN;
  return Number.isNaN(wallMs) ? Number.NaN : clock.instantMs(wallMs, Number.NEGATIVE_INFINITY);
}

function yesNo(
  cell: Cell | undefined,
  complain: (id: string, cell: Cell, found: string, expected: string, mend: string) => void,
): boolean | undefined {
  if (cell === undefined) return undefined;
  if (/^(yes|y|true|1)$/i.test(cell.text)) return true;
  if (/^(no|n|false|0)$/i.test(cell.text)) return false;
  complain("readings-word", cell, `"${cell.text}"`, '"yes", "no" or nothing', "say whether the acid was mixed before it was read");
  return undefined;
}
