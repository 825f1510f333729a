import { type Finding, type LogFacts, round, rowsInWords } from "./facts.ts";

/** No lead-acid cell shows more, whatever is done to it, nor less unless it is turned round, V. Wide, so that only faults of the recorder lie outside. */
const cellV = { low: -0.5, high: 3.5 };
/** No charger of this trade gives more than ten times the capacity in amperes; a load test does, but is no charge. */
const shareOfC = 10;
/** No battery that is charged is colder or hotter, °C. */
const temperatureC = { low: -50, high: 120 };

/** Single values that nothing real can show, in a log whose middle values are sound: a loose lead, a garbled byte. */
export function findImpossibleValues({ samples, battery }: LogFacts): Finding[] {
  const findings: Finding[] = [];
  const tell = (name: string, unit: string, values: Float64Array, low: number, high: number): void => {
    const rows: number[] = [];
    for (let row = 0; row < values.length; row++) if ((values[row] as number) < low || (values[row] as number) > high) rows.push(row);
    // A log of which most is outside has another unit or column, and other checks say so.
    if (rows.length === 0 || rows.length * 2 > values.length) return;
    findings.push({
      level: "doubt",
      row: rows[0] ?? 0,
      found: rowsInWords(rows, (row) => `${round(values[row] ?? Number.NaN)} ${unit} in line ${samples.lines[row]}`),
      expected: `a ${name} from ${round(low)} to ${round(high)} ${unit} in every row`,
      mend: "look at the rows; where the recorder slipped, list them under badRows of this recording in test.yaml",
    });
  };
  tell("voltage", "V", samples.voltagesV, cellV.low * battery.cells, cellV.high * battery.cells);
  tell("current", "A", samples.currentsA, -shareOfC * battery.capacityAh, shareOfC * battery.capacityAh);
  tell("temperature", "°C", samples.temperaturesC, temperatureC.low, temperatureC.high);
  return findings;
}
