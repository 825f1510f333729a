import { describe, expect, it } from "vitest";
import { timeRecorded } from "../../../../lib/measure/figures/time-recorded.ts";
import { benchStartMs, contextOf, recordingOf, rows, steadyLog } from "../bench.ts";

const first = (recordings: readonly ReturnType<typeof recordingOf>[]) => {
  const connection = contextOf({ connections: [{ onH: 0, offH: 10, recordings }] }).connections[0];
  if (connection === undefined) throw new Error("the connection is missing");
  return timeRecorded.compute(connection);
};

describe("time recorded", () => {
  it("takes gaps off: 60 min less 20 (by hand)", () => {
    const s = rows(61, 60).filter((t) => t < 660 || t > 1740);
    expect(first([recordingOf({ s, v: s.map(() => 13), a: s.map(() => 5) })])).toMatchObject({ value: expect.closeTo(40 / 60, 9) });
  });

  it("counts an hour that two recorders saw once", () => {
    const one = recordingOf(steadyLog(61, 13, 5), { id: "one.csv" });
    const two = recordingOf(steadyLog(61, 13, 5), { id: "two.csv", startMs: benchStartMs + 1_800_000 });
    expect(first([one, two])).toMatchObject({ value: expect.closeTo(1.5, 9) });
  });

  it("is absent, not 0, where there is no recording", () => {
    expect(first([])).toMatchObject({ absent: "not recorded" });
  });
});
