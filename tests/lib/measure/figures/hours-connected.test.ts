import { describe, expect, it } from "vitest";
import { hoursConnected } from "../../../../lib/measure/figures/hours-connected.ts";
import { contextOf } from "../bench.ts";

describe("hours connected in all", () => {
  it("adds up the connections (by hand)", () => {
    const connections = [
      { onH: 0, offH: 10 },
      { onH: 24, offH: 30.5 },
    ];
    expect(hoursConnected.compute(contextOf({ connections }))).toMatchObject({ value: 16.5, doubts: [] });
  });

  it("says which connection nobody saw end, and counts only what is known of it", () => {
    const connections = [{ onH: 0, offH: 10 }, { onH: 24 }];
    expect(hoursConnected.compute(contextOf({ connections }))).toMatchObject({
      value: 10,
      doubts: ["nobody noted when connection 2 ended; only the time known to be connected is counted"],
    });
  });

  it("is absent where nobody noted a beginning", () => {
    expect(hoursConnected.compute(contextOf({ connections: [{}] }))).toMatchObject({ absent: "not recorded" });
  });
});
