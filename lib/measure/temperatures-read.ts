/** Every temperature that was read in a test, of acid, battery and air apart: they differ by 5 to 20 K on charge and are never mixed. */
import type { ReadingColumn } from "../nouns/reading.ts";
import { standardUncertaintyOf } from "../units/uncertainty.ts";
import { unstatedErrorK } from "./battery-temperature.ts";
import type { MeasuredRecording } from "./recording.ts";
import type { MeasuredReading, TestContext } from "./test-context.ts";

export type TemperatureOf = "acid" | "battery" | "air";

export type TemperatureRead = {
  readonly of: TemperatureOf;
  /** °C, lowest and highest as read; the same for a visit. */
  readonly lowC: number;
  readonly highC: number;
  /** Error of the thermometer either way, K; ±2 K is taken where its accuracy is not stated. */
  readonly errorK: number;
  /** Where it was read, such as "visit 2" or "log.csv". */
  readonly where: string;
  /** Whether the charger was connected then. */
  readonly onCharge: boolean;
  /** The visit, where it was one. */
  readonly reading: MeasuredReading | undefined;
};

const columns: readonly (readonly [TemperatureOf, ReadingColumn])[] = [
  ["acid", "acid_C"],
  ["battery", "battery_C"],
  ["air", "air_C"],
];

/**
 * Temperatures read at visits, and by recorders whose record says where their probe sits, in order of time within each.
 * @returns [] where nobody read any; a recorder's temperature of unknown place is left out
 */
export function temperaturesRead(context: TestContext): TemperatureRead[] {
  const accuracy = context.instruments.thermometer?.measures?.temperature;
  const ofVisits = context.readings.flatMap((reading) =>
    columns.flatMap(([of, column]) => {
      const value = reading.values[column]?.value;
      if (value === undefined) return [];
      return [
        {
          of,
          lowC: value,
          highC: value,
          errorK: accuracy === undefined ? unstatedErrorK : Math.sqrt(3) * standardUncertaintyOf(accuracy, value),
          where: `visit ${reading.number}`,
          onCharge: reading.charger === "connected" || (reading.values.clamp_A?.value ?? 0) > 0,
          reading,
        },
      ];
    }),
  );
  const recordings = context.connections.flatMap((connection) => connection.recordings);
  return [...ofVisits, ...recordings.flatMap(temperatureOfProbe)];
}

function temperatureOfProbe({ id, recorder, trace }: MeasuredRecording): TemperatureRead[] {
  if (recorder?.temperatureOf === undefined) return [];
  let lowC = Number.POSITIVE_INFINITY;
  let highC = Number.NEGATIVE_INFINITY;
  for (const temperatureC of trace.temperaturesC)
    if (!Number.isNaN(temperatureC)) {
      lowC = Math.min(lowC, temperatureC);
      highC = Math.max(highC, temperatureC);
    }
  if (lowC > highC) return [];
  const accuracy = recorder.measures.temperature;
  const errorK = accuracy === undefined ? unstatedErrorK : Math.sqrt(3) * standardUncertaintyOf(accuracy, highC);
  return [{ of: recorder.temperatureOf, lowC, highC, errorK, where: id, onCharge: true, reading: undefined }];
}

/** How much warmer than the air the acid, or else the battery, was at a visit with the charger connected, K. */
export type WarmthOverAir = { readonly visit: number; readonly of: TemperatureOf; readonly ofC: number; readonly airC: number };

/** Warmth over the air at each visit on charge that read both; [] where none did. */
export function warmthOverAir(read: readonly TemperatureRead[]): WarmthOverAir[] {
  return read.flatMap(({ of, reading, onCharge, highC }) => {
    const acid = reading?.values.acid_C?.value;
    const ofC = acid ?? reading?.values.battery_C?.value;
    return of !== "air" || !onCharge || reading === undefined || ofC === undefined
      ? []
      : [{ visit: reading.number, of: acid === undefined ? ("battery" as const) : ("acid" as const), ofC, airC: highC }];
  });
}
