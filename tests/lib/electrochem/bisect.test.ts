import { describe, expect, it } from "vitest";
import { bisectRising } from "../../../lib/electrochem/bisect.ts";

describe("bisection", () => {
  it("inverts a cube", () => {
    expect(bisectRising((x) => x ** 3, 27, 0, 10)).toBeCloseTo(3, 12);
  });

  it("finds the ends themselves", () => {
    expect(bisectRising((x) => x, 0, 0, 1)).toBeCloseTo(0, 14);
    expect(bisectRising((x) => x, 1, 0, 1)).toBeCloseTo(1, 14);
  });

  it("has no answer outside, and none for NaN", () => {
    for (const wanted of [-1, 2, Number.NaN]) expect(bisectRising((x) => x, wanted, 0, 1)).toBeNaN();
  });
});
