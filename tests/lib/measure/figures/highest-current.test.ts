import { describe, expect, it } from "vitest";
import { highestCurrent } from "../../../../lib/measure/figures/highest-current.ts";
import { recordingOf, rows } from "../bench.ts";

describe("highest current in any row", () => {
  it("is the largest single value with its own line as evidence, a spike of one row included (read by hand)", () => {
    const s = rows(5, 60);
    const outcome = highestCurrent.compute(recordingOf({ s, v: s.map(() => 13), a: [5, 5.1, 7.9, 5, 4.9] }));
    expect(outcome).toMatchObject({ value: 7.9, standardUncertainty: 0.1 / Math.sqrt(3), evidence: [{ lines: [4, 4] }] });
  });

  it("is absent where the recorder logs no current", () => {
    const s = rows(5, 60);
    expect(highestCurrent.compute(recordingOf({ s, v: s.map(() => 13) }))).toMatchObject({
      absent: "not recorded",
      why: "the recorder logs no current",
    });
  });
});
