import { describe, expect, it } from "vitest";
import { anchorGassingMA, gassingCurrentMA, gassingRatio, gassingVoltagePerCell } from "../../../lib/electrochem/gassing.ts";

describe("gassing", () => {
  it("doubles with 0.063 V a cell, and with 11.6 K", () => {
    // Both printed to three digits.
    expect(gassingRatio(0.063, 0)).toBeCloseTo(2, 2);
    expect(gassingRatio(0, 11.6)).toBeCloseTo(2, 1);
  });

  it("is the anchor's own current at the anchor, and goes with capacity", () => {
    expect(gassingCurrentMA(100, 2.23, 25, anchorGassingMA.vented)).toBe(20);
    expect(gassingCurrentMA(50, 2.23, 25, anchorGassingMA["valve-regulated"])).toBe(5);
  });

  it("sets in at 2.40 V at 20 °C and earlier when warm", () => {
    expect(gassingVoltagePerCell(20)).toBe(2.4);
    expect(gassingVoltagePerCell(15)).toBeCloseTo(2.42, 10);
    let last = Number.POSITIVE_INFINITY;
    for (let temperatureC = 0; temperatureC <= 50; temperatureC++) {
      expect(gassingVoltagePerCell(temperatureC)).toBeLessThan(last);
      last = gassingVoltagePerCell(temperatureC);
    }
  });

  it("has no onset outside 0 to 50 °C", () => {
    for (const temperatureC of [-1, 51, Number.NaN]) expect(gassingVoltagePerCell(temperatureC)).toBeNaN();
  });
});
