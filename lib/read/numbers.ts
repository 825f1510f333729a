export type DecimalMark = "." | ",";

/**
 * Reads a number as a person or a recorder writes it, for one decimal mark.
 *
 * Takes surrounding blanks (also U+00A0 and U+202F), a plus or minus (also U+2212) and an exponent.
 * @returns NaN for anything else: a wrong mark, a thousands mark, letters behind the digits, an empty text
 */
export function parseNumber(text: string, decimalMark: DecimalMark): number {
  const trimmed = text.trim().replace(/^\u2212/, "-");
  if (!(decimalMark === "." ? plainPoint : plainComma).test(trimmed)) return Number.NaN;
  return Number(decimalMark === "," ? trimmed.replace(",", ".") : trimmed);
}

const plainPoint = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?$/;
const plainComma = /^[+-]?(?:\d+,?\d*|,\d+)(?:[eE][+-]?\d+)?$/;
