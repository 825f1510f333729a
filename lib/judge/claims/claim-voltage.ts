import { hoursOf, longHoldH } from "../../measure/long-hold.ts";
import type { MeasuredRecording } from "../../measure/recording.ts";
import type { TestContext } from "../../measure/test-context.ts";
import { uncertaintyOfReading } from "../../measure/uncertainty-of-reading.ts";
import type { JudgedClaim } from "../../nouns/finding.ts";
import type { Stage } from "../../nouns/stage.ts";
import { combine } from "../../units/uncertainty.ts";
import { type Held, judgeNumber, notTested, whyNoStages } from "./shared.ts";

/** A stage this short may not have settled at its voltage. */
const shortestS = 600;

/** Voltage claims are made for about 25 °C; outside this range compensation may move the voltage by more than the tolerance. */
const ordinaryRangeC = { low: 15, high: 30 };

/**
 * Judges the voltage limit: the highest voltage held in any recording of the test, at the end of that stage, where little current
 * flows and leads drop little.
 *
 * @returns undefined where the mode claims no voltage limit
 */
export function judgeVoltage(context: TestContext): JudgedClaim | undefined {
  const claim = context.mode.claims.voltageV;
  const subject = { id: "claim-voltage", label: "Voltage limit", unit: "V" };
  if (claim === undefined) return undefined;
  const held = highestHeld(context, (stage) => stage.kind === "constant-voltage");
  if (held === undefined)
    return notTested(
      subject,
      claim,
      context.rules.voltageTolerance,
      whyNoStages(context) ?? "no recording reaches a voltage that the charger held",
      "a recording that goes on until the current has begun to fall",
    );
  return judgeNumber(subject, claim, held, context.rules.voltageTolerance, context.rules);
}

/** Judges the voltage held afterwards. @returns undefined where the mode claims none */
export function judgeFloatVoltage(context: TestContext): JudgedClaim | undefined {
  const claim = context.mode.claims.floatVoltageV;
  const subject = { id: "claim-float-voltage", label: "Float voltage", unit: "V" };
  if (claim === undefined) return undefined;
  // A limit that was never left is what the charger holds in place of a float.
  const held =
    highestHeld(context, (stage) => stage.kind === "float") ??
    highestHeld(context, (stage) => stage.kind === "constant-voltage" && hoursOf(stage) >= longHoldH);
  if (held === undefined)
    return notTested(
      subject,
      claim,
      context.rules.voltageTolerance,
      whyNoStages(context) ?? "no recording reaches a float",
      "a recording that goes on after the charger has reported full, with a recorder that does not stop by itself",
    );
  return judgeNumber(subject, claim, held, context.rules.voltageTolerance, context.rules);
}

function highestHeld(context: TestContext, isWanted: (stage: Stage) => boolean): Held | undefined {
  const candidates = context.connections
    .flatMap((connection) => connection.recordings)
    .flatMap((recording) =>
      recording.stages.filter((stage) => isWanted(stage) && stage.endS - stage.startS >= shortestS).map((stage) => ({ recording, stage })),
    )
    .filter(({ stage }) => stage.voltageEndV !== null);
  const best = candidates.sort((a, b) => (b.stage.voltageEndV ?? 0) - (a.stage.voltageEndV ?? 0))[0];
  const value = best?.stage.voltageEndV;
  if (best === undefined || value === null || value === undefined) return undefined;
  const ofRecorder = uncertaintyOfReading(best.recording, "voltage", value);
  const dropV = leadDropV(best.recording, best.stage);
  return {
    value,
    // Where on the leads the claim holds is not stated, so the drop counts as not known, from none to all of it.
    standardUncertainty: ofRecorder === undefined ? undefined : combine(ofRecorder, dropV / Math.sqrt(3)),
    figure: `recording/${best.recording.id}#sustained-voltage`,
    why: `${value.toFixed(2)} V was held at the end of a stage of ${((best.stage.endS - best.stage.startS) / 3600).toFixed(1)} h in ${best.recording.id}`,
    doubts: [...temperatureDoubts(context)],
  };
}

function leadDropV(recording: MeasuredRecording, stage: Stage): number {
  return (recording.recorder?.leadResistanceOhm ?? 0) * Math.max(0, stage.currentEndA ?? 0);
}

function temperatureDoubts(context: TestContext): string[] {
  const read = context.readings.flatMap((reading) => reading.values.battery_C?.value ?? reading.values.acid_C?.value ?? []);
  if (read.length === 0)
    return ["the battery's temperature was not read; a charger that compensates holds another voltage in cold or heat"];
  const outside = read.find((temperatureC) => temperatureC < ordinaryRangeC.low || temperatureC > ordinaryRangeC.high);
  return outside === undefined
    ? []
    : [
        `the battery was at ${outside} °C at a visit; a charger that compensates for temperature then holds about 18 to 30 mV more for each K below 25 °C (12 V battery)`,
      ];
}
