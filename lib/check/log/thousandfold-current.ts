import { type Finding, type LogFacts, rangeOf, round } from "./facts.ts";

/** A rise of the terminal voltage that no charge smaller than this share of the capacity, in amperes, brings about; V a cell. Our own rule. */
const riseVPerCell = 0.1;
const smallShareOfC = 1 / 1000;

/** Amperes read as milliamperes: a current far too small for the rise of the voltage that it brings about. */
export function findThousandfoldCurrent({ samples, battery }: LogFacts): Finding[] {
  const rangeA = rangeOf(samples.currentsA);
  const rangeV = rangeOf(samples.voltagesV);
  if (rangeA === undefined || rangeV === undefined) return [];
  const highestA = Math.max(Math.abs(rangeA.low), Math.abs(rangeA.high));
  const riseV = rangeV.high - (samples.voltagesV.find((value) => !Number.isNaN(value)) ?? 0);
  const fits = highestA > 0 && highestA < smallShareOfC * battery.capacityAh && riseV > riseVPerCell * battery.cells;
  if (!fits) return [];
  return [
    {
      level: "doubt",
      found: `no current above ${round(highestA)} A, with a voltage that rises by ${round(riseV)} V`,
      expected: `more than ${round(smallShareOfC * battery.capacityAh)} A into a battery of ${battery.capacityAh} Ah for such a rise`,
      mend: `check the unit of current in the recorder's dialect: in amperes it would be ${round(highestA * 1000)} A`,
    },
  ];
}
