import { describe, expect, it } from "vitest";
import { timeConnected } from "../../../../lib/measure/figures/time-connected.ts";
import { contextOf, visit } from "../bench.ts";

const first = (options: Parameters<typeof contextOf>[0]) => {
  const connection = contextOf(options).connections[0];
  if (connection === undefined) throw new Error("the connection is missing");
  return timeConnected.compute(connection);
};

describe("time connected", () => {
  it("is clamps off less clamps on (by hand)", () => {
    expect(first({ connections: [{ onH: 1, offH: 11.5 }] })).toMatchObject({ value: 10.5 });
  });

  it("is absent where nobody saw the clamps come off, and says for how long at least", () => {
    const readings = [visit(1, 6, { clamp_A: 2 }, { charger: "connected" })];
    expect(first({ connections: [{ onH: 1 }], readings })).toMatchObject({
      absent: "not recorded",
      why: expect.stringContaining("for at least 5.0 h"),
    });
  });

  it("is absent where nobody noted the beginning", () => {
    expect(first({ connections: [{ offH: 5 }] })).toMatchObject({ absent: "not recorded", why: "nobody noted when the clamps went on" });
  });
});
