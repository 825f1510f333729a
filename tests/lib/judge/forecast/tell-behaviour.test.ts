import { describe, expect, it } from "vitest";
import { tellBehaviour } from "../../../../lib/judge/forecast/tell-behaviour.ts";

const told = (hours: number): string[] =>
  tellBehaviour({
    steps: [
      {
        kind: "constant-voltage",
        voltageV: { low: 14.4, high: 14.4 },
        limitA: { low: 4, high: 4 },
        end: { afterH: { low: hours, high: hours } },
      },
    ],
    efficiency: { low: 0.8, high: 0.9 },
    unknowns: [],
  });

describe("a charger's behaviour in words", () => {
  it("tells a step of less than a tenth of an hour in seconds", () => {
    expect(told(28 / 3600)).toEqual(["14.40 V with at most 4.00 A, until 28 s have passed."]);
    expect(told(3)).toEqual(["14.40 V with at most 4.00 A, until 3.0 h have passed."]);
  });
});
