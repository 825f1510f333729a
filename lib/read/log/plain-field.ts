/**
 * Reads numbers and times straight from a row's bytes, without making texts of them.
 *
 * Only plain fields are read: ASCII digits, one sign, one decimal mark, blanks around. Whatever else a field holds is left to the readers
 * of texts, which know every way of writing; so a cursor says "not plain" rather than "wrong".
 */

import { wallMsOfSerial } from "../clock.ts";
import type { NumberForm } from "../dialect/layout.ts";
import { lastUnixS, type TimeReading } from "../dialect/times.ts";

const blank = 0x20;
const zero = 0x30;
const colon = 0x3a;
const point = 0x2e;
const comma = 0x2c;
const plus = 0x2b;
const minus = 0x2d;
const slash = 0x2f;

/** 10^0 to 10^22: the powers of ten that a double holds exactly. */
const powersOfTen = Float64Array.from({ length: 23 }, (_, exponent) => Number(`1e${exponent}`));
/** Below this a further digit keeps a whole number below 2^53, up to which doubles hold every one of them. */
const mostBeforeDigit = 900_719_925_474_098;

/** Walks over bytes, one field at a time. After a field that is not plain, `at` is anywhere in it. */
export class FieldCursor {
  bytes: Uint8Array = new Uint8Array(0);
  at = 0;
  readonly #decimalMark: number;
  readonly #time: TimeReading;
  /** What stands between a date and a time of day, where it does not part fields. */
  readonly #mayHoldBlank: boolean;
  /** Digits read last, for times. */
  #count = 0;
  #dayKey = -1;
  #dayMs = 0;

  /** @param mark  the byte that parts fields */
  constructor(form: NumberForm, time: TimeReading, mark: number) {
    this.#decimalMark = form.decimalMark === "." ? point : comma;
    this.#time = time;
    this.#mayHoldBlank = mark !== blank;
  }

  /** Moves over blanks. */
  skipBlanks(): void {
    while (this.bytes[this.at] === blank) this.at++;
  }

  /**
   * The decimal number at the cursor, which is moved behind it; NaN where none begins there.
   *
   * The digits are taken as one whole number below 2^53 and divided by a power of ten up to 10^22: both are exact, so the quotient is the
   * double nearest to what is written. Source: W. D. Clinger, "How to read floating point numbers accurately", 1990 (from memory).
   * Longer numbers are not plain.
   */
  readNumber(): number {
    const { bytes } = this;
    const sign = bytes[this.at];
    if (sign === minus || sign === plus) this.at++;
    const whole = this.#readDigits();
    let count = this.#count;
    let value = whole;
    if (bytes[this.at] === this.#decimalMark) {
      this.at++;
      const fraction = this.#readDigits();
      count += this.#count;
      if (this.#count > 0) {
        // As whole numbers, so that what is rounded is rounded once, by the division.
        const digits = this.#count > 22 ? Number.NaN : whole * (powersOfTen[this.#count] as number) + fraction;
        value = digits <= 10 * mostBeforeDigit ? digits / (powersOfTen[this.#count] as number) : Number.NaN;
      }
    }
    if (count === 0) return Number.NaN;
    return sign === minus ? -value : value;
  }

  /** Seconds on the file's own scale, as `secondsOf` gives them; NaN where the field is not plain, or no time. */
  readTime(): number {
    const time = this.#time;
    switch (time.kind) {
      case "elapsed":
        return this.readNumber() * time.unitS;
      case "unix": {
        const seconds = this.readNumber() * time.unitS;
        return seconds >= 0 && seconds < lastUnixS ? seconds : Number.NaN;
      }
      case "serial":
        return wallMsOfSerial(this.readNumber()) / 1000;
      case "clock":
      case "time-of-day":
        return this.#readClockS();
      case "local":
        return this.#readWallMs(time.order) / 1000;
      case "iso":
        return (this.#readWallMs(time.order) - this.#readOffsetMs()) / 1000;
    }
  }

  /** The whole number at the cursor, and in `#count` how many digits it has; 0 for none, NaN where it is no longer exact. */
  #readDigits(): number {
    const { bytes } = this;
    const from = this.at;
    let at = from;
    let value = 0;
    for (;;) {
      const digit = (bytes[at] as number) - zero;
      if (!(digit >= 0 && digit <= 9)) break;
      if (value > mostBeforeDigit) value = Number.NaN;
      value = value * 10 + digit;
      at++;
    }
    this.at = at;
    this.#count = at - from;
    return value;
  }

  /** A whole number of so many digits; NaN for any other. */
  #readExactly(count: number): number {
    const value = this.#readDigits();
    return this.#count === count ? value : Number.NaN;
  }

  #takeByte(byte: number): boolean {
    if (this.bytes[this.at] !== byte) return false;
    this.at++;
    return true;
  }

  /** `h:mm:ss` with up to four digits of hours and any of a fraction, as `parseClockS` reads it. */
  #readClockS(): number {
    const hours = this.#readDigits();
    if (this.#count < 1 || this.#count > 4 || !this.#takeByte(colon)) return Number.NaN;
    const minutes = this.#readExactly(2);
    if (!(minutes < 60) || !this.#takeByte(colon)) return Number.NaN;
    const seconds = this.#readExactly(2);
    if (!(seconds < 60)) return Number.NaN;
    const mark = this.bytes[this.at];
    if (mark !== point && mark !== this.#decimalMark) return hours * 3600 + minutes * 60 + seconds;
    this.at++;
    const fraction = this.#readDigits();
    if (this.#count < 1 || this.#count > 9) return Number.NaN;
    const scale = powersOfTen[this.#count] as number;
    return hours * 3600 + minutes * 60 + (seconds * scale + fraction) / scale;
  }

  /** Date and time of day, year first or last, as `parseWallClockMs` reads them: ms as if the wall were at UTC. */
  #readWallMs(order: "year-month-day" | "day-month-year" | "month-day-year"): number {
    const dayMs = this.#readDayMs(order);
    const parting = this.bytes[this.at];
    if (Number.isNaN(dayMs) || !(parting === 0x54 || (parting === blank && this.#mayHoldBlank))) return Number.NaN;
    this.at++;
    const hours = this.#readExactly(2);
    if (!(hours < 24) || !this.#takeByte(colon)) return Number.NaN;
    const minutes = this.#readExactly(2);
    if (!(minutes < 60) || !this.#takeByte(colon)) return Number.NaN;
    const seconds = this.#readExactly(2);
    if (!(seconds < 60)) return Number.NaN;
    const wallMs = dayMs + ((hours * 60 + minutes) * 60 + seconds) * 1000;
    const mark = this.bytes[this.at];
    if (mark !== point && mark !== this.#decimalMark) return wallMs;
    this.at++;
    const fraction = this.#readDigits();
    if (this.#count < 1 || this.#count > 9) return Number.NaN;
    return wallMs + (fraction / (powersOfTen[this.#count] as number)) * 1000;
  }

  /** Midnight of a date of four digits for the year and two for month and day. Most rows have the day of the row before. */
  #readDayMs(order: "year-month-day" | "day-month-year" | "month-day-year"): number {
    const first = this.#readDigits();
    const isYearFirst = this.#count === 4;
    if (!isYearFirst && (this.#count !== 2 || order === "year-month-day")) return Number.NaN;
    const mark = this.bytes[this.at];
    if (mark !== minus && mark !== point && mark !== slash) return Number.NaN;
    this.at++;
    const second = this.#readExactly(2);
    if (!this.#takeByte(mark)) return Number.NaN;
    const third = this.#readExactly(isYearFirst ? 2 : 4);
    const year = isYearFirst ? first : third;
    const month = isYearFirst || order === "day-month-year" ? second : first;
    const day = isYearFirst ? third : order === "day-month-year" ? first : second;
    const key = (year * 100 + month) * 100 + day;
    if (key === this.#dayKey) return this.#dayMs;
    if (!(year >= 1900 && month >= 1 && month <= 12 && day >= 1)) return Number.NaN;
    const dayMs = Date.UTC(year, month - 1, day);
    if (new Date(dayMs).getUTCDate() !== day) return Number.NaN;
    this.#dayKey = key;
    this.#dayMs = dayMs;
    return dayMs;
  }

  /** `Z`, `+01:00` or `+0100` behind a time; NaN for any other. */
  #readOffsetMs(): number {
    const sign = this.bytes[this.at];
    this.at++;
    if (sign === 0x5a) return 0;
    if (sign !== plus && sign !== minus) return Number.NaN;
    const first = this.#readDigits();
    let hours = first;
    let minutes = 0;
    if (this.#count === 4) {
      hours = Math.floor(first / 100);
      minutes = first % 100;
    } else if (this.#count !== 2 || !this.#takeByte(colon)) return Number.NaN;
    else minutes = this.#readExactly(2);
    if (!(hours <= 18 && minutes <= 59)) return Number.NaN;
    return (sign === minus ? -1 : 1) * (hours * 60 + minutes) * 60_000;
  }
}
