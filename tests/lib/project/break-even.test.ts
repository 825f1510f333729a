import { describe, expect, it } from "vitest";
import { breakEvenUses } from "../../../lib/project/break-even.ts";

describe("break-even", () => {
  it("comes after extra purchase over saved running cost: 50 / 0.25 = 200 uses, and never where nothing is saved", () => {
    expect(breakEvenUses(50, [0.25, 0.5, -0.1, 0])).toEqual([100, 200, Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY]);
  });

  it("is there from the start where nothing more was paid, and never for what is not a number", () => {
    expect(breakEvenUses(0, [-1, 1])).toEqual([0, 0]);
    expect(breakEvenUses(5, [Number.NaN])).toEqual([Number.POSITIVE_INFINITY]);
  });
});
