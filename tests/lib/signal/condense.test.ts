import { describe, expect, it } from "vitest";
import { binned, changeableEdges } from "../../../lib/signal/condense.ts";
import { lineSums } from "../../../lib/signal/line-sums.ts";

const floats = (values: readonly number[]) => Float64Array.from(values);

describe("bins of equal width", () => {
  it("average what falls into one, and lead back to the samples (by hand)", () => {
    const bins = binned(floats([0, 1, 2, 3]), floats([1, 3, 5, 7]), floats([10, 20, 30, 40]), [[0, 4]], 2, [0, 0]);
    expect([...bins.times]).toEqual([0.5, 2.5]);
    expect([...bins.first]).toEqual([2, 6]);
    expect([...bins.second]).toEqual([15, 35]);
    expect([...bins.samples]).toEqual([0, 2, 4]);
  });

  it("fill a long pause between two like rows by the straight line, so that a quiet hour weighs as an hour", () => {
    const bins = binned(floats([0, 5]), floats([14.4, 14.4]), floats([2, 1.9]), [[0, 2]], 1, [0.5, 0.5]);
    expect([...bins.times]).toEqual([0, 1.5, 2.5, 3.5, 4.5, 5]);
    expect(bins.second[1]).toBeCloseTo(2 - 0.1 * (1.5 / 5), 12);
  });

  it("fill in nothing between rows that differ, nor over a gap", () => {
    expect(binned(floats([0, 5]), floats([14.4, 13]), floats([2, 0]), [[0, 2]], 1, [0.5, 0.5]).times).toHaveLength(2);
    const gap: [number, number][] = [
      [0, 1],
      [1, 2],
    ];
    expect(binned(floats([0, 5]), floats([14.4, 14.4]), floats([2, 2]), gap, 1, [0.5, 0.5]).times).toHaveLength(2);
  });

  it("are none for no samples", () => {
    const bins = binned(floats([]), floats([]), floats([]), [], 1, [1, 1]);
    expect([bins.times.length, [...bins.samples]]).toEqual([0, [0]]);
  });
});

describe("places where something may change", () => {
  const places = floats(Array.from({ length: 256 }, (_, i) => i));
  const sums = (values: readonly number[]) => [lineSums(places, floats(values), 1)];

  it("are a handful over a straight series, the longest block let be", () => {
    expect(changeableEdges(sums(Array.from(places, (i) => 0.1 * i)), 64)).toEqual([0, 64, 128, 192, 256]);
  });

  it("stand at a jump to the sample", () => {
    const edges = changeableEdges(sums(Array.from(places, (i) => (i < 101 ? 0 : 50))), 64);
    expect(edges).toContain(101);
    expect(edges[0]).toBe(0);
    expect(edges.at(-1)).toBe(256);
  });
});
