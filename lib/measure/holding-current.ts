/** The current that still flows when a charger is left on: for a full vented battery, the most that can be gassing. */
import type { Evidence } from "../nouns/evidence.ts";
import { standardUncertaintyOf } from "../units/uncertainty.ts";
import { describeTemperature } from "./battery-temperature.ts";
import { missingAccuracy } from "./figures/shared-doubts.ts";
import { hoursOf, lastHeldReading, lastLongHold, longHoldH, temperatureOfHold } from "./long-hold.ts";
import { evidenceOf } from "./recording.ts";
import { evidenceOfCell, type TestContext } from "./test-context.ts";
import { uncertaintyOfReading } from "./uncertainty-of-reading.ts";

export type HoldingCurrent = {
  readonly currentA: number;
  /** Whether it was held for a day or more; before that the current may still fall. */
  readonly isSettled: boolean;
  /** Undefined where the meter's accuracy is not stated. */
  readonly standardUncertainty: number | undefined;
  /** V of the battery at which it flowed. */
  readonly voltageV: number;
  /** Voltage and temperature in words, such as "at 13.62 V, with the battery at 18 to 20 °C (…)". */
  readonly words: string;
  readonly evidence: readonly Evidence[];
  readonly doubts: readonly string[];
};

/**
 * Current at the end of the last hold that was recorded, else what a clamp meter read after a day or more connected.
 *
 * All of it counts as gassing at most: making up for self-discharge and the last of the charge are in it too.
 *
 * @returns A, with the voltage and temperature it belongs to; a current that cannot be told from none as it is; undefined where nothing
 *   was held for long, or no current was logged
 */
export function findHoldingCurrent(context: TestContext): HoldingCurrent | undefined {
  return currentOfRecording(context) ?? currentOfVisit(context);
}

function currentOfRecording(context: TestContext): HoldingCurrent | undefined {
  const hold = lastLongHold(context);
  const { currentEndA, voltageEndV } = hold?.stage ?? {};
  if (hold === undefined || typeof currentEndA !== "number" || typeof voltageEndV !== "number") return undefined;
  const hours = hoursOf(hold.stage);
  const isSettled = hours >= longHoldH;
  const recorded = hours < 2 ? `${(60 * hours).toFixed(0)} min` : `${hours.toFixed(0)} h`;
  return {
    currentA: currentEndA,
    isSettled,
    standardUncertainty: uncertaintyOfReading(hold.recording, "current", currentEndA),
    voltageV: voltageEndV,
    words: at(context, voltageEndV),
    evidence: [{ ...evidenceOf(hold.recording), lines: hold.stage.lines }],
    doubts: [
      ...missingAccuracy([hold.recording], "current"),
      ...(isSettled ? [] : [`${recorded} of that hold were recorded; the current may fall further`]),
    ],
  };
}

function currentOfVisit(context: TestContext): HoldingCurrent | undefined {
  const reading = lastHeldReading(context);
  const currentA = reading?.values.clamp_A?.value;
  const voltageV = reading?.values.terminal_V?.value;
  if (reading === undefined || currentA === undefined || voltageV === undefined) return undefined;
  const accuracy = context.instruments.clampMeter?.measures?.current;
  return {
    currentA,
    isSettled: true,
    standardUncertainty: accuracy === undefined ? undefined : standardUncertaintyOf(accuracy, currentA),
    voltageV,
    words: at(context, voltageV),
    evidence: [...evidenceOfCell(context, reading, "clamp_A"), ...evidenceOfCell(context, reading, "terminal_V")],
    doubts: [
      "one reading at a visit, not a recording",
      ...(accuracy === undefined ? ["the clamp meter's accuracy is not stated, so no interval is given"] : []),
    ],
  };
}

function at(context: TestContext, voltageV: number): string {
  const temperature = temperatureOfHold(context);
  const warmth =
    temperature === undefined ? "at a temperature that nobody read" : `with the battery at ${describeTemperature(temperature)}`;
  return `at ${voltageV.toFixed(2)} V, ${warmth}`;
}
