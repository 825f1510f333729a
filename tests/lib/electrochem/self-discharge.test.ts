import { describe, expect, it } from "vitest";
import { hoursPerMonth, selfDischargeCurrentMA } from "../../../lib/electrochem/self-discharge.ts";

describe("self-discharge", () => {
  it("takes the stated share in a month", () => {
    const currentA = selfDischargeCurrentMA(60, 5) / 1000;
    expect(currentA * hoursPerMonth).toBeCloseTo(3, 12);
  });

  it("counts a twelfth of a year as a month", () => {
    expect(12 * hoursPerMonth).toBe(365 * 24);
  });
});
