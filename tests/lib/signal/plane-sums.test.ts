import { describe, expect, it } from "vitest";
import { planeSums } from "../../../lib/signal/plane-sums.ts";
import { seededRandom } from "../../generator/random.ts";

const of = (points: readonly (readonly [number, number])[], sigmaX = 1, sigmaY = 1) =>
  planeSums(
    Float64Array.from(points, ([x]) => x),
    Float64Array.from(points, ([, y]) => y),
    sigmaX,
    sigmaY,
  );

describe("distance of points from a line in the plane", () => {
  it("is nought on any line: level, upright or slanting", () => {
    const along = Array.from({ length: 20 }, (_, i) => i);
    expect(of(along.map((i) => [i, 3] as const)).residual(0, 20)).toBeCloseTo(0, 9);
    expect(of(along.map((i) => [3, i] as const)).residual(0, 20)).toBeCloseTo(0, 9);
    expect(of(along.map((i) => [i, 5 - 2 * i] as const)).residual(0, 20)).toBeCloseTo(0, 9);
  });

  it("is the smaller eigenvalue of the scatter matrix (by hand: a 4 by 2 rectangle's corners lie 1 off the long axis)", () => {
    const corners = [
      [-2, -1],
      [-2, 1],
      [2, -1],
      [2, 1],
    ] as const;
    expect(of(corners).residual(0, 4)).toBeCloseTo(4, 9);
    // In units of σ: a y known half as well counts a quarter, and x in a unit of 4 becomes the short axis.
    expect(of(corners, 1, 2).residual(0, 4)).toBeCloseTo(1, 9);
    expect(of(corners, 4, 1).residual(0, 4)).toBeCloseTo(1, 9);
  });

  it("is the sum of both parts or more, whatever the cut: a cut never costs", () => {
    const random = seededRandom(5);
    const sums = of(Array.from({ length: 60 }, (_, i) => [i + random.normal(), 0.3 * i + random.normal()] as const));
    for (let cut = 1; cut < 60; cut++)
      expect(sums.residual(0, cut) + sums.residual(cut, 60)).toBeLessThanOrEqual(sums.residual(0, 60) + 1e-9);
  });

  it("is nought for two points or fewer, and where all points are one", () => {
    expect(
      of([
        [1, 2],
        [3, 5],
      ]).residual(0, 2),
    ).toBe(0);
    expect(
      of([
        [1, 2],
        [1, 2],
        [1, 2],
      ]).residual(0, 3),
    ).toBe(0);
    expect(of([]).residual(0, 0)).toBe(0);
  });
});
