import { describe, expect, it } from "vitest";
import { placeOfHighest } from "../../../lib/signal/highest.ts";

describe("the place of the highest value", () => {
  it.each([
    [[], -1],
    [[-3, -2, -5], 1],
    [[1, 7, 7, 2], 1],
    [[Number.NaN, 4, Number.NaN], 1],
    [[Number.NaN], -1],
  ])("of %j is %d", (values, place) => {
    expect(placeOfHighest(Float64Array.from(values))).toBe(place);
  });
});
