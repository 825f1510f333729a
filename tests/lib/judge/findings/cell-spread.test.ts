import { describe, expect, it } from "vitest";
import { cellSpread } from "../../../../lib/judge/findings/cell-spread.ts";
import { contextOf, visit } from "../../measure/bench.ts";

const columns = ["density_1", "density_2", "density_3", "density_4", "density_5", "density_6"] as const;
type Values = Parameters<typeof visit>[2];

/** Visits eleven hours apart, each with the densities of six cells (or fewer) at 25 °C. */
const judged = (visits: readonly (readonly number[])[], more: Values = {}, options: Parameters<typeof contextOf>[0] = {}) =>
  cellSpread.judge(
    contextOf({
      readings: visits.map((cells, i) =>
        visit(i + 1, i * 11, { ...Object.fromEntries(cells.map((value, cell) => [columns[cell], value])), acid_C: 25, ...more }),
      ),
      ...options,
    }),
  );

const level = [1.28, 1.28, 1.28, 1.28, 1.28, 1.28];
const flat = [1.15, 1.15, 1.15, 1.15, 1.15, 1.15];
/** Six cells of which the fourth is another. */
const fourth = (value: number, others = 1.28): number[] => [others, others, others, value, others, others];

describe("is a cell weak?", () => {
  it("no, where the cells are even", () => {
    expect(judged([flat, level])).toMatchObject({ verdict: "no", weight: "good", sentence: expect.stringContaining("within 0.000") });
  });

  it("a weak cell, named, where it lags by 0.050, at which service manuals reject a battery, and did not catch up over the visits", () => {
    expect(judged([fourth(1.105, 1.15), fourth(1.2, 1.25), fourth(1.23)])).toMatchObject({
      verdict: "a weak cell",
      weight: "caution",
      sentence: expect.stringMatching(/^Cell 4 limits this battery: it read 0\.050 kg\/l below the others.*lagged at 3 of 3 visits/),
      why: [
        expect.stringContaining("cell 4 1.230"),
        "cell 4 below the median of the others: 0.045 at visit 1, 0.050 at visit 2, 0.050 at visit 3 kg/l",
      ],
      wouldSettle: "the voltage of each cell under load, or the same charge on another battery",
    });
  });

  it("one that is catching up, where the lag shrank from 0.080 to 0.045", () => {
    expect(judged([fourth(1.07, 1.15), fourth(1.235)])).toMatchObject({ verdict: "a cell lags, and is catching up" });
  });

  it("topped up or read badly, where a cell that was level lags at the last visit alone", () => {
    expect(judged([flat, level, fourth(1.23)])).toMatchObject({
      verdict: "a cell lags, at one visit only",
      weight: "unsure",
      wouldSettle: "a second reading of cell 4, after the acid was mixed by a charge",
    });
  });

  it("topped up or read badly, where a cell lagged once in the middle; caught up, where it lagged at the start", () => {
    expect(judged([flat, fourth(1.23), level])).toMatchObject({ verdict: "at one visit only", weight: "note" });
    expect(judged([fourth(1.1, 1.15), level])).toMatchObject({ verdict: "no, it caught up", weight: "good" });
  });

  it("says that it may be anything, where one visit read the cells", () => {
    expect(judged([fourth(1.23)])).toMatchObject({
      verdict: "a cell lags",
      weight: "caution",
      wouldSettle: expect.stringContaining("second reading"),
    });
  });

  it("is told by the median, so that one cell that stands above makes no others weak", () => {
    expect(judged([flat, fourth(1.33)])).toMatchObject({
      verdict: "a cell stands above",
      sentence: expect.stringContaining("Cell 4 read 0.050"),
    });
  });

  it("uneven, between the 0.025 of a military manual and 0.040", () => {
    expect(judged([flat, fourth(1.25)])).toMatchObject({ verdict: "uneven", weight: "note" });
  });

  it("a shorted cell, where a whole cell is missing at rest: six cells of which five read 1.280 rest at 12.7 V by Bode (W054), not at 10.7", () => {
    // 5 · 2.1294 V (W054) and a cell near 0 V.
    expect(judged([fourth(1.12, 1.15), fourth(1.12)], { rest_V: 10.65 })).toMatchObject({
      verdict: "a cell may be shorted",
      weight: "bad",
      sentence: expect.stringContaining("Cell 4 may be shorted: the battery rested at 10.65 V"),
      wouldSettle: expect.stringContaining("the voltage of each cell"),
    });
    // The same lag with all the voltage there is a weak cell: 5 · 2.1294 + 1.984 V for 1.12 kg/l.
    expect(judged([fourth(1.12, 1.15), fourth(1.12)], { rest_V: 12.63 })).toMatchObject({
      verdict: expect.not.stringContaining("shorted"),
    });
  });

  it("a shorted cell of a sealed battery, by its rest voltage after a charge alone; not one that is flat, nor before any charge", () => {
    const sealed = (rest_V: number, atH = 20) =>
      cellSpread.judge(contextOf({ battery: { construction: "AGM" }, readings: [visit(1, atH, { rest_V })] }));
    expect(sealed(10.7)).toMatchObject({
      verdict: "a cell may be shorted",
      sentence: expect.stringMatching(/^A cell may be shorted/),
      wouldSettle: expect.stringContaining("no access to its cells"),
      doubts: [expect.stringContaining("acid was not read")],
    });
    expect(sealed(11.9)).toBeUndefined();
    // 24 V: 11 full cells and 12 flat ones both rest near 23 V, so nothing can be said.
    const ofTwelve = { construction: "AGM", cells: 12, nominalVoltageV: 24 };
    expect(cellSpread.judge(contextOf({ battery: ofTwelve, readings: [visit(1, 20, { rest_V: 23.5 })] }))).toBeUndefined();
    expect(sealed(12.9)).toBeUndefined();
    expect(sealed(10.7, -1)).toBeUndefined();
  });

  it("does not arise for one cell, or without a density", () => {
    expect(judged([[1.2]])).toBeUndefined();
    expect(cellSpread.judge(contextOf())).toBeUndefined();
  });
});
