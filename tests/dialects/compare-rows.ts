/** Holds the fast reader of plain rows against the reference reader: what either finds in the same bytes must be the same, to the last bit. */
import { CsvError } from "csv-parse";
import type { ResolvedDialect } from "../../lib/read/dialect.ts";
import { type BadRows, RowReader, type Rows } from "../../lib/read/log/row-reader.ts";
import { readRows, readRowsByReference } from "../../lib/read/log/rows.ts";

/** What came of it: rows, or the fault that ended the reading. */
export type Outcome = { readonly rows: Rows | undefined; readonly fault: string | undefined };

export type BothWays = {
  readonly outcome: Outcome;
  /** Rows that were read as numbers straight from bytes. */
  readonly plainRows: number;
  /** Where the two ways differ first; undefined where they agree. */
  readonly difference: string | undefined;
};

/** Remembers what it was handed: rows as texts by their first line, and how many came as numbers. */
class WatchingReader extends RowReader {
  readonly texts = new Map<number, string>();
  plainRows = 0;

  override take(fields: string[], firstLine: number, lastLine: number): void {
    this.texts.set(firstLine, JSON.stringify([lastLine, ...fields]));
    super.take(fields, firstLine, lastLine);
  }

  override keepPlain(count: number, firstLine: number): void {
    super.keepPlain(count, firstLine);
    this.plainRows += count;
  }
}

/** Reads bytes, cut into chunks, in both ways. */
export async function readBothWays(chunks: readonly Uint8Array[], dialect: ResolvedDialect, badRows: BadRows = []): Promise<BothWays> {
  const fastReader = new WatchingReader(dialect, badRows);
  const fast = await outcomeOf(() => readRows(streamOf(chunks), dialect, fastReader), fastReader);
  const referenceReader = new WatchingReader(dialect, badRows);
  const reference = await outcomeOf(() => readRowsByReference(streamOf(chunks), dialect, referenceReader), referenceReader);
  return {
    outcome: fast,
    plainRows: fastReader.plainRows,
    difference: differenceOf(fast, reference) ?? (fast.rows === undefined ? undefined : differenceOfTexts(fastReader, referenceReader)),
  };
}

/** Rows that the fast way handed on as texts have the reference reader's cells, and none is left out or comes twice. */
function differenceOfTexts(fast: WatchingReader, reference: WatchingReader): string | undefined {
  for (const [line, cells] of fast.texts)
    if (reference.texts.get(line) !== cells) return `line ${line}: cells ${cells}, by reference ${reference.texts.get(line)}`;
  const rows = fast.texts.size + fast.plainRows;
  return rows === reference.texts.size ? undefined : `${rows} rows, by reference ${reference.texts.size}`;
}

async function outcomeOf(read: () => Promise<boolean>, reader: RowReader): Promise<Outcome> {
  try {
    return { rows: reader.finish(await read()), fault: undefined };
  } catch (error) {
    // Both are told as problems of the file; anything else is a fault of ours.
    if (error instanceof CsvError) return { rows: undefined, fault: error.code };
    if (error instanceof TypeError) return { rows: undefined, fault: "encoding" };
    throw error;
  }
}

async function* streamOf(chunks: readonly Uint8Array[]): AsyncGenerator<Uint8Array> {
  // A chunk holds until the next one is asked for, as when a file is read: a reader that keeps one finds other bytes in it.
  for (const chunk of chunks) {
    const handed = chunk.slice();
    yield handed;
    handed.fill(0xff);
  }
}

function differenceOf(fast: Outcome, reference: Outcome): string | undefined {
  if (fast.fault !== reference.fault) return `fault ${fast.fault ?? "none"}, by reference ${reference.fault ?? "none"}`;
  if (fast.rows === undefined || reference.rows === undefined) return undefined;
  for (const name of Object.keys(reference.rows) as (keyof Rows)[]) {
    const [a, b] = [fast.rows[name], reference.rows[name]];
    if (a instanceof Float64Array || a instanceof Uint32Array) {
      const difference = differenceOfColumns(a, b as typeof a, reference.rows.lines);
      if (difference !== undefined) return `${name}: ${difference}`;
    } else if (JSON.stringify(a) !== JSON.stringify(b)) return `${name}: ${JSON.stringify(a)}, by reference ${JSON.stringify(b)}`;
  }
  return undefined;
}

function differenceOfColumns(a: ArrayLike<number>, b: ArrayLike<number>, lines: Uint32Array): string | undefined {
  if (a.length !== b.length) return `${a.length} values, by reference ${b.length}`;
  // Object.is tells -0 from 0, and NaN is NaN.
  for (let i = 0; i < a.length; i++) if (!Object.is(a[i], b[i])) return `${a[i]}, by reference ${b[i]}, line ${lines[i]}`;
  return undefined;
}
