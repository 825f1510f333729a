import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { secondsOf, type TimeReading } from "../../../../lib/read/dialect/times.ts";
import { FieldCursor } from "../../../../lib/read/log/plain-field.ts";

const point = { decimalMark: ".", thousandsMark: undefined } as const;
const comma = { decimalMark: ",", thousandsMark: undefined } as const;

function cursorOn(text: string, time: TimeReading = { kind: "elapsed", unitS: 1 }, form: typeof point | typeof comma = point): FieldCursor {
  const cursor = new FieldCursor(form, time, ";".charCodeAt(0));
  cursor.lookInto(new TextEncoder().encode(`${text};\n`));
  return cursor;
}

/** The number, or undefined where the field is not plain from end to end. */
function numberIn(text: string, form: typeof point | typeof comma = point): number | undefined {
  const cursor = cursorOn(text, undefined, form);
  cursor.readNumber();
  const value = cursor.value[0] ?? Number.NaN;
  return Number.isNaN(value) || cursor.at !== text.length ? undefined : value;
}

function timeIn(text: string, time: TimeReading, form: typeof point | typeof comma = point): number | undefined {
  const cursor = cursorOn(text, time, form);
  cursor.readTime();
  const value = cursor.value[0] ?? Number.NaN;
  return Number.isNaN(value) || cursor.at !== text.length ? undefined : value;
}

describe("a plain number", () => {
  it("is the double that the language's own reader makes of it, to the last bit", () => {
    const digits = (most: number) => fc.string({ unit: fc.constantFrom(..."0123456789"), minLength: 0, maxLength: most });
    fc.assert(
      fc.property(fc.constantFrom("", "-", "+"), digits(17), fc.boolean(), digits(24), (sign, whole, hasMark, fraction) => {
        const text = `${sign}${whole}${hasMark ? `.${fraction}` : ""}`;
        const value = numberIn(text);
        // Not plain is allowed; wrong is not.
        if (value !== undefined) expect(Object.is(value, Number(text))).toBe(true);
        else expect(`${whole}${hasMark ? fraction : ""}`.length === 0 || `${whole}${fraction}`.length > 15).toBe(true);
      }),
      { seed: 20_260_101, numRuns: 5000 },
    );
  });

  it.each([
    ["9007199254740980", 9007199254740980],
    ["0.1", 0.1],
    ["-0.000", -0],
    [".5", 0.5],
    ["12.", 12],
    ["123456.7890123", 123456.7890123],
  ])("%s is read", (text, value) => {
    expect(Object.is(numberIn(text), value)).toBe(true);
  });

  it.each(["", ".", "-", "+-1", "1e3", "12,5", "0x1F", "9007199254740993", "1 2", "NaN", "0.12345678901234567890123"])(
    "%s is not plain, and left to the readers of texts",
    (text) => {
      expect(numberIn(text)).toBeUndefined();
    },
  );

  it("has the file's decimal mark", () => {
    expect(numberIn("12,84", comma)).toBe(12.84);
    expect(numberIn("12.84", comma)).toBeUndefined();
  });
});

describe("a plain time", () => {
  const local: TimeReading = { kind: "local", order: "day-month-year" };
  it.each<[string, TimeReading]>([
    ["12.5", { kind: "elapsed", unitS: 3600 }],
    ["1773475200123", { kind: "unix", unitS: 1e-3 }],
    ["46095.41666667", { kind: "serial" }],
    ["0:00:07", { kind: "clock", short: "h:mm" }],
    ["1234:59:59.250", { kind: "clock", short: "h:mm" }],
    ["23:59:59", { kind: "time-of-day" }],
    ["2026-03-14 08:00:00", { kind: "local", order: "year-month-day" }],
    ["2026/03/14T08:00:00.123456789", local],
    ["14.03.2026 08:00:00", local],
    ["03/14/2026 08:00:00", { kind: "local", order: "month-day-year" }],
    ["2024-02-29 23:59:59", local],
    ["2026-03-14T08:00:00Z", { kind: "iso", order: "year-month-day" }],
    ["2026-03-14T08:00:00.5+01:00", { kind: "iso", order: "year-month-day" }],
    ["2026-03-14T08:00:00-0530", { kind: "iso", order: "year-month-day" }],
  ])("%s is what the reader of texts makes of it", (text, time) => {
    expect(timeIn(text, time)).toBe(secondsOf(text, time, point));
    expect(timeIn(text, time)).not.toBeUndefined();
  });

  it.each<[string, TimeReading]>([
    ["2026-02-29 00:00:00", local],
    ["2026-13-01 00:00:00", local],
    ["31.04.2026 00:00:00", local],
    ["2026-03/14 08:00:00", local],
    ["2026-03-14 24:00:00", local],
    ["2026-03-14 08:00:60", local],
    ["2026-03-14 08:00", local],
    ["2026-03-14", local],
    ["2026-03-14T08:00:00Z", local],
    ["2026-03-14T08:00:00", { kind: "iso", order: "year-month-day" }],
    ["2026-03-14T08:00:00+19:00", { kind: "iso", order: "year-month-day" }],
    ["14.03.26 08:00:00", local],
    ["12:60:00", { kind: "clock", short: "h:mm" }],
    ["12:00", { kind: "clock", short: "h:mm" }],
    ["12:00:00 PM", { kind: "time-of-day" }],
    ["-1", { kind: "unix", unitS: 1 }],
  ])("%s is not plain", (text, time) => {
    expect(timeIn(text, time)).toBeUndefined();
  });

  it("of the day before does not lend its day to a date that is none", () => {
    const cursor = cursorOn("30.04.2026 08:00:00;31.04.2026 08:00:00", local);
    cursor.readTime();
    expect(cursor.value[0]).toBe(Date.UTC(2026, 3, 30, 8) / 1000);
    cursor.at++;
    cursor.readTime();
    expect(cursor.value[0]).toBeNaN();
  });
});
