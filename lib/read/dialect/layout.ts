/** Finds how a file is laid out: what parts its fields, how its numbers are written, and where its rows begin. */
import type { Dialect } from "../../nouns/instrument.ts";
import { looksLikeTime } from "../clock.ts";
import { type MissingMarks, missingMarks } from "../missing.ts";
import { type DecimalMark, parseNumber, type ThousandsMark } from "../numbers.ts";
import { parseQuantity } from "../units.ts";
import { findPlaces, marks, type Splitter, splitLine } from "./fields.ts";

export type NumberForm = { readonly decimalMark: DecimalMark; readonly thousandsMark: ThousandsMark | undefined };

export type Layout = {
  readonly splitter: Splitter;
  readonly form: NumberForm;
  /** Line of the first row, counted from 0. */
  readonly firstDataLine: number;
  readonly fieldCount: number;
  readonly dataRows: number;
  /** Fields of those rows that are numbers, times or missing. */
  readonly readable: number;
};

/** So many lines show the layout; more would only cost time. */
const linesLookedAt = 400;

/** How much of a row must be numbers, times or missing: all of it, or, for recorders that add a column of words, half. */
type Strictness = "whole" | "half";

/**
 * The separator and the way of writing numbers under which most of the head's lines are rows of numbers and times.
 *
 * @param lines     the file's first lines
 * @param declared  what the record says is not tried otherwise
 * @returns undefined where no line is a row. Ties go to the first tried: semicolon, tab, comma, bar, blanks, columns by place; point
 * before comma; no thousands mark before one
 */
export function findLayout(lines: readonly string[], declared: Dialect | undefined): Layout | undefined {
  const head = lines.slice(0, linesLookedAt + (declared?.preambleLines ?? 0));
  const missing = missingMarks(declared?.missing ?? [], declared?.decimalMark ?? ".");
  const forms = formsToTry(head, declared);
  const tables = splittersToTry(head, declared).map((splitter) => ({
    splitter,
    rows: head.map((line) => fieldsOf(line, splitter, missing)),
  }));
  const best = (strictness: Strictness): Layout | undefined => {
    let found: Layout | undefined;
    for (const { splitter, rows } of tables)
      for (const form of forms) {
        const layout = layoutUnder(rows, splitter, form, declared?.preambleLines ?? 0, strictness);
        if (layout === undefined) continue;
        if (
          found === undefined ||
          layout.dataRows > found.dataRows ||
          (layout.dataRows === found.dataRows && layout.readable > found.readable)
        )
          found = layout;
      }
    return found;
  };
  const whole = best("whole");
  const half = best("half");
  // A column of words that is empty now and then leaves a few whole rows among many: then half rows are the rule.
  return whole !== undefined && whole.dataRows * 2 >= (half?.dataRows ?? 0) ? whole : half;
}

function splittersToTry(head: readonly string[], declared: Dialect | undefined): Splitter[] {
  if (declared?.columnStarts !== undefined) return [{ by: "place", starts: declared.columnStarts.map((start) => start - 1) }];
  if (declared?.delimiter !== undefined) return [{ by: "mark", mark: declared.delimiter }];
  const byMark: Splitter[] = marks.map((mark) => ({ by: "mark", mark }));
  // Rows of a table in columns have wide gaps; without any, places would only tell what blanks tell already.
  const wide = head.filter((line) => /\S {2,}\S/.test(line) && !/[;\t|]/.test(line) && /^\s*[-+]?\d/.test(line));
  const starts = wide.length < 3 ? undefined : findPlaces(wide);
  return starts === undefined ? byMark : [...byMark, { by: "place", starts }];
}

const decimalMarks = [".", ","] as const;
/** A number in groups of three, shown beyond doubt: two marks of which the last is the decimal one, one mark twice, or a mark that is none. */
const showsThousands =
  /\d[.,'\u2019 \u00a0\u2009\u202f]\d{3}[.,'\u2019 \u00a0\u2009\u202f]\d{3}(?!\d)|\d[.'\u2019 \u00a0\u2009\u202f]\d{3},\d|\d[,'\u2019 \u00a0\u2009\u202f]\d{3}\.\d/;

function formsToTry(head: readonly string[], declared: Dialect | undefined): NumberForm[] {
  const decimals = declared?.decimalMark === undefined ? decimalMarks : [declared.decimalMark];
  const thousands: (ThousandsMark | undefined)[] =
    declared?.thousandsMark !== undefined
      ? [declared.thousandsMark]
      : head.some((line) => showsThousands.test(line))
        ? [undefined, ",", ".", "blank", "'"]
        : [undefined];
  return thousands.flatMap((thousandsMark) =>
    decimals.filter((decimalMark) => decimalMark !== thousandsMark).map((decimalMark) => ({ decimalMark, thousandsMark })),
  );
}

/** A line's fields, and for each whether it is readable whatever the form of numbers: a time, or a mark for "no value". */
type Row = { readonly fields: readonly string[]; readonly isPlain: readonly boolean[] };

function fieldsOf(line: string, splitter: Splitter, missing: MissingMarks): Row {
  const fields = splitLine(line, splitter).map((field) => field.trim());
  return { fields, isPlain: fields.map((text) => missing.isMissing(text) || looksLikeTime(text)) };
}

function layoutUnder(rows: readonly Row[], splitter: Splitter, form: NumberForm, skip: number, strictness: Strictness): Layout | undefined {
  const counts = new Map<number, { rows: number; first: number; readable: number }>();
  for (let index = skip; index < rows.length; index++) {
    const row = rows[index];
    if (row === undefined || row.fields.length < 2) continue;
    const { readable, numbers } = countReadable(row, form);
    const isData = strictness === "whole" ? readable === row.fields.length : readable >= 2 && readable * 2 >= row.fields.length;
    if (!isData || numbers === 0) continue;
    const seen = counts.get(row.fields.length);
    if (seen === undefined) counts.set(row.fields.length, { rows: 1, first: index, readable });
    else {
      seen.rows++;
      seen.readable += readable;
    }
  }
  let best: Layout | undefined;
  for (const [fieldCount, { rows: dataRows, first, readable }] of counts)
    if (best === undefined || dataRows > best.dataRows) best = { splitter, form, firstDataLine: first, fieldCount, dataRows, readable };
  return best === undefined ? undefined : { ...best, firstDataLine: firstRowAbove(rows, best, skip) };
}

/** How many fields of a row are numbers, times or missing, and how many of these are numbers. */
function countReadable({ fields, isPlain }: Row, form: NumberForm): { readable: number; numbers: number } {
  let readable = 0;
  let numbers = 0;
  fields.forEach((text, index) => {
    if (!Number.isNaN(parseQuantity(text, form.decimalMark, form.thousandsMark).value)) {
      numbers++;
      readable++;
    } else if (isPlain[index]) readable++;
  });
  return { readable, numbers };
}

/**
 * Where the data start when lines right above, blank ones aside, are counted in that can be read but for a field or begin like a row: so
 * that a garbled first row is told, and not taken for headings or left out as a line above the data.
 */
function firstRowAbove(rows: readonly Row[], layout: Layout, skip: number): number {
  let first = layout.firstDataLine;
  for (let index = first - 1; index >= skip; index--) {
    const row = rows[index];
    if (row === undefined || !row.fields.some((field) => field !== "")) continue;
    const { readable, numbers } = countReadable(row, layout.form);
    // A recorder that leaves out what it lacks at a row's end writes shorter rows; these must be readable whole.
    const isShort = row.fields.length >= 2 && row.fields.length < layout.fieldCount && readable === row.fields.length;
    const isRow = row.fields.length === layout.fieldCount && readable * 2 > row.fields.length;
    if (!(numbers > 0 && (isShort || isRow)) && !beginsLikeRow(row)) break;
    first = index;
  }
  return first;
}

/** A line that begins with a figure and has two more groups of figures behind it is a row, whatever else is wrong with it. */
function beginsLikeRow({ fields }: Row): boolean {
  return /^["\s]*[-+]?\d/.test(fields[0] ?? "") && (fields.join(" ").match(/[\s"][-+]?\d[\d.,]*/g)?.length ?? 0) >= 2;
}

/**
 * Whether a decimal comma could as well be a thousands mark: every number with a comma is in groups of three, and none begins with 0 or has an exponent.
 *
 * @param texts  fields that are numbers, of the columns that are read
 * @returns one such number, or undefined where the file shows what its commas are
 */
export function doubtfulComma(texts: readonly string[]): string | undefined {
  const withComma = texts.map((text) => text.trim()).filter((text) => text.includes(","));
  if (withComma.some((text) => /e/i.test(text))) return undefined;
  const isGrouped = (text: string): boolean => /^[+-]?[1-9]\d{0,2},\d{3}(?!\d)/.test(text) && !Number.isNaN(parseNumber(text, ".", ","));
  return withComma.length > 0 && withComma.every(isGrouped) ? withComma[0] : undefined;
}
