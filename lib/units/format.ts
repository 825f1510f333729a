/**
 * Numbers, units and times as a reader sees them. Rounding happens here, once, and nowhere else.
 *
 * All functions are pure and independent of the machine's locale and time zone: the same figure reads the same on every build.
 * The last argument is the language's notation, English where it is left out: results are in English, pages name theirs (formats.ts).
 */
import type { Figure } from "../nouns/figure.ts";
import { english, type Notation } from "./notation.ts";
import { minus, narrowSpace, withUnit, writeNumber } from "./write-number.ts";

export { narrowSpace, withUnit };

/** A single number in a language's notation: fixed decimals, a real minus sign, digits in threes (write-number.ts). */
export const formatNumber = (value: number, decimals: number, notation: Notation = english): string =>
  writeNumber(value, decimals, notation);

/**
 * The count of decimals that shows a half-width with two significant digits (JCGM 100:2008, 7.2.6, from memory); negative for tens and up.
 * @param halfWidth > 0, in the figure's own unit
 */
export function decimalsFor(halfWidth: number): number {
  // 0.0996 shown with two digits is 0.10, so the place is taken after rounding.
  const twoDigits = Number(halfWidth.toPrecision(2));
  return 1 - Math.floor(Math.log10(twoDigits));
}

/** An ISO 4217 code, by form: money is never shown finer than the cent. */
const isCurrency = (unit: string) => /^[A-Z]{3}$/.test(unit);

/** How many decimals a number has as it is. */
const decimalsOf = (value: number): number => (String(value).split(".")[1] ?? "").length;

/** How a value without an interval is written: whole numbers as they are, money to the cent, the rest to four significant digits. */
function formatAlone(value: number, unit: string, notation: Notation, significantDigits = 4): string {
  if (isCurrency(unit)) return formatNumber(value, 2, notation);
  if (Number.isInteger(value)) return formatNumber(value, 0, notation);
  const shown = Number(value.toPrecision(significantDigits));
  return formatNumber(shown, decimalsOf(shown), notation);
}

/** The parts of a figure that decide how it is written. */
export type Showable = Pick<Figure, "unit" | "value" | "low" | "high" | "absent">;

/** A figure's text in two pieces, so that a narrow cell can set the second below the first. */
export type FigureText = { readonly value: string; readonly interval: string | null };

/**
 * Writes a figure: "5.84 ± 0.12 A" where its interval is even on both sides, "38 h" and "24 to 41" where it is not,
 * the value alone where it has no interval or none can be defended, and the kind of absence where there is no value.
 * An interval with one end reads "24 or more".
 */
export function figureText(figure: Showable, notation: Notation = english): FigureText {
  const { unit, value, low, high } = figure;
  if (value === null) return { value: notation.absence(figure.absent?.kind ?? "not stated"), interval: null };
  if (low === null || high === null) return openText(value, low, high, unit, notation);
  if (!(high > low)) return { value: withUnit(formatAlone(value, unit, notation), unit), interval: null };

  const decimals = shownDecimals(low, high, unit);
  const write = (number: number) => formatNumber(number, decimals, notation);
  const below = write(value - low);
  const above = write(high - value);
  // An interval finer than the cent says that the amount is good to the cent.
  if (isCurrency(unit) && isWrittenZero(below) && isWrittenZero(above)) return { value: withUnit(write(value), unit), interval: null };
  if (below === above) return { value: withUnit(`${write(value)} ± ${above}`, unit), interval: null };
  return { value: withUnit(write(value), unit), interval: notation.between(write(low), write(high)) };
}

/** Whether a written number has no digit but zeros. */
const isWrittenZero = (text: string): boolean => !/[1-9]/.test(text);

/** A figure as one piece of text: "38 h (24 to 41)". */
export function formatFigure(figure: Showable, notation: Notation = english): string {
  const { value, interval } = figureText(figure, notation);
  return interval === null ? value : `${value} (${interval})`;
}

/** Two digits of the half-width; money goes no finer than the cent unless its whole interval is finer than that. */
function shownDecimals(low: number, high: number, unit: string): number {
  const decimals = decimalsFor((high - low) / 2);
  return isCurrency(unit) && high >= 0.1 ? Math.min(2, decimals) : Math.min(12, decimals);
}

/** A value with one end of its interval, both with the digits that the way between them allows; with no end, alone. */
function openText(value: number, low: number | null, high: number | null, unit: string, notation: Notation): FigureText {
  const end = low ?? high ?? value;
  if (end === value) return { value: withUnit(formatAlone(value, unit, notation), unit), interval: null };
  const most = isCurrency(unit) && value >= 0.1 ? 2 : Math.max(decimalsOf(value), decimalsOf(end));
  const decimals = Math.min(most, decimalsFor(Math.abs(value - end)));
  const shown = formatNumber(end, decimals, notation);
  const interval = low === null ? notation.orLess(shown) : notation.orMore(shown);
  return { value: withUnit(formatNumber(value, decimals, notation), unit), interval };
}

/**
 * Writes an interval, "5.72 to 5.96 A", with the digits its width allows.
 * "no interval" where both ends are missing: a missing interval is not an exact value.
 */
export function formatInterval(low: number | null, high: number | null, unit: string, notation: Notation = english): string {
  if (low === null && high === null) return notation.noInterval;
  if (low === null || high === null) {
    const end = withUnit(formatAlone(low ?? high ?? 0, unit, notation), unit);
    return low !== null ? notation.orMore(end) : notation.orLess(end);
  }
  if (!(high > low)) return withUnit(formatAlone(low, unit, notation), unit);
  const decimals = shownDecimals(low, high, unit);
  return withUnit(notation.between(formatNumber(low, decimals, notation), formatNumber(high, decimals, notation)), unit);
}

/** Writes a value that carries no uncertainty of its own, such as a stage's mean; null reads "not recorded". */
export function formatQuantity(value: number | null, unit: string, decimals: number, notation: Notation = english): string {
  return value === null ? notation.absence("not recorded") : withUnit(formatNumber(value, decimals, notation), unit);
}

/** Writes a printed value as it was printed: no digit added, none taken. */
export function formatStated(value: number, unit: string, notation: Notation = english): string {
  return withUnit(formatAlone(value, unit, notation, 12), unit);
}

/**
 * Writes an instant in the zone it was noted in: "2026-03-14 09:30 (UTC+01:00)"; null reads "not known".
 * @param instant ISO 8601 with offset; text of another form comes back unchanged
 */
export function formatInstant(instant: string | null, notation: Notation = english): string {
  if (instant === null) return notation.notKnown;
  const parts = /^(\d{4}-\d{2}-\d{2})T(\d{2}:\d{2})(?::\d{2}(?:\.\d+)?)?(Z|[+-]\d{2}:\d{2})$/.exec(instant);
  if (!parts) return instant;
  const [, date = "", time, offset] = parts;
  return `${notation.day(date)} ${time} (UTC${offset === "Z" ? "" : (offset ?? "").replace("-", minus)})`;
}

/** Writes a day: "2026-03-14" in English, as is usual elsewhere; text of another form comes back unchanged. */
export function formatDay(isoDate: string, notation: Notation = english): string {
  return /^\d{4}-\d{2}-\d{2}$/.test(isoDate) ? notation.day(isoDate) : isoDate;
}

/** Writes a length of time in the two units that suit it: "42 min", "6 h 30 min", "4 d 6 h". NaN reads "not known". */
export function formatDuration(hours: number, notation: Notation = english): string {
  if (!Number.isFinite(hours)) return notation.notKnown;
  const minutes = Math.round(Math.abs(hours) * 60);
  const sign = hours < 0 && minutes > 0 ? minus : "";
  if (minutes < 60) return sign + withUnit(String(minutes), "min");
  if (minutes < 48 * 60) return sign + twoUnits(Math.floor(minutes / 60), "h", minutes % 60, "min", notation);
  const wholeHours = Math.round(minutes / 60);
  return sign + twoUnits(Math.floor(wholeHours / 24), "d", wholeHours % 24, "h", notation);
}

function twoUnits(large: number, largeUnit: string, small: number, smallUnit: string, notation: Notation): string {
  const first = withUnit(formatNumber(large, 0, notation), largeUnit);
  return small === 0 ? first : `${first} ${withUnit(String(small), smallUnit)}`;
}

/** Writes a file size in bytes, kB (1000 B) or MB. */
export function formatBytes(bytes: number, notation: Notation = english): string {
  if (bytes < 1000) return withUnit(String(bytes), "B");
  if (bytes < 1_000_000) return withUnit(formatNumber(bytes / 1000, 1, notation), "kB");
  return withUnit(formatNumber(bytes / 1_000_000, 1, notation), "MB");
}

/** A middle value between two ends; null is a value, or an end, that is not known. */
export type Around = { readonly value: number | null; readonly low: number | null; readonly high: number | null };

/** Writes a value between its ends with a given count of decimals: "0.7 Ah (0.0 to 3.0)"; "not known" without a value. */
export function formatAround({ value, low, high }: Around, unit: string, decimals: number, notation: Notation = english): string {
  if (value === null) return notation.notKnown;
  const end = (number: number | null, open: string): string => (number === null ? open : formatNumber(number, decimals, notation));
  return `${withUnit(formatNumber(value, decimals, notation), unit)} (${notation.between(end(low, notation.less), end(high, notation.more))})`;
}

/**
 * Writes a probability as a whole percentage, and never as a certainty: 0.9996 and 1 both read "more than 99 %". NaN reads "not known".
 * @param finest what can still be told from never, and from always, 0 to 0.5
 */
export function formatProbability(probability: number, finest = 0.01, notation: Notation = english): string {
  if (Number.isNaN(probability)) return notation.notKnown;
  const percent = (share: number): string => withUnit(formatNumber(share * 100, 0, notation), "%");
  if (probability > 1 - finest) return notation.moreThan(percent(1 - finest));
  if (probability < finest) return notation.lessThan(percent(finest));
  return percent(probability);
}
