import { gassingVoltagePerCell } from "../../electrochem/gassing.ts";
import { type FigureDefinition, notMeasured } from "../define.ts";
import { evidenceOf, type MeasuredRecording } from "../recording.ts";
import { uncertaintyOfReading } from "../uncertainty-of-reading.ts";
import { missingAccuracy } from "./shared-doubts.ts";

export const timeAboveGassing: FigureDefinition<MeasuredRecording> = {
  id: "time-above-gassing",
  label: "Time above gassing voltage",
  unit: "h",
  version: 1,
  explain:
    "How long the voltage lay above 2.385 V a cell, at which gassing is said to set in at 25 °C. Gassing mixes the acid, costs water and gives off hydrogen: ventilate. The limit is a convention, and moves with temperature (2.49 V at 0 °C, 2.33 V at 40 °C).",
  formula: "Σ Δt with U > 2.385 V · cells; the interval moves U by its error",
  source: "German handbook practice (from memory); 2.40 V at 20 °C is common practice.",
  checkedBy: ["A ramp of known slope"],
  compute: (recording) => {
    const { trace, cells } = recording;
    if (!trace.hasVoltage) return notMeasured("not recorded", "the recorder logs no voltage", [evidenceOf(recording)]);
    const limitV = gassingVoltagePerCell(25) * cells;
    const hoursAbove = (thresholdV: number): number => {
      let seconds = 0;
      for (const [from, to] of trace.stretches)
        for (let i = from + 1; i < to; i++)
          if (((trace.voltagesV[i] as number) + (trace.voltagesV[i - 1] as number)) / 2 > thresholdV)
            seconds += (trace.elapsedS[i] as number) - (trace.elapsedS[i - 1] as number);
      return seconds / 3600;
    };
    const uncertaintyV = uncertaintyOfReading(recording, "voltage", limitV);
    return {
      value: hoursAbove(limitV),
      interval:
        uncertaintyV === undefined
          ? undefined
          : { low: hoursAbove(limitV + 2 * uncertaintyV), high: hoursAbove(limitV - 2 * uncertaintyV) },
      evidence: [evidenceOf(recording)],
      doubts: missingAccuracy([recording], "voltage"),
    };
  },
};
