import { describe, expect, it } from "vitest";
import { holdAgainstStopRule } from "../../../lib/measure/stop-rule.ts";

/** IEC 60095-1's rule (from memory): three readings 15 min apart that stay constant. */
const iec = { densityAt25C: 1.28, stop: { equalReadings: 3, apartMin: 15, withinKgPerL: 0.002 } };
/** Readings from the first at the target on: minutes on charge, and density. */
const held = (readings: readonly (readonly [number, number])[], target: Parameters<typeof holdAgainstStopRule>[1] = iec, step?: number) =>
  holdAgainstStopRule(
    readings.map(([minutes, meanAt25C], index) => ({ number: index + 1, hours: 100 + minutes / 60, meanAt25C })),
    target,
    step,
  );

describe("the stop rule of three equal readings 15 min apart on charge (IEC 60095-1, from memory)", () => {
  it("is shown by three equal readings, and completed by the third", () => {
    expect(
      held([
        [0, 1.28],
        [15, 1.281],
        [30, 1.282],
      ]),
    ).toMatchObject({ kind: "shown", decidedAt: 2 });
  });

  it("is completed later where the density moved at first", () => {
    expect(
      held([
        [0, 1.28],
        [15, 1.286],
        [30, 1.29],
        [45, 1.29],
        [60, 1.291],
      ]),
    ).toMatchObject({ kind: "shown", decidedAt: 4 });
  });

  it("passes over readings in between that lie nearer", () => {
    expect(
      held([
        [0, 1.28],
        [5, 1.28],
        [15, 1.28],
        [20, 1.28],
        [30, 1.28],
      ]),
    ).toMatchObject({ kind: "shown", decidedAt: 4 });
  });

  it("is contradicted by readings as far apart that moved by more than 0.002, or fell below the target", () => {
    expect(
      held([
        [0, 1.28],
        [15, 1.283],
      ]),
    ).toMatchObject({ kind: "contradicted", words: expect.stringContaining("1.280 at visit 1, 1.283 at visit 2") });
    expect(
      held([
        [0, 1.28],
        [15, 1.2785],
      ]),
    ).toMatchObject({ kind: "contradicted" });
  });

  it("starts anew at a reading much later: what was still moving then may have settled since", () => {
    const readings = [
      [0, 1.28],
      [15, 1.286],
      [1000, 1.29],
    ] as const;
    expect(held(readings)).toMatchObject({ kind: "not shown", decidedAt: 2, words: expect.stringContaining("Visit 3, much later") });
    expect(held([...readings.slice(0, 2), [1000, 1.27]])).toMatchObject({ kind: "contradicted" });
  });

  it("is not shown by one reading, by two, by readings far apart, or with no charge between them", () => {
    expect(held([[0, 1.28]])).toMatchObject({ kind: "not shown", words: expect.stringContaining("none after it") });
    expect(
      held([
        [0, 1.28],
        [15, 1.28],
      ]),
    ).toMatchObject({ kind: "not shown", words: expect.stringContaining("too few") });
    expect(
      held([
        [0, 1.28],
        [600, 1.29],
        [1200, 1.29],
      ]),
    ).toMatchObject({
      kind: "not shown",
      words: expect.stringContaining("10 h of charge apart, and between them the density still rose by 0.010 kg/l"),
    });
    expect(
      held([
        [0, 1.28],
        [0, 1.28],
        [0, 1.28],
      ]),
    ).toMatchObject({ kind: "not shown", words: expect.stringContaining("no charge between them") });
  });

  it("takes 15 min within a tenth less and twice as many for 15 min: our rule", () => {
    expect(
      held([
        [0, 1.28],
        [13.6, 1.28],
        [43, 1.28],
      ]).kind,
    ).toBe("shown");
    expect(
      held([
        [0, 1.28],
        [13.4, 1.28],
        [26.8, 1.28],
      ]).kind,
    ).not.toBe("shown");
    expect(
      held([
        [0, 1.28],
        [31, 1.28],
        [62, 1.28],
      ]).kind,
    ).toBe("not shown");
  });

  it("holds in other practice too: readings one hour apart", () => {
    const hourly = { densityAt25C: 1.28, stop: { equalReadings: 3, apartMin: 60, withinKgPerL: 0.002 } };
    expect(
      held(
        [
          [0, 1.28],
          [60, 1.28],
          [120, 1.28],
        ],
        hourly,
      ).kind,
    ).toBe("shown");
    expect(
      held(
        [
          [0, 1.28],
          [15, 1.28],
          [30, 1.28],
        ],
        hourly,
      ).kind,
    ).toBe("not shown");
  });

  it("says where the scale is coarser than the equality asked for", () => {
    expect(
      held(
        [
          [0, 1.28],
          [15, 1.28],
          [30, 1.28],
        ],
        iec,
        0.005,
      ).words,
    ).toContain("in steps of 0.005");
    expect(
      held(
        [
          [0, 1.28],
          [15, 1.28],
          [30, 1.28],
        ],
        iec,
        0.001,
      ).words,
    ).not.toContain("in steps");
  });

  it("counts the first mean reading where no rule, or one in words alone, is stated, and says so", () => {
    expect(held([[0, 1.28]], { densityAt25C: 1.28 })).toEqual({
      kind: "none",
      decidedAt: 0,
      words: "no stop rule is stated: the first mean reading at the target counts",
    });
    expect(held([[0, 1.28]], { densityAt25C: 1.28, stopRule: "no more rise" })).toMatchObject({
      kind: "in words",
      words: expect.stringContaining("no more rise"),
    });
  });
});
