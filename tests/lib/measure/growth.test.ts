import { describe, expect, it } from "vitest";
import { findTargetOutcome, growthPoints, targetStatusOf } from "../../../lib/measure/growth.ts";
import { benchInstruments, contextOf, visit } from "./bench.ts";

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
    const outcome = findTargetOutcome(context);
    expect(outcome).toMatchObject({ kind: "cannot tell", mixed: { reading: { number: 2 }, isAtTarget: true } });
  });

  it("takes readings of mixed acid where nothing else was read after the first connection, and never both in one row", () => {
    const mixed = { mixed: true };
    const readings = [visit(1, -1, density(1.15)), visit(2, 5, density(1.2), mixed), visit(3, 10, density(1.281), mixed)];
    expect(growthPoints(contextOf({ readings })).map(({ reading }) => reading.number)).toEqual([1, 2, 3]);
    expect(findTargetOutcome(contextOf({ readings }))).toMatchObject({
      kind: "reached",
      doubts: expect.arrayContaining([expect.stringContaining("after the acid was mixed by hand")]),
    });
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
    expect(findTargetOutcome(context)).toEqual({ kind: "no density", why: "no density was read after the first connection" });
  });

  it("carries rest and mixing of the reading that decided, and a mixing before it", () => {
    const readings = [
      visit(1, -1, density(1.15)),
      visit(2, 11, { ...density(1.2), rest_h: 1 }, { mixed: true }),
      visit(3, 30, { ...density(1.3), rest_h: 6 }),
    ];
    expect(findTargetOutcome(contextOf({ readings }))).toMatchObject({
      doubts: [
        "visit 3 decided: read after 6 h of rest, the acid as found: the top of the cells, whose mean is at least that",
        "the acid had been mixed by hand at visit 2, which lifts what is read later",
      ],
    });
  });

  it("is decided by the reading that completes the test's own stop rule, and by none that it contradicts", () => {
    const target = { densityAt25C: 1.28, stop: { equalReadings: 2, apartMin: 60 } };
    const by = (densities: readonly number[]) =>
      findTargetOutcome(
        contextOf({
          connections: [{ onH: 0, offH: 24 }],
          test: { target },
          readings: densities.map((value, i) => visit(i + 1, 10 + i, density(value), { charger: "connected" })),
        }),
      );
    expect(by([1.27, 1.281, 1.286, 1.287])).toMatchObject({
      kind: "reached",
      at: { hours: 13 },
      before: { hours: 10 },
      rule: { kind: "shown" },
    });
    expect(by([1.27, 1.281, 1.286])).toMatchObject({ kind: "unsettled", at: { hours: 11 } });
  });

  it("doubts a target reached within the hydrometer's error of it", () => {
    expect(findTargetOutcome(grown([1.281]))).toMatchObject({ doubts: [expect.stringContaining("hydrometer's error"), expect.anything()] });
    expect(findTargetOutcome(grown([1.292]))).toMatchObject({ doubts: [expect.stringContaining("visit 2 decided")] });
  });

  it("is projected along a saturating curve: 20 h · ln(0.14/0.01) = 52.8 h by hand", () => {
    const after = (hours: number): number => 1.15 + 0.14 * (1 - Math.exp(-hours / 20));
    const outcome = findTargetOutcome(grown([10, 20, 30, 40].map(after)));
    if (outcome.kind !== "projected") throw new Error(`expected a projection, found ${outcome.kind}`);
    // The ceiling is known no better than the hydrometer and the battery's full density allow, so the middle lies near, and the ends hold it.
    expect(Math.abs(outcome.hours.value / (20 * Math.log(14)) - 1)).toBeLessThan(0.15);
    expect(outcome.hours.low).toBeLessThan(20 * Math.log(14));
    expect(outcome.hours.high).toBeGreaterThan(20 * Math.log(14));
    expect(outcome.hours.low).toBeGreaterThanOrEqual(40);
    // More than 2.5 % of the curves are not there by 120 h, three times what was seen: the end is open.
    expect(outcome.hours.high).toBe(Number.POSITIVE_INFINITY);
    expect(outcome.why).toContain("nothing is said beyond 120 h");
  });

  it("is not reachable where the curve levels off below the target", () => {
    const after = (hours: number): number => 1.15 + 0.07 * (1 - Math.exp(-hours / 8));
    expect(findTargetOutcome(grown([10, 20, 30, 40].map(after)))).toMatchObject({
      kind: "not reachable",
      why: expect.stringMatching(/levels off at about 1\.2[12]\d/),
    });
  });

  it("is not reachable where the last day connected moved the density by nothing", () => {
    expect(findTargetOutcome(grown([1.18, 1.2, 1.22, 1.22], 1.15, 24))).toMatchObject({
      kind: "not reachable",
      why: expect.stringContaining("moved from 1.220 to 1.220 kg/l, 0.060 short of the target"),
    });
  });

  it("is not given up where the hydrometer is coarser than the growth that would still get there", () => {
    // 0.06 kg/l to go within 3 · 96 h: over the last 24 h, 0.06 · 24/192 = 0.0075 kg/l would have to be seen.
    const by = (accuracy: object) => {
      const hydrometer = { ...benchInstruments.hydrometer, measures: { density: { from: "data sheet" as const, ...accuracy } } };
      const { connections, readings } = grown([1.18, 1.2, 1.22, 1.22], 1.15, 24);
      return findTargetOutcome(
        contextOf({
          connections: connections.map((_, i) => ({ onH: i * 24, offH: (i + 1) * 24 })),
          readings,
          instruments: { ...benchInstruments, hydrometer },
        }),
      );
    };
    expect(by({ resolution: 0.005 }).kind).toBe("not reachable");
    expect(by({ resolution: 0.01 })).not.toMatchObject({ why: expect.stringContaining("moved from") });
    // ±0.01 is U = 2 · 0.01/√3 = 0.0115 kg/l.
    expect(by({ plusMinus: 0.01 })).not.toMatchObject({ why: expect.stringContaining("moved from") });
  });

  it("sees a standstill over a longer stretch that is too short to show over the last day", () => {
    const still = (visits: number) => findTargetOutcome(grown([1.2, 1.24, 1.255, ...Array.from({ length: visits }, () => 1.26)], 1.15, 24));
    // 0.02 kg/l to go: over 24 of 120 h 0.002 would have to be seen, which the hydrometer overlooks; over 144 of 240 h 0.006, which it does not.
    expect(still(2)).not.toMatchObject({ why: expect.stringContaining("moved from") });
    expect(still(7)).toMatchObject({ kind: "not reachable", why: expect.stringMatching(/in the last 144 h connected.*moved by 0\.006/) });
  });

  it("cannot be told from two visits, nor where it would take more than three times the hours seen", () => {
    expect(findTargetOutcome(grown([1.2]))).toMatchObject({ kind: "cannot tell", why: expect.stringContaining("3 are needed") });
    // At 0.004 kg/l in ten hours the last 0.1 kg/l takes 250 h and more, and only 40 were seen.
    expect(findTargetOutcome(grown([1.161, 1.17, 1.179, 1.183].map((value, i) => value - 0.001 * (i % 2))))).toMatchObject({
      kind: "cannot tell",
      why: expect.stringContaining("3 times what was seen, or never come"),
    });
  });

  it("has a word for a test's status that does not call unread what failed", () => {
    const unusable = [visit(1, 11, { density_1: 1.28, acid_C: -5 })];
    expect(targetStatusOf(findTargetOutcome(contextOf({ readings: unusable })))).toBe("not known");
    expect(targetStatusOf(findTargetOutcome(contextOf()))).toBe("not known");
    expect(targetStatusOf(findTargetOutcome(contextOf({ test: { target: undefined } })))).toBe("no target");
    expect(targetStatusOf(findTargetOutcome(grown([1.281])))).toBe("reached");
    expect(targetStatusOf(findTargetOutcome(grown([1.2])))).toBe("not reached");
  });

  it("says why a density that was read cannot be used", () => {
    const whyOf = (options: Parameters<typeof contextOf>[0]) => findTargetOutcome(contextOf(options));
    expect(whyOf({ readings: [visit(1, 11, { density_1: 1.28, acid_C: -5 })] })).toMatchObject({
      why: expect.stringContaining("0 to 50 °C"),
    });
    expect(whyOf({ readings: [visit(1, 11, density(1.28))], instruments: {} })).toMatchObject({
      why: expect.stringContaining("no hydrometer is named"),
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
