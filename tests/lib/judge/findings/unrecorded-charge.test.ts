import { describe, expect, it } from "vitest";
import { unrecordedCharge } from "../../../../lib/judge/findings/unrecorded-charge.ts";
import { contextOf, recordingOf, steadyLog, unstatedRecorder, visit } from "../../measure/bench.ts";

const readings = [visit(1, -1, { density_1: 1.15, acid_C: 25 }), visit(2, 30, { density_1: 1.27, acid_C: 25 })];
const judged = (recordings: readonly ReturnType<typeof recordingOf>[], more: Parameters<typeof contextOf>[0] = {}) =>
  unrecordedCharge.judge(contextOf({ readings, connections: [{ onH: 0, offH: 29, recordings }], ...more }));

describe("did charge go in that nobody recorded?", () => {
  it("yes, between two bounds, where one hour at 5 A was recorded and the density rose by 0.120", () => {
    expect(judged([recordingOf(steadyLog(61, 13, 5))])).toMatchObject({
      verdict: "yes",
      weight: "caution",
      sentence: expect.stringMatching(/^[\d.]+ to [\d.]+\sAh went into the battery while nobody recorded/),
    });
  });

  it("none can have, where the recorder saw every hour", () => {
    expect(
      judged([recordingOf(steadyLog(541, 14, 5))], {
        connections: [{ onH: 0, offH: 9, recordings: [recordingOf(steadyLog(541, 14, 5))] }],
      }),
    ).toMatchObject({
      verdict: "none can have",
      weight: "note",
      sentence: expect.stringContaining("the recorder saw every hour"),
    });
  });

  it("claims neither that the recorder saw every hour nor that nothing went in, where one of two connections has no record", () => {
    const full = recordingOf(steadyLog(541, 14, 5));
    const judgement = judged([], {
      readings: [...readings, visit(3, 60, { density_1: 1.27, acid_C: 25 })],
      connections: [
        { onH: 0, offH: 9, recordings: [full] },
        { onH: 31, offH: 55, recordings: [] },
      ],
    });
    expect(judgement).toMatchObject({ verdict: "cannot tell", weight: "unsure" });
    expect(judgement?.sentence).toMatch(/^For some of the time between visits no log tells the charge: 0(\.0+)? to [\d.]+\u202FAh/);
    expect(judgement?.why.join()).toContain("there is no record that could fall short");
  });

  it("cannot tell, where charge and density agree within their errors and the charger stayed on for 20 h more", () => {
    // About 46 Ah are needed.
    expect(judged([recordingOf(steadyLog(541, 14, 5))])).toMatchObject({ verdict: "cannot tell", weight: "unsure" });
  });

  it("cannot tell, where far more was recorded than a battery holds: what more may have gone in turned into gas", () => {
    expect(judged([recordingOf(steadyLog(1201, 14, 6))])).toMatchObject({ verdict: "cannot tell" });
  });

  it("yes, even with a recorder of unstated accuracy, where a tenth of what density needs was recorded", () => {
    expect(judged([recordingOf(steadyLog(61, 13, 5), { recorder: unstatedRecorder })])).toMatchObject({ verdict: "yes" });
  });

  it("does not arise for a sealed battery or without two densities", () => {
    expect(judged([], { battery: { construction: "AGM" } })).toBeUndefined();
    expect(judged([], { readings: [] })).toBeUndefined();
  });
});
