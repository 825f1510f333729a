import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { trapezoid } from "../../../lib/signal/trapezoid.ts";

const floats = (values: readonly number[]) => Float64Array.from(values);
/** Rising places with a value at each: gaps of 0.1 to 10, values of -10 to 10. */
const series = fc
  .array(fc.tuple(fc.double({ min: 0.1, max: 10, noNaN: true }), fc.double({ min: -10, max: 10, noNaN: true })), {
    minLength: 2,
    maxLength: 40,
  })
  .map((steps) => {
    let place = 0;
    return { x: floats(steps.map(([step]) => (place += step))), y: floats(steps.map(([, value]) => value)) };
  });

describe("trapezoid", () => {
  it("is exact on straight lines: W069 of the worked examples, 3.8 Ah", () => {
    const x = floats([0, 7, 100, 3600]);
    expect(
      trapezoid(
        x,
        x.map((t) => 2 + 0.001 * t),
      ) / 3600,
    ).toBeCloseTo(3.8, 9);
  });

  it("is 0 for no sample and for one, and NaN where a sample is", () => {
    expect(trapezoid(floats([]), floats([]))).toBe(0);
    expect(trapezoid(floats([1]), floats([5]))).toBe(0);
    expect(trapezoid(floats([0, 1, 2]), floats([1, Number.NaN, 1]))).toBeNaN();
  });

  it("does not change when a series is cut in two at a sample", () => {
    fc.assert(
      fc.property(series, fc.nat(), ({ x, y }, place) => {
        const cut = place % x.length;
        // Sums of forty terms of up to 100 keep twelve digits.
        expect(trapezoid(x, y, 0, cut + 1) + trapezoid(x, y, cut)).toBeCloseTo(trapezoid(x, y), 9);
      }),
      { seed: 20260302 },
    );
  });

  it("keeps its value when a series is mirrored in place, and turns its sign when places run backwards", () => {
    fc.assert(
      fc.property(series, ({ x, y }) => {
        const mirrored = trapezoid(x.map((place) => -place).reverse(), y.slice().reverse());
        expect(mirrored).toBeCloseTo(trapezoid(x, y), 9);
        expect(trapezoid(x.slice().reverse(), y.slice().reverse())).toBeCloseTo(-trapezoid(x, y), 9);
      }),
      { seed: 20260302 },
    );
  });
});
