import { describe, expect, it } from "vitest";
import { hoursToTarget } from "../../../../lib/measure/figures/hours-to-target.ts";
import { contextOf, visit } from "../bench.ts";

const density = (value: number) => ({ density_1: value, acid_C: 25 });

describe("hours connected to target density", () => {
  it("lies between the hours of the visit before and those of the visit that read it (counted by hand)", () => {
    const connections = [
      { onH: 0, offH: 10 },
      { onH: 12, offH: 24 },
    ];
    const readings = [visit(1, -1, density(1.15)), visit(2, 11, density(1.25)), visit(3, 25, density(1.28))];
    expect(hoursToTarget.compute(contextOf({ connections, readings }))).toMatchObject({
      value: 22,
      interval: { low: 10, high: 22 },
      doubts: [
        "no stop rule is stated: the first mean reading at the target counts",
        expect.stringContaining("within the hydrometer's error"),
        expect.stringContaining("visit 3 decided: read after a rest that nobody noted"),
      ],
    });
  });

  it("opens its upper end where nobody saw a connection end: it may have gone on until the visit", () => {
    const connections = [{ onH: 0 }];
    const readings = [visit(1, -1, density(1.15)), visit(2, 6, { clamp_A: 2 }, { charger: "connected" }), visit(3, 30, density(1.29))];
    expect(hoursToTarget.compute(contextOf({ connections, readings }))).toMatchObject({
      value: 6,
      interval: { low: 0, high: 30 },
      doubts: expect.arrayContaining([expect.stringContaining("nobody saw a connection end")]),
    });
  });

  it("is projected, and marked so, where the density grows as a saturating curve towards a higher ceiling", () => {
    const after = (hours: number): number => 1.15 + 0.14 * (1 - Math.exp(-hours / 20));
    const connections = [0, 10, 20, 30].map((onH) => ({ onH, offH: onH + 10 }));
    const readings = [0, 10, 20, 30, 40].map((hours, index) => visit(index + 1, hours === 0 ? -0.1 : hours, density(after(hours))));
    const outcome = hoursToTarget.compute(contextOf({ connections, readings }));
    // 20 h · ln(0.14/0.01) = 52.8 h by hand; the hydrometer leaves open where the curve ends, so the interval holds it.
    expect(outcome).toMatchObject({ basis: "projected" });
    const { interval } = outcome as { interval: { low: number; high: number } };
    expect(interval.low).toBeLessThan(20 * Math.log(14));
    expect(interval.high).toBeGreaterThan(20 * Math.log(14));
  });

  it.each([
    ["sealed", { battery: { construction: "AGM" } }, "not applicable"],
    ["without a target", { test: { target: undefined } }, "not stated"],
    ["without a density", {}, "not measured"],
    ["unplaced", { connections: [{}], readings: [visit(1, 0, density(1.28))] }, "cannot tell"],
    ["of one visit", { readings: [visit(1, 11, density(1.2))] }, "cannot tell"],
  ] as const)("is absent for a test %s", (_, options, absent) => {
    expect(hoursToTarget.compute(contextOf(options))).toMatchObject({ absent });
  });
});
