import { describe, expect, it } from "vitest";
import { probabilityWithinT, studentT } from "../../../lib/units/student-t.ts";

describe("Student's t", () => {
  it.each([
    // JCGM 100, table G.2 (from memory), 95 %, printed to 0.01.
    [1, 12.71],
    [2, 4.3],
    [3, 3.18],
    [4, 2.78],
    [5, 2.57],
    [10, 2.23],
    [20, 2.09],
    [50, 2.01],
    [100, 1.984],
    [Number.POSITIVE_INFINITY, 1.96],
  ])("for %f degrees of freedom is %f", (nu, expected) => {
    expect(Math.abs(studentT(0.95, nu) - expected)).toBeLessThan(0.0055);
  });

  it("has closed forms for one and two degrees of freedom", () => {
    // nu = 1: t = tan(πp/2). nu = 2: t = p·√2/√(1 - p²).
    expect(studentT(0.95, 1)).toBeCloseTo(Math.tan((Math.PI * 0.95) / 2), 8);
    expect(studentT(0.95, 2)).toBeCloseTo((0.95 * Math.SQRT2) / Math.sqrt(1 - 0.95 ** 2), 9);
  });

  it("is undone by its probability, for any degrees of freedom", () => {
    for (const nu of [0.5, 1.7, 18.1, 400]) expect(probabilityWithinT(studentT(0.9, nu), nu)).toBeCloseTo(0.9, 10);
  });

  it("is NaN for impossible arguments", () => {
    for (const value of [studentT(0, 5), studentT(1, 5), studentT(0.95, 0), studentT(0.95, Number.NaN), probabilityWithinT(-1, 5)]) {
      expect(value).toBeNaN();
    }
  });
});
