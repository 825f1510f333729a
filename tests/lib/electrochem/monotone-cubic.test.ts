import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { monotoneCubic } from "../../../lib/electrochem/monotone-cubic.ts";

describe("monotone cubic", () => {
  it("passes through its rows and is exact on a straight line", () => {
    const curve = monotoneCubic([0, 1, 4, 5], [1, 3, 9, 11]);
    for (const x of [0, 0.3, 1, 2.7, 4, 4.9, 5]) expect(curve(x)).toBeCloseTo(1 + 2 * x, 12);
  });

  it("never leaves the band between two neighbouring rows", () => {
    const rows = fc.array(fc.tuple(fc.double({ min: 0.1, max: 5, noNaN: true }), fc.double({ min: 0, max: 9, noNaN: true })), {
      minLength: 3,
      maxLength: 12,
    });
    fc.assert(
      fc.property(rows, fc.double({ min: 0, max: 1, noNaN: true }), (steps, share) => {
        let [x, y] = [0, 0];
        const points = steps.map(([dx, dy]) => {
          x += dx;
          y += dy;
          return [x, y] as const;
        });
        const curve = monotoneCubic(
          points.map(([px]) => px),
          points.map(([, py]) => py),
        );
        for (const [i, [left, below]] of points.entries()) {
          const next = points[i + 1];
          if (next === undefined) continue;
          const value = curve(left + share * (next[0] - left));
          // Rounding of sums up to 100: below 1e-12.
          expect(value).toBeGreaterThanOrEqual(below - 1e-12);
          expect(value).toBeLessThanOrEqual(next[1] + 1e-12);
        }
      }),
      { seed: 20260311 },
    );
  });

  it("does not extrapolate", () => {
    const curve = monotoneCubic([0, 1, 2], [0, 1, 4]);
    for (const x of [-0.01, 2.01, Number.NaN]) expect(curve(x)).toBeNaN();
  });

  it("refuses a malformed table", () => {
    expect(() => monotoneCubic([0, 1], [0, 1])).toThrow(/three rows/);
    expect(() => monotoneCubic([0, 1, 1], [0, 1, 2])).toThrow(/must rise/);
  });
});
