import { describe, expect, it } from "vitest";
import { timeAboveGassing } from "../../../../lib/measure/figures/time-above-gassing.ts";
import { recordingOf, rows, unstatedRecorder } from "../bench.ts";

/** A ramp from 13.31 to 15.31 V in two hours: it passes 14.31 V, 2.385 V a cell, after one. */
const s = rows(7201, 1);
const ramp = { s, v: s.map((t) => 13.31 + t / 3600), a: s.map(() => 5) };

describe("time above gassing voltage", () => {
  it("is one of two hours of a ramp, and its interval moves with the meter's 0.1 V: 0.115 h either way, by hand", () => {
    const outcome = timeAboveGassing.compute(recordingOf(ramp));
    const halfWidthH = (2 * 0.1) / Math.sqrt(3);
    // One row is a second: 0.0003 h.
    expect(outcome).toMatchObject({
      value: expect.closeTo(1, 3),
      interval: { low: expect.closeTo(1 - halfWidthH, 3), high: expect.closeTo(1 + halfWidthH, 3) },
    });
  });

  it("takes the gassing voltage at the battery's temperature: 2.44 V a cell at 10 °C, by the handbook's table (from memory)", () => {
    const cold = { lowC: 10, highC: 10, words: "read", evidence: [] };
    const outcome = timeAboveGassing.compute({ ...recordingOf(ramp), visitTemperature: cold });
    expect(outcome).toMatchObject({ value: expect.closeTo(2 - (6 * 2.44 - 13.31), 3) });
  });

  it("has no interval where the accuracy is not stated, and is absent without a voltage", () => {
    expect(timeAboveGassing.compute(recordingOf(ramp, { recorder: unstatedRecorder }))).toHaveProperty("interval", undefined);
    expect(timeAboveGassing.compute(recordingOf({ s: ramp.s, a: ramp.a }))).toMatchObject({ absent: "not recorded" });
  });
});
