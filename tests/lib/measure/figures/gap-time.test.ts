import { describe, expect, it } from "vitest";
import { gapTime } from "../../../../lib/measure/figures/gap-time.ts";
import { plainRecorder, recordingOf, rows, steadyLog } from "../bench.ts";

const withHole = rows(61, 60).filter((t) => t < 660 || t > 1740);
const log = { s: withHole, v: withHole.map(() => 13), a: withHole.map(() => 5) };

describe("time in gaps", () => {
  it("is 20 min where the rows from 660 to 1740 s were cut out of a log of one row a minute (the log of W066)", () => {
    expect(gapTime.compute(recordingOf(log))).toMatchObject({ value: expect.closeTo(1200 / 3600, 9) });
  });

  it("is nothing for an even log, and for one missed row", () => {
    expect(gapTime.compute(recordingOf(steadyLog(61, 13, 5)))).toMatchObject({ value: 0 });
    const s = rows(61, 60).filter((t) => t !== 600);
    expect(gapTime.compute(recordingOf({ s, v: s.map(() => 13), a: s.map(() => 5) }))).toMatchObject({ value: 0 });
  });

  it("is nothing where the recorder's record allows such a pause", () => {
    expect(gapTime.compute(recordingOf(log, { recorder: { ...plainRecorder, longestIntervalS: 1200 } }))).toMatchObject({ value: 0 });
  });
});
