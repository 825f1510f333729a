/** Which column is what: by the words of its heading, else by its unit, else by what stands in it. */
import { isDateAlone, looksLikeTime, parseCompactClockS, parseTimeOfDayS } from "../clock.ts";
import { parseQuantity, type Quantity } from "../units.ts";
import type { Heading } from "./headings.ts";
import type { NumberForm } from "./layout.ts";

/** What a column may be. Power and charge are read only to check voltage and current by them. */
export type Role = "time" | "voltage" | "current" | "temperature" | "power" | "charge";

const words: Readonly<Record<"time" | "voltage" | "current" | "temperature", RegExp>> = {
  time: /^(?:date[ _-]?time|time|timestamp|date|elapsed|clock|datetime|zeit|datum|uhrzeit|czas|data|godzina|heure|temps|hora|tiempo|tempo|t|seconds|minutes|hours)(?:\b|_)/i,
  voltage: /^(?:v|u|volt|volts|voltage|spannung|napi[eę]cie|tension|voltaje|tensi[oó]n|tensione|ubat|vbat|u_?batt?|v_?batt?)(?:\b|_)/i,
  current: /^(?:i|a|amp|amps|ampere|current|strom|pr[aą]d|courant|corriente|corrente|ibat|i_?batt?)(?:\b|_)/i,
  // Not "temps", which is French for time, nor "tempo", which is Italian for it.
  temperature: /^(?:temp(?!s\b|o\b)|temperatur|temperatura|temp[eé]rature)/i,
};

/** A column whose heading numbers the recordings of a file. */
const partHeading = /^(?:run|record(?:ing)?|session|block|cycle|messung|lauf|nagranie)(?:[ _-]*(?:no\.?|nr\.?|number|id|#))?$/i;

/** Columns that a role may mean, as field numbers from 0, fewest first in certainty: by words where any speak, else by unit. */
export function candidatesFor(
  role: Role,
  headings: readonly Heading[] | undefined,
  columns: readonly Column[],
  taken: readonly number[],
): number[] {
  const free = (index: number): boolean => !taken.includes(index);
  const bySpeech =
    role === "power" || role === "charge"
      ? []
      : (headings ?? []).flatMap((heading, index) =>
          free(index) && words[role].test(heading.text) && !speaksOfOther(role, heading) ? [index] : [],
        );
  if (bySpeech.length > 0) return bySpeech;
  const quantityOf = (index: number): Quantity | undefined => {
    const heading = headings?.[index];
    return heading?.isUnitSure === true ? heading.unit?.quantity : columns[index]?.unit;
  };
  return columns.flatMap((_, index) => (free(index) && quantityOf(index) === role ? [index] : []));
}

/** A heading with another quantity's unit is not that quantity, whatever its first letter: "V drop time (s)", "A-h (Ah)". */
function speaksOfOther(role: "time" | "voltage" | "current" | "temperature", heading: Heading): boolean {
  const quantity = heading.isUnitSure ? heading.unit?.quantity : undefined;
  return quantity !== undefined && quantity !== role;
}

export function findPartColumn(headings: readonly Heading[] | undefined, taken: readonly number[]): number | undefined {
  const index = (headings ?? []).findIndex((heading, at) => !taken.includes(at) && partHeading.test(heading.text));
  return index < 0 ? undefined : index;
}

/** What the rows show of one column. */
export type Column = {
  /** Texts of the rows looked at, blanks around them taken off. */
  readonly texts: readonly string[];
  /** The quantity of the unit that is glued to its values, where nine in ten carry one. */
  readonly unit: Quantity | undefined;
  readonly isNumeric: boolean;
};

/** Columns of the rows of a file's head. */
export function columnsOf(rows: readonly (readonly string[])[], fieldCount: number, form: NumberForm): Column[] {
  return Array.from({ length: fieldCount }, (_, index) => {
    const texts = rows.map((fields) => fields[index]?.trim() ?? "");
    const written = texts.filter((text) => text !== "").map((text) => parseQuantity(text, form.decimalMark, form.thousandsMark));
    const numbers = written.filter(({ value }) => !Number.isNaN(value));
    const units = numbers.flatMap(({ unit }) => (unit === undefined ? [] : [unit.quantity]));
    const [first] = units;
    const isGlued = first !== undefined && units.length >= 0.9 * numbers.length && units.every((unit) => unit === first);
    return { texts, unit: isGlued ? first : undefined, isNumeric: numbers.length > 0 && numbers.length >= 0.5 * written.length };
  });
}

/** The two columns of a recorder that writes date and time of day apart; undefined where the rows show no such pair. */
export function findDateAndTime(
  columns: readonly Column[],
  headings: readonly Heading[] | undefined,
  taken: readonly number[],
): { dateField: number; timeField: number } | undefined {
  const may = (index: number): boolean =>
    !taken.includes(index) && (headings === undefined || words.time.test(headings[index]?.text ?? ""));
  const first = columns.map(({ texts }) => texts.find((text) => text !== "") ?? "");
  const [dateField, ...moreDates] = first.flatMap((text, index) => (may(index) && isDateAlone(text) ? [index] : []));
  const isTimeOfDay = (text: string, index: number): boolean =>
    !Number.isNaN(parseTimeOfDayS(text)) || (index === (dateField ?? -2) + 1 && !Number.isNaN(parseCompactClockS(text)));
  const [timeField, ...moreTimes] = first.flatMap((text, index) =>
    may(index) && index !== dateField && isTimeOfDay(text, index) ? [index] : [],
  );
  if (dateField === undefined || timeField === undefined || moreDates.length + moreTimes.length > 0) return undefined;
  return { dateField, timeField };
}

/** Columns in which every text is a date or a time: where no heading speaks, they are the times. */
export function timeColumns(columns: readonly Column[], taken: readonly number[]): number[] {
  return columns.flatMap(({ texts }, index) => {
    const written = texts.filter((text) => text !== "");
    const isTime = written.length > 0 && written.filter(looksLikeTime).length >= 0.9 * written.length;
    return isTime && !taken.includes(index) ? [index] : [];
  });
}
