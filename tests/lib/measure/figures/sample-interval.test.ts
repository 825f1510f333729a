import { describe, expect, it } from "vitest";
import { sampleInterval } from "../../../../lib/measure/figures/sample-interval.ts";
import { recordingOf, steadyLog } from "../bench.ts";

describe("usual time between rows", () => {
  it("is the median step: 20 s for steps of 10, 20, 20, 20 and 300 s (by hand)", () => {
    const s = [0, 10, 30, 50, 70, 370];
    expect(sampleInterval.compute(recordingOf({ s, v: s.map(() => 13), a: s.map(() => 5) }))).toMatchObject({ value: 20 });
  });

  it("does not apply to one row", () => {
    expect(sampleInterval.compute(recordingOf(steadyLog(1, 13, 5)))).toMatchObject({ absent: "not applicable" });
  });
});
