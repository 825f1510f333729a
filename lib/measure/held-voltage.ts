/** Voltages that a charger held: read at the end of the stage, where little current flows and leads drop little. */
import type { Stage, StageKind } from "../nouns/stage.ts";
import { combine } from "../units/uncertainty.ts";
import { batteryTemperature, describeTemperature } from "./battery-temperature.ts";
import { type FigureDefinition, notMeasured } from "./define.ts";
import { missingAccuracy } from "./figures/shared-doubts.ts";
import { evidenceOf, type MeasuredRecording } from "./recording.ts";
import { uncertaintyOfReading } from "./uncertainty-of-reading.ts";

export type HeldVoltage = {
  readonly recording: MeasuredRecording;
  readonly stage: Stage;
  readonly valueV: number;
  /** Undefined where the recorder's accuracy is not stated. */
  readonly standardUncertainty: number | undefined;
};

/** A stage shorter than this may not have settled at its voltage, s; our rule. */
const shortestS = 600;

/** Of the stages of a recording that are wanted and long enough, the one held highest; undefined where there is none. */
export function highestHeld(recording: MeasuredRecording, isWanted: (stage: Stage) => boolean): HeldVoltage | undefined {
  const held = recording.stages
    .filter((stage) => isWanted(stage) && stage.endS - stage.startS >= shortestS)
    .flatMap((stage) => (stage.voltageEndV === null ? [] : [{ stage, valueV: stage.voltageEndV }]))
    .sort((a, b) => b.valueV - a.valueV)[0];
  if (held === undefined) return undefined;
  const ofRecorder = uncertaintyOfReading(recording, "voltage", held.valueV);
  return {
    ...held,
    recording,
    // Where on the leads a voltage is meant is not stated, so the drop counts as not known, from none to all of it.
    standardUncertainty: ofRecorder === undefined ? undefined : combine(ofRecorder, leadDropV(recording, held.stage) / Math.sqrt(3)),
  };
}

/** Drop on the leads between recorder and battery at the end of a stage, V; 0 where no lead resistance is stated. */
function leadDropV(recording: MeasuredRecording, stage: Stage): number {
  return (recording.recorder?.leadResistanceOhm ?? 0) * Math.max(0, stage.currentEndA ?? 0);
}

/** What was held in stages of one kind: the very number that a claim about it is judged by. */
export function defineHeld(id: string, label: string, kind: StageKind, explain: string): FigureDefinition<MeasuredRecording> {
  return {
    id,
    label,
    unit: "V",
    version: 1,
    explain: `${explain} It is read at the end of the stage, of ten minutes or more, where little current flows. Where the recorder sits at the charger, the drop on the leads widens the interval.`,
    formula: "median of the stage's last samples; u² = u(recorder)² + (R·I)²/3",
    source: "Our definition.",
    checkedBy: ["Voltages of an open field log (17 Ah battery)"],
    compute: (recording) => {
      if (!recording.trace.hasVoltage) return notMeasured("not recorded", "the recorder logs no voltage", [evidenceOf(recording)]);
      const held = highestHeld(recording, (stage) => stage.kind === kind);
      if (held === undefined)
        return notMeasured("not recorded", "no stage of this kind, ten minutes long or more, is in the recording", [evidenceOf(recording)]);
      const temperature = batteryTemperature(recording, held.stage.startS, held.stage.endS);
      return {
        value: held.valueV,
        standardUncertainty: held.standardUncertainty,
        evidence: [{ ...evidenceOf(recording), lines: held.stage.lines }, ...(temperature?.evidence ?? [])],
        doubts: [
          ...missingAccuracy([recording], "voltage"),
          temperature === undefined ? "the battery's temperature was not read" : `with the battery at ${describeTemperature(temperature)}`,
        ],
      };
    },
  };
}
