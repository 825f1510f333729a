import { describe, expect, it } from "vitest";
import { crossExamination } from "../../../../lib/judge/findings/cross-examination.ts";
import { absorption, type BenchOptions, bulk, contextOf, logOf, recordingOf, visit } from "../../measure/bench.ts";

const recorded = recordingOf(logOf([bulk, absorption]), { startMs: Date.parse("2026-03-02T09:00:00Z") });
/** 32 Ah recorded into a 60 Ah battery; the last visit reads the densities given, mean of the cells, and a rested voltage. */
const judged = (density: number, restV: number, more: BenchOptions = {}) =>
  crossExamination.judge(
    contextOf({
      connections: [{ onH: 1, offH: 11, recordings: [recorded] }],
      readings: [
        visit(1, 0, { density_1: 1.19, density_2: 1.19, density_3: 1.19, rest_V: 12.25, rest_h: 48, acid_C: 25 }),
        visit(2, 60, { density_1: density, density_2: density, density_3: density, rest_V: restV, rest_h: 49, acid_C: 25 }),
      ],
      ...more,
    }),
  );

describe("do the witnesses tell the same story?", () => {
  it("yes, where density, rested voltage and recorded charge agree", () => {
    expect(judged(1.27, 12.72)).toMatchObject({ verdict: "yes", weight: "good" });
  });

  it("names acid that was not mixed, where the voltage says full and the top of the acid does not", () => {
    expect(judged(1.215, 12.72)).toMatchObject({ verdict: expect.stringContaining("acid not mixed"), weight: "caution" });
  });

  it("gives the numbers of every witness as its reasons, and the reading that would settle it", () => {
    const finding = judged(1.215, 12.72);
    expect(finding?.why.join("\n")).toMatch(/Visit 2: density \d+\s%.*rest voltage \d+\s%/);
    expect(finding?.wouldSettle ?? "").not.toBe("");
  });

  it("is not examined, with the reason, where no readings were taken", () => {
    expect(crossExamination.judge(contextOf())).toMatchObject({
      verdict: "not examined",
      weight: "untested",
      wouldSettle: expect.any(String),
    });
  });
});
