/** Reads a log's samples in parts, as lib/publish/log-samples lays them out. */

import type { LogIndex } from "../../../lib/publish/log-samples/encode.ts";

export type { LogIndex };

/** Samples or runs of samples in time order: for a single sample lowest and highest are one. */
export type Points = {
  readonly timesS: Float64Array;
  /** Lines of the file; undefined for runs of samples. */
  readonly lines: Uint32Array | undefined;
  readonly voltage: { readonly low: Float32Array; readonly high: Float32Array };
  readonly current: { readonly low: Float32Array; readonly high: Float32Array };
};

/** More single samples than these chunks hold are shown as runs. */
const mostChunks = 6;
const keptChunks = 12;

export class LogData {
  readonly index: LogIndex;
  readonly #folder: URL;
  readonly #overview: Points;
  readonly #chunks = new Map<number, Points>();

  private constructor(folder: URL, index: LogIndex, overview: Points) {
    this.#folder = folder;
    this.index = index;
    this.#overview = overview;
  }

  /** @param folder  address of the folder that holds log.json; throws where it cannot be fetched */
  static async open(folder: URL): Promise<LogData> {
    const index = (await (await fetched(new URL("log.json", folder))).json()) as LogIndex;
    const bytes = await (await fetched(new URL("overview.bin", folder))).arrayBuffer();
    const n = index.overviewBuckets;
    const column = (place: number) => new Float32Array(bytes, 8 * n + 4 * n * place, n);
    return new LogData(folder, index, {
      timesS: new Float64Array(bytes, 0, n),
      lines: undefined,
      voltage: { low: column(0), high: column(1) },
      current: { low: column(2), high: column(3) },
    });
  }

  /** Single samples where few enough lie between two times, else runs of them. */
  async between(fromS: number, toS: number): Promise<Points> {
    const first = this.#chunkAt(fromS);
    const last = this.#chunkAt(toS);
    if (last - first >= mostChunks) return this.#overview;
    const parts = await Promise.all(Array.from({ length: last - first + 1 }, (_, i) => this.#chunk(first + i)));
    return parts.length === 1 ? (parts[0] as Points) : joined(parts);
  }

  /** When the sample of a line of the file was taken; the nearest later one where that line holds none. */
  async timeOfLine(line: number): Promise<number> {
    const starts = this.index.chunkStartLine;
    let place = starts.findLastIndex((start) => start <= line);
    if (place < 0) place = 0;
    const { lines, timesS } = await this.#chunk(place);
    const at = lines?.findIndex((candidate) => candidate >= line) ?? -1;
    return timesS[at < 0 ? timesS.length - 1 : at] ?? 0;
  }

  #chunkAt(timeS: number): number {
    return Math.max(
      0,
      this.index.chunkStartS.findLastIndex((start) => start <= timeS),
    );
  }

  async #chunk(place: number): Promise<Points> {
    const known = this.#chunks.get(place);
    if (known !== undefined) return known;
    const bytes = await (await fetched(new URL(`chunk-${place}.bin`, this.#folder))).arrayBuffer();
    const n = Math.min(this.index.chunkRows, this.index.rows - place * this.index.chunkRows);
    const voltage = new Float32Array(bytes, 12 * n, n);
    const current = new Float32Array(bytes, 16 * n, n);
    const chunk: Points = {
      timesS: new Float64Array(bytes, 0, n),
      lines: new Uint32Array(bytes, 8 * n, n),
      voltage: { low: voltage, high: voltage },
      current: { low: current, high: current },
    };
    if (this.#chunks.size >= keptChunks) this.#chunks.delete(this.#chunks.keys().next().value as number);
    this.#chunks.set(place, chunk);
    return chunk;
  }
}

async function fetched(address: URL): Promise<Response> {
  const response = await fetch(address);
  if (!response.ok) throw new Error(`${address.pathname}: ${response.status}`);
  return response;
}

function joined(parts: readonly Points[]): Points {
  const length = parts.reduce((sum, part) => sum + part.timesS.length, 0);
  const timesS = new Float64Array(length);
  const lines = new Uint32Array(length);
  const voltage = new Float32Array(length);
  const current = new Float32Array(length);
  let at = 0;
  for (const part of parts) {
    timesS.set(part.timesS, at);
    if (part.lines !== undefined) lines.set(part.lines, at);
    voltage.set(part.voltage.low, at);
    current.set(part.current.low, at);
    at += part.timesS.length;
  }
  return { timesS, lines, voltage: { low: voltage, high: voltage }, current: { low: current, high: current } };
}

/** Place of the point nearest to a time; points are in time order and there is at least one. */
export function nearest({ timesS }: Points, timeS: number): number {
  let low = 0;
  let high = timesS.length - 1;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((timesS[middle] as number) < timeS) low = middle + 1;
    else high = middle;
  }
  const before = timesS[low - 1];
  return before !== undefined && timeS - before < (timesS[low] as number) - timeS ? low - 1 : low;
}
