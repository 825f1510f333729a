import { describe, expect, it } from "vitest";
import { chargeTaken } from "../../../../lib/measure/figures/charge-taken.ts";
import { absorption, bulk, contextOf, logOf, recordingOf, valueIn, visit } from "../bench.ts";

describe("charge that the plates really took", () => {
  it("is about the 32 Ah recorded where the witnesses agree, less what went into gas", () => {
    const recorded = recordingOf(logOf([bulk, absorption]), { startMs: Date.parse("2026-03-02T09:00:00Z") });
    const outcome = chargeTaken.compute(
      contextOf({
        connections: [{ onH: 1, offH: 11, recordings: [recorded] }],
        readings: [
          visit(1, 0, { density_1: 1.19, rest_V: 12.25, rest_h: 48, acid_C: 25 }),
          visit(2, 60, { density_1: 1.27, rest_V: 12.72, rest_h: 49, acid_C: 25 }),
        ],
      }),
    );
    const recordedAh = 25 + 1.5 + 4.7 * 1.2 * (1 - Math.exp(-5 / 1.2));
    expect(valueIn(outcome)).toBeLessThanOrEqual(recordedAh + 0.5);
    expect(valueIn(outcome)).toBeGreaterThan(0.8 * recordedAh);
  });

  it("cannot be told without readings", () => {
    expect(chargeTaken.compute(contextOf())).toMatchObject({ absent: "cannot tell" });
  });
});
