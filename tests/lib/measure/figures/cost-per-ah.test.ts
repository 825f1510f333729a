import { describe, expect, it } from "vitest";
import { costPerAh } from "../../../../lib/measure/figures/cost-per-ah.ts";
import { contextOf, valueIn, visit } from "../bench.ts";

/** 1.5 kWh at 0.20 EUR, a price of 50 EUR over 100 uses: 0.80 EUR a result, by hand. */
const context = contextOf({
  readings: [
    visit(1, -1, { density_1: 1.15, acid_C: 25, mains_kWh: 100 }),
    visit(2, 11, { density_1: 1.28, acid_C: 25, mains_kWh: 101.5 }),
  ],
  site: { electricity: { pricePerKWh: 0.2, currency: "EUR", on: "2026-01-01" } },
});

import { chargeNeeded } from "../../../../lib/measure/charge-needed.ts";

describe("cost per ampere-hour put back", () => {
  it("is 0.80 EUR over the charge that the density says went in", () => {
    expect(valueIn(costPerAh.compute(context))).toBeCloseTo(0.8 / valueIn(chargeNeeded(context)), 9);
  });

  it("is absent where there is no result", () => {
    expect(costPerAh.compute(contextOf())).toMatchObject({ absent: "not measured" });
  });
});
