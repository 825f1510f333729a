import { Temporal } from "temporal-polyfill";

/** The order in which a local date writes its parts. */
export type DateOrder = "year-month-day" | "day-month-year" | "month-day-year";

/** How a clock of two parts counts: hours and minutes, or minutes and seconds. */
export type ShortClock = "h:mm" | "mm:ss";

const clockText = /^(?:(\d{1,4})\s*(?:d|days?)[\s,]*)?(\d{1,4}):([0-5]?\d)(?::([0-5]?\d(?:[.,]\d+)?))?$/;
/** Days before a point and hours of two digits behind it: 1.02:03:04. */
const dottedDays = /^(\d{1,4})\.([01]\d|2[0-3]):([0-5]\d):([0-5]\d(?:[.,]\d+)?)$/;
const minutesText = /^(\d{1,4}):([0-5]\d[.,]\d+)$/;
/** ISO 8601 durations: PT1H2M3.5S, P1DT2H. */
const isoDuration = /^P(?=\d|T\d)(?:(\d+)D)?(?:T(?:(\d+)H)?(?:(\d+)M)?(?:(\d+(?:[.,]\d+)?)S)?)?$/;
/** Durations in letters: 1d 2h, 1h 02m 03s, 5m12.5s. */
const letterDuration = /^(?:(\d+)\s*d)?\s*(?:(\d+)\s*h)?\s*(?:(\d+)\s*m(?:in)?)?\s*(?:(\d+(?:[.,]\d+)?)\s*s)?$/;

const numberOf = (text: string | undefined): number => Number((text ?? "0").replace(",", "."));

/**
 * Seconds in `h:mm`, `hh:mm:ss`, `hhh:mm:ss.s`, `mm:ss.s`, with days before them (`1d 02:03:04`, `1.02:03:04`), or in a duration of
 * ISO 8601 (`PT1H2M3S`, `1h 2m 3s`); NaN for other texts.
 *
 * @param short  how a clock of two parts without a fraction counts
 */
export function parseClockS(text: string, short: ShortClock = "h:mm"): number {
  const trimmed = text.trim();
  const clock = clockText.exec(trimmed);
  if (clock !== null) {
    const [, days, first, second, third] = clock;
    if (third === undefined && days === undefined && short === "mm:ss") return Number(first) * 60 + Number(second);
    return numberOf(days) * 86_400 + Number(first) * 3600 + Number(second) * 60 + numberOf(third);
  }
  const minutes = minutesText.exec(trimmed);
  if (minutes !== null) return Number(minutes[1]) * 60 + numberOf(minutes[2]);
  const dotted = dottedDays.exec(trimmed);
  if (dotted !== null) return Number(dotted[1]) * 86_400 + Number(dotted[2]) * 3600 + Number(dotted[3]) * 60 + numberOf(dotted[4]);
  const duration = /[dhmsDHMS]$/.test(trimmed) ? (isoDuration.exec(trimmed) ?? letterDuration.exec(trimmed)) : null;
  // One part alone ("10 s") is a number with a unit, and is read as that.
  if (duration === null || (!trimmed.startsWith("P") && duration.slice(1).filter((part) => part !== undefined).length < 2))
    return Number.NaN;
  return numberOf(duration[1]) * 86_400 + numberOf(duration[2]) * 3600 + numberOf(duration[3]) * 60 + numberOf(duration[4]);
}

/** Whether a clock text has two parts and no fraction, so that it may count hours and minutes, or minutes and seconds. */
export function isShortClock(text: string): boolean {
  return /^\d{1,4}:[0-5]\d$/.test(text.trim());
}

/** Seconds since midnight in `hhmm` or `hhmmss` as recorders write a time of day without marks; NaN for other texts. */
export function parseCompactClockS(text: string): number {
  const match = /^([01]\d|2[0-3])([0-5]\d)([0-5]\d)?$/.exec(text.trim());
  return match === null ? Number.NaN : Number(match[1]) * 3600 + Number(match[2]) * 60 + Number(match[3] ?? 0);
}

const zonePart = "(?:\\s*(Z|z|UTC|GMT|[+-]\\d\\d(?::?\\d\\d)?))?";
const clockPart = "(\\d{1,2})([:.])(\\d\\d)(?:\\5(\\d\\d)(?:(?:[.,]|:(?=\\d{3}\\b))(\\d{1,9}))?)?(?:\\s*([AaPp])\\.?[Mm]\\.?)?";
/** 03.02.2026 14:05:00.5, 2/3/26 2:05 PM, 2026-02-03T14:05:00+01:00, 2026-02-03. */
const numericStamp = new RegExp(`^(\\d{1,4})[-./](\\d{1,2})[-./](\\d{1,4})(?:[T ,]+${clockPart}${zonePart})?$`);
/** The clock and zone of such a stamp by themselves, for a date in words before them. */
const clockAlone = new RegExp(`^${clockPart.replace("\\5", "\\2")}${zonePart}$`);
/** 20260203T140500Z, 20260203140500, 20260203 1405. */
const compactStamp = /^(\d{4})(\d\d)(\d\d)[T _]?(\d\d)(\d\d)(?:(\d\d)(?:[.,](\d{1,9}))?)?(?:\s*(Z|z|[+-]\d\d(?::?\d\d)?))?$/;
/** 3 Feb 2026 14:05:00, 03-Feb-26, Feb 3, 2026 2:05 PM, Tue Feb 3 2026. */
const namedDate =
  /^(?:(?:mon|tue|wed|thu|fri|sat|sun)[a-z]*\.?,?\s+)?(?:(\d{1,2})[-.\s]+([a-z]{3,9})\.?|([a-z]{3,9})\.?\s+(\d{1,2}))[-,.\s]+(\d{4}|\d\d)(?=$|[T ,])/i;
const months = ["jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"];
const longMonths = [
  "january",
  "february",
  "march",
  "april",
  "may",
  "june",
  "july",
  "august",
  "september",
  "october",
  "november",
  "december",
];

/** A date and time as written, its parts told apart but not yet ordered. */
type Stamp = {
  readonly date: readonly [string, string, string];
  /** The order that the text itself shows: a month in letters, a date without marks, a year of four digits first. */
  readonly shows: DateOrder | undefined;
  readonly hour: number;
  readonly minute: number;
  readonly second: number;
  readonly fraction: string;
  readonly hasClock: boolean;
  readonly zone: string | undefined;
};

function parseStamp(text: string): Stamp | undefined {
  const trimmed = text.trim();
  const numeric = numericStamp.exec(trimmed);
  if (numeric !== null) {
    const [, first = "", second = "", third = "", hour, , minute, seconds, fraction = "", half, zone] = numeric;
    const marks = trimmed.replace(/^\d+/, "");
    // The same mark twice: 3/2-2026 is no date.
    if (marks.charAt(0) !== marks.charAt(1 + second.length)) return undefined;
    return withClock(
      [first, second, third],
      first.length === 4 ? "year-month-day" : undefined,
      hour,
      minute,
      seconds,
      fraction,
      half,
      zone,
    );
  }
  const compact = compactStamp.exec(trimmed);
  if (compact !== null) {
    const [, year = "", month = "", day = "", hour, minute, seconds, fraction = "", zone] = compact;
    return withClock([year, month, day], "year-month-day", hour, minute, seconds, fraction, undefined, zone);
  }
  const named = namedDate.exec(trimmed);
  if (named === null) return undefined;
  const [whole, day, month, monthFirst, dayLast, year = ""] = named;
  const name = (month ?? monthFirst ?? "").toLowerCase();
  const number = (longMonths.indexOf(name) + 1 || months.indexOf(name === "sept" ? "sep" : name) + 1).toString();
  if (number === "0") return undefined;
  const rest = /^(?:[T ,]+(.*))?$/.exec(trimmed.slice(whole.length))?.[1];
  const parts: Stamp["date"] = [day ?? dayLast ?? "", number, year];
  if (rest === undefined) return withClock(parts, "day-month-year", undefined, undefined, undefined, "", undefined, undefined);
  const clock = clockAlone.exec(rest);
  return clock === null ? undefined : withClock(parts, "day-month-year", clock[1], clock[3], clock[4], clock[5] ?? "", clock[6], clock[7]);
}

function withClock(
  date: Stamp["date"],
  shows: DateOrder | undefined,
  hourText: string | undefined,
  minute: string | undefined,
  seconds: string | undefined,
  fraction: string,
  half: string | undefined,
  zone: string | undefined,
): Stamp | undefined {
  let hour = Number(hourText ?? 0);
  if (half !== undefined) {
    if (hour < 1 || hour > 12) return undefined;
    hour = (hour % 12) + (half.toLowerCase() === "p" ? 12 : 0);
  }
  return { date, shows, hour, minute: Number(minute ?? 0), second: Number(seconds ?? 0), fraction, hasClock: hourText !== undefined, zone };
}

/** The parts of a date by its order; undefined where the lengths do not allow it. */
function yearMonthDay(stamp: Stamp, order: DateOrder): readonly [number, number, number] | undefined {
  const [first, second, third] = stamp.date;
  const [year, month, day] =
    (stamp.shows ?? order) === "year-month-day"
      ? [first, second, third]
      : (stamp.shows ?? order) === "day-month-year"
        ? [third, second, first]
        : [third, first, second];
  if (year.length === 3 || year.length === 1 || day.length > 2 || month.length > 2) return undefined;
  return [year.length === 2 ? 2000 + Number(year) : Number(year), Number(month), Number(day)];
}

function wallMsOf(stamp: Stamp, order: DateOrder): number {
  const date = yearMonthDay(stamp, order);
  return date === undefined ? Number.NaN : utcOf(...date, stamp.hour, stamp.minute, stamp.second, stamp.fraction);
}

/** Milliseconds since 1970 UTC of a date and time that carries its offset; NaN for other texts and impossible dates. */
export function parseInstantMs(text: string, order: DateOrder = "year-month-day"): number {
  const stamp = parseStamp(text);
  if (stamp?.zone === undefined) return Number.NaN;
  // A date that is not year first is only read by an order that was told.
  if (stamp.shows === undefined && order === "year-month-day" && stamp.date[0].length !== 4) return Number.NaN;
  return wallMsOf(stamp, order) - offsetMsOf(stamp.zone);
}

/** The offset of a zone's text in ms; NaN beyond the 18 hours that ISO 8601's users allow themselves, and for minutes above 59. */
function offsetMsOf(zone: string): number {
  if (/^[a-z]/i.test(zone)) return 0;
  const digits = zone.replace(/\D/g, "");
  const [hours, minutes] = [Number(digits.slice(0, 2)), Number(digits.slice(2))];
  if (hours > 18 || minutes > 59) return Number.NaN;
  return (zone.startsWith("-") ? -1 : 1) * (hours * 60 + minutes) * 60_000;
}

/**
 * Wall-clock time as if it were UTC, in milliseconds; NaN for other texts, impossible dates, and times that carry their offset.
 *
 * @param text  date, or date and time, with 24 or 12 hours; points between hours, minutes and seconds, a comma before the fraction, dates
 *              without marks and English names of months are taken
 * @param order the order of the date's parts; a four-digit first part is always the year
 */
export function parseWallClockMs(text: string, order: DateOrder): number {
  const stamp = parseStamp(text);
  return stamp === undefined || stamp.zone !== undefined ? Number.NaN : wallMsOf(stamp, order);
}

/** Milliseconds since 1970 UTC, or NaN where the parts name no date or time. */
function utcOf(year: number, month: number, day: number, hour: number, minute: number, second: number, fraction: string): number {
  // Date.UTC takes the years 0 to 99 for those of the last century.
  if (year < 1900 || month < 1 || month > 12 || day < 1 || hour > 24 || minute > 59 || second > 60) return Number.NaN;
  if (hour === 24 && (minute > 0 || second > 0)) return Number.NaN;
  const ms = Date.UTC(year, month - 1, day, hour, minute, second) + (fraction === "" ? 0 : Number(`0.${fraction}`) * 1000);
  return new Date(Date.UTC(year, month - 1, day)).getUTCDate() === day ? ms : Number.NaN;
}

/** Seconds since midnight of a time of day in 24 or 12 hours, or of a clock that counts on; NaN for other texts. */
export function parseTimeOfDayS(text: string): number {
  const [, clock = text, half] = /^(.*?)\s*([ap])\.?m\.?$/i.exec(text.trim()) ?? [];
  const seconds = parseClockS(clock);
  if (half === undefined) return seconds;
  const hour = Math.floor(seconds / 3600);
  if (!(hour >= 1 && hour <= 12)) return Number.NaN;
  return seconds + ((hour % 12) + (half.toLowerCase() === "p" ? 12 : 0) - hour) * 3600;
}

/** Whether a text looks like a date, a time or both, in any form that this file reads. */
export function looksLikeTime(text: string): boolean {
  return parseStamp(text) !== undefined || !Number.isNaN(parseTimeOfDayS(text));
}

/** Whether a text is a date with a time of day behind it. */
export function hasClock(text: string): boolean {
  return parseStamp(text)?.hasClock === true;
}

/** Whether a text is a date and time without marks, such as 20260203140500, which is no number of milliseconds. */
export function isCompactStamp(text: string): boolean {
  const trimmed = text.trim();
  return /^(?:19|20)\d{10}(?:\d\d)?$/.test(trimmed) && !Number.isNaN(parseWallClockMs(trimmed, "year-month-day"));
}

/** Whether a text is a date without a time of day, in any order of its parts, or without marks (20260203). */
export function isDateAlone(text: string): boolean {
  const trimmed = text.trim();
  if (/^(?:19|20)\d\d(?:0[1-9]|1[0-2])(?:0[1-9]|[12]\d|3[01])$/.test(trimmed)) return true;
  return parseStamp(trimmed)?.hasClock === false;
}

/** A date without marks in the form that the other readers take: 20260203 becomes 2026-02-03; any other text is given back as it is. */
export function markDate(text: string): string {
  return /^\d{8}$/.test(text) ? `${text.slice(0, 4)}-${text.slice(4, 6)}-${text.slice(6)}` : text;
}

/** Days from 30 December 1899, the zero of spreadsheets' dates, to 1970. Source: ECMA-376 part 1, 18.17.4.1 (from memory). */
const serialEpochDays = 25_569;

/** The last day that spreadsheets know, 31 December 9999. */
const lastSerial = 2_958_465;

/** Wall-clock milliseconds, as if UTC, of a spreadsheet's serial date, in days since 30 December 1899; NaN beyond what spreadsheets know. */
export function wallMsOfSerial(days: number): number {
  if (!(days >= 0 && days <= lastSerial + 1)) return Number.NaN;
  return Math.round((days - serialEpochDays) * 86_400_000);
}

/** Wall-clock times from (included) to (excluded), ms as if they were UTC, to all of which the same is added to make them instants. */
export type SteadySpan = { readonly fromMs: number; readonly toMs: number; readonly offsetMs: number };

/** Turns wall-clock times of one zone into instants. */
export type ZoneClock = {
  /**
   * The instant of a wall-clock time, given as if it were UTC.
   *
   * An hour that a change of clocks repeats is read as its first pass, unless that would step back behind `afterMs`;
   * an hour that a change of clocks skips is read with the offset that held before it.
   */
  instantMs(wallMs: number, afterMs: number): number;
  /** A span around a wall-clock time in which no clock changes, at least a quarter of an hour long; undefined inside a change. */
  steadySpanAt(wallMs: number): SteadySpan | undefined;
};

/** Zones change their clocks at quarters of an hour only. */
const quarterMs = 900_000;

/** Further than any change of clocks reaches, the leap over a whole day at the date line included. */
const beyondChangeMs = 26 * 3_600_000;

/** Makes a zone clock. Offsets are looked up once for each quarter of an hour, since asking for each row would dominate reading. */
export function zoneClock(zone: string): ZoneClock {
  const offsets = new Map<number, readonly [number, number]>();
  const wallAt = (quarter: number): Temporal.PlainDateTime =>
    Temporal.Instant.fromEpochMilliseconds(quarter * quarterMs)
      .toZonedDateTimeISO("UTC")
      .toPlainDateTime();
  const offsetsOf = (wallMs: number): readonly [number, number] => {
    const quarter = Math.floor(wallMs / quarterMs);
    let pair = offsets.get(quarter);
    if (pair === undefined) {
      const wall = wallAt(quarter);
      const earlier = wall.toZonedDateTime(zone, { disambiguation: "earlier" }).epochMilliseconds;
      const later = wall.toZonedDateTime(zone, { disambiguation: "later" }).epochMilliseconds;
      pair = [earlier - quarter * quarterMs, later - quarter * quarterMs];
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
    steadySpanAt(wallMs) {
      const [earlier, later] = offsetsOf(wallMs);
      if (earlier !== later) return undefined;
      const quarter = Math.floor(wallMs / quarterMs);
      const change = wallAt(quarter).toZonedDateTime(zone).getTimeZoneTransition("next");
      const untilMs = change === null ? Number.POSITIVE_INFINITY : change.epochMilliseconds - earlier - beyondChangeMs;
      return { fromMs: quarter * quarterMs, toMs: Math.max((quarter + 1) * quarterMs, untilMs), offsetMs: earlier };
    },
  };
}

/** An instant as ISO 8601 text with the zone's offset, to the second. */
export function formatInstant(instantMs: number, zone: string): string {
  return Temporal.Instant.fromEpochMilliseconds(Math.round(instantMs))
    .toZonedDateTimeISO(zone)
    .toString({ timeZoneName: "never", smallestUnit: "second", calendarName: "never" });
}
