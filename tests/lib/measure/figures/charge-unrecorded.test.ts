import { describe, expect, it } from "vitest";
import { chargeRequired } from "../../../../lib/measure/figures/charge-required.ts";
import { chargeUnrecorded } from "../../../../lib/measure/figures/charge-unrecorded.ts";
import { benchStartMs, contextOf, plainRecorder, recordingOf, steadyLog, unstatedRecorder, valueIn, visit } from "../bench.ts";

const readings = [visit(1, -1, { density_1: 1.15, acid_C: 25 }), visit(2, 20, { density_1: 1.27, acid_C: 25 })];
const twoHoursAt5A = recordingOf(steadyLog(121, 13, 5));
const withRecordings = (...recordings: (typeof twoHoursAt5A)[]) => contextOf({ readings, connections: [{ onH: 0, offH: 20, recordings }] });

describe("charge that nobody recorded", () => {
  it("is what the density needs less what was recorded, by hand: 10 Ah less than required", () => {
    const context = withRecordings(twoHoursAt5A);
    expect(valueIn(chargeUnrecorded.compute(context))).toBeCloseTo(valueIn(chargeRequired.compute(context)) - 10, 9);
  });

  it("takes all of it where nothing was recorded", () => {
    const context = withRecordings();
    expect(valueIn(chargeUnrecorded.compute(context))).toBeCloseTo(valueIn(chargeRequired.compute(context)), 9);
  });

  it("counts only what was recorded between the two visits", () => {
    // Two hours at 5 A, of which one lies after the last visit.
    const late = recordingOf(steadyLog(121, 13, 5), { startMs: benchStartMs + 19 * 3_600_000 });
    const context = withRecordings(late);
    expect(valueIn(chargeUnrecorded.compute(context))).toBeCloseTo(valueIn(chargeRequired.compute(context)) - 5, 9);
  });

  it("cannot be told where nobody noted when a log began that only counts", () => {
    const unplaced = recordingOf(steadyLog(121, 13, 5), { startMs: undefined });
    expect(chargeUnrecorded.compute(withRecordings(unplaced))).toMatchObject({
      absent: "cannot tell",
      why: "nobody noted when log.csv began, so it cannot be set against the visits",
    });
  });

  it("carries no interval where the recorder's accuracy is not stated: a worse recorder must not look surer", () => {
    const context = withRecordings(recordingOf(steadyLog(121, 13, 5), { recorder: unstatedRecorder }));
    expect(chargeUnrecorded.compute(context)).not.toHaveProperty("interval");
  });

  it("does not apply where more was recorded than the density needs", () => {
    const much = recordingOf(steadyLog(1201, 14, 8));
    expect(chargeUnrecorded.compute(withRecordings(much))).toMatchObject({
      absent: "not applicable",
      why: expect.stringContaining("so no unrecorded charge shows"),
    });
  });

  it("is never narrower with a less accurate recorder", () => {
    const width = (plusMinus: number): number => {
      const recorder = { ...plainRecorder, measures: { ...plainRecorder.measures, current: { plusMinus, from: "data sheet" as const } } };
      const outcome = chargeUnrecorded.compute(withRecordings(recordingOf(steadyLog(121, 13, 5), { recorder })));
      if ("absent" in outcome || outcome.interval === undefined) throw new Error("expected an interval");
      return outcome.interval.high - outcome.interval.low;
    };
    expect(width(0.5)).toBeGreaterThan(width(0.1));
  });
});
