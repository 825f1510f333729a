import { describe, expect, it } from "vitest";
import { costFirstResult } from "../../../../lib/measure/figures/cost-first-result.ts";
import { contextOf, valueIn, visit } from "../bench.ts";

/** 1.5 kWh at 0.20 EUR, a price of 50 EUR over 100 uses: 0.80 EUR a result, by hand. */
const context = contextOf({
  readings: [
    visit(1, -1, { density_1: 1.15, acid_C: 25, mains_kWh: 100 }),
    visit(2, 11, { density_1: 1.28, acid_C: 25, mains_kWh: 101.5 }),
  ],
  site: { electricity: { pricePerKWh: 0.2, currency: "EUR", on: "2026-01-01" } },
});

describe("cost of the first result", () => {
  it("carries the whole price: 50 EUR and 1.5 kWh at 0.20 EUR are 50.30 EUR", () => {
    expect(costFirstResult.compute(context)).toMatchObject({ value: expect.closeTo(50.3, 9) });
  });

  it("does not hang on the uses", () => {
    const outcome = costFirstResult.compute(context) as { interval: { low: number; high: number } };
    expect(outcome.interval.high - outcome.interval.low).toBeLessThan(0.01);
    expect(valueIn(outcome)).toBeGreaterThan(outcome.interval.low);
  });
});
