import { describe, expect, it } from "vitest";
import { makeTimeline } from "../../../../lib/publish/assemble/timeline.ts";
import { bulk, contextOf, logOf, recordingOf, rows, steadyLog, visit } from "../../measure/bench.ts";

describe("the evidence strip", () => {
  it("holds connections, what was recorded and visits, in hours from the first event (by hand)", () => {
    const context = contextOf({
      connections: [{ onH: 0, offH: 10, recordings: [recordingOf(steadyLog(121, 13, 5))] }],
      readings: [visit(1, -2, { density_1: 1.2, acid_C: 25 }), visit(2, 11, { rest_V: 12.6 })],
    });
    const strip = makeTimeline(context, []);
    expect(strip).toMatchObject({
      spanH: 13,
      readings: [
        { atH: 0, label: "visit 1: 1.200 kg/l" },
        { atH: 13, label: "visit 2" },
      ],
    });
    expect(strip.connections).toEqual([
      {
        id: "1",
        startH: 2,
        endH: 12,
        endKnown: true,
        recorded: [{ startH: 2, endH: 4, recording: "log.csv" }],
        endedBy: expect.any(String),
      },
    ]);
    expect(strip.words).toBe("Over 13 h: one connection of 10 h in all; 2 h of it recorded (20 %), 8 h not; 2 visits with readings.");
  });

  it("draws no line over a gap", () => {
    const s = [...rows(20, 60), ...rows(20, 60, 7200)];
    const recording = recordingOf({ s, v: s.map(() => 13), a: s.map(() => 5) });
    expect(
      makeTimeline(contextOf({ connections: [{ onH: 0, offH: 10, recordings: [recording] }] }), []).connections[0]?.recorded,
    ).toHaveLength(2);
  });

  it("draws nothing as recorded while the leads were off the battery", () => {
    const log = logOf([bulk, { hours: 2, v: () => 0, a: () => 0 }, bulk]);
    const recording = recordingOf(log);
    const off = recording.stages.find(({ kind }) => kind === "no-battery");
    const strip = makeTimeline(contextOf({ connections: [{ onH: 0, offH: 30, recordings: [recording] }] }), []);
    expect(off).toBeDefined();
    expect(strip.connections[0]?.recorded).toEqual([
      { startH: 0, endH: (off?.startS ?? 0) / 3600, recording: "log.csv" },
      { startH: (off?.endS ?? 0) / 3600, endH: recording.trace.spanS / 3600, recording: "log.csv" },
    ]);
  });

  it("does not take the last row for the end where nobody saw the clamps come off", () => {
    const strip = makeTimeline(contextOf({ connections: [{ onH: 0, recordings: [recordingOf(steadyLog(121, 13, 5))] }] }), []);
    expect(strip.connections[0]).toMatchObject({ endH: 2, endKnown: false });
    expect(strip.words).toContain("The end of one connection was not seen.");
  });

  it("says which connections it cannot draw, and that it is empty where no event has a time", () => {
    expect(makeTimeline(contextOf({ connections: [{ onH: 0, offH: 5 }, {}] }), []).words).toContain(
      "When one further connection began is not known, so it is not drawn.",
    );
    expect(makeTimeline(contextOf({ connections: [{}] }), [])).toMatchObject({
      start: null,
      connections: [],
      words: expect.stringContaining("nothing can be drawn"),
    });
  });
});
