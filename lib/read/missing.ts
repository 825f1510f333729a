/** Texts and numbers that stand for "no value". */
import { type DecimalMark, parseNumber, type ThousandsMark } from "./numbers.ts";

/** Texts that recorders write for "no value". Common practice. */
const usualWords = [
  "",
  "-",
  "--",
  "---",
  "----",
  "-----",
  "–",
  "—",
  "OL",
  "O.L",
  "0L",
  "O.L.",
  "+OL",
  "-OL",
  "OVLD",
  "OVER",
  "ovf",
  "NaN",
  "nan",
  "NAN",
  "-nan",
  "null",
  "NULL",
  "n/a",
  "N/A",
  "#N/A",
  "#NV",
  "inf",
  "-inf",
  "Inf",
  "INF",
  "?",
  "???",
  "none",
  "None",
  "NA",
];

/**
 * Numbers that instruments of the SCPI language write for infinity and for "not a number".
 * Source: SCPI-1999, volume 1, 7.2.1.4 and 7.2.1.5 (from memory): 9.9E37 and 9.91E37.
 */
const usualNumbers = [9.9e37, -9.9e37, 9.91e37];

/** Numbers of nines that loggers write where a channel is open. Only where the quantity cannot have that value are they taken so. */
const nines = new Set([-999, -999.9, -9999, -99999, -9999.9]);

/** No number of nines lies above this. */
export const highestNines = Math.max(...nines);

export type MissingMarks = {
  /** Whether a field, blanks around it taken off, stands for "no value". */
  isMissing(text: string): boolean;
  /** Whether a number that was read stands for "no value". */
  isMissingNumber(value: number): boolean;
  /** No number nearer to 0 than this stands for "no value". */
  readonly lowestNumber: number;
};

/**
 * Makes the marks of one file.
 * @param declared  texts of the recorder's record; one that is a number stands for that number however it is written ("-999" for "-999.00")
 */
export function missingMarks(declared: readonly string[], decimalMark: DecimalMark, thousandsMark?: ThousandsMark): MissingMarks {
  const words = new Set([...usualWords, ...declared.map((word) => word.trim())]);
  const numbers = new Set([
    ...usualNumbers,
    ...declared.flatMap((word) => {
      // A record is written with points, or as the file writes.
      const value = [parseNumber(word, decimalMark, thousandsMark), parseNumber(word, ".")].find((candidate) => !Number.isNaN(candidate));
      return value === undefined ? [] : [value];
    }),
  ]);
  return {
    isMissing: (text) => words.has(text),
    isMissingNumber: (value) => numbers.has(value),
    lowestNumber: Math.min(...[...numbers].map(Math.abs)),
  };
}

/**
 * Whether a number is one of the nines by which loggers mark an open channel, in a unit in which no battery on charge has it.
 * @param unit  V, A, °C, °F or K; in mV and mA such a number can be a value and is left alone
 */
export function isNines(value: number, unit: string): boolean {
  return unit !== "mV" && unit !== "mA" && nines.has(value);
}
