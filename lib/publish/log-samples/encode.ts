/**
 * A recording's samples in a form that a page can read in parts: an overview of the whole, and chunks of single samples.
 *
 *   log.json       what there is, and where each chunk begins
 *   overview.bin   for each of up to 4,096 equal runs of rows: time, lowest and highest voltage, lowest and highest current
 *   chunk-0.bin …  single samples: time, line of the file, voltage, current
 *
 * Numbers are little-endian: times are doubles, lines unsigned 32-bit, values 32-bit floats (seven digits, more than a recorder has).
 * Columns stand one after the other, so that a page can lay typed arrays over them without copying.
 */
import type { Trace } from "../../measure/trace.ts";

/** Samples in a chunk: some 330 kB, a second or two on a phone. */
const chunkRows = 16_384;
const overviewBuckets = 4096;

export type LogIndex = {
  readonly format: 1;
  readonly rows: number;
  readonly spanS: number;
  /** First row's instant, ms since 1970 UTC; null where nobody knows it. */
  readonly startMs: number | null;
  /** The time zone of the bench. */
  readonly zone: string;
  readonly hasVoltage: boolean;
  readonly hasCurrent: boolean;
  readonly chunkRows: number;
  /** When each chunk's first sample was taken, s from the first row. */
  readonly chunkStartS: readonly number[];
  /** The file's line of each chunk's first sample. */
  readonly chunkStartLine: readonly number[];
  readonly overviewBuckets: number;
  readonly gaps: readonly { readonly startS: number; readonly endS: number }[];
};

export type EncodedLog = { readonly index: LogIndex; readonly overview: Uint8Array; readonly chunks: readonly Uint8Array[] };

/**
 * Encodes a trace.
 *
 * @param startMs  instant of the first sample, where known
 * @param zone     time zone of the bench
 * @returns undefined for a trace without samples
 */
export function encodeLog(trace: Trace, startMs: number | undefined, zone: string): EncodedLog | undefined {
  const rows = trace.elapsedS.length;
  if (rows === 0) return undefined;
  const starts = Array.from({ length: Math.ceil(rows / chunkRows) }, (_, chunk) => chunk * chunkRows);
  const buckets = Math.min(overviewBuckets, rows);
  return {
    index: {
      format: 1,
      rows,
      spanS: trace.spanS,
      startMs: startMs ?? null,
      zone,
      hasVoltage: trace.hasVoltage,
      hasCurrent: trace.hasCurrent,
      chunkRows,
      chunkStartS: starts.map((row) => trace.elapsedS[row] as number),
      chunkStartLine: starts.map((row) => trace.lines[row] as number),
      overviewBuckets: buckets,
      gaps: trace.gaps.map(({ startS, endS }) => ({ startS, endS })),
    },
    overview: encodeOverview(trace, buckets),
    chunks: starts.map((from) => encodeChunk(trace, from, Math.min(rows, from + chunkRows))),
  };
}

function encodeOverview(trace: Trace, buckets: number): Uint8Array {
  const times = new Float64Array(buckets);
  const extremes = Array.from({ length: 4 }, () => new Float32Array(buckets));
  const [lowV, highV, lowA, highA] = extremes as [Float32Array, Float32Array, Float32Array, Float32Array];
  const rows = trace.elapsedS.length;
  for (let bucket = 0; bucket < buckets; bucket++) {
    const from = Math.floor((bucket * rows) / buckets);
    const to = Math.floor(((bucket + 1) * rows) / buckets);
    times[bucket] = trace.elapsedS[from] as number;
    [lowV[bucket], highV[bucket]] = rangeOf(trace.voltagesV, from, to);
    [lowA[bucket], highA[bucket]] = rangeOf(trace.currentsA, from, to);
  }
  return joined(times, ...extremes);
}

function rangeOf(values: Float64Array, from: number, to: number): [low: number, high: number] {
  let low = values[from] as number;
  let high = low;
  for (let i = from + 1; i < to; i++) {
    const value = values[i] as number;
    if (value < low) low = value;
    if (value > high) high = value;
  }
  return [low, high];
}

function encodeChunk(trace: Trace, from: number, to: number): Uint8Array {
  return joined(
    trace.elapsedS.slice(from, to),
    trace.lines.slice(from, to),
    Float32Array.from(trace.voltagesV.subarray(from, to)),
    Float32Array.from(trace.currentsA.subarray(from, to)),
  );
}

/** Columns one after the other. Machines that Node runs on are little-endian. */
function joined(...columns: readonly (Float64Array | Float32Array | Uint32Array)[]): Uint8Array {
  const bytes = new Uint8Array(columns.reduce((sum, column) => sum + column.byteLength, 0));
  let at = 0;
  for (const column of columns) {
    bytes.set(new Uint8Array(column.buffer, column.byteOffset, column.byteLength), at);
    at += column.byteLength;
  }
  return bytes;
}
