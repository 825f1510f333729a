import { describe, expect, it } from "vitest";
import { cellSpread } from "../../../../lib/judge/findings/cell-spread.ts";
import { contextOf, visit } from "../../measure/bench.ts";

const judged = (density_1: number, density_2: number) =>
  cellSpread.judge(contextOf({ readings: [visit(1, 1, { density_1, density_2, acid_C: 25 })] }));

describe("is a cell weak?", () => {
  it("a cell lags by 0.050 kg/l, at which service manuals reject a battery", () => {
    expect(judged(1.28, 1.23)).toMatchObject({
      verdict: "a cell lags",
      weight: "caution",
      sentence: expect.stringContaining("Cell 2 read 0.050 kg/l below cell 1"),
    });
  });

  it("does not arise for a spread of 0.030, for one cell, or without a density", () => {
    expect(judged(1.28, 1.25)).toBeUndefined();
    expect(cellSpread.judge(contextOf({ readings: [visit(1, 1, { density_1: 1.2, acid_C: 25 })] }))).toBeUndefined();
    expect(cellSpread.judge(contextOf())).toBeUndefined();
  });
});
