import { describe, expect, it } from "vitest";
import { inflationByAutocorrelation } from "../../../lib/signal/fit-autocorrelation.ts";

describe("inflation by autocorrelation", () => {
  it("is one for residuals that alternate, vanish, or are few", () => {
    expect(inflationByAutocorrelation([1, -1, 1, -1, 1, -1, 1, -1])).toBe(1);
    expect(inflationByAutocorrelation(new Float64Array(50))).toBe(1);
    expect(inflationByAutocorrelation([1, 1, 1])).toBe(1);
    expect(inflationByAutocorrelation([])).toBe(1);
  });

  it("is the root of (1 + r)/(1 - r) for runs of equal neighbours", () => {
    // Runs of eight: of n products of neighbours, seven in eight are +1 and one is -1, so r is 6/8 but for the last run's end.
    const n = 8000;
    const runs = Array.from({ length: n }, (_, i) => (Math.floor(i / 8) % 2 === 0 ? 1 : -1));
    const r = (7 * (n / 8) - (n / 8 - 1)) / n;
    expect(inflationByAutocorrelation(runs)).toBeCloseTo(Math.sqrt((1 + r) / (1 - r)), 9);
  });

  it("never leaves fewer than six independent points", () => {
    expect(inflationByAutocorrelation(new Float64Array(600).fill(1))).toBeCloseTo(10, 9);
  });
});
