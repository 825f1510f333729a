/**
 * The fast reader of plain logs: rows of ASCII numbers and times, scanned from bytes.
 *
 * It works line by line, and each line goes one of three ways:
 *
 *   plain                    every field that is read holds a plain number or time, every row is whole ──► numbers, no texts made
 *   not plain, no quotation  csv-parse would part it wherever the mark stands, and so does this         ──► fields, to be read as texts
 *   a quotation mark, a lone carriage return, a line without an end                                    ──► the reference reader, from
 *                                                                                        this line to the end of the file
 *
 * What the reference reader would find, row for row and line for line, is found either way; tests/dialects/agree.ts holds the two
 * against each other.
 */
import { decoderInside } from "../decode.ts";
import { type Splitter, withoutEmpty } from "../dialect/fields.ts";
import type { ResolvedDialect } from "../dialect.ts";
import { Byte } from "./bytes.ts";
import { FieldCursor, readShortNumber } from "./plain-field.ts";
import { plainColumns, type RowReader } from "./row-reader.ts";

/** A line of more bytes than this is left to the reference reader, which says so where it is too long. */
export const longestPlainLine = 1 << 19;

/** Encodings in which the bytes below 0x80 are ASCII, and stand for nothing else. */
const asciiWithin = /^(?:utf-8|windows-\d+|iso-8859-\d+(?:-i)?|koi8-[ru]|macintosh|ibm866|x-mac-cyrillic)$/;

/** A field that is left unread; any other holds a column of `plainColumns`. */
const unread = 255;

/** Whether a file of this dialect may hold plain rows at all. */
export function mayBePlain(dialect: ResolvedDialect): boolean {
  const { encoding, splitter, form, headings, time, timeField, dateField, partField } = dialect;
  const { voltage, current, temperature, power, charge } = dialect;
  if (splitter.by !== "mark" || splitter.mark === form.decimalMark || dateField !== undefined || partField !== undefined) return false;
  if (!asciiWithin.test(new TextDecoder(encoding).encoding)) return false;
  // One field that is read as two things is looked at twice, as text.
  const fields = [timeField, ...[voltage, current, temperature, power, charge].flatMap((column) => column?.field ?? [])];
  if (new Set(fields).size < fields.length) return false;
  // Headings that come again are no row; where they could be mistaken for one, they are compared as texts.
  const cursor = new FieldCursor(form, time, splitter.mark.charCodeAt(0));
  cursor.lookInto(new TextEncoder().encode(`${headings?.[timeField] ?? ""}\n`));
  cursor.readTime();
  return headings === undefined || Number.isNaN(cursor.value[0]);
}

/** Scans blocks of whole lines, in order. */
export class PlainScanner {
  readonly #reader: RowReader;
  readonly #decoder: TextDecoder;
  readonly #linesBeforeData: number;
  readonly #fieldCount: number;
  readonly #mark: number;
  readonly #markText: string;
  readonly #columnOfField: Uint8Array;
  readonly #cursor: FieldCursor;
  readonly #decimalMark: number;
  /** Whether times are seconds as they stand. */
  readonly #isTimeNumber: boolean;
  #lines = 0;

  /** @param dialect  one that `mayBePlain` */
  constructor(dialect: ResolvedDialect, reader: RowReader) {
    const { mark } = dialect.splitter as Splitter & { readonly by: "mark" };
    this.#reader = reader;
    this.#decoder = decoderInside(dialect.encoding);
    this.#linesBeforeData = dialect.linesBeforeData;
    this.#fieldCount = dialect.fieldCount;
    this.#mark = mark.charCodeAt(0);
    this.#markText = mark;
    this.#decimalMark = dialect.form.decimalMark.charCodeAt(0);
    this.#isTimeNumber = dialect.time.kind === "elapsed" && dialect.time.unitS === 1;
    this.#cursor = new FieldCursor(dialect.form, dialect.time, this.#mark);
    this.#columnOfField = new Uint8Array(dialect.fieldCount).fill(unread);
    this.#columnOfField[dialect.timeField] = plainColumns.time;
    for (const name of ["voltage", "current", "temperature", "power", "charge"] as const) {
      const field = dialect[name]?.field;
      if (field !== undefined) this.#columnOfField[field] = plainColumns[name];
    }
  }

  /** Lines taken so far, those above the data included. */
  get lines(): number {
    return this.#lines;
  }

  /**
   * Takes a block of lines.
   * @param to  behind the last line's line feed
   * @returns where the line begins that is for the reference reader; `to` where there is none
   * @throws TypeError where bytes are not of the encoding
   */
  scan(bytes: Uint8Array, from: number, to: number): number {
    this.#cursor.lookInto(bytes);
    let at = from;
    while (at < to) {
      if (this.#lines >= this.#linesBeforeData) at = this.#takePlain(bytes, at, to);
      if (at === to) break;
      const next = this.#takeText(bytes, at);
      if (next < 0) return at;
      at = next;
      this.#lines++;
    }
    return to;
  }

  /**
   * Takes plain rows as long as they come; where the line begins that is none, or `to`.
   *
   * Every byte of a long log passes through this loop, so it holds what it looks at in variables of its own, and reads the usual field, a
   * short number, without the cursor.
   */
  #takePlain(bytes: Uint8Array, from: number, to: number): number {
    const reader = this.#reader;
    const mark = this.#mark;
    const decimalMark = this.#decimalMark;
    const columnOfField = this.#columnOfField;
    const isTimeNumber = this.#isTimeNumber;
    const last = this.#fieldCount - 1;
    const timeColumn = plainColumns.time;
    // A row has its marks, a digit of its time at least, and a line feed.
    const room = reader.plainRoom(Math.ceil((to - from) / (last + 2)));
    const { columns } = room;
    const firstLine = this.#lines + 1;
    let row = room.from;
    let rowBegins = from;
    rows: while (rowBegins < to) {
      let at = rowBegins;
      for (let field = 0; field <= last; field++) {
        while (bytes[at] === Byte.blank) at++;
        const begins = at;
        const column = columnOfField[field] as number;
        if (column === unread) at = endOfUnread(bytes, at, mark);
        else {
          const values = columns[column] as Float64Array;
          const isTime = column === timeColumn;
          at = isTime && !isTimeNumber ? -1 : readShortNumber(bytes, begins, decimalMark, values, row);
          if (at < 0) at = this.#readField(begins, column, values, row);
          if (!isTime && reader.isDoubtful(values[row] as number)) break rows;
        }
        if (at < 0) break rows;
        // Between blanks there is no field without anything in it: a row that ends early is a short one.
        if (mark === Byte.blank) {
          if (at === begins || (field < last && bytes[at] !== Byte.blank)) break rows;
          continue;
        }
        while (bytes[at] === Byte.blank) at++;
        if (field < last && bytes[at++] !== mark) break rows;
      }
      while (bytes[at] === Byte.blank) at++;
      if (bytes[at] === Byte.carriageReturn) at++;
      // A chunk of a spreadsheet may hold a line that the reference reader refuses, however plain its columns.
      if (bytes[at++] !== Byte.lineFeed || at - rowBegins > longestPlainLine) break;
      if (reader.wantsTexts(room, row, firstLine + row - room.from)) break;
      rowBegins = at;
      row++;
    }
    const count = row - room.from;
    reader.keepPlain(count, firstLine);
    this.#lines += count;
    return rowBegins;
  }

  /** Reads a field by way of the cursor; where it ends, or -1 where it is not plain. */
  #readField(at: number, column: number, values: Float64Array, row: number): number {
    const cursor = this.#cursor;
    cursor.at = at;
    if (column === plainColumns.time) cursor.readTime();
    else cursor.readNumber();
    const value = cursor.value[0] as number;
    values[row] = value;
    // A field without anything in it is no value; one with something that is no number is looked at as text.
    return Number.isNaN(value) && (column === plainColumns.time || cursor.at > at) ? -1 : cursor.at;
  }

  /** Takes a line as texts; where the next one begins, or -1 where this one is for the reference reader. */
  #takeText(bytes: Uint8Array, from: number): number {
    let at = from;
    let hasQuotation = false;
    let isAscii = true;
    for (;;) {
      const byte = bytes[at] as number;
      if (byte === Byte.lineFeed) break;
      if (byte === Byte.carriageReturn && bytes[at + 1] !== Byte.lineFeed) return -1;
      if (byte === Byte.quotationMark) hasQuotation = true;
      if (byte >= Byte.firstBeyondAscii) isAscii = false;
      at++;
    }
    if (at - from > longestPlainLine) return -1;
    const isAboveData = this.#lines < this.#linesBeforeData;
    if (hasQuotation && !isAboveData) return -1;
    if (isAboveData && isAscii) return at + 1;
    // With its line end, so that letters cut short are told; as one of a stream, since Node decodes whole texts of windows-1252 otherwise.
    const text = this.#decoder.decode(bytes.subarray(from, at + 1), { stream: true });
    if (isAboveData) return at + 1;
    const fields = text.slice(0, text.endsWith("\r\n") ? -2 : -1).split(this.#markText);
    const line = this.#lines + 1;
    this.#reader.take(this.#mark === Byte.blank ? withoutEmpty(fields) : fields, line, line);
    return at + 1;
  }
}

/** Where a field ends that is not read; -1 where it holds what is not looked over: a quotation mark, or letters beyond ASCII. */
function endOfUnread(bytes: Uint8Array, from: number, mark: number): number {
  for (let at = from; ; at++) {
    const byte = bytes[at] as number;
    if (byte === mark || byte === Byte.lineFeed || byte === Byte.carriageReturn) return at;
    if (byte === Byte.quotationMark || byte >= Byte.firstBeyondAscii) return -1;
  }
}
