import { describe, expect, it } from "vitest";
import { type CostInputs, costPerResult, known, showAmount } from "../../../lib/project/cost.ts";

const euros = (value: number) => ({ amount: known(value), currency: "EUR" });
const inputs: CostInputs = {
  currency: "EUR",
  purchase: euros(50),
  usesInLife: known(100),
  pricePerKWh: euros(0.3),
  energy: { dcKWh: known(0.6), efficiency: known(0.8) },
  standbyKWh: known(0.1),
  visits: { minutes: known(20), valuePerHour: euros(15) },
  restoredAh: known(40),
  densityGain: known(0.1),
};

describe("cost per result", () => {
  it("is purchase over uses, energy over efficiency, standby and visits: 0.50 + 0.225 + 0.03 + 5.00 (by hand)", () => {
    const cost = costPerResult(inputs);
    if ("refused" in cost) throw new Error(cost.refused);
    expect(cost.perResult.value).toBeCloseTo(5.755, 12);
    expect(cost.firstResult.value).toBeCloseTo(55.255, 12);
    expect(cost.runningPerResult.value).toBeCloseTo(5.255, 12);
    expect(cost.perAh?.value).toBeCloseTo(5.755 / 40, 12);
    expect(cost.perHundredthKgPerL?.value).toBeCloseTo(0.5755, 12);
    expect(cost.parts.reduce((sum, { amount }) => sum + amount, 0)).toBeCloseTo(5.755, 12);
    expect(cost.movedBy).toEqual([]);
  });

  it("has the interval of a single uncertain input, and of two the root of the squares (JCGM 100, 5.1.2)", () => {
    const priced = costPerResult({ ...inputs, pricePerKWh: { amount: { value: 0.3, low: 0.2, high: 0.4 }, currency: "EUR" } });
    const both = costPerResult({
      ...inputs,
      pricePerKWh: { amount: { value: 0.3, low: 0.2, high: 0.4 }, currency: "EUR" },
      purchase: { amount: { value: 50, low: 40, high: 60 }, currency: "EUR" },
    });
    if ("refused" in priced || "refused" in both) throw new Error("refused");
    // 0.85 kWh moved by 0.1 a kWh, and a tenth of an euro from the purchase.
    expect(priced.perResult.high - priced.perResult.value).toBeCloseTo(0.085, 12);
    expect(both.perResult.high - both.perResult.value).toBeCloseTo(Math.hypot(0.085, 0.1), 12);
    expect(both.movedBy.map(({ input }) => input)).toEqual(["purchase", "price of electricity"]);
  });

  it("converts other currencies by the rate stated, and refuses without one", () => {
    const abroad: CostInputs = { ...inputs, purchase: { amount: known(100), currency: "SEK" } };
    expect(costPerResult(abroad)).toMatchObject({ refused: expect.stringContaining("SEK") });
    const cost = costPerResult({ ...abroad, rates: [{ from: "SEK", to: "EUR", rate: known(0.09), on: "2026-01-05" }] });
    expect("refused" in cost ? Number.NaN : cost.firstResult.value).toBeCloseTo(9 + 5.255, 12);
  });

  it("has no cost by the Ah where nothing was put back on record, and refuses no uses", () => {
    const { restoredAh, densityGain, ...bare } = inputs;
    expect([restoredAh, densityGain]).toBeDefined();
    expect(costPerResult(bare)).toMatchObject({ perAh: null, perHundredthKgPerL: null });
    expect(costPerResult({ ...inputs, usesInLife: known(0) })).toHaveProperty("refused");
  });
});

describe("amounts as shown", () => {
  it("round on decimal digits: 1.005 is 1.01 and 2.675 is 2.68 though both doubles lie below", () => {
    expect(["1.005", "2.675", "-1.005", "123456.785"].map((text) => showAmount(Number(text)))).toEqual([
      "1.01",
      "2.68",
      "-1.01",
      "123456.79",
    ]);
    expect(showAmount(-0.001)).toBe("0.00");
    expect(showAmount(1234.5, 0)).toBe("1235");
    expect(showAmount(Number.NaN)).toBe("not a number");
  });
});
