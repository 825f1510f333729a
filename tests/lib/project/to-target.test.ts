import { describe, expect, it } from "vitest";
import { type GrowthVisit, projectToTarget } from "../../../lib/project/to-target.ts";

/** Visits whose hydrometer shows a curve, rounded to its step. */
function visitsOf(hours: readonly number[], densityAt: (hours: number) => number, more: Partial<GrowthVisit> = {}): GrowthVisit[] {
  const step = more.step ?? 0.005;
  return hours.map((at, connections) => ({
    hoursLow: at,
    hoursHigh: at,
    connections,
    densityAt25C: Math.round(densityAt(at) / step) * step,
    standardUncertainty: 0.002,
    step,
    ...more,
  }));
}

const saturating = (ceiling: number, tauH: number) => (hours: number) => 1.15 + (ceiling - 1.15) * (1 - Math.exp(-hours / tauH));
const everySixH = [0, 6, 12, 18, 24];

describe("to the target density", () => {
  it("is reached between the visit before and the first one that reads it: a visit only says by now", () => {
    const result = projectToTarget(visitsOf([0, 8, 16, 24], saturating(1.29, 8)), 1.26);
    expect(result).toMatchObject({
      kind: "reached",
      hours: { low: 8, high: 16 },
      connections: { low: 2, high: 2 },
      visit: 2,
      visitBefore: 1,
    });
  });

  it("says how sure a reading at the target is: one half for a reading just on it", () => {
    const visits = visitsOf([0, 10], (hours) => (hours === 0 ? 1.15 : 1.26));
    const result = projectToTarget(visits, 1.26);
    expect(result.kind === "reached" && result.probabilityTrue).toBeCloseTo(0.5, 6);
  });

  it("holds the true hours in its 95 % interval for saturating growth that was not seen to its end: 28.0 h here", () => {
    // 1.27 = 1.15 + 0.15·(1 - exp(-h/17.4)) at 28.0 h.
    const result = projectToTarget(visitsOf(everySixH, saturating(1.3, 17.4)), 1.27);
    const trueH = -17.4 * Math.log(1 - 0.12 / 0.15);
    expect(result.kind).toBe("likely between");
    if (result.kind !== "likely between") return;
    expect(result.hours.middle95.low).toBeLessThan(trueH);
    expect(result.hours.middle95.high).toBeGreaterThan(trueH);
    expect(result.hours.median).toBeGreaterThanOrEqual(24);
  });

  it("trusts the straight line where no knee comes before the target, and meets its hours within a tenth: 30 h", () => {
    const result = projectToTarget(
      visitsOf(everySixH, (hours) => 1.15 + 0.002 * hours),
      1.21,
    );
    if (result.kind !== "likely between") throw new Error(`expected a projection, found ${result.kind}`);
    expect(Math.abs(result.hours.median - 30)).toBeLessThan(3);
    expect(result.connections?.median).toBeGreaterThanOrEqual(5);
  });

  it("expects straight growth to bend before a target near full: later than the line's own 30 h, never earlier than seen", () => {
    const result = projectToTarget(
      visitsOf(everySixH, (hours) => 1.15 + 0.004 * hours),
      1.27,
    );
    if (result.kind !== "likely between") throw new Error(`expected a projection, found ${result.kind}`);
    expect(result.probabilityStraight).toBeGreaterThan(0.5);
    expect(result.hours.median).toBeGreaterThan(30);
    expect(result.hours.middle95.low).toBeGreaterThanOrEqual(24);
  });

  it("knows that no battery gets stronger than full: a target at its full density is hardly reached, one far above never", () => {
    const visits = visitsOf(everySixH, saturating(1.25, 12));
    const full = { densityAt25C: 1.25, standardUncertainty: 0.002 };
    expect(projectToTarget(visits, 1.265, full)).toMatchObject({ kind: "not reachable as it goes" });
  });

  it("is not reachable where the growth has levelled off 0.05 below", () => {
    const result = projectToTarget(visitsOf([0, 8, 16, 24, 32, 40], saturating(1.22, 8)), 1.27);
    expect(result).toMatchObject({ kind: "not reachable as it goes" });
    expect(result.kind === "not reachable as it goes" && Math.abs(result.ceiling.median - 1.22)).toBeLessThan(0.005);
  });

  it("cannot tell from two visits, from hours nobody counted, from no time at all, or further than three times what was seen", () => {
    expect(projectToTarget(visitsOf([0, 8], saturating(1.29, 30)), 1.27)).toMatchObject({ kind: "cannot tell" });
    const unseen = visitsOf([0, 8, 16], saturating(1.29, 30)).map((visit) => ({ ...visit, hoursHigh: 2 * visit.hoursLow }));
    expect(projectToTarget(unseen, 1.27)).toMatchObject({ kind: "cannot tell", why: expect.stringContaining("nobody saw") });
    expect(
      projectToTarget(
        visitsOf([0, 0, 0], () => 1.15),
        1.27,
      ),
    ).toMatchObject({ kind: "cannot tell" });
    expect(
      projectToTarget(
        visitsOf([0, 8, 16], (hours) => 1.15 + 0.0008 * hours),
        1.27,
      ),
    ).toMatchObject({
      kind: "cannot tell",
      why: expect.stringContaining("3 times"),
    });
    expect(projectToTarget([], 1.27)).toMatchObject({ kind: "cannot tell" });
  });

  it("leaves an interval open where it reaches beyond three times the hours seen", () => {
    const result = projectToTarget(
      visitsOf([0, 5, 10], (hours) => 1.15 + 0.006 * hours),
      1.27,
    );
    if (result.kind !== "likely between") throw new Error(`expected a projection, found ${result.kind}`);
    expect(result.isBeyondSeen).toBe(true);
    expect(result.hours.middle95.high).toBe(Number.POSITIVE_INFINITY);
  });

  it("is surer with a finer scale, and less sure with a poorer instrument", () => {
    const width = (more: Partial<GrowthVisit>): number => {
      const result = projectToTarget(
        visitsOf([0, 4, 8, 12], (hours) => 1.15 + 0.0041 * hours, more),
        1.21,
      );
      return result.kind === "likely between" ? result.hours.middle80.high - result.hours.middle80.low : Number.NaN;
    };
    expect(width({ step: 0.001 })).toBeLessThan(width({ step: 0.01 }));
    expect(width({ standardUncertainty: 0.006 })).toBeGreaterThan(width({ standardUncertainty: 0.001 }));
  });

  it("holds the truth in 80 % intervals about as often as they say, for curves within its own prior (60 made-up rows)", () => {
    // Truth drawn on a lattice of ceilings, speeds and hydrometer errors; 37 of 60 or fewer has a chance under 1 in 1000 at 80 %.
    let [held, told] = [0, 0];
    for (let k = 0; k < 60; k++) {
      const share = (times: number) => (k * times) % 1;
      const [ceiling, tauH, error] = [1.265 + 0.03 * share(0.618), 8 + 12 * share(0.414), 0.003 * (share(0.732) - 0.5)];
      const target = 1.255;
      const truthH = -tauH * Math.log(1 - (target - 1.15) / (ceiling - 1.15));
      const result = projectToTarget(
        visitsOf([0, 4, 8, 12, 16], (h) => saturating(ceiling, tauH)(h) + error),
        target,
      );
      if (result.kind !== "likely between") continue;
      told++;
      if (truthH >= result.hours.middle80.low - 1e-9 && truthH <= result.hours.middle80.high) held++;
    }
    expect(told).toBeGreaterThan(20);
    expect(held / told).toBeGreaterThan(0.62);
  });
});
