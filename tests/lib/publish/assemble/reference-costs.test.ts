import { describe, expect, it } from "vitest";
import { pricePerKWh } from "../../../../lib/measure/stated-costs.ts";
import { referenceCosts } from "../../../../lib/publish/assemble/reference-costs.ts";
import { contextOf } from "../../measure/bench.ts";

const electricity = { pricePerKWh: 0.2, currency: "EUR", on: "2026-01-01" };
const energy = { value: 1, low: 0.9, high: 1.2 };
const evidence = [{ file: "data/tests/first/logs/day-1.csv", sha256: "0".repeat(64) }];
type Spread = Parameters<typeof referenceCosts>[2];
const costs = (parts: Parameters<typeof contextOf>[0], mainsKWh: Spread = energy, short: readonly string[] = []) =>
  referenceCosts(contextOf(parts), "car", mainsKWh, short, evidence);

describe("the reference charge's cost", () => {
  it("is 1 kWh at 0.20 EUR to run, 0.18 to 0.24, and 50 EUR over 100 uses beside it, by hand", () => {
    const [running, whole] = costs({ site: { electricity } });
    expect(running).toMatchObject({
      id: "reference-running-cost",
      of: "mode/car",
      unit: "EUR",
      basis: "projected",
      value: expect.closeTo(0.2, 9),
      low: expect.closeTo(0.18, 9),
      high: expect.closeTo(0.24, 9),
    });
    // Uses from 50 to 200 by the rule: +0.50 and -0.25 EUR.
    expect(whole).toMatchObject({
      value: expect.closeTo(0.7, 9),
      low: expect.closeTo(0.7 - Math.hypot(0.25, 0.02), 9),
      high: expect.closeTo(0.7 + Math.hypot(0.5, 0.04), 9),
    });
    expect(whole?.doubts.join("; ")).toContain("by the site's rule");
  });

  it("counts one visit where the site values the owner's time: 6 min at 20 EUR an hour are 2 EUR", () => {
    const ownersTime = { minutesPerVisit: 6, valuePerHour: 20, currency: "EUR" };
    expect(costs({ site: { electricity, ownersTime } })[0]).toMatchObject({ value: expect.closeTo(2.2, 9) });
  });

  it("is open above where the energy is, and says how often, and is no cost where the charge does not end or no price is stated", () => {
    const often = "in 17 % of the draws not within 72 h";
    for (const open of costs({ site: { electricity } }, { ...energy, high: null }, [often])) {
      expect(open.high, open.id).toBeNull();
      expect(open.low, open.id).toBeLessThan(open.value ?? 0);
      expect(open.doubts, open.id).toContain(often);
    }
    expect(costs({ site: { electricity } }, { ...energy, high: null })[0]?.low).toBeCloseTo(0.18, 9);
    const short = costs({ site: { electricity } }, { value: null, low: 30, high: null });
    expect(short.map(({ absent }) => absent?.kind)).toEqual(["not reached", "not reached"]);
    expect(costs({ charger: { price: undefined }, site: { electricity } })[0]).toMatchObject({ absent: { kind: "not stated" } });
    expect(costs({})[0]).toMatchObject({ absent: { kind: "not stated", why: "the site states no price of electricity" } });
  });

  it("prices a kilowatt-hour in the currency of the charger's price, and not without a rate: 0.20 CHF at 1.05 EUR are 0.21 EUR", () => {
    const site = { electricity: { ...electricity, currency: "CHF" } };
    const exchangeRates = [{ from: "CHF", to: "EUR", rate: 1.05, on: "2026-01-01" }];
    expect(pricePerKWh(contextOf({ site }))).toBeNull();
    expect(pricePerKWh(contextOf({ site: { ...site, exchangeRates } }))).toEqual({ amount: expect.closeTo(0.21, 12), currency: "EUR" });
    expect(pricePerKWh(contextOf({ charger: { price: undefined }, site: { electricity } }))).toBeNull();
  });
});
