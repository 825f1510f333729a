import { type Finding, type LogFacts, round, rowsInWords } from "./facts.ts";

/** Smaller currents may change their sign: a charger at the end of its charge, and noise. Share of the capacity. */
const smallestShareOfC = 1 / 50;
/** Equal but for the sign, within this share. */
const sameWithin = 0.1;
/** A battery whose current really turns moves by more than this, V a cell: its own resistance alone sees to that. */
const stillVPerCell = 0.02;

/** A current that turns its sign from one row to the next, at the same size and with no change of voltage: a clamp put on the other way round. */
export function findSignFlips({ samples, battery }: LogFacts): Finding[] {
  const rows: number[] = [];
  for (let row = 1; row < samples.currentsA.length; row++) {
    const before = samples.currentsA[row - 1] ?? Number.NaN;
    const after = samples.currentsA[row] ?? Number.NaN;
    const stepV = Math.abs((samples.voltagesV[row] ?? Number.NaN) - (samples.voltagesV[row - 1] ?? Number.NaN));
    const isLarge = Math.abs(before) > smallestShareOfC * battery.capacityAh;
    if (isLarge && before * after < 0 && Math.abs(before + after) < sameWithin * Math.abs(before) && stepV < stillVPerCell * battery.cells)
      rows.push(row);
  }
  if (rows.length === 0) return [];
  return [
    {
      level: "doubt",
      row: rows[0] ?? 0,
      found: rowsInWords(
        rows,
        (row) =>
          `${round(samples.currentsA[row - 1] ?? Number.NaN)} A and then ${round(samples.currentsA[row] ?? Number.NaN)} A in line ${samples.lines[row]}`,
      ),
      expected: "a current that keeps its sign while the voltage stays where it is",
      mend: "check whether the clamp was turned round; a log of two signs cannot be read as one: list the rows under badRows, or split the recording",
    },
  ];
}
