import { describe, expect, it } from "vitest";
import { timeUnrecorded } from "../../../../lib/measure/figures/time-unrecorded.ts";
import { type BenchConnection, contextOf, recordingOf, steadyLog } from "../bench.ts";

const first = (connection: BenchConnection) => {
  const measured = contextOf({ connections: [connection] }).connections[0];
  if (measured === undefined) throw new Error("the connection is missing");
  return timeUnrecorded.compute(measured);
};
const oneHour = recordingOf(steadyLog(61, 13, 5));

describe("time connected but not recorded", () => {
  it("is 9 h of 10 where a recorder saw one (by hand)", () => {
    expect(first({ onH: 0, offH: 10, recordings: [oneHour] })).toMatchObject({ value: expect.closeTo(9, 9) });
  });

  it("is all of it where there is no recording", () => {
    expect(first({ onH: 0, offH: 10 })).toMatchObject({ value: 10 });
  });

  it("cannot be told where nobody saw the end: the recording's last row is not the end", () => {
    expect(first({ onH: 0, recordings: [oneHour] })).toMatchObject({
      absent: "cannot tell",
      why: expect.stringContaining("at least 0.0 h"),
    });
  });

  it("is absent where nothing of the connection has a time", () => {
    expect(first({})).toMatchObject({ absent: "not recorded" });
  });
});
