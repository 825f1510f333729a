/** Unit symbols as recorders write them: in a heading, in a row of units, or glued to a value. */
import type { quantityUnits } from "../nouns/instrument.ts";
import { type DecimalMark, parseNumber, type ThousandsMark } from "./numbers.ts";

export type Quantity = keyof typeof quantityUnits;

/** A unit: the quantity it measures, and the divisor to the quantity's first unit. */
export type Unit = { readonly symbol: string; readonly quantity: Quantity; readonly divisor: number };

/** Divisors, since 12200 / 1000 is 12.2 to the last digit and 12200 × 0.001 is not; a time has factors, which are whole. */
const units: readonly Unit[] = [
  { symbol: "V", quantity: "voltage", divisor: 1 },
  { symbol: "mV", quantity: "voltage", divisor: 1000 },
  { symbol: "A", quantity: "current", divisor: 1 },
  { symbol: "mA", quantity: "current", divisor: 1000 },
  { symbol: "°C", quantity: "temperature", divisor: 1 },
  { symbol: "°F", quantity: "temperature", divisor: 1 },
  { symbol: "K", quantity: "temperature", divisor: 1 },
  { symbol: "s", quantity: "time", divisor: 1 },
  { symbol: "ms", quantity: "time", divisor: 1000 },
  { symbol: "min", quantity: "time", divisor: 1 / 60 },
  { symbol: "h", quantity: "time", divisor: 1 / 3600 },
  { symbol: "d", quantity: "time", divisor: 1 / 86_400 },
  { symbol: "W", quantity: "power", divisor: 1 },
  { symbol: "mW", quantity: "power", divisor: 1000 },
  { symbol: "Ah", quantity: "charge", divisor: 1 },
  { symbol: "mAh", quantity: "charge", divisor: 1000 },
  { symbol: "Wh", quantity: "energy", divisor: 1 },
  { symbol: "mWh", quantity: "energy", divisor: 1000 },
  { symbol: "kWh", quantity: "energy", divisor: 1 / 1000 },
];

/** Other spellings of the symbols above. Capitals count: mV is not MV. */
const spellings: Readonly<Record<string, string>> = {
  volt: "V",
  volts: "V",
  Volt: "V",
  Volts: "V",
  VDC: "V",
  Vdc: "V",
  "V DC": "V",
  "V=": "V",
  millivolt: "mV",
  millivolts: "mV",
  mVDC: "mV",
  amp: "A",
  amps: "A",
  Amp: "A",
  Amps: "A",
  ampere: "A",
  Ampere: "A",
  amperes: "A",
  ADC: "A",
  Adc: "A",
  "A DC": "A",
  "A=": "A",
  milliamp: "mA",
  milliamps: "mA",
  mADC: "mA",
  C: "°C",
  degC: "°C",
  "deg C": "°C",
  ºC: "°C",
  "℃": "°C",
  "° C": "°C",
  Celsius: "°C",
  F: "°F",
  degF: "°F",
  "deg F": "°F",
  ºF: "°F",
  "℉": "°F",
  "° F": "°F",
  Fahrenheit: "°F",
  Kelvin: "K",
  sec: "s",
  secs: "s",
  Sec: "s",
  second: "s",
  seconds: "s",
  Seconds: "s",
  Sekunden: "s",
  msec: "ms",
  milliseconds: "ms",
  mins: "min",
  minute: "min",
  minutes: "min",
  Minutes: "min",
  Minuten: "min",
  hr: "h",
  hrs: "h",
  hour: "h",
  hours: "h",
  Hours: "h",
  Stunden: "h",
  day: "d",
  days: "d",
  Days: "d",
  watt: "W",
  watts: "W",
  Watt: "W",
  Watts: "W",
  AH: "Ah",
  mAH: "mAh",
  A·h: "Ah",
  "A.h": "Ah",
  WH: "Wh",
};

const bySymbol: ReadonlyMap<string, Unit> = new Map(units.map((unit) => [unit.symbol, unit]));

/** The unit that a text names, brackets and blanks around it taken off; undefined for any other text. Capitals count. */
export function parseUnit(text: string): Unit | undefined {
  const bare = text.trim().replace(/^[[(]\s*|\s*[\])]$/g, "");
  return bySymbol.get(bare) ?? bySymbol.get(spellings[bare] ?? "");
}

const inBrackets = /[[(]([^[\]()]{1,12})[\])]\s*$/;
const behindSlash = /\/\s*([^\s/]{1,12})$/;
const behindMark = /(?:\s+in\s+|[_,\s])\s*([^\s/_,]{1,12})$/;

/** A heading's unit; it is sure where it cannot be a channel's letter: in brackets, behind a slash, or the whole heading in two letters or more. */
export type HeadingUnit = { readonly unit: Unit; readonly isSure: boolean };

/** The unit that a heading carries at its end. */
export function unitOfHeading(heading: string): HeadingUnit | undefined {
  const text = heading.trim();
  const sure =
    parseUnit(inBrackets.exec(text)?.[1] ?? "") ??
    parseUnit(behindSlash.exec(text)?.[1] ?? "") ??
    (text.length > 1 || text === "V" || text === "A" ? parseUnit(text) : undefined);
  if (sure !== undefined) return { unit: sure, isSure: true };
  const unit = parseUnit(behindMark.exec(text)?.[1] ?? "") ?? parseUnit(text);
  return unit === undefined ? undefined : { unit, isSure: false };
}

/** A number with the unit that stands behind it, where one does. */
export type WrittenQuantity = { readonly value: number; readonly unit: Unit | undefined };

const gluedUnit = /^(.*[\d.,])\s*([^\s\d.,+-][^\d]{0,11})$/;

/**
 * Reads a number with or without a unit glued to it: "54.59V", "3,998 A", "12.84".
 * @returns NaN as value where the text is neither; a unit that is not known makes the text no quantity
 */
export function parseQuantity(text: string, decimalMark: DecimalMark, thousandsMark?: ThousandsMark): WrittenQuantity {
  const value = parseNumber(text, decimalMark, thousandsMark);
  if (!Number.isNaN(value)) return { value, unit: undefined };
  const [, digits = "", symbol = ""] = gluedUnit.exec(text.trim()) ?? [];
  const unit = symbol === "" ? undefined : parseUnit(symbol);
  return unit === undefined ? { value: Number.NaN, unit: undefined } : { value: parseNumber(digits, decimalMark, thousandsMark), unit };
}
