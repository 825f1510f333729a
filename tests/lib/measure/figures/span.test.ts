import { describe, expect, it } from "vitest";
import { span } from "../../../../lib/measure/figures/span.ts";
import { plainRecorder, recordingOf, steadyLog } from "../bench.ts";

describe("span", () => {
  it("is 2 h from the first to the last of 121 rows a minute apart (by hand), gaps included", () => {
    expect(span.compute(recordingOf(steadyLog(121, 13, 5)))).toMatchObject({ value: 2, standardUncertainty: undefined });
    const s = [0, 60, 120, 7200];
    expect(span.compute(recordingOf({ s, v: s.map(() => 13), a: s.map(() => 5) }))).toMatchObject({ value: 2 });
  });

  it("carries the drift of a clock that is stated: 0.1 % of 2 h, rectangular", () => {
    const recorder = {
      ...plainRecorder,
      measures: { ...plainRecorder.measures, time: { percentOfReading: 0.1, from: "data sheet" as const } },
    };
    expect(span.compute(recordingOf(steadyLog(121, 13, 5), { recorder }))).toMatchObject({
      standardUncertainty: expect.closeTo(0.002 / Math.sqrt(3), 9),
    });
  });
});
