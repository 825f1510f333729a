/** Single numbers, in a module of its own: a script that writes no figures needs no more than this. */
import type { Notation } from "./notation.ts";

/** What a single number needs of a language. */
export type NumberMarks = Pick<Notation, "decimalMark" | "notANumber">;

/** Narrow no-break space, between a number and its unit and between groups of digits (SI Brochure, 9th edition, 5.4.3 and 5.4.4, from memory). */
export const narrowSpace = "\u202F";
export const minus = "\u2212";

/** Digits are grouped in threes from five digits on; four-digit numbers stay whole (SI Brochure, 5.4.4, from memory). */
const groupFrom = 10_000;

/**
 * Writes a number with a fixed count of decimals, a real minus sign, and narrow spaces between groups of three digits.
 * @param value any number; NaN and infinities read "not a number"
 * @param decimals digits after the point, 0 to 12; a negative count rounds to tens, hundreds …
 */
export function writeNumber(value: number, decimals: number, marks: NumberMarks): string {
  if (!Number.isFinite(value)) return marks.notANumber;
  const step = 10 ** Math.max(0, -decimals);
  const rounded = Math.round(value / step) * step;
  const text = Math.abs(decimals >= 0 ? value : rounded).toFixed(Math.min(12, Math.max(0, decimals)));
  const isZero = Number(text) === 0;
  return (value < 0 && !isZero ? minus : "") + groupDigits(text, marks);
}

function groupDigits(text: string, { decimalMark }: NumberMarks): string {
  const [whole = "", fraction] = text.split(".");
  const grouped = Number(whole) >= groupFrom ? whole.replace(/\B(?=(\d{3})+$)/g, narrowSpace) : whole;
  return fraction === undefined ? grouped : `${grouped}${decimalMark}${fraction}`;
}

/** Joins a written number and a unit symbol; an empty unit leaves the number alone. */
export function withUnit(text: string, unit: string): string {
  return unit === "" ? text : `${text}${narrowSpace}${unit}`;
}
