import { describe, expect, it } from "vitest";
import { roughness } from "../../../lib/signal/roughness.ts";
import { seededRandom } from "../../generator/random.ts";

const random = seededRandom(7);
const noisy = Float64Array.from({ length: 1024 }, (_, i) => Math.sin(i / 200) + 0.02 * random.normal());

describe("roughness", () => {
  it("costs about 1 a place for a smooth curve with white noise", () => {
    const cost = roughness(noisy, 0.02)(0, 1024);
    // A mean square over a thousand dependent terms, noise estimated block by block: a quarter either way.
    expect(cost / 1024).toBeGreaterThan(0.75);
    expect(cost / 1024).toBeLessThan(1.25);
  });

  it("lets a jump cost its square inside a range and nothing at its edge", () => {
    const jump = Float64Array.from({ length: 64 }, (_, i) => (i < 32 ? 0 : 10));
    const cost = roughness(jump, 1);
    // Two second differences of 10, in units of √6.
    expect(cost(0, 64)).toBeCloseTo((2 * 100) / 6, 9);
    expect(cost(0, 32) + cost(32, 64)).toBe(0);
  });

  it("never rises in sum when a range is cut in two, as the search for pieces needs", () => {
    const cost = roughness(noisy, 0.02);
    for (const cut of [1, 2, 100, 511, 1022, 1023]) expect(cost(0, cut) + cost(cut, 1024)).toBeLessThanOrEqual(cost(0, 1024));
  });

  it("is 0 for ranges too short to bend", () => {
    expect(roughness(noisy, 0.02)(5, 8)).toBe(0);
    expect(roughness(new Float64Array(0), 1)(0, 0)).toBe(0);
  });
});
