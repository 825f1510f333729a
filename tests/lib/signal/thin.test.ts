import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { thinned } from "../../../lib/signal/thin.ts";

describe("thinning", () => {
  it("keeps the two ends, the lowest and the highest of every channel, in order, whatever the series", () => {
    const value = fc.double({ min: -100, max: 100, noNaN: true });
    fc.assert(
      fc.property(fc.array(fc.tuple(value, value), { minLength: 1, maxLength: 300 }), (points) => {
        const x = Float64Array.from(points, (_, i) => i);
        const channels = [Float64Array.from(points, ([a]) => a), Float64Array.from(points, ([, b]) => b)];
        const kept = thinned(x, channels, 10);
        expect(kept).toEqual([...new Set(kept)].sort((a, b) => a - b));
        expect([kept[0], kept.at(-1)]).toEqual([0, points.length - 1]);
        for (const channel of channels) {
          const drawn = kept.map((i) => channel[i]);
          expect(drawn).toContain(Math.min(...channel));
          expect(drawn).toContain(Math.max(...channel));
        }
      }),
      { seed: 20260302 },
    );
  });

  it("keeps at most two samples a bucket and channel, and the ends", () => {
    const x = Float64Array.from({ length: 10_000 }, (_, i) => i);
    expect(thinned(x, [x.map((i) => Math.sin(i)), x.map((i) => Math.cos(i))], 50).length).toBeLessThanOrEqual(50 * 4 + 4 + 2);
  });

  it("passes over NaN, and keeps all of a short series", () => {
    const x = Float64Array.from({ length: 100 }, (_, i) => i);
    const holed = x.map((i) => (i % 3 === 0 ? Number.NaN : i));
    expect(thinned(x, [holed], 5).filter((i) => i !== 0 && i !== 99 && Number.isNaN(holed[i]))).toEqual([]);
    expect(thinned(Float64Array.of(0, 1, 2), [Float64Array.of(5, 5, 5)], 10)).toEqual([0, 1, 2]);
    expect(thinned(new Float64Array(0), [], 10)).toEqual([]);
  });
});
