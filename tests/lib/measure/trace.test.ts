import { describe, expect, it } from "vitest";
import { makeTrace } from "../../../lib/measure/trace.ts";
import { benchStartMs, type Columns, rows, samplesOf } from "./bench.ts";

const traceOf = (columns: Columns, longestIntervalS?: number) => makeTrace(samplesOf(columns, benchStartMs), longestIntervalS);
const steady = (s: readonly number[]) => ({ s, v: s.map(() => 13), a: s.map(() => 5) });

describe("trace", () => {
  it("is empty for an empty log, and for one whose rows all lack a value", () => {
    for (const columns of [
      { s: [], v: [], a: [] },
      { s: [0, 60], v: [Number.NaN, 13], a: [5, Number.NaN] },
    ])
      expect(traceOf(columns)).toMatchObject({ spanS: 0, coveredS: 0, gaps: [], stretches: [], elapsedS: new Float64Array(0) });
  });

  it("counts from its own first sample, and remembers where that stood on the log's clock", () => {
    const trace = traceOf({ s: [0, 60, 120], v: [Number.NaN, 13, 13], a: [5, 5, 5] });
    expect([...trace.elapsedS]).toEqual([0, 60]);
    expect([...trace.lines]).toEqual([3, 4]);
    expect(trace.firstRowS).toBe(60);
  });

  it("finds a gap, its lines, and the stretches either side; covered time leaves it out", () => {
    const trace = traceOf(steady([...rows(20, 60), ...rows(20, 60, 20 * 60 + 1800)]));
    expect(trace.gaps).toEqual([{ startS: 1140, endS: 3000, lines: [21, 22] }]);
    expect(trace.stretches).toEqual([
      [0, 20],
      [20, 40],
    ]);
    expect(trace.spanS - trace.coveredS).toBe(1860);
  });

  it("lets pass what the recorder's record allows, with a twentieth for its clock, and not more", () => {
    const pauses = steady([...rows(20, 60), ...rows(20, 60, 20 * 60 + 540)]);
    expect(traceOf(pauses, 600).gaps).toEqual([]);
    expect(traceOf(pauses, 500).gaps).toHaveLength(1);
  });

  it("sorts rows that stand a little out of order, with their values and lines", () => {
    const trace = traceOf({ s: [0, 60, 180, 120, 240], v: [1, 2, 4, 3, 5], a: [0, 0, 0, 0, 0] });
    expect([...trace.elapsedS]).toEqual([0, 60, 120, 180, 240]);
    expect([...trace.voltagesV]).toEqual([1, 2, 3, 4, 5]);
    expect([...trace.lines]).toEqual([2, 3, 5, 4, 6]);
    expect(trace.clock).toMatchObject({ outOfOrder: 1, equal: 0, setBack: [] });
  });

  it("takes a clock that was set back to have gone on at the usual interval, and says where and by how much", () => {
    const trace = traceOf(steady([...rows(10, 60), ...rows(10, 60, -3060)]));
    expect(trace.clock.setBack).toEqual([{ line: 12, byS: 3600 }]);
    expect([...trace.elapsedS]).toEqual(rows(20, 60));
    expect(trace.gaps).toEqual([]);
  });

  it("averages rows of one and the same time, or a trapezoid of no width would drop all but the last", () => {
    const trace = traceOf({ s: [0, 60, 60, 60, 120], v: [12, 13, 14, 15, 12], a: [1, 2, 3, 4, 1] });
    expect([...trace.elapsedS]).toEqual([0, 60, 120]);
    expect([...trace.voltagesV]).toEqual([12, 14, 12]);
    expect([...trace.currentsA]).toEqual([1, 3, 1]);
    expect(trace.clock.equal).toBe(2);
  });

  it("keeps rows without a current where the recorder logs none", () => {
    const trace = traceOf({ s: [0, 60], v: [13, 13] });
    expect(trace).toMatchObject({ hasVoltage: true, hasCurrent: false, spanS: 60 });
    expect(trace.currentsA[0]).toBeNaN();
  });

  it("has one sample's trace: no span, one stretch", () => {
    expect(traceOf(steady([0]))).toMatchObject({ spanS: 0, coveredS: 0, stretches: [[0, 1]] });
  });
});
