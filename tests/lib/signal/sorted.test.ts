import { describe, expect, it } from "vitest";
import { firstAfter, firstAtOrAfter } from "../../../lib/signal/sorted.ts";
import { seededRandom } from "../../dialects/seeded-random.ts";

describe("places in rising values", () => {
  it("are those that walking through all of them finds", () => {
    const random = seededRandom(5, 0);
    for (let round = 0; round < 500; round++) {
      const values = Float64Array.from({ length: random.below(12) }, () => random.below(9)).sort();
      const from = random.below(values.length + 1);
      const to = from + random.below(values.length - from + 1);
      const wanted = random.below(11) - 1;
      const inside = values.subarray(from, to);
      const walked = (place: number): number => (place < 0 ? to : from + place);
      expect(firstAtOrAfter(values, wanted, from, to)).toBe(walked(inside.findIndex((value) => value >= wanted)));
      expect(firstAfter(values, wanted, from, to)).toBe(walked(inside.findIndex((value) => value > wanted)));
    }
  });

  it("may be asked for without end or beginning", () => {
    const values = Float64Array.of(0, 1, 2);
    expect(firstAtOrAfter(values, Number.NEGATIVE_INFINITY)).toBe(0);
    expect(firstAfter(values, Number.POSITIVE_INFINITY)).toBe(3);
  });
});
