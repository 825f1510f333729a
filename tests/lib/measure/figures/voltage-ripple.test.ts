import { describe, expect, it } from "vitest";
import { voltageRipple } from "../../../../lib/measure/figures/voltage-ripple.ts";
import { bulk, logOf, recordingOf, valueIn } from "../bench.ts";

/** A limit with a square wave of ±20 mV on it, one row up and one row down. */
const waved = (halfHeightV: number) => {
  const log = logOf([bulk, { hours: 5, v: () => 14.4, a: (h) => 0.3 + 4.7 * Math.exp(-h / 1.2) }]);
  return { ...log, v: log.v.map((voltage, i) => (i < 300 ? voltage : 14.4 + (i % 2 === 0 ? halfHeightV : -halfHeightV))) };
};

describe("spread of the held voltage", () => {
  it("is the height of a square wave on it: 40 mV", () => {
    expect(valueIn(voltageRipple.compute(recordingOf(waved(0.02))))).toBeCloseTo(0.04, 9);
  });

  it("is absent where no voltage was held", () => {
    expect(voltageRipple.compute(recordingOf(logOf([bulk])))).toMatchObject({ absent: "not recorded", why: "no voltage was held" });
  });
});
