import { type Finding, highest, type LogFacts, present, round } from "./facts.ts";

/** A rise of the terminal voltage that no charge smaller than this share of the capacity, in amperes, brings about; V a cell. Our own rule. */
const riseVPerCell = 0.1;
const smallShareOfC = 1 / 1000;

/** Amperes read as milliamperes: a current far too small for the rise of the voltage that it brings about. */
export function findThousandfoldCurrent({ samples, battery }: LogFacts): Finding[] {
  const currentsA = present(samples.currentsA).map(Math.abs);
  const voltagesV = present(samples.voltagesV);
  if (currentsA.length === 0 || voltagesV.length < 2) return [];
  const highestA = highest(currentsA);
  const riseV = highest(voltagesV) - (voltagesV[0] ?? 0);
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
