import { describe, expect, it } from "vitest";
import { mostDimensions, sobolPoints } from "../../../lib/project/sobol.ts";

describe("Sobol points", () => {
  it("begin in the order of the van der Corput sequence in Gray code: 0, 1/2, 3/4, 1/4 (definition), moved to the middle of their cells", () => {
    expect(sobolPoints(4, 1).map(([x = Number.NaN]) => x - 1 / 8)).toEqual([0, 0.5, 0.75, 0.25]);
  });

  it("visit each of 64 equal cells once, in every coordinate", () => {
    const points = sobolPoints(64, mostDimensions);
    for (let j = 0; j < mostDimensions; j++) {
      const cells = points.map((point) => Math.floor((point[j] ?? Number.NaN) * 64)).sort((a, b) => a - b);
      expect(cells).toEqual(Array.from({ length: 64 }, (_, i) => i));
    }
  });

  it("let no two coordinates move together: correlations of 64 points stay under 0.3", () => {
    // 64 independent points exceed 0.3 in one pair out of 60; a faulty direction number gives 0.5 and more.
    const points = sobolPoints(64, mostDimensions);
    for (let a = 0; a < mostDimensions; a++)
      for (let b = 0; b < a; b++) {
        const sum = points.reduce((total, point) => total + ((point[a] ?? 0) - 0.5) * ((point[b] ?? 0) - 0.5), 0);
        expect(Math.abs((12 * sum) / 64)).toBeLessThan(0.3);
      }
  });

  it("never lie on an edge, and refuse more coordinates than there are", () => {
    for (const point of sobolPoints(256, mostDimensions)) for (const x of point) expect(x > 0 && x < 1).toBe(true);
    expect(() => sobolPoints(4, mostDimensions + 1)).toThrow("are the most");
  });
});
