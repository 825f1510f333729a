import { describe, expect, it } from "vitest";
import { daysOfWater } from "../../../lib/electrochem/water-reserve.ts";

describe("days of water", () => {
  it("takes 2.975 Ah for each gram of a cell, as the reference file derives", () => {
    // 30 g a cell at 0.1 A: 30 · 2.975 Ah / 2.4 Ah a day.
    expect(daysOfWater(30, 0.1)).toBeCloseTo((30 * 2.975) / 2.4, 1);
  });

  it("halves with twice the current", () => {
    expect(daysOfWater(50, 0.2)).toBeCloseTo(daysOfWater(50, 0.1) / 2, 10);
  });

  it("never ends without current, is over with no reserve, and has no answer for what cannot be", () => {
    expect(daysOfWater(30, 0)).toBe(Number.POSITIVE_INFINITY);
    expect(daysOfWater(0, 0.1)).toBe(0);
    expect(daysOfWater(-1, 0.1)).toBeNaN();
    expect(daysOfWater(30, Number.NaN)).toBeNaN();
  });
});
