import { describe, expect, it } from "vitest";
import { highestSlidingMean } from "../../../lib/signal/sliding-mean.ts";

const floats = (values: readonly number[]) => Float64Array.from(values);
const places = (count: number) => floats(Array.from({ length: count }, (_, i) => i));

describe("highest sliding mean", () => {
  it("is the plateau where one is as long as the window", () => {
    expect(highestSlidingMean(places(7), floats([0, 0, 4, 4, 4, 0, 0]), [[0, 7]], 2)).toEqual({ mean: 4, from: 2, to: 4 });
  });

  it("weighs by time, not by rows: ten rows in one second at 9 weigh as one second", () => {
    const x = floats([0, ...Array.from({ length: 10 }, (_, i) => 1 + i / 9), 12]);
    const y = floats([1, ...Array(10).fill(9), 1]);
    // From 0 to 12: a ramp of 1 s at 5, 1 s at 9, a ramp of 10 s at 5.
    expect(highestSlidingMean(x, y, [[0, 12]], 12)?.mean).toBeCloseTo((5 + 9 + 50) / 12, 9);
  });

  it("never crosses a break, and is not given where no stretch is long enough", () => {
    const y = floats([9, 9, 9, 9]);
    const stretches: [number, number][] = [
      [0, 2],
      [2, 4],
    ];
    expect(highestSlidingMean(places(4), y, stretches, 2)).toBeUndefined();
    expect(highestSlidingMean(places(0), floats([]), [], 1)).toBeUndefined();
  });

  it("is negative where everything is", () => {
    expect(highestSlidingMean(places(4), floats([-3, -2, -2, -4]), [[0, 4]], 1)?.mean).toBe(-2);
  });

  it("is that of the best window of all, whether places stand evenly or not", () => {
    const y = floats(Array.from({ length: 300 }, (_, i) => 5 + Math.sin(i / 40) + ((i * 7919) % 13) / 50));
    for (const x of [places(300), places(300).map((place) => place + (place % 3) / 10)])
      for (const width of [1, 7, 60, 299]) {
        const held = highestSlidingMean(x, y, [[0, 300]], width);
        const best = everyWindow(x, y, width).reduce((one, other) => (other.mean > one.mean ? other : one));
        expect(held).toMatchObject({ from: best.from, to: best.to });
        expect(held?.mean).toBeCloseTo(best.mean, 12);
      }
  });
});

/** The shortest window that is wide enough, for every end that it can have; each mean summed by itself. */
function everyWindow(x: Float64Array, y: Float64Array, width: number): { mean: number; from: number; to: number }[] {
  const windows: { mean: number; from: number; to: number }[] = [];
  for (let to = 1; to < x.length; to++) {
    const from = x.findLastIndex((place, index) => index < to && (x[to] as number) - place >= width);
    if (from < 0) continue;
    let area = 0;
    for (let i = from; i < to; i++) area += (((y[i] as number) + (y[i + 1] as number)) / 2) * ((x[i + 1] as number) - (x[i] as number));
    windows.push({ mean: area / ((x[to] as number) - (x[from] as number)), from, to });
  }
  return windows;
}
