import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { missingAfterCharge } from "../../../lib/reconcile/charge-path.ts";

const seeded = { seed: 11, numRuns: 300 };
const share = fc.double({ min: 0.001, max: 1, noNaN: true });
const scale = fc.double({ min: 0.005, max: 0.3, noNaN: true });

describe("the missing charge while current flows", () => {
  it("solves its differential equation: small steps by Euler come to the same", () => {
    const [gassingScale, bulk] = [0.05, 0.99];
    let missing = 0.6;
    const steps = 200_000;
    for (let i = 0; i < steps; i++) missing -= (0.7 / steps) * bulk * (1 - Math.exp(-missing / gassingScale));
    // Euler's error shrinks with the step, 3.5e-6 here.
    expect(missingAfterCharge(0.6, 0.7, gassingScale, bulk)).toBeCloseTo(missing, 4);
  });

  it("does not care how a charge is split", () => {
    fc.assert(
      fc.property(share, share, share, scale, (missing, first, second, gassingScale) => {
        const atOnce = missingAfterCharge(missing, first + second, gassingScale, 0.99);
        const inTwo = missingAfterCharge(missingAfterCharge(missing, first, gassingScale, 0.99), second, gassingScale, 0.99);
        expect(Math.abs(atOnce - inTwo)).toBeLessThan(1e-12);
      }),
      seeded,
    );
  });

  it("never takes more than was passed nor more than was missing, and takes a smaller part the fuller the battery is", () => {
    fc.assert(
      fc.property(share, share, scale, (missing, through, gassingScale) => {
        const after = missingAfterCharge(missing, through, gassingScale, 1);
        expect(after).toBeGreaterThanOrEqual(0);
        expect(missing - after).toBeLessThanOrEqual(through + 1e-12);
        const fuller = missing / 2;
        expect(fuller - missingAfterCharge(fuller, through, gassingScale, 1)).toBeLessThanOrEqual(missing - after + 1e-12);
      }),
      seeded,
    );
  });

  it("gives a discharge back in full, leaves things be without current, and keeps NaN", () => {
    expect(missingAfterCharge(0.2, -0.1, 0.05, 0.99)).toBeCloseTo(0.3, 12);
    expect(missingAfterCharge(0.2, 0, 0.05, 0.99)).toBe(0.2);
    expect(missingAfterCharge(Number.NaN, 0.1, 0.05, 0.99)).toBeNaN();
  });
});
