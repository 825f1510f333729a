import type { Battery } from "../nouns/battery.ts";
import type { Problem } from "../nouns/problem.ts";
import type { Reading } from "../nouns/reading.ts";
import type { Samples } from "../nouns/samples.ts";
import { round } from "./log/facts.ts";

/** A visit is noted to the minute, and takes a few. */
const besideS = 150;
/** What two meters, their leads and a few minutes may differ by: V a cell, and a share of the current with a share of the capacity. Our own rule. */
const withinVPerCell = 0.04;
const withinShare = 0.15;
const withinShareOfC = 0.005;

type Window = { readonly low: number; readonly high: number; readonly lines: readonly [number, number] };

/**
 * A visit's terminal voltage and clamp current, read while the recorder was running, lie within what the log shows around that minute, give
 * or take what two instruments may differ by.
 *
 * @param samples       one log; one that is not placed in time is not looked at
 * @param file          the log's, for the place of the problem
 * @param readingsFile  for the note that names the reading
 */
export function checkLogAgainstReadings(
  samples: Samples,
  battery: Battery,
  file: string,
  testId: string,
  readings: readonly Reading[],
  readingsFile: string,
): Problem[] {
  const { startMs } = samples;
  if (startMs === undefined) return [];
  return readings.flatMap((reading) => {
    const atS = (reading.atMs - startMs) / 1000;
    const hold = (column: "terminal_V" | "clamp_A", values: Float64Array, unit: string, within: (value: number) => number): Problem[] => {
      const cell = reading.values[column];
      const window = cell === undefined ? undefined : windowAround(samples, values, atS);
      if (cell === undefined || window === undefined) return [];
      const slack = within(cell.value);
      if (cell.value >= window.low - slack && cell.value <= window.high + slack) return [];
      const range = window.low === window.high ? `${round(window.low)}` : `${round(window.low)} to ${round(window.high)}`;
      return [
        {
          id: "log-readings",
          level: "doubt",
          place: { file, line: window.lines[0], column: 1 },
          found: `${range} ${unit} in lines ${window.lines[0]} to ${window.lines[1]}, and ${column} "${cell.text}" at ${reading.atText}`,
          expected: `the log and the visit within ${round(slack)} ${unit} of each other`,
          mend: "check the clock of the recorder and the time of the visit, then the units and columns of both",
          notes: [`${readingsFile}:${cell.line}:${cell.column} has the reading`],
          test: testId,
        },
      ];
    };
    return [
      ...hold("terminal_V", samples.voltagesV, "V", () => withinVPerCell * battery.cells),
      ...hold("clamp_A", samples.currentsA, "A", (currentA) => withinShare * Math.abs(currentA) + withinShareOfC * battery.capacityAh),
    ];
  });
}

/** Lowest and highest value around a moment; undefined where no row stands on both sides of it, or none has a value. */
function windowAround({ elapsedS, lines }: Samples, values: Float64Array, atS: number): Window | undefined {
  if (!(atS >= (elapsedS[0] ?? Number.NaN)) || !(atS <= (elapsedS.at(-1) ?? Number.NaN))) return undefined;
  let window: Window | undefined;
  for (let row = 0; row < elapsedS.length; row++) {
    if (Math.abs((elapsedS[row] as number) - atS) > besideS) continue;
    const value = values[row] ?? Number.NaN;
    if (Number.isNaN(value)) continue;
    const line = lines[row] ?? 1;
    window =
      window === undefined
        ? { low: value, high: value, lines: [line, line] }
        : { low: Math.min(window.low, value), high: Math.max(window.high, value), lines: [window.lines[0], line] };
  }
  return window;
}
