import { describe, expect, it } from "vitest";
import { digitsFor, elapsed, timeTicks, valueTicks } from "../../../_site-config/assets/explore/scale.ts";
import { makeTrace } from "../../../lib/measure/trace.ts";
import { encodeLog } from "../../../lib/publish/log-samples/encode.ts";
import { rows, samplesOf } from "../measure/bench.ts";

const s = rows(40_000, 1);
const trace = makeTrace(samplesOf({ s, v: s.map((t) => 12 + t / 20_000), a: s.map((t) => (t === 30_001 ? 9 : 5)) }, 0), undefined);
const encoded = encodeLog(trace, 1000, "UTC");

describe("a log's samples for the explorer", () => {
  it("hold every row once, in chunks, with its line, time and values", () => {
    const { index, chunks } = encoded ?? { index: undefined, chunks: [] };
    expect(index).toMatchObject({ rows: 40_000, chunkRows: 16_384, chunkStartS: [0, 16_384, 32_768], chunkStartLine: [2, 16_386, 32_770] });
    const counts = chunks.map((chunk) => chunk.byteLength / 20);
    expect(counts).toEqual([16_384, 16_384, 7232]);
    const last = chunks[2]?.slice().buffer ?? new ArrayBuffer(0);
    const n = 7232;
    expect(new Float64Array(last, 0, n).at(-1)).toBe(39_999);
    expect(new Uint32Array(last, 8 * n, n).at(-1)).toBe(40_001);
    expect(new Float32Array(last, 12 * n, n).at(-1)).toBeCloseTo(12 + 39_999 / 20_000, 5);
    expect(new Float32Array(last, 16 * n, n).at(-1)).toBe(5);
  });

  it("show a spike of one row in the overview, where a mean would lose it", () => {
    const bytes = encoded?.overview.slice().buffer ?? new ArrayBuffer(0);
    const n = encoded?.index.overviewBuckets ?? 0;
    expect(n).toBe(4096);
    expect(Math.max(...new Float32Array(bytes, 8 * n + 12 * n, n))).toBe(9);
    expect(Math.max(...new Float32Array(bytes, 8 * n + 8 * n, n))).toBe(5);
  });

  it("are not made of a log without rows", () => {
    expect(encodeLog(makeTrace(samplesOf({ s: [], v: [], a: [] }, 0), undefined), undefined, "UTC")).toBeUndefined();
  });
});

describe("ticks of the explorer", () => {
  it("stand at round numbers within the ends", () => {
    expect(valueTicks(12.02, 14.51, 5)).toEqual([12.5, 13, 13.5, 14, 14.5]);
    expect(timeTicks(0, 7200, 8)).toEqual([0, 900, 1800, 2700, 3600, 4500, 5400, 6300, 7200]);
    expect(digitsFor([14.43, 14.435])).toBe(3);
    expect(digitsFor([10, 20])).toBe(0);
  });

  it("write times from the first row as hours, minutes and seconds, and carry rounding on", () => {
    expect(elapsed(3 * 3600 + 5 * 60 + 9)).toBe("3:05:09");
    expect(elapsed(59.96, 1)).toBe("0:01:00.0");
    expect(elapsed(100 * 3600)).toBe("100:00:00");
  });
});
