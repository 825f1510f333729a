import { describe, expect, it } from "vitest";
import { compensatedVoltageV, compensationClipC, compensationSlopesVPerK } from "../../../lib/electrochem/compensation.ts";

describe("charge voltage by temperature", () => {
  it("follows a maker's printed example: 13.50 V float at 25 °C is 13.32 V at 35 °C and 13.77 V at 10 °C", () => {
    // Printed to 0.01 V, and exact by the formula.
    expect(compensatedVoltageV(13.5, 35, 6, compensationSlopesVPerK.float)).toBeCloseTo(13.32, 9);
    expect(compensatedVoltageV(13.5, 10, 6, compensationSlopesVPerK.float)).toBeCloseTo(13.77, 9);
  });

  it("stays as it is at 25 °C, and halves its change for half the cells", () => {
    expect(compensatedVoltageV(14.4, 25, 6, compensationSlopesVPerK.boost)).toBe(14.4);
    expect(7.2 - compensatedVoltageV(7.2, 35, 3, -0.005)).toBeCloseTo((14.4 - compensatedVoltageV(14.4, 35, 6, -0.005)) / 2, 12);
  });

  it("stops changing where the charger stops compensating", () => {
    const at = (temperatureC: number): number => compensatedVoltageV(14.4, temperatureC, 6, -0.005, compensationClipC);
    expect(at(-20)).toBe(at(5));
    expect(at(60)).toBe(at(40));
    expect(at(30)).toBe(compensatedVoltageV(14.4, 30, 6, -0.005));
  });
});
