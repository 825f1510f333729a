import { gassingVoltagePerCell } from "../../electrochem/gassing.ts";
import { batteryTemperature, describeTemperature } from "../battery-temperature.ts";
import { type FigureDefinition, notMeasured } from "../define.ts";
import { type Part, rangesIn } from "../integrals.ts";
import { evidenceOf, type MeasuredRecording } from "../recording.ts";
import type { BatteryTemperature } from "../span-temperature.ts";
import { uncertaintyOfReading } from "../uncertainty-of-reading.ts";
import { missingAccuracy } from "./shared-doubts.ts";

export const timeAboveGassing: FigureDefinition<MeasuredRecording> = {
  id: "time-above-gassing",
  label: "Time above gassing voltage",
  unit: "h",
  version: 2,
  explain:
    "How long the voltage lay above the one at which gassing is said to set in: 2.385 V a cell at 25 °C, 2.49 V at 0 °C, 2.33 V at 40 °C, straight between the rows of a table. It is taken at the battery's temperature, or at 25 °C where nobody read it. Gassing mixes the acid, costs water and gives off hydrogen: ventilate. The limit is a convention.",
  formula: "Σ Δt with U > U_gas(T) · cells; the interval moves U by its error and T over its interval",
  source: "German handbook practice (from memory); 2.40 V at 20 °C is common practice.",
  checkedBy: ["A ramp of known slope"],
  compute: (recording) => {
    if (!recording.trace.hasVoltage) return notMeasured("not recorded", "the recorder logs no voltage", [evidenceOf(recording)]);
    const { warmV, coldV, temperature } = gassingLimits(recording);
    const limitV = (warmV + coldV) / 2;
    const uncertaintyV = uncertaintyOfReading(recording, "voltage", limitV);
    const reachV = uncertaintyV === undefined ? 0 : 2 * uncertaintyV;
    const [value, low, high] = hoursOver(recording, [limitV, coldV + reachV, warmV - reachV], whole) as [number, number, number];
    return {
      value,
      interval: uncertaintyV === undefined ? undefined : { low, high },
      evidence: [evidenceOf(recording), ...(temperature?.evidence ?? [])],
      doubts: [
        ...missingAccuracy([recording], "voltage"),
        temperature === undefined
          ? "the battery's temperature was not read, so 25 °C is taken"
          : `above ${limitV.toFixed(2)} V, with the battery at ${describeTemperature(temperature)}`,
      ],
    };
  },
};

/** Hours of part of a recording above the gassing voltage, in the middle of what the battery's temperature leaves open. */
export function hoursAboveGassing(recording: MeasuredRecording, part: Part = whole): number {
  const { warmV, coldV } = gassingLimits(recording);
  return hoursOver(recording, [(warmV + coldV) / 2], part)[0] as number;
}

const whole: Part = { fromS: Number.NEGATIVE_INFINITY, toS: Number.POSITIVE_INFINITY };

/** The gassing voltage of the whole battery at the warm and at the cold end of what its temperature was; 25 °C where nobody read it. */
function gassingLimits(recording: MeasuredRecording): { warmV: number; coldV: number; temperature: BatteryTemperature | undefined } {
  const temperature = batteryTemperature(recording, 0, recording.trace.spanS);
  const limitAt = (temperatureC: number): number => gassingVoltagePerCell(Math.min(50, Math.max(0, temperatureC))) * recording.cells;
  return { warmV: limitAt(temperature?.highC ?? 25), coldV: limitAt(temperature?.lowC ?? 25), temperature };
}

/** Hours of part of a recording above each of some voltages; a long log is gone through once for all of them. */
function hoursOver(recording: MeasuredRecording, thresholdsV: readonly number[], part: Part): number[] {
  const { elapsedS, voltagesV } = recording.trace;
  const lowestV = Math.min(...thresholdsV);
  const seconds = thresholdsV.map(() => 0);
  for (const [from, to] of rangesIn(recording, part))
    for (let i = from + 1; i < to; i++) {
      const meanV = ((voltagesV[i] as number) + (voltagesV[i - 1] as number)) / 2;
      if (!(meanV > lowestV)) continue;
      const stepS = (elapsedS[i] as number) - (elapsedS[i - 1] as number);
      for (let k = 0; k < seconds.length; k++) if (meanV > (thresholdsV[k] as number)) seconds[k] = (seconds[k] as number) + stepS;
    }
  return seconds.map((ofOne) => ofOne / 3600);
}
