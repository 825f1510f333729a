import { describe, expect, it } from "vitest";
import { findTargetOutcome, growthPoints } from "../../../lib/measure/growth.ts";
import { contextOf, visit } from "./bench.ts";

const density = (value: number) => ({ density_1: value, acid_C: 25 });
/** Connections of ten hours, one after the other, and a visit at the end of each. */
function grown(densities: readonly number[], first = 1.15, hoursEach = 10) {
  return contextOf({
    connections: densities.map((_, i) => ({ onH: i * hoursEach, offH: (i + 1) * hoursEach })),
    readings: [visit(1, -0.1, density(first)), ...densities.map((value, i) => visit(i + 2, (i + 1) * hoursEach, density(value)))],
  });
}

describe("growth of density", () => {
  it("places each visit by hours connected, known ends only where they are known (by hand)", () => {
    const context = contextOf({
      connections: [{ onH: 0, offH: 4 }, { onH: 10 }],
      readings: [visit(1, 5, density(1.2)), visit(2, 12, density(1.22), { charger: "connected" }), visit(3, 30, density(1.25))],
    });
    expect(growthPoints(context).map(({ hours, mostHours, connections }) => [hours, mostHours, connections])).toEqual([
      [4, 4, 1],
      [6, 6, 2],
      [6, 24, 2],
    ]);
  });

  it("leaves out a reading taken after the reviewer mixed the acid", () => {
    const context = contextOf({ readings: [visit(1, 5, density(1.2)), visit(2, 6, density(1.28), { mixed: true })] });
    expect(growthPoints(context)).toHaveLength(1);
    expect(findTargetOutcome(context).kind).not.toBe("reached");
  });
});

describe("the count of connections at a visit", () => {
  const countAt = (charger: "connected" | "disconnected" | undefined): number | undefined =>
    growthPoints(
      contextOf({
        connections: [{ onH: 0, offH: 10 }, { onH: 14 }],
        readings: [visit(1, 14, density(1.28), charger === undefined ? {} : { charger })],
      }),
    )[0]?.connections;

  it("leaves out the connection made at the very minute of the visit: the acid was read before the clamps went on", () => {
    expect(countAt("disconnected")).toBe(1);
    expect(countAt(undefined)).toBe(1);
  });

  it("takes it in where the visit found the charger connected", () => {
    expect(countAt("connected")).toBe(2);
  });
});

describe("whether the target is reached", () => {
  it("is, at the first visit that reads it after a connection", () => {
    expect(findTargetOutcome(grown([1.22, 1.281, 1.285]))).toMatchObject({ kind: "reached", at: { connections: 2, hours: 20 } });
  });

  it("is not, by a battery that stood at its target before the first connection", () => {
    const context = contextOf({ readings: [visit(1, -1, density(1.29))] });
    expect(findTargetOutcome(context)).toMatchObject({ kind: "cannot tell" });
  });

  it("doubts a target reached within the hydrometer's error of it", () => {
    expect(findTargetOutcome(grown([1.281]))).toMatchObject({ doubts: [expect.stringContaining("hydrometer's error")] });
    expect(findTargetOutcome(grown([1.292]))).toMatchObject({ doubts: [] });
  });

  it("is projected along a saturating curve: 20 h · ln(0.14/0.01) = 52.8 h by hand", () => {
    const after = (hours: number): number => 1.15 + 0.14 * (1 - Math.exp(-hours / 20));
    const outcome = findTargetOutcome(grown([10, 20, 30, 40].map(after)));
    if (outcome.kind !== "projected") throw new Error(`expected a projection, found ${outcome.kind}`);
    expect(outcome.hours.value).toBeCloseTo(20 * Math.log(14), 1);
    expect(outcome.hours.low).toBeGreaterThanOrEqual(40);
    expect(outcome.hours.high).toBeLessThanOrEqual(3 * 40);
  });

  it("is not reachable where the curve levels off below the target", () => {
    const after = (hours: number): number => 1.15 + 0.07 * (1 - Math.exp(-hours / 8));
    expect(findTargetOutcome(grown([10, 20, 30, 40].map(after)))).toMatchObject({
      kind: "not reachable",
      why: expect.stringMatching(/levels off at 1\.2[12]\d/),
    });
  });

  it("is not reachable where the last day connected moved the density by nothing", () => {
    expect(findTargetOutcome(grown([1.18, 1.2, 1.22, 1.22], 1.15, 24))).toMatchObject({
      kind: "not reachable",
      why: expect.stringContaining("moved from 1.220 to 1.220 kg/l, 0.060 short of the target"),
    });
  });

  it("cannot be told from two visits, nor where it would take more than three times the hours seen", () => {
    expect(findTargetOutcome(grown([1.2]))).toMatchObject({ kind: "cannot tell", why: expect.stringContaining("3 are needed") });
    // At 0.004 kg/l in ten hours the last 0.1 kg/l takes 250 h and more, and only 40 were seen.
    expect(findTargetOutcome(grown([1.161, 1.17, 1.179, 1.183].map((value, i) => value - 0.001 * (i % 2))))).toMatchObject({
      kind: "cannot tell",
      why: expect.stringContaining("further than 3 times what was seen"),
    });
  });

  it.each([
    ["no target", contextOf({ test: { target: undefined } }), "the test names no target density"],
    ["no density", contextOf(), "no density was read"],
    [
      "unplaced",
      contextOf({ connections: [{ onH: 0, offH: 5 }, {}], readings: [visit(1, 20, density(1.28))] }),
      "nobody noted when connection 2 began, so it is not known how long the charger had worked at each visit",
    ],
  ] as const)("says why it cannot speak: %s", (kind, context, why) => {
    expect(findTargetOutcome(context)).toEqual({ kind, why });
  });
});
