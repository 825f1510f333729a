/** What a charger holds for long: a float, or a limit that it never left. */
import type { Stage } from "../nouns/stage.ts";
import { batteryTemperature, temperatureByVisits } from "./battery-temperature.ts";
import type { MeasuredRecording } from "./recording.ts";
import type { BatteryTemperature } from "./span-temperature.ts";
import { evidenceOfCell, type MeasuredReading, type TestContext } from "./test-context.ts";

/** A voltage limit held for longer than this is what the owner gets when the charger is left on. Our definition: a day. */
export const longHoldH = 24;

/** The last stage in which a recording shows what is held for long; undefined where none does. */
export function lastLongHold(context: TestContext): { recording: MeasuredRecording; stage: Stage } | undefined {
  const recordings = context.connections.flatMap((connection) => connection.recordings);
  for (const recording of [...recordings].reverse()) {
    const stage = recording.stages.findLast(
      (candidate) => candidate.kind === "float" || (candidate.kind === "constant-voltage" && hoursOf(candidate) >= longHoldH),
    );
    if (stage !== undefined && stage.voltageEndV !== null) return { recording, stage };
  }
  return undefined;
}

/** Hours that a stage lasted. */
export function hoursOf(stage: Stage): number {
  return (stage.endS - stage.startS) / 3600;
}

/**
 * The last visit at which a voltmeter was read with the charger connected for a day or more, so that it had come to what it holds.
 *
 * Where a clamp meter found more than C/100 flowing, the charge was still going on, and the voltage is not yet what is held.
 */
export function lastHeldReading(context: TestContext): MeasuredReading | undefined {
  return context.readings.findLast((reading) => {
    const connection = reading.connection === undefined ? undefined : context.connections[reading.connection];
    if (reading.values.terminal_V === undefined || reading.charger === "disconnected" || connection?.onMs === undefined) return false;
    if ((reading.values.clamp_A?.value ?? 0) > context.battery.capacityAh / 100) return false;
    const stillOn = connection.offMs === undefined || reading.atMs <= connection.offMs;
    return stillOn && reading.atMs - connection.onMs >= longHoldH * 3_600_000;
  });
}

/** The battery's temperature at what `holding-voltage` reports: in that stage, or at that visit; undefined where nobody measured it. */
export function temperatureOfHold(context: TestContext): BatteryTemperature | undefined {
  const hold = lastLongHold(context);
  if (hold !== undefined) return batteryTemperature(hold.recording, hold.stage.startS, hold.stage.endS);
  const reading = lastHeldReading(context);
  return reading === undefined
    ? undefined
    : temperatureByVisits(context.readings, reading.atMs, reading.atMs, context.instruments.thermometer, (visit, column) =>
        evidenceOfCell(context, visit, column),
      );
}
