import { describe, expect, it } from "vitest";
import { clockStepsBack } from "../../../../lib/measure/figures/clock-steps-back.ts";
import { recordingOf, recordingOfSamples, steadyLog } from "../bench.ts";
import { fieldRecorder, readFieldCharges } from "../field-log.ts";

describe("steps back of the clock", () => {
  it("are none in an even log", () => {
    expect(clockStepsBack.compute(recordingOf(steadyLog(20, 13, 5)))).toMatchObject({
      value: 0,
      interval: { low: 0, high: 0 },
      doubts: [],
    });
  });

  it("count a clock that was set back by an hour, and name the line", () => {
    const s = [0, 60, 120, 180, 240, 300, -3300, -3240, -3180];
    const outcome = clockStepsBack.compute(recordingOf({ s, v: s.map(() => 13), a: s.map(() => 5) }));
    expect(outcome).toMatchObject({ value: 1, doubts: ["at line 8 the clock was set back by 3600 s"] });
  });

  it("find the small disorder of an open field log, which sets no clock (tests/reference/leadacid-17ah: steps of fractions of a second)", async () => {
    for (const { samples } of await readFieldCharges()) {
      const outcome = clockStepsBack.compute(recordingOfSamples(samples, { recorder: fieldRecorder }));
      expect(outcome).toHaveProperty("doubts", []);
    }
  });
});
