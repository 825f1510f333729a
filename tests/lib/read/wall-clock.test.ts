import { describe, expect, it } from "vitest";
import { zoneClock } from "../../../lib/read/clock.ts";
import { readWallClock } from "../../../lib/read/wall-clock.ts";

const minuteMs = 60_000;
const utc = (text: string): number => Date.parse(`${text}Z`);

/** Wall-clock times of a recorder that logs every ten minutes, seen through an offset that may change at an instant. */
function logged(fromUtc: string, rows: number, offsetMsAt: (instantMs: number) => number): { wallMs: Float64Array; trueMs: Float64Array } {
  const trueMs = Float64Array.from({ length: rows }, (_, i) => utc(fromUtc) + i * 10 * minuteMs);
  return { trueMs, wallMs: trueMs.map((ms) => ms + offsetMsAt(ms)) };
}

const hourMs = 60 * minuteMs;
// From the IANA time zone database, as in clock.test.ts.
const changes = [
  { zone: "Europe/Ljubljana", spring: "2026-03-29T01:00:00", autumn: "2026-10-25T01:00:00", winterMs: hourMs },
  { zone: "America/New_York", spring: "2026-03-08T07:00:00", autumn: "2026-11-01T06:00:00", winterMs: -5 * hourMs },
] as const;

describe("wall-clock logs", () => {
  for (const { zone, spring, autumn, winterMs } of changes) {
    const threeHoursBefore = (change: string): string => new Date(utc(change) - 3 * hourMs).toISOString().slice(0, 19);

    it(`${zone}: follows a recorder that follows summer time, in spring and in autumn`, () => {
      const inSpring = logged(threeHoursBefore(spring), 40, (ms) => (ms < utc(spring) ? winterMs : winterMs + hourMs));
      expect(readWallClock(inSpring.wallMs, zone)).toEqual({ instantsMs: inSpring.trueMs, summerTime: "follows" });
      const inAutumn = logged(threeHoursBefore(autumn), 40, (ms) => (ms < utc(autumn) ? winterMs + hourMs : winterMs));
      expect(readWallClock(inAutumn.wallMs, zone)).toEqual({ instantsMs: inAutumn.trueMs, summerTime: "follows" });
    });

    it(`${zone}: keeps the first row's offset for a recorder that ignores summer time, in spring and in autumn`, () => {
      const inSpring = logged(threeHoursBefore(spring), 40, () => winterMs);
      expect(readWallClock(inSpring.wallMs, zone)).toEqual({ instantsMs: inSpring.trueMs, summerTime: "fixed" });
      const inAutumn = logged(threeHoursBefore(autumn), 40, () => winterMs + hourMs);
      expect(readWallClock(inAutumn.wallMs, zone)).toEqual({ instantsMs: inAutumn.trueMs, summerTime: "fixed" });
    });
  }

  it("has nothing to choose where no clock is changed inside the log", () => {
    const { wallMs, trueMs } = logged("2026-07-01T00:00:00", 300, () => 2 * hourMs);
    expect(readWallClock(wallMs, "Europe/Ljubljana")).toEqual({ instantsMs: trueMs, summerTime: "either" });
  });

  it("has nothing to choose inside an hour that comes twice", () => {
    const wallMs = Float64Array.of(utc("2026-10-25T02:10:00"), utc("2026-10-25T02:20:00"));
    expect(readWallClock(wallMs, "Europe/Ljubljana")).toEqual({
      instantsMs: Float64Array.of(utc("2026-10-25T00:10:00"), utc("2026-10-25T00:20:00")),
      summerTime: "either",
    });
  });

  it.each(["Europe/Ljubljana", "America/New_York", "Australia/Lord_Howe", "Pacific/Apia", "Asia/Kathmandu", "UTC"])(
    "%s: a whole year, quarter by quarter, is what asking for each quarter by itself gives",
    (zone) => {
      const wrong: number[] = [];
      // Apia left out a whole day at the end of 2011.
      for (const year of [2011, 2026]) {
        const clock = zoneClock(zone);
        let span = clock.steadySpanAt(Date.UTC(year, 0, 1));
        for (let ms = Date.UTC(year, 0, 1); ms < Date.UTC(year + 1, 0, 2); ms += 900_000) {
          if (span === undefined || ms >= span.toMs) span = clock.steadySpanAt(ms);
          if (span !== undefined && ms + span.offsetMs !== clock.instantMs(ms, Number.NEGATIVE_INFINITY)) wrong.push(ms);
        }
      }
      expect(wrong).toEqual([]);
    },
  );

  it("keeps a clock that was set back by hand as a step back", () => {
    const wallMs = Float64Array.of(utc("2026-07-01T12:00:00"), utc("2026-07-01T11:00:00"), utc("2026-07-01T11:10:00"));
    const { instantsMs } = readWallClock(wallMs, "Europe/Ljubljana");
    expect([...instantsMs]).toEqual([utc("2026-07-01T10:00:00"), utc("2026-07-01T09:00:00"), utc("2026-07-01T09:10:00")]);
  });

  it("takes an empty log", () => {
    expect(readWallClock(new Float64Array(0), "UTC")).toEqual({ instantsMs: new Float64Array(0), summerTime: "either" });
  });
});
