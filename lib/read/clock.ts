import { Temporal } from "temporal-polyfill";

/** The order in which a local date writes its parts. */
export type DateOrder = "year-month-day" | "day-month-year" | "month-day-year";

const clockText = /^(\d{1,4}):([0-5]?\d)(?::([0-5]?\d(?:[.,]\d+)?))?$/;
const isoText = /^(\d{4})-(\d\d)-(\d\d)[T ](\d\d):(\d\d)(?::(\d\d)(?:[.,](\d{1,9}))?)?\s*(Z|z|[+-]\d\d:?\d\d)$/;
const localText =
  /^(\d{1,4})[-./](\d{1,2})[-./](\d{1,4})(?:[T ,]+(\d{1,2}):(\d\d)(?::(\d\d)(?:[.,](\d{1,9}))?)?(?:\s*([AaPp])\.?[Mm]\.?)?)?$/;

/** Seconds in `h:mm`, `hh:mm:ss` or `hhh:mm:ss.s`; NaN for other texts. */
export function parseClockS(text: string): number {
  const match = clockText.exec(text.trim());
  if (match === null) return Number.NaN;
  return Number(match[1]) * 3600 + Number(match[2]) * 60 + Number((match[3] ?? "0").replace(",", "."));
}

/** Milliseconds since 1970 UTC of a date and time that carries its offset; NaN for other texts and impossible dates. */
export function parseInstantMs(text: string): number {
  const match = isoText.exec(text.trim());
  if (match === null) return Number.NaN;
  const [, year, month, day, hour, minute, second = "0", fraction = "", zone = "Z"] = match;
  const utcMs = utcOf(Number(year), Number(month), Number(day), Number(hour), Number(minute), Number(second), fraction);
  if (zone === "Z" || zone === "z") return utcMs;
  const sign = zone.startsWith("-") ? -1 : 1;
  const digits = zone.replace(/\D/g, "");
  return utcMs - sign * (Number(digits.slice(0, 2)) * 60 + Number(digits.slice(2))) * 60_000;
}

/**
 * Wall-clock time as if it were UTC, in milliseconds; NaN for other texts and impossible dates.
 *
 * @param text  date, or date and time, with 24 or 12 hours; a comma before the fraction is taken
 * @param order the order of the date's parts; a four-digit first part is always the year
 */
export function parseWallClockMs(text: string, order: DateOrder): number {
  const match = localText.exec(text.trim());
  if (match === null) return Number.NaN;
  const [, first = "", second = "", third = "", hourText = "0", minute = "0", seconds = "0", fraction = "", half] = match;
  const [year, month, day] =
    order === "year-month-day" || first.length === 4
      ? [first, second, third]
      : order === "day-month-year"
        ? [third, second, first]
        : [third, first, second];
  if (year.length === 3 || year.length === 1 || day.length > 2) return Number.NaN;
  let hour = Number(hourText);
  if (half !== undefined) {
    if (hour < 1 || hour > 12) return Number.NaN;
    hour = (hour % 12) + (half.toLowerCase() === "p" ? 12 : 0);
  }
  const fullYear = year.length === 2 ? 2000 + Number(year) : Number(year);
  return utcOf(fullYear, Number(month), Number(day), hour, Number(minute), Number(seconds), fraction);
}

/** Milliseconds since 1970 UTC, or NaN where the parts name no date or time. */
function utcOf(year: number, month: number, day: number, hour: number, minute: number, second: number, fraction: string): number {
  if (month < 1 || month > 12 || day < 1 || hour > 24 || minute > 59 || second > 60) return Number.NaN;
  const ms = Date.UTC(year, month - 1, day, hour, minute, second) + (fraction === "" ? 0 : Number(`0.${fraction}`) * 1000);
  return new Date(Date.UTC(year, month - 1, day)).getUTCDate() === day ? ms : Number.NaN;
}

/** Whether a text looks like a date, a time or both, in any form that this file reads. */
export function looksLikeTime(text: string): boolean {
  const trimmed = text.trim();
  return isoText.test(trimmed) || localText.test(trimmed) || clockText.test(trimmed);
}

/** Whether a text is a date without a time of day, in any order of its parts. */
export function isDateAlone(text: string): boolean {
  return /^\d{1,4}([-./])\d{1,2}\1\d{1,4}$/.test(text.trim());
}

/** Turns wall-clock times of one zone into instants. */
export type ZoneClock = {
  /**
   * The instant of a wall-clock time, given as if it were UTC.
   *
   * An hour that a change of clocks repeats is read as its first pass, unless that would step back behind `afterMs`;
   * an hour that a change of clocks skips is read with the offset that held before it.
   */
  instantMs(wallMs: number, afterMs: number): number;
};

/** Makes a zone clock; offsets are looked up once an hour, since asking for each row would dominate reading. */
export function zoneClock(zone: string): ZoneClock {
  const offsets = new Map<number, readonly [number, number]>();
  const offsetsOf = (wallMs: number): readonly [number, number] => {
    const quarter = Math.floor(wallMs / 900_000);
    let pair = offsets.get(quarter);
    if (pair === undefined) {
      const wall = Temporal.Instant.fromEpochMilliseconds(quarter * 900_000)
        .toZonedDateTimeISO("UTC")
        .toPlainDateTime();
      const earlier = wall.toZonedDateTime(zone, { disambiguation: "earlier" }).epochMilliseconds;
      const later = wall.toZonedDateTime(zone, { disambiguation: "later" }).epochMilliseconds;
      pair = [earlier - quarter * 900_000, later - quarter * 900_000];
      offsets.set(quarter, pair);
    }
    return pair;
  };
  return {
    instantMs(wallMs, afterMs) {
      const [earlier, later] = offsetsOf(wallMs);
      const first = wallMs + earlier;
      const second = wallMs + later;
      return first < afterMs && second > first ? second : first;
    },
  };
}

/** An instant as ISO 8601 text with the zone's offset, to the second. */
export function formatInstant(instantMs: number, zone: string): string {
  return Temporal.Instant.fromEpochMilliseconds(Math.round(instantMs))
    .toZonedDateTimeISO(zone)
    .toString({ timeZoneName: "never", smallestUnit: "second", calendarName: "never" });
}
