import { describe, expect, it } from "vitest";
import { stateOfCharge } from "../../../../lib/measure/figures/state-of-charge.ts";
import { contextOf, valueIn, visit } from "../bench.ts";

const at = (density: number, restV: number) =>
  contextOf({
    readings: [
      visit(1, 0, { density_1: 1.19, rest_V: 12.25, rest_h: 48, acid_C: 25 }),
      visit(2, 60, { density_1: density, rest_V: restV, rest_h: 49, acid_C: 25 }),
    ],
  });

describe("how full the battery was at the last visit", () => {
  it("rises with what the witnesses say, stays within 0 and 100 %, and lies inside its interval", () => {
    const values = [
      [1.2, 12.28],
      [1.23, 12.45],
      [1.27, 12.7],
    ].map(([density, restV]) => {
      const outcome = stateOfCharge.compute(at(density ?? Number.NaN, restV ?? Number.NaN));
      const value = valueIn(outcome);
      const { interval } = outcome as { interval: { low: number; high: number } };
      expect(interval.low).toBeLessThan(value);
      expect(interval.high).toBeGreaterThan(value);
      expect(interval.low).toBeGreaterThanOrEqual(0);
      expect(interval.high).toBeLessThanOrEqual(100);
      return value;
    });
    expect(values).toEqual([...values].sort((a, b) => a - b));
  });

  it("names the cells of the readings it rests on", () => {
    const outcome = stateOfCharge.compute(at(1.25, 12.6));
    expect(outcome).toMatchObject({ evidence: expect.arrayContaining([expect.objectContaining({ lines: [2, 2] })]) });
  });

  it("cannot be told without readings", () => {
    expect(stateOfCharge.compute(contextOf())).toMatchObject({ absent: "cannot tell" });
  });
});
