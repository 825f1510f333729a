/** How warm the battery was while a recording ran: by a probe on it, or by the visits around it. */
import type { Evidence } from "../nouns/evidence.ts";
import type { Instrument } from "../nouns/instrument.ts";
import type { Reading, ReadingColumn } from "../nouns/reading.ts";
import { standardUncertaintyOf } from "../units/uncertainty.ts";
import type { MeasuredRecording } from "./recording.ts";
import type { BatteryTemperature } from "./span-temperature.ts";

/** A battery follows its surroundings within hours, so a visit this long before or after still speaks for it, h; our rule. */
const nearH = 6;

/** Error of a thermometer whose accuracy nobody stated, K; our assumption. */
export const unstatedErrorK = 2;

/** How much warmer than the air around it a battery on charge may be, K; our assumption for charges of up to C/5. */
export const warmerThanAirK = 10;

/** What stands for the battery's temperature at a visit, best first. */
const columns: readonly ReadingColumn[] = ["battery_C", "acid_C", "air_C"];

/**
 * The battery's temperature around a span of time, by the visits in it or up to six hours from it.
 *
 * @param startMs, endMs  the span, ms since 1970
 * @param thermometer     the instrument it was read with; ±2 K is taken where its accuracy is not stated
 * @param evidenceOf      where a value stands
 * @returns undefined where no visit near enough read a temperature. Air stands in for a battery that may be up to 10 K warmer.
 */
export function temperatureByVisits(
  readings: readonly Reading[],
  startMs: number,
  endMs: number,
  thermometer: Instrument | undefined,
  evidenceOf: (reading: Reading, column: ReadingColumn) => readonly Evidence[],
): BatteryTemperature | undefined {
  const near = readings.filter((reading) => reading.atMs >= startMs - nearH * 3_600_000 && reading.atMs <= endMs + nearH * 3_600_000);
  const column = columns.find((name) => near.some((reading) => reading.values[name] !== undefined));
  if (column === undefined) return undefined;
  const read = near.flatMap((reading) => {
    const value = reading.values[column]?.value;
    return value === undefined ? [] : [{ reading, value }];
  });
  const values = read.map(({ value }) => value);
  const accuracy = thermometer?.measures?.temperature;
  const errorK = accuracy === undefined ? unstatedErrorK : Math.sqrt(3) * standardUncertaintyOf(accuracy, Math.max(...values));
  const numbers = read.map(({ reading }) => reading.number);
  const what = column === "air_C" ? "from the air's" : column === "acid_C" ? "the acid's" : "the battery's";
  return {
    lowC: Math.min(...values) - errorK,
    highC: Math.max(...values) + errorK + (column === "air_C" ? warmerThanAirK : 0),
    words: `${what}, read at visit${numbers.length === 1 ? "" : "s"} ${numbers.join(" and ")}`,
    evidence: read.flatMap(({ reading }) => evidenceOf(reading, column)),
  };
}

/**
 * The battery's temperature during part of a recording: by the recorder's probe where its record says that it sits on the battery or in
 * the acid, else by the visits.
 *
 * @param fromS, toS  seconds from the recording's first row
 * @returns undefined where nobody measured it
 */
export function batteryTemperature(recording: MeasuredRecording, fromS: number, toS: number): BatteryTemperature | undefined {
  return byProbe(recording, fromS, toS) ?? recording.visitTemperature;
}

function byProbe({ trace, recorder, id, file, sha256 }: MeasuredRecording, fromS: number, toS: number): BatteryTemperature | undefined {
  if (recorder?.temperatureOf !== "battery" && recorder?.temperatureOf !== "acid") return undefined;
  let lowC = Number.POSITIVE_INFINITY;
  let highC = Number.NEGATIVE_INFINITY;
  trace.temperaturesC.forEach((temperatureC, row) => {
    const atS = trace.elapsedS[row] as number;
    if (Number.isNaN(temperatureC) || atS < fromS || atS > toS) return;
    lowC = Math.min(lowC, temperatureC);
    highC = Math.max(highC, temperatureC);
  });
  if (lowC > highC) return undefined;
  const accuracy = recorder.measures.temperature;
  const errorK = accuracy === undefined ? unstatedErrorK : Math.sqrt(3) * standardUncertaintyOf(accuracy, highC);
  return {
    lowC: lowC - errorK,
    highC: highC + errorK,
    words: `the ${recorder.temperatureOf}'s, by the recorder's probe in ${id}`,
    evidence: [{ file, sha256 }],
  };
}

/** A temperature in words: "4 to 8 °C (the battery's, read at visit 2)". */
export function describeTemperature({ lowC, highC, words }: BatteryTemperature): string {
  return `${lowC.toFixed(0)} to ${highC.toFixed(0)} °C (${words})`;
}
