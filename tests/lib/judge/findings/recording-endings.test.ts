import { describe, expect, it } from "vitest";
import { recordingEndings } from "../../../../lib/judge/findings/recording-endings.ts";
import { absorption, type BenchConnection, benchStartMs, bulk, contextOf, float, logOf, recordingOf, rest } from "../../measure/bench.ts";

const judged = (...connections: readonly BenchConnection[]) => recordingEndings.judge(contextOf({ connections }));
const ended = recordingOf(logOf([bulk, absorption, rest]), { id: "ended.csv" });
const open = recordingOf(logOf([bulk, absorption]), { id: "open.csv" });
const toTheClamps = recordingOf(logOf([bulk, absorption, float]), { id: "float.csv" });
const later = recordingOf(logOf([float]), { id: "later.csv", startMs: benchStartMs + 20 * 3_600_000 });

describe("who stopped: charger or recorder?", () => {
  it("the charger, where it was seen to stop in every recording", () => {
    expect(judged({ onH: 0, offH: 40, recordings: [ended] })).toMatchObject({
      verdict: "the charger stopped",
      weight: "good",
      sentence: "In the one recording the charger itself was seen to stop.",
    });
  });

  it("the recorder, where another recording of the same connection goes on", () => {
    expect(judged({ onH: 0, offH: 24, recordings: [open, later] })).toMatchObject({
      verdict: "the recorder stopped first",
      weight: "caution",
      sentence: expect.stringMatching(/^In 1 of 2 recordings the recorder stopped before the charger did/),
    });
  });

  it("the recorder, where the log is cut in mid-flow and nothing more is known; never that the charger finished", () => {
    const finding = judged({ onH: 0, recordings: [open] });
    expect(finding).toMatchObject({
      verdict: "the recorder stopped first",
      weight: "caution",
      why: ["open.csv: ended by the recorder, cut in mid-flow; the charger had not ended by then"],
      wouldSettle: expect.any(String),
    });
    expect(JSON.stringify(finding)).not.toMatch(/finished|completed/);
  });

  it("cannot tell, where the current stopped in the middle of the bulk", () => {
    const brokenOff = recordingOf(logOf([bulk, { hours: 1, v: (h) => 12.8 + 0.5 * Math.exp(-5 * h), a: () => 0 }]), { id: "off.csv" });
    expect(judged({ onH: 0, recordings: [brokenOff] })).toMatchObject({
      verdict: "cannot tell",
      weight: "unsure",
      sentence: "In the one recording it cannot be told who stopped.",
    });
  });

  it("stopped from outside, where the clamps came off at the last row", () => {
    expect(judged({ onH: 0, offH: 14, recordings: [toTheClamps] })).toMatchObject({ verdict: "stopped from outside", weight: "note" });
  });

  it("does not arise without a recording", () => {
    expect(judged({ onH: 0, offH: 14 })).toBeUndefined();
  });
});
