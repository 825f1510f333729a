/** Cuts a line into fields: at a separator, or at the places where columns start. */
import { columnOfField } from "../field-place.ts";

/** How a file parts its fields. Starts are characters counted from 0, one for each column. */
export type Splitter = { readonly by: "mark"; readonly mark: string } | { readonly by: "place"; readonly starts: readonly number[] };

export const marks = [";", "\t", ",", "|", " "] as const;
export const markNames: Readonly<Record<string, string>> = { ";": "semicolon", "\t": "tab", ",": "comma", "|": "bar", " ": "space" };

/** Splits one line into fields the way csv-parse does for a line that ends its quotes: enough to look at a file's head. */
export function splitFields(line: string, delimiter: string): string[] {
  if (!line.includes('"')) return delimiter === " " ? withoutEmpty(line.split(" ")) : line.split(delimiter);
  const fields: string[] = [];
  let field = "";
  let quoted = false;
  for (let i = 0; i < line.length; i++) {
    const character = line.charAt(i);
    if (character === '"') {
      if (quoted && line.charAt(i + 1) === '"') {
        field += '"';
        i++;
      } else quoted = !quoted;
    } else if (character === delimiter && !quoted) {
      fields.push(field);
      field = "";
    } else field += character;
  }
  fields.push(field);
  return delimiter === " " ? withoutEmpty(fields) : fields;
}

/** A run of blanks parts two fields, as one blank does: an empty field between blanks cannot be told from a wide gap. */
export function withoutEmpty(fields: readonly string[]): string[] {
  return fields.filter((field) => field !== "");
}

/** Splits a line at places; text that stands across a start stays whole in the field that it began in, so that it is told. */
export function splitAtPlaces(line: string, starts: readonly number[]): string[] {
  const fields: string[] = [];
  let from = 0;
  for (let i = 1; i <= starts.length; i++) {
    const start = starts[i];
    if (start === undefined) fields.push(line.slice(from).trim());
    else if (crosses(line, start)) {
      // The rest of the row is one field, of which nothing can be read: better no value than half of one.
      fields.push(line.slice(from).trim());
      return fields;
    } else {
      fields.push(line.slice(from, start).trim());
      from = start;
    }
  }
  return fields;
}

function crosses(line: string, start: number): boolean {
  return /\S\S/.test(line.slice(start - 1, start + 1));
}

export function splitLine(line: string, splitter: Splitter): string[] {
  return splitter.by === "mark" ? splitFields(line, splitter.mark) : splitAtPlaces(line, splitter.starts);
}

/** The character, counted from 1, at which a field (counted from 0) stands in its line; one past the end where there is no such field. */
export function placeOfField(line: string, splitter: Splitter, field: number): number {
  if (splitter.by === "place") {
    const start = splitter.starts[field] ?? line.length;
    const text = line.slice(start);
    return Math.min(line.length, start + (text.length - text.trimStart().length)) + 1;
  }
  if (splitter.mark !== " ") return columnOfField(line, splitter.mark, field);
  const words = [...line.matchAll(/"[^"]*"|[^ ]+/g)];
  return (words[field]?.index ?? line.length) + 1;
}

/**
 * The places at which columns start, told from blanks that stand one below the other in every row.
 *
 * A column whose values end below each other may grow to the left and starts right behind the column before; any other starts at its
 * own first character. One blank between a date and a time of day parts no columns.
 *
 * @param lines  rows of data, at least two
 * @returns undefined where fewer than two columns can be told
 */
export function findPlaces(lines: readonly string[]): number[] | undefined {
  if (lines.length < 2) return undefined;
  const width = Math.max(...lines.map((line) => line.length));
  const isGap = Array.from({ length: width }, (_, at) => lines.every((line) => at >= line.length || line.charAt(at) === " "));
  const blocks: { from: number; to: number }[] = [];
  for (let at = 0; at < width; at++) {
    if (isGap[at]) continue;
    const last = blocks.at(-1);
    if (last !== undefined && last.to === at) last.to = at + 1;
    else blocks.push({ from: at, to: at + 1 });
  }
  const columns: { from: number; to: number }[] = [];
  for (const block of blocks) {
    const last = columns.at(-1);
    if (
      last !== undefined &&
      block.from === last.to + 1 &&
      lines.every((line) => partsOneTime(line.slice(last.from, last.to), line.slice(block.from, block.to)))
    )
      last.to = block.to;
    else columns.push({ ...block });
  }
  if (columns.length < 2) return undefined;
  return columns.map((column, index) => {
    const before = columns[index - 1];
    if (before === undefined) return 0;
    const endsTogether = lines.every(
      (line) => line.slice(column.from, column.to).trim() === "" || line.charAt(column.to - 1).trim() !== "",
    );
    return endsTogether ? before.to + 1 : column.from;
  });
}

function partsOneTime(left: string, right: string): boolean {
  return /^\d{1,4}[-./]\d{1,2}[-./]\d{1,4}$/.test(left.trim()) && /^\d{1,2}[:.]\d\d/.test(right.trim());
}
