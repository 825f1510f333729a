/** How a column of times is read: what it counts, from where, in which unit or order. */
import type { Dialect } from "../../nouns/instrument.ts";
import {
  type DateOrder,
  hasClock,
  isCompactStamp,
  isDateAlone,
  isShortClock,
  markDate,
  parseClockS,
  parseCompactClockS,
  parseInstantMs,
  parseTimeOfDayS,
  parseWallClockMs,
  type ShortClock,
  wallMsOfSerial,
} from "../clock.ts";
import { parseNumber } from "../numbers.ts";
import { parseQuantity, parseUnit, type Unit } from "../units.ts";
import type { NumberForm } from "./layout.ts";
import { choice, type Option, type Question } from "./questions.ts";

export type TimeReading =
  | { readonly kind: "elapsed"; readonly unitS: number }
  | { readonly kind: "clock"; readonly short: ShortClock }
  | { readonly kind: "time-of-day" }
  | { readonly kind: "unix"; readonly unitS: number }
  | { readonly kind: "iso"; readonly order: DateOrder }
  | { readonly kind: "local"; readonly order: DateOrder }
  | { readonly kind: "serial" };

/** Seconds of a unit of time; exact, since 60 and 3600 are and their inverses are not. */
const unitSeconds: Readonly<Record<string, number>> = { ms: 1e-3, s: 1, min: 60, h: 3600, d: 86_400 };

export const secondsOfUnit = (unit: Unit | undefined): number | undefined => unitSeconds[unit?.symbol ?? ""];

const nameTheDate = "name the column of the date beside it in the recorder's record: dialect: time: { name: …, dateName: … }";

/** So many of the times must be of one kind: fewer garbled ones than this are told row by row, and do not decide. */
const neededShare = 0.6;

/** Orders in which a date that is not year first may be written. */
const orders: readonly DateOrder[] = ["year-month-day", "day-month-year", "month-day-year"];

/**
 * How the time column is read, or what would have to be known for it. A few garbled rows do not decide: they are told one by one later.
 *
 * @param texts     times of the file's head; where date and time stand apart, both with a blank between
 * @param declared  what the record says
 * @param unit      the unit that the heading names
 */
export function resolveTime(
  texts: readonly string[],
  declared: Dialect["time"],
  form: NumberForm,
  unit: Unit | undefined,
): { value: TimeReading; why: string } | { question: Question } {
  const glued = texts.map((text) => parseQuantity(text, form.decimalMark, form.thousandsMark).unit).find((found) => found !== undefined);
  const unitS = secondsOfUnit(parseUnit(declared?.unit ?? "") ?? unit ?? glued);
  const kind = declared?.kind;
  const share = (reads: (text: string) => number): number =>
    texts.length === 0 ? 0 : texts.filter((text) => !Number.isNaN(reads(text))).length / texts.length;
  const most = (reads: (text: string) => number): boolean => share(reads) >= neededShare;
  const first = texts[0] ?? "";

  const isCompact = texts.length > 0 && texts.every(isCompactStamp);
  const areDays = kind === undefined && /^\d{8}$/.test(first) && texts.every(isDateAlone);
  if (areDays) return { question: choice(`"${first}"`, "a time of day with the date", nameTheDate, []) };
  const asNumber = (text: string): number => parseQuantity(text, form.decimalMark, form.thousandsMark).value;
  if (!isCompact && most(asNumber))
    return resolveNumbers(
      texts,
      texts.map(asNumber).filter((value) => !Number.isNaN(value)),
      declared,
      unitS,
    );

  if (most(parseTimeOfDayS)) return resolveClock(texts, declared);

  for (const order of declared?.order === undefined ? orders : [declared.order])
    if ((kind === undefined || kind === "iso") && most((text) => parseInstantMs(text, order))) {
      const doubtful = order !== "year-month-day" && declared?.order === undefined;
      const others = orders.filter((other) => other !== order && most((text) => parseInstantMs(text, other)));
      if (!doubtful || others.length === 0 || isDotted(first))
        return { value: { kind: "iso", order }, why: `"${first}" carries its offset` };
      return { question: askOrder(first, (other) => parseInstantMs(first, other)) };
    }

  if (kind === undefined || kind === "local") {
    const tried = declared?.order === undefined ? orders : [declared.order];
    const shares = tried.map((order) => share((text) => parseWallClockMs(text, order)));
    const needed = Math.max(neededShare, ...shares);
    const possible = tried.filter((_, index) => (shares[index] ?? 0) >= needed);
    const order = declared?.order === undefined ? onlyOrder(possible, texts) : possible[0];
    if (order !== undefined && !texts.some(hasClock))
      return { question: choice(`"${first}"`, "a time of day with the date", nameTheDate, []) };
    if (order !== undefined) return { value: { kind: "local", order }, why: whyOrder(order, texts, declared?.order !== undefined) };
    if (possible.length > 1) return { question: askOrder(first, (other) => parseWallClockMs(first, other)) };
  }
  return {
    question: choice(
      `"${first}"`,
      declared?.order !== undefined
        ? `dates in the order ${declared.order}, as the record says`
        : kind === undefined
          ? "times that count from the start, carry a zone, or are dates with times"
          : `times of the kind "${kind}"`,
      "say in the recorder's record: dialect: time: { kind: …, order: … or unit: … }",
      [],
    ),
  };
}

/** Numbers: since 1970, days of a spreadsheet, or a count from the start in a unit that must be told. */
function resolveNumbers(
  texts: readonly string[],
  values: readonly number[],
  declared: Dialect["time"],
  unitS: number | undefined,
): { value: TimeReading; why: string } | { question: Question } {
  const kind = declared?.kind;
  const first = values[0] ?? Number.NaN;
  const text = texts[0] ?? "";
  if (kind === "serial") return { value: { kind: "serial" }, why: "the record says so" };
  if (
    kind === "unix" ||
    (kind === undefined && unitS === undefined && first > 9e8) ||
    (kind === undefined && first > 9e8 && (unitS ?? 1) <= 1)
  )
    return {
      value: { kind: "unix", unitS: unitS ?? (first > 1e11 ? 1e-3 : 1) },
      why: `"${text}" counted from 1970 is ${dayOf(first * (first > 1e11 ? 1 : 1000))}`,
    };
  if (kind !== undefined && kind !== "elapsed")
    return {
      question: choice(
        `"${text}"`,
        `times of the kind "${kind}"`,
        "say in the recorder's record: dialect: time: { kind: …, order: … or unit: … }",
        [],
      ),
    };
  if (unitS !== undefined)
    return {
      value: { kind: "elapsed", unitS },
      why: declared?.unit === undefined ? "the unit stands with the times" : "the record says so",
    };

  // The record says that it counts, and the schema that seconds are meant where no unit is named.
  if (kind === "elapsed") return { value: { kind: "elapsed", unitS: 1 }, why: "the record says so" };

  const isDays = values.every((value) => value > 20_000 && value < 80_000);
  if (isDays && isFineGrained(values))
    return {
      value: { kind: "serial" },
      why: `"${text}" as days of a spreadsheet is ${dayOf(wallMsOfSerial(first))}, and no recorder counts steps this small in seconds`,
    };
  const shown = values.find((value) => value !== 0) ?? first;
  const options: Option[] = (["s", "min", "h", "ms"] as const).map((symbol) => ({
    answer: `--time ${symbol}`,
    yaml: `time: { unit: ${symbol} }`,
    reads: `"${texts[values.indexOf(shown)] ?? text}" as ${shown} ${symbol} from the start`,
  }));
  if (isDays)
    options.push({
      answer: "--time serial",
      yaml: "time: { kind: serial }",
      reads: `"${text}" as ${dayOf(wallMsOfSerial(first))}, counted in days by a spreadsheet`,
    });
  return {
    question: choice(
      `"${texts[values.indexOf(shown)] ?? text}" without a unit`,
      `to know what the times count: ${shown} s, ${shown} min or ${shown} h from the start${isDays ? `, or days of a spreadsheet, ${dayOf(wallMsOfSerial(first))}` : ""}`,
      `say in the recorder's record: dialect: time: { unit: s }, { unit: min } or { unit: h }${isDays ? ", or { kind: serial }" : ""}`,
      options,
    ),
  };
}

/** Steps far below a hundredth of a second if they were seconds: days then, of which a second is 0.0000116. */
function isFineGrained(values: readonly number[]): boolean {
  const steps = values
    .slice(1)
    .map((value, index) => value - (values[index] ?? value))
    .filter((step) => step > 0);
  return steps.length > 0 && steps.every((step) => step < 0.008);
}

/** `h:mm:ss`: from the start, or the time of day; two parts may be minutes and seconds. */
function resolveClock(texts: readonly string[], declared: Dialect["time"]): { value: TimeReading; why: string } | { question: Question } {
  const kind = declared?.kind;
  const first = texts[0] ?? "";
  const isShort = texts.every(isShortClock);
  const startsAtNothing = parseClockS(first, isShort ? "mm:ss" : "h:mm") < 60;
  if (kind === "time-of-day") return { value: { kind: "time-of-day" }, why: "the record says so" };
  if (kind !== undefined && kind !== "elapsed")
    return {
      question: choice(
        `"${first}"`,
        "a date with the time of day",
        `${nameTheDate}; without a date say dialect: time: { kind: time-of-day }, and the connection's on gives the day`,
        [],
      ),
    };
  const opensElapsed = kind === "elapsed" || startsAtNothing || texts.some((text) => parseClockS(text) >= 86_400);
  if (opensElapsed && isShort && declared?.clock === undefined)
    return {
      question: choice(
        `"${texts.find((text) => parseClockS(text) > 0) ?? first}"`,
        "to know whether the two parts are hours and minutes, or minutes and seconds",
        "say in the recorder's record: dialect: time: { clock: h:mm } or { clock: mm:ss }",
        [
          { answer: "--time h:mm", yaml: 'time: { kind: elapsed, clock: "h:mm" }', reads: "hours and minutes from the start" },
          { answer: "--time mm:ss", yaml: 'time: { kind: elapsed, clock: "mm:ss" }', reads: "minutes and seconds from the start" },
        ],
      ),
    };
  if (opensElapsed)
    return {
      value: { kind: "clock", short: declared?.clock ?? "h:mm" },
      why: kind === "elapsed" ? "the record says so" : `it begins at "${first}"`,
    };
  return {
    question: choice(
      `"${first}"`,
      "to know whether h:mm:ss counts from the start or is the time of day",
      `where it counts, say so in the recorder's record: dialect: time: { kind: elapsed }; where it is the time of day, ${nameTheDate}, or say { kind: time-of-day }, and the connection's on gives the day`,
      [
        { answer: "--time elapsed", yaml: "time: { kind: elapsed }", reads: `"${first}" as counted from the start` },
        { answer: "--time time-of-day", yaml: "time: { kind: time-of-day }", reads: `"${first}" as the time of day` },
      ],
    ),
  };
}

function askOrder(text: string, read: (order: DateOrder) => number): Question {
  const options: Option[] = possibleOrders(text)
    .filter((order) => !Number.isNaN(read(order)))
    .map((order) => ({ answer: `--date ${order}`, yaml: `time: { order: ${order} }`, reads: `"${text}" as ${dayOf(read(order))}` }));
  return choice(
    `"${text}"`,
    `to know ${possibleOrders(text).includes("year-month-day") ? "which of year, month and day comes first" : "whether the day or the month comes first"}: ${options.map(({ reads }) => reads.replace(/^.* as /, "")).join(" or ")}`,
    `say in the recorder's record: dialect: time: ${options.map(({ yaml }) => yaml.replace("time: ", "")).join(" or ")}`,
    options,
  );
}

/** A year in two figures is written first only between hyphens. */
function possibleOrders(text: string): readonly DateOrder[] {
  return /^(?:\d{4}\D|\d\d-\d\d?-\d\d(?!\d))/.test(text) ? orders : orders.slice(1);
}

const isDotted = (text: string): boolean => /^\d{1,2}\.\d{1,2}\.\d/.test(text);

/** The one order of a date's parts under which a log can be read; undefined where that is a guess. */
function onlyOrder(possible: readonly DateOrder[], texts: readonly string[]): DateOrder | undefined {
  const text = texts[0] ?? "";
  if (possible.includes("year-month-day") && /^\d{4}/.test(text)) return "year-month-day";
  if (/[a-z]{3}/i.test(text) && possible.length > 0) return "day-month-year";
  const rest = possible.filter((order) => possibleOrders(text).includes(order));
  if (rest.length === 1) return rest[0];
  // A dotted date is day first wherever it is written; a slashed one is not.
  return rest.includes("day-month-year") && isDotted(text) ? "day-month-year" : undefined;
}

function whyOrder(order: DateOrder, texts: readonly string[], isDeclared: boolean): string {
  if (isDeclared) return "the record says so";
  const text = texts[0] ?? "";
  if (/^\d{4}/.test(text)) return "the year stands first, in four digits";
  if (/[a-z]{3}/i.test(text)) return "the month is written in letters";
  const other: DateOrder = order === "day-month-year" ? "month-day-year" : "day-month-year";
  const telling = texts.find((candidate) => Number.isNaN(parseWallClockMs(candidate, other)));
  if (telling !== undefined) return `"${telling}" is no date in the order ${other}`;
  return "a date with points is written day first";
}

/** A day in words: 3 February 2026. */
function dayOf(ms: number): string {
  if (Number.isNaN(ms) || Math.abs(ms) > 8e15) return "no date";
  return new Date(ms).toLocaleDateString("en-GB", { day: "numeric", month: "long", year: "numeric", timeZone: "UTC" });
}

/** Date and time that stand apart as one text that the other readers take. */
export function joinDateAndTime(date: string, time: string): string {
  const clock = Number.isNaN(parseCompactClockS(time)) ? time : time.replace(/(\d\d)(?=\d)/g, "$1:");
  return `${markDate(date)} ${clock}`;
}

/**
 * Seconds on the file's own scale: from its start, since midnight, since 1970 UTC, or wall-clock time as if it were UTC; NaN where
 * the text is no such time.
 */
export function secondsOf(text: string, time: TimeReading, form: NumberForm): number {
  switch (time.kind) {
    case "unix": {
      const seconds = parseNumber(text, form.decimalMark, form.thousandsMark) * time.unitS;
      return seconds >= 0 && seconds < lastUnixS ? seconds : Number.NaN;
    }
    case "elapsed": {
      const number = parseNumber(text, form.decimalMark, form.thousandsMark);
      if (!Number.isNaN(number)) return number * time.unitS;
      const { value, unit } = parseQuantity(text, form.decimalMark, form.thousandsMark);
      return value * (secondsOfUnit(unit) ?? Number.NaN);
    }
    case "clock":
      return parseClockS(text, time.short);
    case "time-of-day":
      return parseTimeOfDayS(text);
    case "iso":
      return parseInstantMs(text, time.order) / 1000;
    case "local":
      return parseWallClockMs(text, time.order) / 1000;
    case "serial":
      return wallMsOfSerial(parseNumber(text, form.decimalMark, form.thousandsMark)) / 1000;
  }
}

/** The end of the year 9999, s since 1970: whatever counts beyond it is no date. */
export const lastUnixS = Date.UTC(10_000, 0, 1) / 1000;

/** How times are read, in words. */
export function describeTime(time: TimeReading): string {
  switch (time.kind) {
    case "elapsed":
      return `counted from the start, unit ${time.unitS} s`;
    case "clock":
      return `counted from the start as ${time.short === "mm:ss" ? "mm:ss" : "h:mm:ss"}`;
    case "time-of-day":
      return "time of day, without a date";
    case "unix":
      return `counted from 1970 UTC, unit ${time.unitS} s`;
    case "iso":
      return `date and time with offset${time.order === "year-month-day" ? "" : `, ${time.order}`}`;
    case "local":
      return `local date and time, ${time.order}`;
    case "serial":
      return "local date and time, in days of a spreadsheet";
  }
}
