import { describe, expect, it } from "vitest";
import { findOnOffHolding } from "../../../../lib/measure/stages/on-off-holding.ts";
import { makeTrace } from "../../../../lib/measure/trace.ts";
import { absorption, bulk, type FullColumns, logOf, recordingOf, samplesOf } from "../bench.ts";

const scales = { noiseV: 0.005, idleA: 0.1 };
const cells = 6;

/** Rows a minute apart: pauses of twelve minutes that sink to 13.1 V, each followed by one row of charge that lifts the battery. */
function topUps(rounds: number, startS = 0): FullColumns {
  const log: FullColumns = { s: [], v: [], a: [] };
  for (let row = 0; row < 13 * rounds; row++) {
    const minute = row % 13;
    log.s.push(startS + 60 * row);
    log.v.push(minute === 12 ? 14.1 : 13.1 + 0.8 * Math.exp(-minute / 3));
    log.a.push(minute === 12 ? 2 : 0);
  }
  return log;
}

const find = (log: FullColumns) => findOnOffHolding(makeTrace(samplesOf(log, undefined), undefined), scales, cells);

describe("holding between two voltages", () => {
  it("is found in charges of a single row, from the first pause to the last row, with both thresholds", () => {
    const [holding, ...others] = find(topUps(5));
    expect(others).toEqual([]);
    expect([holding?.from, holding?.to]).toEqual([0, 65]);
    // The last three rows of a pause hold 13.1 + 0.8 e^(-10/3) V in their middle: 13.13 V.
    expect(holding?.told).toBe("5 times it waited without current until about 13.13 V and charged to about 14.10 V, once in 0.2 h");
  });

  it("is none in two rounds, which may be chance", () => {
    expect(find(topUps(2))).toEqual([]);
    expect(find(topUps(3))).toHaveLength(1);
  });

  it("is none where the rows of current are teeth: they leave the battery no higher than they found it", () => {
    const log = topUps(5);
    const teeth = { ...log, v: log.v.map((voltageV, row) => (row % 13 === 12 ? voltageV : 13.1)) };
    expect(find(teeth)).toEqual([]);
  });

  it("does not break at a tooth in a pause, nor at a row of none in a charge", () => {
    const log = topUps(6);
    const odd = { ...log, a: log.a.map((currentA, row) => (row === 13 + 5 ? 3 : currentA)) };
    expect(find(odd)).toMatchObject([{ from: 0, to: 78 }]);
  });

  it("goes on over a gap that hides at what voltage the charger woke", () => {
    const log = topUps(6);
    const isSeen = log.s.map((_, row) => row < 13 * 3 + 6 || row >= 13 * 3 + 12);
    const seen = (values: readonly number[]): number[] => values.filter((_, row) => isSeen[row]);
    const found = find({ s: seen(log.s), v: seen(log.v), a: seen(log.a) });
    expect(found).toMatchObject([{ from: 0, to: 72 }]);
    expect(found[0]?.told).toMatch(/^6 times .* until about 13.13 V/);
  });

  it("is no float that follows three days, below and above what the recorder tells from none", () => {
    const hours = Array.from({ length: 72 * 6 }, (_, row) => row / 6);
    const day = (h: number): number => Math.sin((h / 24) * 2 * Math.PI);
    const log = { s: hours.map((h) => 3600 * h), v: hours.map((h) => 13.5 + 0.15 * day(h)), a: hours.map((h) => 0.15 + 0.12 * day(h)) };
    expect(find(log)).toEqual([]);
  });

  it("is none in pulses, whose pauses are shorter than 200 s", () => {
    const s = Array.from({ length: 600 }, (_, row) => 10 * row);
    const isOn = (atS: number): boolean => atS % 100 < 30;
    expect(find({ s, v: s.map((atS) => (isOn(atS) ? 14.2 : 13.2 - (atS % 100) / 1000)), a: s.map((atS) => (isOn(atS) ? 3 : 0)) })).toEqual(
      [],
    );
  });

  it("is none in an empty log, in one row, and without any current", () => {
    expect(find({ s: [], v: [], a: [] })).toEqual([]);
    expect(find({ s: [0], v: [13], a: [5] })).toEqual([]);
    expect(find({ s: [0, 60, 120], v: [13, 13, 13], a: [0, 0, 0] })).toEqual([]);
  });

  it("becomes one stage behind the limit", () => {
    const charge = logOf([bulk, absorption]);
    const held = topUps(8, (charge.s.at(-1) ?? 0) + 60);
    const joined = { s: [...charge.s, ...held.s], v: [...charge.v, ...held.v], a: [...charge.a, ...held.a] };
    expect(recordingOf(joined).stages.map((stage) => stage.kind)).toEqual(["constant-current", "constant-voltage", "on-off-holding"]);
  });
});
