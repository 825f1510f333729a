import { median } from "../../signal/order-statistics.ts";
import { type Finding, type LogFacts, present, rangeOf, round } from "./facts.ts";

/** No lead-acid cell on charge, at rest or in discharge lies outside this, V: wide enough for any fault, narrow enough for a wrong unit. */
const cellRangeV = { low: 1, high: 3.2 };
/** No charger of this trade gives more than a few times the capacity. */
const highestCurrentShareOfC = 5;
/** A charger that has switched off may draw a little from the battery; more than this share of the capacity is a sign turned round. */
const drainShareOfC = 0.02;

/** The middle voltage is none that this battery can have. A wrong unit or column moves the middle by a factor; a freak row does not. */
export function findMiddleVoltage({ samples, battery }: LogFacts): Finding[] {
  const fits = (value: number): boolean => value / battery.cells >= cellRangeV.low && value / battery.cells <= cellRangeV.high;
  const rangeV = rangeOf(samples.voltagesV);
  // Where the lowest and the highest fit, so does what lies between them: most logs need no middle.
  if (rangeV === undefined || (fits(rangeV.low) && fits(rangeV.high))) return [];
  const middleV = median(present(samples.voltagesV));
  if (fits(middleV) || isSwapped(samples.currentsA, middleV, fits)) return [];
  const slip = fits(middleV / 1000)
    ? `; read as mV it would be ${round(middleV / 1000)} V: unit: mV`
    : fits(middleV * 1000)
      ? `; a thousand times as much, ${round(middleV * 1000)} V, would fit: unit: V`
      : "";
  return [
    {
      level: "error",
      found: `a middle voltage of ${round(middleV)} V`,
      expected: `${round(cellRangeV.low * battery.cells)} to ${round(cellRangeV.high * battery.cells)} V for a battery of ${battery.cells} cells`,
      mend: `check the unit and the column of voltage in the recorder's dialect, and the battery's cells${slip}`,
    },
  ];
}

/** The column read as voltage holds none, and the one read as current does. */
export function findSwappedColumns({ samples, battery }: LogFacts): Finding[] {
  const fits = (value: number): boolean => value / battery.cells >= cellRangeV.low && value / battery.cells <= cellRangeV.high;
  const rangeV = rangeOf(samples.voltagesV);
  if (rangeV === undefined || (fits(rangeV.low) && fits(rangeV.high))) return [];
  const middleV = median(present(samples.voltagesV));
  if (!isSwapped(samples.currentsA, middleV, fits)) return [];
  const middleA = median(present(samples.currentsA));
  return [
    {
      level: "error",
      found: `a middle voltage of ${round(middleV)} V and a middle current of ${round(middleA)} A`,
      expected: `${round(cellRangeV.low * battery.cells)} to ${round(cellRangeV.high * battery.cells)} V for a battery of ${battery.cells} cells`,
      mend: "check whether voltage and current are swapped in the recorder's dialect: the values read as current fit the voltage",
    },
  ];
}

/** A current whose middle is narrow round what the battery's voltage can be: a charging current falls over a log, a voltage does not. */
function isSwapped(currentsA: Float64Array, middleV: number, fits: (value: number) => boolean): boolean {
  if (fits(middleV)) return false;
  const values = present(currentsA);
  if (values.length < 2) return false;
  const middle = median(values);
  const isNarrow = values.every((value) => Math.abs(value - middle) < 0.5 * Math.abs(middle));
  return isNarrow && fits(middle);
}

/** The middle current is more than any charger gives a battery of this size. */
export function findMiddleCurrent({ samples, battery }: LogFacts): Finding[] {
  const rangeA = rangeOf(samples.currentsA);
  const highestA = highestCurrentShareOfC * battery.capacityAh;
  if (rangeA === undefined || (rangeA.low >= -highestA && rangeA.high <= highestA)) return [];
  const middleA = median(present(samples.currentsA).map(Math.abs));
  if (middleA <= highestA) return [];
  return [
    {
      level: "error",
      found: `a middle current of ${round(middleA)} A`,
      expected: `at most ${round(highestA)} A for a battery of ${battery.capacityAh} Ah`,
      mend: "check the unit of current in the recorder's dialect: a file in mA needs unit: mA",
    },
  ];
}

/** Taken as a whole, the log discharges the battery. */
export function findTurnedSign({ samples, battery }: LogFacts): Finding[] {
  let sumA = 0;
  let count = 0;
  for (let row = 0; row < samples.currentsA.length; row++) {
    const currentA = samples.currentsA[row] as number;
    if (Number.isNaN(currentA)) continue;
    sumA += currentA;
    count++;
  }
  if (!samples.hasCurrent || count === 0) return [];
  const spanH = ((samples.elapsedS.at(-1) ?? 0) - (samples.elapsedS[0] ?? 0)) / 3600;
  if ((sumA / count) * spanH >= -drainShareOfC * battery.capacityAh) return [];
  return [
    {
      level: "doubt",
      found: "more current out of the battery than into it",
      expected: "a recording of a charge",
      mend: "check chargingSign in the recorder's dialect, unless this is a discharge",
    },
  ];
}
