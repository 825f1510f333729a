/** Headings above the data: in one row, in two, with a row of units of their own, or none. */
import { parseUnit, type Unit, unitOfHeading } from "../units.ts";
import { type Splitter, splitLine } from "./fields.ts";

export type Heading = {
  readonly text: string;
  readonly unit: Unit | undefined;
  /** Whether the unit alone tells what the column is: it stands in brackets, behind a slash, or in a row of its own. */
  readonly isUnitSure: boolean;
};

/** The headings of one file. */
export type HeadingRows = {
  /** Undefined where the file has none. */
  readonly headings: readonly Heading[] | undefined;
  /** Line of the lowest row of headings, counted from 1; 1 where there is none. */
  readonly line: number;
  /** The same columns with the row above taken in, where there is one that could belong to them. */
  readonly withRowAbove: readonly Heading[] | undefined;
};

/** Fields of a row of units: symbols, forms of a time, or nothing. */
const timeForm = /^[[(]?\s*(?:h{1,2}:mm?(?::ss)?(?:\.s+)?|[ymd]{1,4}[-./][ymd]{1,4}[-./][ymd]{1,4}(?:[ T]h{1,2}:mm(?::ss)?)?)\s*[\])]?$/i;

function isUnitRow(fields: readonly string[]): boolean {
  const texts = fields.map((field) => field.trim()).filter((text) => text !== "" && text !== "-");
  return texts.length > 0 && texts.every((text) => parseUnit(text) !== undefined || timeForm.test(text) || /^[[(]?[%#][\])]?$/.test(text));
}

/** A line drawn under headings, or an empty one. */
const isRule = (line: string): boolean => /^[\s\-=_+|;,]*$/.test(line);

/**
 * Finds the headings above the first row.
 *
 * @param lines          the file's first lines
 * @param firstDataLine  counted from 0
 * @param fieldCount     of a row
 * @param lastUsedField  fields behind this one (counted from 0) are empty in every row: headings may lack them
 * @param declared       what the record says: whether there are any
 */
export function findHeadings(
  lines: readonly string[],
  firstDataLine: number,
  splitter: Splitter,
  fieldCount: number,
  lastUsedField: number,
  declared: boolean | undefined,
): HeadingRows {
  const none: HeadingRows = { headings: undefined, line: 1, withRowAbove: undefined };
  if (declared === false) return none;
  let at = firstDataLine - 1;
  while (at >= 0 && isRule(lines[at] ?? "") && (lines[at] ?? "").trim() !== "") at--;
  const fieldsAt = (index: number): string[] => (index < 0 ? [] : splitHeading(lines[index] ?? "", splitter));
  const unitRow = at > 0 && isUnitRow(fieldsAt(at)) ? fieldsAt(at) : [];
  if (unitRow.length > 0) at--;
  const fields = fieldsAt(at);
  const isLong =
    fields.length === fieldCount || (fields.length > fieldCount && areWords(fields)) || (fields.length > lastUsedField && areWords(fields));
  if (declared !== true && !(isLong && fields.some((field) => field.trim() !== ""))) return none;
  const headings = fields.map((field, index) => readHeading(field, unitRow[index]));
  const above = spread(fieldsAt(at - 1), fields.length);
  return {
    headings,
    line: Math.max(1, at + 1),
    withRowAbove: areWords(above)
      ? fields.map((field, index) => readHeading([above[index], field].filter(Boolean).join(" "), unitRow[index]))
      : undefined,
  };
}

/** In columns by place, a heading may stand across a start: it belongs to the column that holds most of it. */
function splitHeading(line: string, splitter: Splitter): string[] {
  if (splitter.by === "mark") return splitLine(line, splitter);
  const fields = splitter.starts.map(() => "");
  for (const match of line.matchAll(/\S+(?: \S+)*/g)) {
    const middle = match.index + match[0].length / 2;
    const column = Math.max(
      0,
      splitter.starts.findLastIndex((start) => start <= middle),
    );
    fields[column] = [fields[column], match[0]].filter(Boolean).join(" ");
  }
  return fields;
}

/** Two fields or more with letters in them, and none that begins like a number. */
function areWords(fields: readonly string[]): boolean {
  const texts = fields.map((field) => field.trim()).filter((text) => text !== "");
  return texts.length >= 2 && texts.every((text) => /\p{L}/u.test(text) && !/^[-+]?\d/.test(text));
}

/** A row of headings of which one stands for the columns to its right as well: what is empty takes what stands to its left. */
function spread(fields: readonly string[], length: number): string[] {
  let last = "";
  return Array.from({ length }, (_, index) => {
    last = fields[index]?.trim() || last;
    return last;
  });
}

function readHeading(name: string, unitField: string | undefined): Heading {
  const text = name.trim().replace(/^\uFEFF/, "");
  const ownRow = parseUnit(unitField ?? "");
  const inText = unitOfHeading(text);
  return { text, unit: ownRow ?? inText?.unit, isUnitSure: ownRow !== undefined || inText?.isSure === true };
}
