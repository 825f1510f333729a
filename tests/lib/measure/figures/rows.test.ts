import { describe, expect, it } from "vitest";
import { rows } from "../../../../lib/measure/figures/rows.ts";
import { recordingOf } from "../bench.ts";

describe("rows with values", () => {
  it("counts rows that have every value the recorder logs (by hand: 3 of 5)", () => {
    const log = { s: [0, 60, 120, 180, 240], v: [12, Number.NaN, 12, 12, 12], a: [5, 5, Number.NaN, 5, 5] };
    expect(rows.compute(recordingOf(log))).toMatchObject({ value: 3, interval: { low: 3, high: 3 } });
  });

  it("is 0 for an empty log: a count, not an absence", () => {
    expect(rows.compute(recordingOf({ s: [], v: [], a: [] }))).toMatchObject({ value: 0 });
  });
});
