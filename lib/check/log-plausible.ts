import type { Battery } from "../nouns/battery.ts";
import type { Place, Problem } from "../nouns/problem.ts";
import type { Samples } from "../nouns/samples.ts";
import { median } from "../signal/order-statistics.ts";

/** No lead-acid cell on charge, at rest or in discharge lies outside this, V: wide enough for any fault, narrow enough for a wrong unit. */
const cellRangeV = { low: 1, high: 3.2 };
/** No charger of this trade gives more than a few times the capacity. */
const highestCurrentShareOfC = 5;
/** A charger that has switched off may draw a little from the battery; more than this share of the capacity is a sign turned round. */
const drainShareOfC = 0.02;

/** Four digits are enough to see a wrong unit. */
const round = (value: number): number => Number(value.toPrecision(4));

/** An instant to the minute, in UTC. */
const utcMinute = (ms: number): string => `${new Date(ms).toISOString().slice(0, 16).replace("T", " ")} UTC`;

/**
 * A log's values are those of this battery: voltage per cell possible, current not absurd, a clock that fits the connection.
 *
 * A wrong unit or swapped columns moves the median by a factor; a freak row does not.
 */
export function checkLogPlausible(
  samples: Samples,
  battery: Battery,
  file: string,
  testId: string,
  onMs: number | undefined,
  offMs: number | undefined,
  dialectPlace: Place | undefined,
): Problem[] {
  const problems: Problem[] = [];
  const notes = dialectPlace === undefined ? [] : [`${dialectPlace.file}:${dialectPlace.line ?? 1} describes how this recorder writes`];
  const tell = (id: string, level: Problem["level"], found: string, expected: string, mend: string): void => {
    problems.push({ id, level, place: { file, line: samples.lines[0] ?? 1, column: 1 }, found, expected, mend, notes, test: testId });
  };
  const voltagesV = samples.voltagesV.filter((value) => !Number.isNaN(value));
  const middleV = median(voltagesV);
  if (voltagesV.length > 0 && (middleV / battery.cells < cellRangeV.low || middleV / battery.cells > cellRangeV.high))
    tell(
      "log-voltage",
      "error",
      `a middle voltage of ${round(middleV)} V`,
      `${round(cellRangeV.low * battery.cells)} to ${round(cellRangeV.high * battery.cells)} V for a battery of ${battery.cells} cells`,
      "check the unit and the column of voltage in the recorder's dialect, and the battery's cells",
    );
  const currentsA = samples.currentsA.filter((value) => !Number.isNaN(value)).map(Math.abs);
  const middleA = median(currentsA);
  if (currentsA.length > 0 && middleA > highestCurrentShareOfC * battery.capacityAh)
    tell(
      "log-current",
      "error",
      `a middle current of ${round(middleA)} A`,
      `at most ${round(highestCurrentShareOfC * battery.capacityAh)} A for a battery of ${battery.capacityAh} Ah`,
      "check the unit of current in the recorder's dialect: a file in mA needs unit: mA",
    );
  if (samples.hasCurrent && currentsA.length > 0) {
    const sumA = samples.currentsA.reduce((sum, value) => (Number.isNaN(value) ? sum : sum + value), 0);
    const spanH = ((samples.elapsedS.at(-1) ?? 0) - (samples.elapsedS[0] ?? 0)) / 3600;
    if ((sumA / currentsA.length) * spanH < -drainShareOfC * battery.capacityAh)
      tell(
        "log-sign",
        "doubt",
        "more current out of the battery than into it",
        "a recording of a charge",
        "check chargingSign in the recorder's dialect, unless this is a discharge",
      );
  }
  if (samples.startMs !== undefined && onMs !== undefined) {
    const lateH = (samples.startMs - onMs) / 3_600_000;
    const afterOffH = offMs === undefined ? -1 : (samples.startMs - offMs) / 3_600_000;
    if (lateH < -0.25 || afterOffH > 0)
      tell(
        "log-clock",
        "doubt",
        `a first row at ${utcMinute(samples.startMs)}`,
        `a start after the connection's on, ${utcMinute(onMs)}${offMs === undefined ? "" : `, and before its off, ${utcMinute(offMs)}`}`,
        "check the recorder's clock and the test's zone, or the times of the connection",
      );
  }
  return problems;
}
