import { describe, expect, it } from "vitest";
import { chargeInGaps } from "../../../../lib/measure/figures/charge-in-gaps.ts";
import { recordingOf, rows, steadyLog } from "../bench.ts";

describe("charge that gaps may hide", () => {
  it("is the straight line over the gap of W066, between nothing and the highest current all along", () => {
    const decayA = (t: number): number => 5 * Math.exp(-t / 1200);
    const s = rows(61, 60).filter((t) => t < 660 || t > 1740);
    const outcome = chargeInGaps.compute(recordingOf({ s, v: s.map(() => 13), a: s.map(decayA) }));
    expect(outcome).toMatchObject({
      value: expect.closeTo(((decayA(600) + decayA(1800)) / 2) * (1200 / 3600), 9),
      interval: { low: 0, high: expect.closeTo(5 * (1200 / 3600), 9) },
    });
  });

  it("holds a discharge within its bounds", () => {
    const s = rows(61, 60).filter((t) => t < 660 || t > 1740);
    const outcome = chargeInGaps.compute(recordingOf({ s, v: s.map(() => 12), a: s.map(() => -3) }));
    expect(outcome).toMatchObject({ value: expect.closeTo(-1, 9), interval: { low: expect.closeTo(-1, 9), high: 0 } });
  });

  it("does not apply without a gap, and is absent without a current", () => {
    expect(chargeInGaps.compute(recordingOf(steadyLog(20, 13, 5)))).toMatchObject({ absent: "not applicable" });
    const s = rows(20, 60);
    expect(chargeInGaps.compute(recordingOf({ s, v: s.map(() => 13) }))).toMatchObject({ absent: "not recorded" });
  });
});
