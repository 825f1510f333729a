import { describe, expect, it } from "vitest";
import { connectionsToTarget } from "../../../../lib/measure/figures/connections-to-target.ts";
import { contextOf, visit } from "../bench.ts";

const density = (value: number) => ({ density_1: value, acid_C: 25 });
const twice = [
  { onH: 0, offH: 10 },
  { onH: 12, offH: 24 },
];

describe("connections to target density", () => {
  it("is the count begun by the visit that read it, from the first after the visit before (counted by hand)", () => {
    const readings = [visit(1, -1, density(1.15)), visit(2, 11, density(1.25)), visit(3, 25, density(1.28))];
    expect(connectionsToTarget.compute(contextOf({ connections: twice, readings }))).toMatchObject({
      value: 2,
      interval: { low: 2, high: 2 },
    });
  });

  it("opens the interval where nobody read the density between the connections", () => {
    const readings = [visit(1, -1, density(1.15)), visit(2, 25, density(1.28))];
    expect(connectionsToTarget.compute(contextOf({ connections: twice, readings }))).toMatchObject({
      value: 2,
      interval: { low: 1, high: 2 },
    });
  });

  it("is not reached, never 0, where the density stays below", () => {
    const readings = [visit(1, -1, density(1.15)), visit(2, 25, density(1.2))];
    expect(connectionsToTarget.compute(contextOf({ connections: twice, readings }))).toMatchObject({
      absent: "not reached",
      why: expect.stringContaining("not reached in 2 connections"),
    });
  });

  it("cannot be told where nobody noted when a connection began, even with a full density read", () => {
    const readings = [visit(1, -1, density(1.15)), visit(2, 25, density(1.28))];
    expect(connectionsToTarget.compute(contextOf({ connections: [{}], readings }))).toMatchObject({
      absent: "cannot tell",
      why: expect.stringContaining("nobody noted when connection 1 began"),
    });
  });

  it("is absent with its own reason for a sealed battery, no target, and no density", () => {
    expect(connectionsToTarget.compute(contextOf({ battery: { construction: "gel" } }))).toMatchObject({ absent: "not applicable" });
    expect(connectionsToTarget.compute(contextOf({ test: { target: undefined } }))).toMatchObject({ absent: "not stated" });
    expect(connectionsToTarget.compute(contextOf())).toMatchObject({ absent: "not measured", why: "no density was read" });
  });
});
