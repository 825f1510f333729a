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
      why: [expect.stringContaining("it was reached between the two"), "counted as reached by: three equal readings"],
    });
  });

  it("counts the hours possible where nobody saw a connection end", () => {
    const readings = [visit(1, -1, density(1.15)), visit(2, 30, density(1.29))];
    expect(targetDensity.judge(contextOf({ connections: [{ onH: 0 }], readings }))?.sentence).toContain("30 h connected at most");
  });

  it("not reached yet, projected and marked so", () => {
    expect(grown(saturating(0.14, 20))).toMatchObject({ verdict: "not reached yet", weight: "unsure", doubts: ["projected, not seen"] });
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
