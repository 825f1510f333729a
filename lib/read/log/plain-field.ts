/**
 * Reads numbers and times straight from a row's bytes, without making texts of them.
 *
 * Only plain fields are read: ASCII digits, one sign, one decimal mark, blanks around. Whatever else a field holds is left to the readers
 * of texts, which know every way of writing; so a cursor says "not plain" rather than "wrong".
 */

import { type DateOrder, wallMsOfSerial } from "../clock.ts";
import type { NumberForm } from "../dialect/layout.ts";
import { lastUnixS, type TimeReading } from "../dialect/times.ts";
import { Byte } from "./bytes.ts";

/** Bytes of `2026-03-14 08:00:`, in whatever order of the date: four times four, and a colon. */
const minuteLength = 17;

/** 10^0 to 10^22: the powers of ten that a double holds exactly. */
const powersOfTen = Float64Array.from({ length: 23 }, (_, exponent) => Number(`1e${exponent}`));
/** Below this a further digit keeps a whole number below 2^53, up to which doubles hold every one of them. */
const mostBeforeDigit = 900_719_925_474_098;
/** So many digits stay below 2^30, and are counted as the machine counts best. */
const fewDigits = 9;

/** Walks over bytes, one field at a time. After a field that is not plain, `at` is anywhere in it. */
export class FieldCursor {
  #bytes: Uint8Array = new Uint8Array(0);
  /** The same bytes, to be compared four at a time. */
  #view = new DataView(this.#bytes.buffer);
  at = 0;
  /** What was read last. In an array, since a double that a function returns is put into memory of its own each time. */
  readonly value = new Float64Array(1);
  readonly #decimalMark: number;
  readonly #time: TimeReading;
  /** What stands between a date and a time of day, where it does not part fields. */
  readonly #mayHoldBlank: boolean;
  /** Digits read last, for times. */
  #count = 0;
  /** The minute read last, as bytes, and what it is. */
  readonly #minuteBefore = new DataView(new ArrayBuffer(minuteLength));
  #minuteMs = Number.NaN;

  /** @param mark  the byte that parts fields */
  constructor(form: NumberForm, time: TimeReading, mark: number) {
    this.#decimalMark = form.decimalMark === "." ? Byte.point : Byte.comma;
    this.#time = time;
    this.#mayHoldBlank = mark !== Byte.blank;
  }

  /** Sets the cursor into other bytes; where in them, `at` tells. */
  lookInto(bytes: Uint8Array): void {
    this.#bytes = bytes;
    this.#view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  }

  /**
   * Reads the decimal number at the cursor, which is moved behind it, into `value`; NaN where none begins there.
   *
   * The digits are taken as one whole number below 2^53 and divided by a power of ten up to 10^22: both are exact, so the quotient is the
   * double nearest to what is written. Source: W. D. Clinger, "How to read floating point numbers accurately", 1990 (from memory).
   * Longer numbers are not plain.
   */
  readNumber(): void {
    const bytes = this.#bytes;
    const sign = bytes[this.at];
    if (sign === Byte.minus || sign === Byte.plus) this.at++;
    const whole = this.#readDigits();
    const wholeCount = this.#count;
    let value = whole;
    let fractionCount = 0;
    if (bytes[this.at] === this.#decimalMark) {
      this.at++;
      const fraction = this.#readDigits();
      fractionCount = this.#count;
      if (fractionCount > 22) value = Number.NaN;
      else if (fractionCount > 0) {
        // As whole numbers, so that what is rounded is rounded once, by the division.
        const scale = powersOfTen[fractionCount] as number;
        const digits = whole * scale + fraction;
        value = digits <= 10 * mostBeforeDigit ? digits / scale : Number.NaN;
      }
    }
    if (wholeCount + fractionCount === 0) value = Number.NaN;
    this.value[0] = sign === Byte.minus ? -value : value;
  }

  /** Reads seconds on the file's own scale, as `secondsOf` gives them, into `value`; NaN where the field is not plain, or no time. */
  readTime(): void {
    const time = this.#time;
    const { value } = this;
    switch (time.kind) {
      case "elapsed":
        this.readNumber();
        value[0] = (value[0] as number) * time.unitS;
        return;
      case "unix": {
        this.readNumber();
        const seconds = (value[0] as number) * time.unitS;
        value[0] = seconds >= 0 && seconds < lastUnixS ? seconds : Number.NaN;
        return;
      }
      case "serial":
        this.readNumber();
        value[0] = wallMsOfSerial(value[0] as number) / 1000;
        return;
      case "clock":
      case "time-of-day":
        value[0] = this.#readClockS();
        return;
      case "local":
        value[0] = this.#readWallMs(time.order) / 1000;
        return;
      case "iso":
        value[0] = (this.#readWallMs(time.order) - this.#readOffsetMs()) / 1000;
    }
  }

  /** The whole number at the cursor, and in `#count` how many digits it has; 0 for none, NaN where it is no longer exact. */
  #readDigits(): number {
    const bytes = this.#bytes;
    const from = this.at;
    const most = from + fewDigits;
    let at = from;
    let value = 0;
    while (at < most) {
      const digit = (bytes[at] as number) - Byte.zero;
      if (digit < 0 || digit > 9) {
        this.at = at;
        this.#count = at - from;
        return value;
      }
      value = Math.imul(value, 10) + digit;
      at++;
    }
    return this.#readManyDigits(value, from);
  }

  /** The rest of a whole number that has more digits than are counted in 32 bits. */
  #readManyDigits(begun: number, from: number): number {
    const bytes = this.#bytes;
    let at = from + fewDigits;
    let value = begun;
    for (;;) {
      const digit = (bytes[at] as number) - Byte.zero;
      if (!(digit >= 0 && digit <= 9)) break;
      if (value > mostBeforeDigit) value = Number.NaN;
      value = value * 10 + digit;
      at++;
    }
    this.at = at;
    this.#count = at - from;
    return value;
  }

  /** A whole number of two digits; -1 for any other. More digits behind them are found where the field should end. */
  #readTwo(): number {
    const { at } = this;
    const bytes = this.#bytes;
    const tens = (bytes[at] as number) - Byte.zero;
    const ones = (bytes[at + 1] as number) - Byte.zero;
    if (!(tens >= 0 && tens <= 9 && ones >= 0 && ones <= 9)) return -1;
    this.at = at + 2;
    return tens * 10 + ones;
  }

  #takeByte(byte: number): boolean {
    if (this.#bytes[this.at] !== byte) return false;
    this.at++;
    return true;
  }

  /** `h:mm:ss` with up to four digits of hours and any of a fraction, as `parseClockS` reads it. */
  #readClockS(): number {
    const hours = this.#readDigits();
    if (this.#count < 1 || this.#count > 4 || !this.#takeByte(Byte.colon)) return Number.NaN;
    const minutes = this.#readTwo();
    if (minutes < 0 || minutes > 59 || !this.#takeByte(Byte.colon)) return Number.NaN;
    const seconds = this.#readTwo();
    if (seconds < 0 || seconds > 59) return Number.NaN;
    const mark = this.#bytes[this.at];
    if (mark !== Byte.point && mark !== this.#decimalMark) return hours * 3600 + minutes * 60 + seconds;
    this.at++;
    const fraction = this.#readDigits();
    if (this.#count < 1 || this.#count > 9) return Number.NaN;
    const scale = powersOfTen[this.#count] as number;
    return hours * 3600 + minutes * 60 + (seconds * scale + fraction) / scale;
  }

  /**
   * Date and time of day, year first or last, as `parseWallClockMs` reads them: ms as if the wall were at UTC.
   * Most rows have the minute of the row before, which is known by its bytes alone.
   */
  #readWallMs(order: DateOrder): number {
    const from = this.at;
    if (this.#isMinuteBefore()) this.at = from + minuteLength;
    else {
      const minuteMs = this.#readMinuteMs(order);
      if (Number.isNaN(minuteMs) || this.at !== from + minuteLength) return Number.NaN;
      this.#minuteMs = minuteMs;
      for (let i = 0; i < minuteLength; i++) this.#minuteBefore.setUint8(i, this.#bytes[from + i] as number);
    }
    const seconds = this.#readTwo();
    if (seconds < 0 || seconds > 59) return Number.NaN;
    const wallMs = this.#minuteMs + seconds * 1000;
    const mark = this.#bytes[this.at];
    if (mark !== Byte.point && mark !== this.#decimalMark) return wallMs;
    this.at++;
    const fraction = this.#readDigits();
    if (this.#count < 1 || this.#count > 9) return Number.NaN;
    return wallMs + (fraction / (powersOfTen[this.#count] as number)) * 1000;
  }

  #isMinuteBefore(): boolean {
    const view = this.#view;
    const { at } = this;
    if (at + minuteLength > view.byteLength) return false;
    const before = this.#minuteBefore;
    // Four bytes at a time, from behind, where it changes first.
    return (
      view.getUint8(at + 16) === before.getUint8(16) &&
      view.getInt32(at + 12) === before.getInt32(12) &&
      view.getInt32(at + 8) === before.getInt32(8) &&
      view.getInt32(at + 4) === before.getInt32(4) &&
      view.getInt32(at) === before.getInt32(0)
    );
  }

  /** `2026-03-14 08:00:` and the like, up to the seconds. */
  #readMinuteMs(order: DateOrder): number {
    const dayMs = this.#readDayMs(order);
    const parting = this.#bytes[this.at];
    if (Number.isNaN(dayMs) || !(parting === Byte.letterT || (parting === Byte.blank && this.#mayHoldBlank))) return Number.NaN;
    this.at++;
    const hours = this.#readTwo();
    if (hours < 0 || hours > 23 || !this.#takeByte(Byte.colon)) return Number.NaN;
    const minutes = this.#readTwo();
    if (minutes < 0 || minutes > 59 || !this.#takeByte(Byte.colon)) return Number.NaN;
    return dayMs + (hours * 60 + minutes) * 60_000;
  }

  /** Midnight of a date of four digits for the year and two for month and day. */
  #readDayMs(order: DateOrder): number {
    const first = this.#readDigits();
    const isYearFirst = this.#count === 4;
    if (!isYearFirst && (this.#count !== 2 || order === "year-month-day")) return Number.NaN;
    const mark = this.#bytes[this.at];
    if (mark !== Byte.minus && mark !== Byte.point && mark !== Byte.slash) return Number.NaN;
    this.at++;
    const second = this.#readTwo();
    if (!this.#takeByte(mark)) return Number.NaN;
    const third = isYearFirst ? this.#readTwo() : this.#readDigits();
    if (!isYearFirst && this.#count !== 4) return Number.NaN;
    const year = isYearFirst ? first : third;
    const month = isYearFirst || order === "day-month-year" ? second : first;
    const day = isYearFirst ? third : order === "day-month-year" ? first : second;
    if (!(year >= 1900 && month >= 1 && month <= 12 && day >= 1)) return Number.NaN;
    const dayMs = Date.UTC(year, month - 1, day);
    return new Date(dayMs).getUTCDate() === day ? dayMs : Number.NaN;
  }

  /** `Z`, `+01:00` or `+0100` behind a time; NaN for any other. */
  #readOffsetMs(): number {
    const sign = this.#bytes[this.at];
    this.at++;
    if (sign === Byte.letterZ) return 0;
    if (sign !== Byte.plus && sign !== Byte.minus) return Number.NaN;
    const first = this.#readDigits();
    let hours = first;
    let minutes = 0;
    if (this.#count === 4) {
      hours = Math.floor(first / 100);
      minutes = first % 100;
    } else if (this.#count !== 2 || !this.#takeByte(Byte.colon)) return Number.NaN;
    else minutes = this.#readTwo();
    if (!(hours <= 18 && minutes >= 0 && minutes <= 59)) return Number.NaN;
    return (sign === Byte.minus ? -1 : 1) * (hours * 60 + minutes) * 60_000;
  }
}

/**
 * Reads a number of no more than nine digits, as `FieldCursor.readNumber` does: the usual field, and so the usual reader's innermost loop.
 *
 * @param bytes  with a byte behind the number that is no digit, as every line has
 * @param into   where the number is put, at `index`
 * @returns where it ends; -1 where none begins, or it is longer
 */
export function readShortNumber(bytes: Uint8Array, from: number, decimalMark: number, into: Float64Array, index: number): number {
  const isNegative = bytes[from] === Byte.minus;
  const begins = isNegative ? from + 1 : from;
  let at = begins;
  let digits = 0;
  // Below zero it is unsigned, and so more than 9.
  let digit = ((bytes[at] as number) - Byte.zero) >>> 0;
  while (digit <= 9) {
    digits = Math.imul(digits, 10) + digit;
    digit = ((bytes[++at] as number) - Byte.zero) >>> 0;
  }
  let count = at - begins;
  let value = digits;
  if (bytes[at] === decimalMark) {
    const pointAt = at;
    digit = ((bytes[++at] as number) - Byte.zero) >>> 0;
    while (digit <= 9) {
      digits = Math.imul(digits, 10) + digit;
      digit = ((bytes[++at] as number) - Byte.zero) >>> 0;
    }
    const fractionCount = at - pointAt - 1;
    count += fractionCount;
    if (fractionCount > 0) value = digits / (powersOfTen[fractionCount] as number);
  }
  if (count === 0 || count > fewDigits) return -1;
  into[index] = isNegative ? -value : value;
  return at;
}
