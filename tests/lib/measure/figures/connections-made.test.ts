import { describe, expect, it } from "vitest";
import { connectionsMade } from "../../../../lib/measure/figures/connections-made.ts";
import { contextOf } from "../bench.ts";

describe("connections made", () => {
  it("counts every connection, one whose times nobody noted included", () => {
    expect(connectionsMade.compute(contextOf({ connections: [{ onH: 0, offH: 5 }, {}, { onH: 30 }] }))).toMatchObject({
      value: 3,
      interval: { low: 3, high: 3 },
    });
  });
});
