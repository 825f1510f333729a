/** Cuts a log's streamed bytes into rows: plain ones are scanned, and csv-parse is the reference reader for every file with a separator. */
import { parse } from "csv-parse";
import { decode, linesOf } from "../decode.ts";
import { type Splitter, splitAtPlaces, withoutEmpty } from "../dialect/fields.ts";
import type { ResolvedDialect } from "../dialect.ts";
import { Byte } from "./bytes.ts";
import { longestPlainLine, mayBePlain, PlainScanner } from "./plain-rows.ts";
import type { RowReader } from "./row-reader.ts";

/** Takes one row: its fields, and the lines of the file, counted from 1, on which it begins and ends. */
export type TakeRow = (fields: string[], firstLine: number, lastLine: number) => void;

/** No recorder writes a longer row; a file without line endings must not fill the memory. */
export const longestRow = 1_000_000;

/**
 * Feeds a log's rows to a reader, plain ones as numbers and all others as texts.
 *
 * @returns whether the file stops without a line end
 * @throws TypeError where bytes are not of the encoding, and what `parseRows` throws
 */
export async function readRows(bytes: AsyncIterable<Uint8Array>, dialect: ResolvedDialect, reader: RowReader): Promise<boolean> {
  if (!mayBePlain(dialect)) return readRowsByReference(bytes, dialect, reader);
  const scanner = new PlainScanner(dialect, reader);
  const chunks = bytes[Symbol.asyncIterator]();
  let endsInLineEnd = true;
  const watched = async function* (): AsyncGenerator<Uint8Array> {
    for (let next = await chunks.next(); next.done !== true; next = await chunks.next()) {
      const last = next.value.at(-1);
      if (last !== undefined) endsInLineEnd = last === Byte.lineFeed || last === Byte.carriageReturn;
      yield next.value;
    }
  };
  try {
    const rest = await scanPlain(watched(), scanner, new TextDecoder(dialect.encoding).encoding === "utf-8");
    if (rest === undefined) return !endsInLineEnd;
    // What was read above keeps its mark of byte order out; what stands here is the file's own.
    const texts = decode(joined(rest, watched()), dialect.encoding, true);
    await parseRows(texts, dialect.splitter, dialect.linesBeforeData, (...row) => reader.take(...row), scanner.lines);
    return !endsInLineEnd;
  } finally {
    await chunks.return?.();
  }
}

/** As `readRows`, every row by way of texts: what the fast way is held against, and the way of files that cannot be plain. */
export async function readRowsByReference(
  bytes: AsyncIterable<Uint8Array>,
  { encoding, splitter, linesBeforeData }: ResolvedDialect,
  reader: RowReader,
): Promise<boolean> {
  let lastCharacter = "\n";
  const texts = async function* (): AsyncGenerator<string> {
    for await (const text of decode(bytes, encoding)) {
      lastCharacter = text.charAt(text.length - 1);
      yield text;
    }
  };
  await parseRows(texts(), splitter, linesBeforeData, (...row) => reader.take(...row));
  return lastCharacter !== "\n" && lastCharacter !== "\r";
}

const utf8Mark = [0xef, 0xbb, 0xbf] as const;

/**
 * Scans blocks of whole lines as they come.
 * @param mayHaveMark  whether the file may begin with the byte order mark of UTF-8, which then is taken off
 * @returns undefined at the end of the file; else the bytes at hand from the line on that is for the reference reader: what was scanned
 * is not read again, and nothing behind it has been looked at
 */
async function scanPlain(chunks: AsyncIterable<Uint8Array>, scanner: PlainScanner, mayHaveMark: boolean): Promise<Uint8Array | undefined> {
  // A line that a chunk cuts in two is put together in front of the next chunk.
  let block = new Uint8Array(0);
  let held = 0;
  let isBeginning = true;
  for await (const chunk of chunks) {
    if (held + chunk.length + 1 > block.length) {
      const larger = new Uint8Array(2 * (held + chunk.length + 1));
      larger.set(block.subarray(0, held));
      block = larger;
    }
    block.set(chunk, held);
    const filled = held + chunk.length;
    if (isBeginning && filled < utf8Mark.length) {
      held = filled;
      continue;
    }
    let from = isBeginning && mayHaveMark && utf8Mark.every((byte, at) => block[at] === byte) ? utf8Mark.length : 0;
    isBeginning = false;
    const whole = block.subarray(0, filled).lastIndexOf(Byte.lineFeed) + 1;
    if (whole > from) {
      const scanned = scanner.scan(block, from, whole);
      if (scanned < whole) return block.slice(scanned, filled);
      from = whole;
    }
    if (filled - from > longestPlainLine) return block.slice(from, filled);
    block.copyWithin(0, from, filled);
    held = filled - from;
  }
  // The last line has no end of its own.
  if (held === 0) return undefined;
  block[held] = Byte.lineFeed;
  const scanned = scanner.scan(block, 0, held + 1);
  return scanned <= held ? block.slice(scanned, held) : undefined;
}

async function* joined(first: Uint8Array, rest: AsyncIterable<Uint8Array>): AsyncGenerator<Uint8Array> {
  yield first;
  yield* rest;
}

/**
 * Feeds a log's rows to `take`. The lines above the data are taken off first, since a preamble may hold a lone quotation mark.
 *
 * @param linesTaken  lines of the file that stand before the text, and have been taken by other means
 * @throws CsvError where a quotation mark is never closed, or a row is longer than `longestRow`
 */
export async function parseRows(
  texts: AsyncIterable<string>,
  splitter: Splitter,
  linesBeforeData: number,
  take: TakeRow,
  linesTaken = 0,
): Promise<void> {
  const body = withoutFirstLines(texts, Math.max(0, linesBeforeData - linesTaken));
  const linesBefore = Math.max(linesBeforeData, linesTaken);
  if (splitter.by === "mark") await parseMarked(body, splitter.mark, linesBefore, take);
  else {
    let line = linesBefore;
    let last: string | undefined;
    for await (const text of linesOf(body)) {
      if (last !== undefined) take(splitAtPlaces(last, splitter.starts), ++line, line);
      last = text;
    }
    // What stands behind the last line ending is a row only if it holds something.
    if (last !== undefined && last !== "") take(splitAtPlaces(last, splitter.starts), ++line, line);
  }
}

async function parseMarked(texts: AsyncIterable<string>, mark: string, linesBefore: number, take: TakeRow): Promise<void> {
  let nextLine = linesBefore + 1;
  let counted = 0;
  const parser = parse({
    delimiter: mark,
    // Told, not found out from the first line: some recorders change their line endings in the middle of a file.
    record_delimiter: ["\r\n", "\n", "\r"],
    relax_column_count: true,
    relax_quotes: true,
    skip_empty_lines: false,
    max_record_size: longestRow,
    on_record: (fields: string[], context: { lines: number }) => {
      // csv-parse counts CR LF inside quotation marks twice, so the lines of such a row are counted here.
      const breaks = context.lines - counted > 1 ? lineBreaksIn(fields) : 0;
      counted = context.lines;
      take(mark === " " ? withoutEmpty(fields) : fields, nextLine, nextLine + breaks);
      nextLine += breaks + 1;
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
  for await (const text of texts)
    if (!parser.write(text)) await Promise.race([new Promise<void>((resolve) => parser.once("drain", resolve)), done]);
  parser.end();
  await done;
}

const lineBreaksIn = (fields: readonly string[]): number =>
  fields.reduce((sum, field) => sum + (field.match(/\r\n|\n|\r/g)?.length ?? 0), 0);

/** The text behind the first lines. */
async function* withoutFirstLines(texts: AsyncIterable<string>, lines: number): AsyncGenerator<string> {
  let linesToSkip = lines;
  let pending = "";
  for await (const text of texts) {
    if (linesToSkip === 0) {
      yield text;
      continue;
    }
    pending += text;
    let from = 0;
    while (linesToSkip > 0) {
      const end = lineEnd(pending, from);
      if (end < 0) break;
      from = end;
      linesToSkip--;
    }
    pending = pending.slice(from);
    if (linesToSkip > 0) continue;
    if (pending.length > 0) yield pending;
    pending = "";
  }
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
