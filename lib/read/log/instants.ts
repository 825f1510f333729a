/** Brings a log's times from the file's own scale to instants, where they can be placed at all. */
import type { TimeReading } from "../dialect/times.ts";
import type { ReadAs } from "../dialect.ts";
import { readWallClock, wallMsAt } from "../wall-clock.ts";

export type PlacedTimes = {
  /** Seconds: since 1970 UTC where `isPlaced`, else from wherever the log counts. */
  readonly timesS: Float64Array;
  readonly isPlaced: boolean;
  readonly told: readonly ReadAs[];
};

/** Whether times count from the start of the recording, so that only the connection tells when that was. */
export function countsFromStart(time: TimeReading): boolean {
  return time.kind === "elapsed" || time.kind === "clock";
}

/**
 * Places times.
 *
 * @param timesS       as the file has them, in file order; they are overwritten, since a long log's times are held only once
 * @param zone         IANA zone of clocks on the wall
 * @param startedAtMs  about when the first row was written: it gives a time of day its date
 */
export function placeTimes(timesS: Float64Array, time: TimeReading, zone: string, startedAtMs: number | undefined): PlacedTimes {
  if (countsFromStart(time)) return { timesS, isPlaced: false, told: [] };
  if (time.kind === "unix" || time.kind === "iso") return { timesS, isPlaced: true, told: [] };
  if (time.kind !== "time-of-day") return onWallClock(timesS, zone);
  const unwrapped = acrossMidnight(timesS);
  if (startedAtMs === undefined) return { timesS: unwrapped, isPlaced: false, told: [] };
  const dayMs = dayNearest((unwrapped[0] ?? 0) * 1000, wallMsAt(startedAtMs, zone));
  for (let i = 0; i < unwrapped.length; i++) unwrapped[i] = (unwrapped[i] as number) + dayMs / 1000;
  const placed = onWallClock(unwrapped, zone);
  const date = new Date(dayMs).toISOString().slice(0, 10);
  return {
    ...placed,
    told: [{ what: "date of the first row", value: `${date}, the nearest to the connection's on`, from: "test record" }, ...placed.told],
  };
}

function onWallClock(timesS: Float64Array, zone: string): PlacedTimes {
  for (let i = 0; i < timesS.length; i++) timesS[i] = (timesS[i] as number) * 1000;
  const { instantsMs, summerTime } = readWallClock(timesS, zone);
  for (let i = 0; i < instantsMs.length; i++) instantsMs[i] = (instantsMs[i] as number) / 1000;
  const told: ReadAs[] =
    summerTime === "either"
      ? []
      : [
          {
            what: "summer time",
            value: summerTime === "fixed" ? "the recorder's clock does not follow it" : "the recorder's clock follows it",
            from: "detected",
          },
        ];
  return { timesS: instantsMs, isPlaced: true, told };
}

const dayS = 86_400;

/** Times of day that fall back by more than half a day have passed midnight; a smaller step back is a clock that was set. */
function acrossMidnight(timesS: Float64Array): Float64Array {
  let days = 0;
  let beforeS = timesS[0] ?? 0;
  for (let i = 0; i < timesS.length; i++) {
    const timeS = timesS[i] as number;
    if (timeS - beforeS < -dayS / 2) days++;
    beforeS = timeS;
    timesS[i] = timeS + days * dayS;
  }
  return timesS;
}

/** Midnight of the day on which a time of day lies nearest to a moment; both on the wall, ms. */
function dayNearest(timeOfDayMs: number, momentMs: number): number {
  const midnightMs = Math.floor(momentMs / (dayS * 1000)) * dayS * 1000;
  const days = Math.round((momentMs - midnightMs - timeOfDayMs) / (dayS * 1000));
  return midnightMs + days * dayS * 1000;
}
