/** Cuts a log's streamed text into rows of fields; csv-parse is the reference reader for every file with a separator. */
import { parse } from "csv-parse";
import { linesOf } from "../decode.ts";
import { type Splitter, splitAtPlaces, withoutEmpty } from "../dialect/fields.ts";

/** Takes one row: its fields, and the lines of the file, counted from 1, on which it begins and ends. */
export type TakeRow = (fields: string[], firstLine: number, lastLine: number) => void;

/** No recorder writes a longer row; a file without line endings must not fill the memory. */
export const longestRow = 1_000_000;

/**
 * Feeds a log's rows to `take`. The lines above the data are taken off first, since a preamble may hold a lone quotation mark.
 * @throws CsvError where a quotation mark is never closed, or a row is longer than `longestRow`
 */
export async function parseRows(texts: AsyncIterable<string>, splitter: Splitter, linesBeforeData: number, take: TakeRow): Promise<void> {
  const body = withoutFirstLines(texts, linesBeforeData);
  if (splitter.by === "mark") await parseMarked(body, splitter.mark, linesBeforeData, take);
  else {
    let line = linesBeforeData;
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
