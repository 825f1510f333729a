import { describe, expect, it } from "vitest";
import { startNumbers } from "../../../lib/reconcile/numbers.ts";

describe("numbers that are the same on every call", () => {
  it("depend on the seed alone", () => {
    const [one, same, other] = [startNumbers(5), startNumbers(5), startNumbers(6)];
    const first = [one.normal(), one.normal(), one.uniform()];
    expect([same.normal(), same.normal(), same.uniform()]).toEqual(first);
    expect(other.normal()).not.toBe(first[0]);
  });

  it("are standard normal: mean, spread and tails of 20,000", () => {
    const { normal } = startNumbers(1);
    const drawn = Array.from({ length: 20_000 }, normal);
    const mean = drawn.reduce((sum, z) => sum + z, 0) / drawn.length;
    const variance = drawn.reduce((sum, z) => sum + (z - mean) ** 2, 0) / drawn.length;
    const beyond = drawn.filter((z) => Math.abs(z) > 1.96).length / drawn.length;
    // Four standard errors: 0.0071, 0.01 and 0.00154 each.
    expect(Math.abs(mean)).toBeLessThan(0.029);
    expect(Math.abs(variance - 1)).toBeLessThan(0.04);
    expect(Math.abs(beyond - 0.05)).toBeLessThan(0.0062);
  });
});
