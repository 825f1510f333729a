import { describe, expect, it } from "vitest";
import { assembleRecording } from "../../../../lib/publish/assemble/recording.ts";
import { absorption, bulk, contextOf, float, logOf, recordingOf, rows } from "../../measure/bench.ts";

const ending = { by: "recorder", words: "the recorder; the charger had not ended by then", why: [], wouldSettle: null } as const;
const assembled = (recording: ReturnType<typeof recordingOf>) => assembleRecording(contextOf(), recording, ending, []);

describe("a recording as published", () => {
  it("is not complete where anything but the charger ended it", () => {
    const recording = recordingOf(logOf([bulk, absorption, float]));
    expect(assembled(recording).characteristic.complete).toBe(false);
    expect(assembleRecording(contextOf(), recording, { ...ending, by: "charger" }, []).characteristic.complete).toBe(true);
  });

  it("draws a break over a gap, so that no line bridges it", () => {
    const s = [...rows(50, 60), ...rows(50, 60, 7200)];
    const { profile } = assembled(recordingOf({ s, v: s.map(() => 13), a: s.map(() => 5) }));
    const breakAt = profile.voltageV.indexOf(null);
    expect(profile.elapsedH[breakAt]).toBeCloseTo((49 * 60) / 3600, 5);
    expect(profile.currentA[breakAt]).toBeNull();
  });

  it("has no current to draw where the log has none, rather than nought", () => {
    const s = rows(50, 60);
    const { profile } = assembled(recordingOf({ s, v: s.map(() => 13) }));
    expect(new Set(profile.currentA)).toEqual(new Set([null]));
  });

  it("keeps the highest voltage and current in the thinned series, and says how it was thinned", () => {
    const log = logOf([bulk, absorption, float], 10);
    log.a[777] = 9;
    log.v[778] = 15.5;
    const { profile } = assembled(recordingOf(log));
    expect(Math.max(...profile.currentA.map((value) => value ?? 0))).toBe(9);
    expect(Math.max(...profile.voltageV.map((value) => value ?? 0))).toBe(15.5);
    expect(profile.elapsedH.length).toBeLessThan(700);
    expect(profile.thinned).toContain("no averages");
  });

  it("has no instants where nobody knows when the log began", () => {
    expect(assembled(recordingOf(logOf([bulk]), { startMs: undefined }))).toMatchObject({ start: null, end: null });
  });
});
