import { describe, expect, it } from "vitest";
import { chargeMissed } from "../../../../lib/measure/figures/charge-missed.ts";
import { absorption, type BenchConnection, bulk, contextOf, logOf, recordingOf, rest, rows } from "../bench.ts";

const first = (connection: BenchConnection) => {
  const measured = contextOf({ connections: [connection] }).connections[0];
  if (measured === undefined) throw new Error("the connection is missing");
  return chargeMissed.compute(measured);
};

describe("charge that the recorder missed", () => {
  it("is at most the last current over the hours that were left: 5 A over 5 h of a bulk cut short, by hand, and never a number", () => {
    expect(first({ onH: 0, offH: 10, recordings: [recordingOf(logOf([bulk]))] })).toMatchObject({
      absent: "not recorded",
      why: expect.stringMatching(
        /^5\.0 h after the last row: at least nothing, at most 2[45]\.\d Ah, since (5\.00|4\.99) A flowed at the last row$/,
      ),
      bounds: { low: 0, high: expect.closeTo(25, 0) },
    });
  });

  it("does not apply where the charger was seen to end, nor where the recording goes on to the end", () => {
    expect(first({ onH: 0, offH: 30, recordings: [recordingOf(logOf([bulk, absorption, rest]))] })).toMatchObject({
      absent: "not applicable",
    });
    expect(first({ onH: 0, offH: 5, recordings: [recordingOf(logOf([bulk]))] })).toMatchObject({ absent: "not applicable" });
  });

  it("cannot be told where the recorder was off the battery at its end: the 0 A read there bound nothing", () => {
    const off = recordingOf(logOf([bulk, { hours: 1, v: () => 0, a: () => 0 }]));
    const missed = first({ onH: 0, offH: 20, recordings: [off] });
    expect(missed).toMatchObject({ absent: "cannot tell", why: expect.stringContaining("was not on the battery") });
    expect(missed).not.toHaveProperty("bounds");
  });

  it("is absent without a recording, and without a current", () => {
    expect(first({ onH: 0, offH: 5 })).toMatchObject({ absent: "not recorded" });
    const s = rows(20, 60);
    expect(first({ onH: 0, offH: 5, recordings: [recordingOf({ s, v: s.map(() => 13) })] })).toMatchObject({ absent: "not recorded" });
  });
});
