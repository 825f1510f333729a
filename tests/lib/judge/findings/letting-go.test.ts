import { describe, expect, it } from "vitest";
import { lettingGo } from "../../../../lib/judge/findings/letting-go.ts";
import { bulk, contextOf, float, logOf, type Part, recordingOf, rest } from "../../measure/bench.ts";

const held = (hours: number): Part => ({ hours, v: () => 14.4, a: (h) => 0.2 + 4.8 * Math.exp(-h / 1.5) });
const judged = (parts: readonly Part[], offH = 100) =>
  lettingGo.judge(contextOf({ connections: [{ onH: 0, offH, recordings: [recordingOf(logOf(parts))] }] }));

describe("does it let go of the high voltage?", () => {
  it("no, where it held 2.40 V a cell for more than a day to the last row", () => {
    expect(judged([bulk, held(30)])).toMatchObject({
      verdict: "no",
      weight: "bad",
      sentence: expect.stringContaining("was not seen to let go"),
    });
  });

  it("only after a day, where a float follows", () => {
    expect(judged([bulk, held(30), float])).toMatchObject({ verdict: "only after a day", weight: "caution" });
  });

  it("no, where the current went because the clamps came off: that is no letting go", () => {
    expect(judged([bulk, held(30), rest], 35)).toMatchObject({ verdict: "no" });
  });

  it("no, where it was off when the leads came off the battery: nobody saw that it would have gone on by itself", () => {
    expect(judged([bulk, held(30), rest, { hours: 1, v: () => 0, a: () => 0 }], 38)).toMatchObject({ verdict: "no" });
  });

  it("speaks of a sealed battery's gas as what cannot be put back", () => {
    const connections = [{ onH: 0, offH: 100, recordings: [recordingOf(logOf([bulk, held(30)]))] }];
    expect(lettingGo.judge(contextOf({ battery: { construction: "AGM" }, connections }))?.sentence).toContain("cannot be put back");
  });

  it("does not arise below a day, at a float's voltage, or without a recording", () => {
    expect(judged([bulk, held(10)])).toBeUndefined();
    expect(judged([bulk, { ...held(30), v: () => 13.7 }])).toBeUndefined();
    expect(lettingGo.judge(contextOf())).toBeUndefined();
  });
});
