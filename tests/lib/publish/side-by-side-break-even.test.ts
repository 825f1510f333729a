import { describe, expect, it } from "vitest";
import { type Buyable, breakEvenStatements } from "../../../lib/publish/side-by-side/break-even.ts";
import { figureBetween } from "./side-by-side-samples.ts";

function buyable(name: string, price: number | null, low: number | null, high: number | null, unit = "EUR"): Buyable {
  const value = low === null || high === null ? null : (low + high) / 2;
  return {
    name,
    price: figureBetween(null, null, { id: "price", value: price, basis: "stated", unit, heldOn: [] }),
    running: figureBetween(low, high, {
      value,
      basis: "projected",
      unit,
      absent: value === null ? { kind: "not reached", why: "the reference charge does not end" } : null,
    }),
  };
}

const told = (...buyables: Buyable[]): string[] =>
  breakEvenStatements(buyables).map(({ sign, words }) => `${sign} ${words}`.replaceAll(/[\u202f\u00a0]/g, " "));

describe("what pays off", () => {
  it("is 50 EUR more over 0.25 EUR saved a charge: 200 charges, and 50 / 0.5 and 50 / 0.1 at the ends, by hand", () => {
    expect(told(buyable("A", 80, 0.2, 0.2), buyable("B", 30, 0.45, 0.45))).toEqual([
      "≠ A costs 50.00 EUR more to buy than B, and has earned that back after 200 charges at best, 200 charges at worst",
    ]);
    expect(told(buyable("B", 30, 0.4, 0.6), buyable("A", 80, 0.1, 0.3))).toEqual([
      "≠ A costs 50.00 EUR more to buy than B, and has earned that back after 100 charges at best, 500 charges at worst",
    ]);
  });

  it("never comes where the dearer one is no cheaper to run, and is not told where it may be", () => {
    expect(told(buyable("A", 80, 0.5, 0.6), buyable("B", 30, 0.4, 0.45))).toEqual([
      "≠ A costs 50.00 EUR more to buy than B, and never earns that back: it costs no less to run",
    ]);
    expect(told(buyable("A", 80, 0.2, 0.5), buyable("B", 30, 0.4, 0.45))[0]).toMatch(
      /^≈ A costs .* whether it ever earns that back cannot be told: after 200 charges at best$/,
    );
  });

  it("says in words who costs the same, who states no price, and who cannot be held against another's money", () => {
    expect(told(buyable("A", 30, 0.2, 0.3), buyable("B", 30, 0.4, 0.5))).toEqual(["= A and B cost the same to buy"]);
    expect(told(buyable("A", null, 0.2, 0.3), buyable("B", 30, 0.4, 0.5))).toEqual([
      "∦ A is not comparable because no price of it is stated",
    ]);
    expect(told(buyable("A", 40, null, null), buyable("B", 30, 0.4, 0.5))).toEqual([
      "∦ A is not comparable because the reference charge does not end",
    ]);
    expect(told(buyable("A", 40, 0.2, 0.3, "SEK"), buyable("B", 30, 0.4, 0.5))[0]).toMatch(/^∦ A and B are not comparable because .*SEK/);
  });
});
