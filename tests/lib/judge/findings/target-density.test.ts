import { describe, expect, it } from "vitest";
import { targetDensity } from "../../../../lib/judge/findings/target-density.ts";
import { contextOf, visit } from "../../measure/bench.ts";

const density = (value: number) => ({ density_1: value, acid_C: 25 });
const grown = (densities: readonly number[], more: Parameters<typeof contextOf>[0] = {}) =>
  targetDensity.judge(
    contextOf({
      connections: densities.map((_, i) => ({ onH: i * 10, offH: (i + 1) * 10 })),
      readings: [visit(1, -0.1, density(1.15)), ...densities.map((value, i) => visit(i + 2, (i + 1) * 10, density(value)))],
      ...more,
    }),
  );
const saturating = (ceiling: number, tauH: number) => [10, 20, 30, 40].map((hours) => 1.15 + ceiling * (1 - Math.exp(-hours / tauH)));

describe("back at full density?", () => {
  it("reached, by which connection and hours at most, and by which rule it counts", () => {
    expect(grown([1.25, 1.28], { test: { target: { densityAt25C: 1.28, stopRule: "three equal readings" } } })).toMatchObject({
      verdict: "reached",
      weight: "good",
      sentence: "The battery read its target density of 1.280 kg/l after 2 connections, 20 h connected at most.",
      why: [
        expect.stringContaining("it was reached between the two"),
        expect.stringMatching(/^counted as reached by: three equal readings\. The rule is stated in words only/),
      ],
      wouldSettle: null,
    });
    expect(grown([1.25, 1.28])?.why).toContain("no stop rule is stated: the first mean reading at the target counts");
  });

  /** On charge for a day, with visits at the hours given; the target carries IEC 60095-1's three readings 15 min apart. */
  const byRule = (visits: readonly (readonly [number, number])[], mixed = false) =>
    targetDensity.judge(
      contextOf({
        connections: [{ onH: 0, offH: 24 }],
        test: { target: { densityAt25C: 1.28, stop: { equalReadings: 3, apartMin: 15 } } },
        readings: [
          visit(1, -0.1, density(1.15)),
          ...visits.map(([atH, value], i) => visit(i + 2, atH, density(value), { charger: "connected", mixed })),
        ],
      }),
    );

  it("says that the visits show the rule of IEC 60095-1, with the visits that do", () => {
    expect(
      byRule([
        [20, 1.28],
        [20.25, 1.281],
        [20.5, 1.282],
      ]),
    ).toMatchObject({
      verdict: "reached",
      why: [expect.anything(), expect.stringMatching(/stop rule was met: 3 equal readings.*at visits 2, 3, 4/)],
      wouldSettle: null,
    });
  });

  it("says that they do not show it, and what would: too few, or too far apart", () => {
    const settle = "3 readings 15 min apart with the charger still connected";
    expect(byRule([[20, 1.28]])).toMatchObject({ why: [expect.anything(), expect.stringContaining("none after it")], wouldSettle: settle });
    expect(
      byRule([
        [15, 1.28],
        [20, 1.281],
      ]),
    ).toMatchObject({
      verdict: "reached",
      why: [expect.anything(), expect.stringContaining("visits 2 and 3 lie 5 h of charge apart")],
      wouldSettle: settle,
    });
  });

  it("does not count a reading that the rule contradicts: the density was still moving", () => {
    expect(
      byRule([
        [20, 1.28],
        [20.25, 1.286],
        [20.5, 1.291],
      ]),
    ).toMatchObject({
      verdict: "read, not settled",
      weight: "unsure",
      why: [expect.stringContaining("1.280 at visit 2, 1.286 at visit 3"), expect.anything()],
    });
  });

  it("tells a target that only mixed acid read as that, and one of a test that mixed every time", () => {
    const readings = [visit(1, -0.1, density(1.15)), visit(2, 10, density(1.22)), visit(3, 10.5, density(1.285), { mixed: true })];
    expect(targetDensity.judge(contextOf({ connections: [{ onH: 0, offH: 10 }], readings }))).toMatchObject({
      verdict: "only after mixing",
      weight: "caution",
      sentence: expect.stringContaining("only after the acid was mixed by hand"),
      why: [expect.stringContaining("visit 3, after one connection and 10 h"), expect.stringContaining("as found, without mixing")],
    });
    const short = readings.map((reading) => (reading.mixed ? visit(3, 10.5, density(1.26), { mixed: true }) : reading));
    expect(targetDensity.judge(contextOf({ connections: [{ onH: 0, offH: 10 }], readings: short }))).toMatchObject({
      verdict: "not reached",
      sentence: expect.stringContaining("Mixed by hand, the acid read 1.260 kg/l: more charge had gone in"),
      why: [expect.anything(), expect.stringContaining("0.020 short of the target")],
    });
    expect(byRule([[20, 1.285]], true)).toMatchObject({
      verdict: "reached, after mixing",
      sentence: expect.stringContaining("mixed by hand before"),
    });
  });

  it("counts the hours possible where nobody saw a connection end", () => {
    const readings = [visit(1, -1, density(1.15)), visit(2, 30, density(1.29))];
    expect(targetDensity.judge(contextOf({ connections: [{ onH: 0 }], readings }))?.sentence).toContain("30 h connected at most");
  });

  it("not reached yet, projected and marked so", () => {
    expect(grown(saturating(0.14, 20))).toMatchObject({ verdict: "not reached yet", weight: "unsure", doubts: ["projected, not seen"] });
    // Some curves that the visits allow are not there within three times the hours seen: the end is open.
    expect(grown(saturating(0.14, 20))?.sentence).toMatch(/it would take \d+ h connected or more, and may never get there\.$/);
  });

  it("not reachable as it goes, with the numbers, and with why the test was given up", () => {
    const abandoned = { on: "2026-03-09", why: "no more to gain" };
    expect(grown(saturating(0.07, 8), { test: { abandoned } })).toMatchObject({
      verdict: "not reachable as it goes",
      weight: "bad",
      why: [expect.stringContaining("levels off"), "the test was given up on 2026-03-09: no more to gain"],
    });
  });

  it("not reached, and cannot be told whether it would, from two visits", () => {
    expect(grown([1.2])).toMatchObject({ verdict: "not reached", weight: "unsure" });
  });

  it("not put to the test, with the reason, without a target, a density, or the time at which a connection began", () => {
    expect(targetDensity.judge(contextOf({ test: { target: undefined } }))).toMatchObject({ verdict: "not put to the test" });
    expect(targetDensity.judge(contextOf())).toMatchObject({ verdict: "not put to the test", why: ["no density was read"] });
    expect(targetDensity.judge(contextOf({ connections: [{}], readings: [visit(1, 9, density(1.29))] }))).toMatchObject({
      verdict: "not put to the test",
      wouldSettle: "the time at which each connection began",
    });
  });

  it("cannot be read on a sealed battery", () => {
    expect(targetDensity.judge(contextOf({ battery: { construction: "gel" } }))).toMatchObject({
      verdict: "cannot be read",
      weight: "untested",
    });
  });
});
