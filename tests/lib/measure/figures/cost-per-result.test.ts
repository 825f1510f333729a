import { describe, expect, it } from "vitest";
import { costPerResult } from "../../../../lib/measure/figures/cost-per-result.ts";
import { contextOf, visit } from "../bench.ts";

const reached = [
  visit(1, -1, { density_1: 1.15, acid_C: 25, mains_kWh: 100 }),
  visit(2, 11, { density_1: 1.28, acid_C: 25, mains_kWh: 101.5 }),
];
const electricity = { pricePerKWh: 0.2, currency: "EUR", on: "2026-01-01" };

describe("cost per result", () => {
  it("is 50 EUR over 100 uses and 1.5 kWh at 0.20 EUR: 0.80 EUR, by hand", () => {
    // Uses from 50 to 200 by the rule: +0.50 and -0.25 EUR; the meter's 1 % of 1.5 kWh, rectangular, doubled, at 0.20 a kWh beside it.
    const ofMeter = 2 * 0.2 * (0.015 / Math.sqrt(3));
    const outcome = costPerResult.compute(contextOf({ readings: reached, site: { electricity } }));
    expect(outcome).toMatchObject({
      value: expect.closeTo(0.8, 9),
      interval: { low: expect.closeTo(0.8 - Math.hypot(0.25, ofMeter), 9), high: expect.closeTo(0.8 + Math.hypot(0.5, ofMeter), 9) },
    });
    expect((outcome.doubts ?? []).join("; ")).toContain("uses in its life moves it most");
  });

  it("spreads the price over the uses that the charger's record states, and says whose number that is", () => {
    const charger = { price: { amount: 50, currency: "EUR" }, lifeUses: 50 };
    expect(costPerResult.compute(contextOf({ charger, readings: reached, site: { electricity } }))).toMatchObject({
      value: expect.closeTo(1.3, 9),
      doubts: expect.arrayContaining([expect.stringContaining("as the charger's record states")]),
    });
  });

  it("adds no euros to francs, unless the site states a rate: 1.5 kWh at 0.20 CHF at 1.05 EUR are 0.315 EUR", () => {
    const site = { electricity: { ...electricity, currency: "CHF" } };
    expect(costPerResult.compute(contextOf({ readings: reached, site }))).toMatchObject({
      absent: "cannot tell",
      why: expect.stringMatching(/CHF.*EUR/),
    });
    const exchangeRates = [{ from: "CHF", to: "EUR", rate: 1.05, on: "2026-01-01" }];
    expect(costPerResult.compute(contextOf({ readings: reached, site: { ...site, exchangeRates } }))).toMatchObject({
      value: expect.closeTo(0.5 + 0.315, 9),
    });
  });

  it("counts the owner's time where the site values it: one connection of 6 min at 20 EUR an hour is 2 EUR", () => {
    const ownersTime = { minutesPerVisit: 6, valuePerHour: 20, currency: "EUR" };
    expect(costPerResult.compute(contextOf({ readings: reached, site: { electricity, ownersTime } }))).toMatchObject({
      value: expect.closeTo(0.8 + 2, 9),
    });
  });

  it("has no result to pay for, rather than a cost of nothing, where the target was not reached or not measured", () => {
    const short = [reached[0], visit(2, 11, { density_1: 1.2, acid_C: 25 })].filter((reading) => reading !== undefined);
    expect(costPerResult.compute(contextOf({ readings: short, site: { electricity } }))).toMatchObject({ absent: "not reached" });
    expect(costPerResult.compute(contextOf({ site: { electricity } }))).toMatchObject({ absent: "not measured" });
    expect(costPerResult.compute(contextOf({ battery: { construction: "AGM" } }))).toMatchObject({ absent: "not applicable" });
  });

  it("is absent without a price of the charger or of electricity", () => {
    expect(costPerResult.compute(contextOf({ charger: { price: undefined }, readings: reached, site: { electricity } }))).toMatchObject({
      absent: "not stated",
      why: "no price of the charger is stated",
    });
    expect(costPerResult.compute(contextOf({ readings: reached }))).toMatchObject({
      absent: "not stated",
      why: "the site states no price of electricity",
    });
  });
});
