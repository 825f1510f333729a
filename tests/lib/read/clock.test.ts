import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  formatInstant,
  isDateAlone,
  looksLikeTime,
  parseClockS,
  parseInstantMs,
  parseWallClockMs,
  wallMsOfSerial,
  zoneClock,
} from "../../../lib/read/clock.ts";

const seed = 20_260_329;
const utc = (text: string): number => Date.parse(`${text}Z`);

describe("clock texts", () => {
  it.each([
    ["0:00", 0],
    ["1:30", 5400],
    ["00:00:05", 5],
    ["123:45:06", 445_506],
    ["9999:59:59", 35_999_999],
    ["00:00:00.25", 0.25],
    ["00:00:00,25", 0.25],
    [" 0:01 ", 60],
  ])("%s is %d s", (text, seconds) => expect(parseClockS(text)).toBe(seconds));

  it.each(["", "12", "1:60", "1:00:60", "-1:00", "1:2:3:4", "12:00 PM", "a:00"])("%s is no clock text", (text) =>
    expect(parseClockS(text)).toBeNaN(),
  );
});

describe("instants", () => {
  it.each([
    ["2026-03-14T09:30:00Z", "2026-03-14T09:30:00"],
    ["2026-03-14 09:30Z", "2026-03-14T09:30:00"],
    ["2026-03-14T09:30:00+01:00", "2026-03-14T08:30:00"],
    ["2026-03-14T09:30:00+0530", "2026-03-14T04:00:00"],
    ["2026-03-14T09:30:00-03:30", "2026-03-14T13:00:00"],
    ["2026-03-14T23:30:00-01:00", "2026-03-15T00:30:00"],
    ["2026-03-14T09:30:00.250Z", "2026-03-14T09:30:00.250"],
    ["2026-03-14T09:30:00,5Z", "2026-03-14T09:30:00.500"],
    ["2024-02-29T12:00:00Z", "2024-02-29T12:00:00"],
  ])("%s", (text, same) => expect(parseInstantMs(text)).toBe(utc(same)));

  it.each([
    ["no offset", "2026-03-14T09:30:00"],
    ["a day that February has not", "2026-02-29T12:00:00Z"],
    ["month 13", "2026-13-01T12:00:00Z"],
    ["minute 60", "2026-03-14T09:60:00Z"],
    ["a date alone", "2026-03-14"],
    ["words", "yesterday"],
  ])("is no instant: %s", (_, text) => expect(parseInstantMs(text)).toBeNaN());

  it("are what the language itself reads from ISO texts", () => {
    fc.assert(
      fc.property(fc.date({ min: new Date("1970-01-01"), max: new Date("2100-01-01"), noInvalidDate: true }), (date) => {
        expect(parseInstantMs(date.toISOString())).toBe(date.getTime());
      }),
      { seed },
    );
  });
});

describe("wall-clock times", () => {
  const same = utc("2026-02-03T14:05:00");
  it.each([
    ["03.02.2026 14:05", "day-month-year"],
    ["3.2.2026 14:05", "day-month-year"],
    ["03/02/26 14:05:00", "day-month-year"],
    ["03-02-2026, 14:05", "day-month-year"],
    ["02/03/2026 2:05 PM", "month-day-year"],
    ["2/3/26 02:05:00 p.m.", "month-day-year"],
    ["2026-02-03 14:05", "year-month-day"],
    ["2026/02/03T14:05:00", "year-month-day"],
    ["26-02-03 14:05", "year-month-day"],
    ["2026-02-03 14:05", "day-month-year"],
  ] as const)("%s, %s", (text, order) => expect(parseWallClockMs(text, order)).toBe(same));

  it.each([
    ["12:00:00 AM", "2026-02-03T00:00:00"],
    ["12:30 AM", "2026-02-03T00:30:00"],
    ["12:00 PM", "2026-02-03T12:00:00"],
    ["11:59 pm", "2026-02-03T23:59:00"],
  ])("counts twelve hours: %s", (clock, expected) => expect(parseWallClockMs(`2026-02-03 ${clock}`, "year-month-day")).toBe(utc(expected)));

  it("keeps fractions of a second, after point or comma", () => {
    expect(parseWallClockMs("03.02.2026 14:05:00,125", "day-month-year")).toBe(same + 125);
    expect(parseWallClockMs("03.02.2026 14:05:00.5", "day-month-year")).toBe(same + 500);
  });

  it.each([
    ["31.02.2026 10:00", "day-month-year"],
    ["13/13/2026 10:00", "month-day-year"],
    ["03.02.2026 25:00", "day-month-year"],
    ["03.02.2026 10:60", "day-month-year"],
    ["03.02.026 10:00", "day-month-year"],
    ["0026-02-03 10:00", "year-month-day"],
    ["2026-02-03 24:30", "year-month-day"],
    ["2026-02-03T10:00Z", "year-month-day"],
    ["3/2-2026 10:00", "day-month-year"],
    ["2026-02-03 13:00 PM", "year-month-day"],
    ["2026-02-03 0:30 AM", "year-month-day"],
    ["14:05", "day-month-year"],
    ["", "day-month-year"],
  ] as const)("is none: %s, %s", (text, order) => expect(parseWallClockMs(text, order)).toBeNaN());
});

describe("days of a spreadsheet", () => {
  // 1 January 2000 is day 36526, and 1970 is day 25569, in every spreadsheet.
  it.each([
    [36_526, "2000-01-01T00:00:00"],
    [25_569.5, "1970-01-01T12:00:00"],
    [2_958_465, "9999-12-31T00:00:00"],
  ])("%d", (days, expected) => expect(wallMsOfSerial(days)).toBe(utc(expected)));
  it.each([-1, 2_958_467, 1_773_475_200, Number.NaN])("%d is none", (days) => expect(wallMsOfSerial(days)).toBeNaN());
});

describe("looking at texts", () => {
  it.each(["2026-03-14T09:30:00Z", "03.02.26 14:05", "14:05:00", "03.02.26"])("%s looks like a time", (text) =>
    expect(looksLikeTime(text)).toBe(true),
  );
  it.each(["", "12.5", "1.2", "bulk", "03.02"])("%s does not", (text) => expect(looksLikeTime(text)).toBe(false));

  it.each(["03.02.26", "2026-02-03", "3/2/2026"])("%s is a date alone", (text) => expect(isDateAlone(text)).toBe(true));
  it.each(["03.02.26 14:05", "3/2-2026", "12.5", "14:05"])("%s is none", (text) => expect(isDateAlone(text)).toBe(false));
});

describe("zones", () => {
  const first = Number.NEGATIVE_INFINITY;
  // Changes of clocks in 2026: IANA time zone database, Europe/Ljubljana 29 March and 25 October at 01:00 UTC,
  // America/New_York 8 March 07:00 UTC and 1 November 06:00 UTC.
  it.each([
    ["Europe/Ljubljana", "2026-01-15T12:00:00", "2026-01-15T11:00:00"],
    ["Europe/Ljubljana", "2026-07-15T12:00:00", "2026-07-15T10:00:00"],
    ["America/New_York", "2026-01-15T12:00:00", "2026-01-15T17:00:00"],
    ["America/New_York", "2026-07-15T12:00:00", "2026-07-15T16:00:00"],
    ["Asia/Kathmandu", "2026-07-15T12:00:00", "2026-07-15T06:15:00"],
    ["Europe/Ljubljana", "2026-03-29T01:59:59", "2026-03-29T00:59:59"],
    ["Europe/Ljubljana", "2026-03-29T03:00:00", "2026-03-29T01:00:00"],
    ["America/New_York", "2026-03-08T01:59:59", "2026-03-08T06:59:59"],
    ["America/New_York", "2026-03-08T03:00:00", "2026-03-08T07:00:00"],
  ])("%s: %s is %s UTC", (zone, wall, instant) => expect(zoneClock(zone).instantMs(utc(wall), first)).toBe(utc(instant)));

  it.each([
    ["Europe/Ljubljana", "2026-03-29T02:30:00", "2026-03-29T00:30:00"],
    ["America/New_York", "2026-03-08T02:30:00", "2026-03-08T06:30:00"],
  ])("%s: %s is skipped, and is read as the pass that comes out earlier, %s UTC", (zone, wall, instant) =>
    expect(zoneClock(zone).instantMs(utc(wall), first)).toBe(utc(instant)),
  );

  it.each([
    ["Europe/Ljubljana", "2026-10-25T02:30:00", "2026-10-25T00:30:00", "2026-10-25T01:30:00"],
    ["America/New_York", "2026-11-01T01:30:00", "2026-11-01T05:30:00", "2026-11-01T06:30:00"],
  ])("%s: %s comes twice: first %s UTC, and %s UTC once that would step back", (zone, wall, firstPass, secondPass) => {
    const clock = zoneClock(zone);
    expect(clock.instantMs(utc(wall), first)).toBe(utc(firstPass));
    expect(clock.instantMs(utc(wall), utc(firstPass))).toBe(utc(firstPass));
    expect(clock.instantMs(utc(wall), utc(firstPass) + 1)).toBe(utc(secondPass));
  });

  it("formats an instant so that it reads back to the second, in every zone tried and across changes of clocks", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 4_000_000_000 }),
        fc.constantFrom("Europe/Ljubljana", "America/New_York", "Asia/Kathmandu", "UTC", "Australia/Lord_Howe"),
        (seconds, zone) => {
          expect(parseInstantMs(formatInstant(seconds * 1000, zone))).toBe(seconds * 1000);
        },
      ),
      { seed },
    );
  });

  it("formats with the zone's own offset", () => {
    expect(formatInstant(utc("2026-03-29T00:59:59"), "Europe/Ljubljana")).toBe("2026-03-29T01:59:59+01:00");
    expect(formatInstant(utc("2026-03-29T01:00:00"), "Europe/Ljubljana")).toBe("2026-03-29T03:00:00+02:00");
  });
});
