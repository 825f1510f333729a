import { describe, expect, it } from "vitest";
import { fitLine, valueOnLine } from "../../../lib/signal/fit-line.ts";
import { isRefused } from "../../../lib/signal/fit-result.ts";
import { lineSums } from "../../../lib/signal/line-sums.ts";
import { seededRandom } from "../../generator/random.ts";

const random = seededRandom(3);
const places = Float64Array.from({ length: 200 }, (_, i) => i + 0.3 * random.uniform());
const values = places.map((place) => 14.4 - 0.01 * place + 0.05 * random.normal());
const sums = lineSums(places, values, 0.05);

describe("sums for straight lines", () => {
  it.each([
    [0, 200],
    [0, 3],
    [50, 57],
    [190, 200],
  ])("over [%i, %i) give the residual and the line that the fit of least squares gives", (from, to) => {
    const line = fitLine(places.subarray(from, to), values.subarray(from, to));
    if (isRefused(line)) throw new Error(line.refused);
    const squares = line.residualStandardDeviation ** 2 * (to - from - 2);
    // Differences of running sums of two hundred terms keep nine digits of them.
    expect(sums.residual(from, to)).toBeCloseTo(squares / 0.05 ** 2, 6);
    expect(sums.lineAt(from, to, 120)).toBeCloseTo(valueOnLine(line, 120).value, 6);
  });

  it("give means and differences in the units they promise (by hand)", () => {
    const simple = lineSums(Float64Array.of(0, 1, 2), Float64Array.of(1, 3, 8), 2);
    expect(simple.mean(0, 2)).toBeCloseTo(2, 12);
    expect(simple.differ(1)).toBe(2.5);
    expect(simple.residual(0, 2)).toBe(0);
  });

  it("keep their digits on a large level", () => {
    const high = lineSums(
      places,
      values.map((value) => value + 1e6),
      0.05,
    );
    // 1e6 with noise of 0.05: seven of a double's sixteen digits are left for the noise.
    expect(high.residual(0, 200)).toBeCloseTo(sums.residual(0, 200), 3);
  });
});
