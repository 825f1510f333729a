export type DecimalMark = "." | ",";

/** What a writer puts between groups of three digits; "blank" stands for a blank, U+00A0, U+2009 and U+202F alike. */
export type ThousandsMark = "," | "." | "blank" | "'";

/**
 * Reads a number as a person or a recorder writes it, for one decimal mark and at most one thousands mark.
 *
 * Takes surrounding blanks (also U+00A0 and U+202F), a plus or minus (also U+2212) and an exponent.
 * @param thousandsMark  where given, groups of exactly three digits behind it are taken; a number without it is taken as well
 * @returns NaN for anything else: a wrong mark, a group of two digits, letters behind the digits, an empty text, a number beyond
 * what a double holds
 */
export function parseNumber(text: string, decimalMark: DecimalMark, thousandsMark?: ThousandsMark): number {
  let digits = text.trim().replace(/^\u2212/, "-");
  if (thousandsMark !== undefined && thousandsMark !== decimalMark && grouped[thousandsMark].test(digits))
    digits = digits.replace(groupMarks[thousandsMark], "");
  if (!(decimalMark === "." ? plainPoint : plainComma).test(digits)) return Number.NaN;
  const value = Number(decimalMark === "," ? digits.replace(",", ".") : digits);
  return Number.isFinite(value) ? value : Number.NaN;
}

const plainPoint = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?$/;
const plainComma = /^[+-]?(?:\d+,?\d*|,\d+)(?:[eE][+-]?\d+)?$/;

/** A number whose whole part is in groups of three; what stands behind the groups is looked at by the plain forms. */
const grouped: Readonly<Record<ThousandsMark, RegExp>> = {
  ",": /^[+-]?\d{1,3}(?:,\d{3})+(?![\d,])/,
  ".": /^[+-]?\d{1,3}(?:\.\d{3})+(?![\d.])/,
  blank: /^[+-]?\d{1,3}(?:[ \u00a0\u2009\u202f]\d{3})+(?![\d \u00a0\u2009\u202f])/,
  "'": /^[+-]?\d{1,3}(?:['\u2019]\d{3})+(?![\d'\u2019])/,
};
const groupMarks: Readonly<Record<ThousandsMark, RegExp>> = {
  ",": /,/g,
  ".": /\./g,
  blank: /[ \u00a0\u2009\u202f]/g,
  "'": /['\u2019]/g,
};
