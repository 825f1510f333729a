import { describe, expect, it } from "vitest";
import { sustainedCurrent } from "../../../../lib/measure/figures/sustained-current.ts";
import { recordingOf, rows } from "../bench.ts";

const logOf = (a: readonly number[], stepS = 10) => {
  const s = rows(a.length, stepS);
  return recordingOf({ s, v: s.map(() => 13), a });
};

describe("highest current held for a window", () => {
  it("is the height of a step of 60 s, with its rows as evidence, and passes over a higher spike of one row", () => {
    const step = [...Array(10).fill(5), ...Array(7).fill(8), ...Array(10).fill(5)];
    step[22] = 12;
    expect(sustainedCurrent(60).compute(logOf(step))).toMatchObject({ value: expect.closeTo(8, 9), evidence: [{ lines: [12, 18] }] });
  });

  it("is lower than the step where the step is shorter than the window: 30 s of 8 over 60 s at 5, by hand", () => {
    const short = [...Array(10).fill(5), ...Array(4).fill(8), ...Array(10).fill(5)];
    // 30 s at 8, two slopes of 10 s at a mean of 6.5, and 10 s at 5.
    expect(sustainedCurrent(60).compute(logOf(short))).toMatchObject({ value: expect.closeTo((30 * 8 + 20 * 6.5 + 10 * 5) / 60, 9) });
  });

  it("never rises with a longer window", () => {
    const wave = rows(200, 1).map((i) => 5 + 3 * Math.sin(i / 9));
    const held = [30, 60, 120, 600].map((windowS) => sustainedCurrent(windowS).compute(logOf(wave)));
    const values = held.map((outcome) => ("value" in outcome ? outcome.value : Number.NaN));
    expect(values).toEqual([...values].sort((a, b) => b - a));
  });

  it("cannot be told where no stretch is that long, and is absent without the column", () => {
    expect(sustainedCurrent(60).compute(logOf([5, 5, 5]))).toMatchObject({
      absent: "cannot tell",
      why: "no stretch without a gap is 60 s long",
    });
    const s = rows(5, 60);
    expect(sustainedCurrent(60).compute(recordingOf({ s, v: s.map(() => 13) }))).toMatchObject({ absent: "not recorded" });
  });
});
