import { gassingVoltagePerCell } from "../../electrochem/gassing.ts";
import { batteryTemperature } from "../../measure/battery-temperature.ts";
import { hoursOf, longHoldH } from "../../measure/long-hold.ts";
import type { MeasuredRecording } from "../../measure/recording.ts";
import { isSealed } from "../../measure/test-context.ts";
import { isOffBattery, type Stage } from "../../nouns/stage.ts";
import type { FindingDefinition } from "../define-finding.ts";

/** How far below the table's gassing voltage a held voltage still counts as gassing, V a cell: the convention's own tolerance, and its meter's. */
const belowTableV = 0.035;

/** The voltage a cell from which a battery is said to gas, at its temperature; 25 °C where nobody read it. */
function gassingVPerCellOf(recording: MeasuredRecording, stage: Stage): number {
  const temperature = batteryTemperature(recording, stage.startS, stage.endS);
  const middleC = temperature === undefined ? 25 : (temperature.lowC + temperature.highC) / 2;
  return gassingVoltagePerCell(Math.min(50, Math.max(0, middleC))) - belowTableV;
}

export const lettingGo: FindingDefinition = {
  id: "letting-go",
  subject: "Does it let go of the high voltage?",
  explain:
    "After the battery is full a charger should lower its voltage or switch off. Held above gassing voltage for more than a day, the battery loses water and gives off hydrogen.",
  source:
    "Gassing voltage by temperature, 2.385 V a cell at 25 °C (German handbook practice, from memory; 2.40 V at 20 °C is common practice); a day is our definition.",
  checkedBy: ["Demo logs against the generator's truth"],
  judge(context) {
    const holds = context.connections
      .flatMap((connection) => connection.recordings.map((recording, place) => ({ recording, ending: connection.endings[place] })))
      .flatMap(({ recording, ending }) =>
        recording.stages.flatMap((stage, place) =>
          stage.kind === "constant-voltage"
            ? [
                {
                  recording,
                  stage,
                  hours: hoursOf(stage),
                  letsGo: letsGoAfter(recording.stages.slice(place + 1), ending?.by === "charger"),
                },
              ]
            : [],
        ),
      )
      .filter(({ recording, stage }) => (stage.voltageEndV ?? 0) / context.battery.cells > gassingVPerCellOf(recording, stage));
    const longest = holds.sort((a, b) => b.hours - a.hours)[0];
    if (longest === undefined || longest.hours < longHoldH) return undefined;
    const figures = [`recording/${longest.recording.id}#limit-voltage`];
    const gasses = isSealed(context.battery)
      ? "a sealed battery vents gas at that voltage, and what it loses cannot be put back"
      : "a battery gasses at that voltage";
    const heldV = longest.stage.voltageEndV ?? 0;
    const why = [
      `${longest.recording.id}, lines ${longest.stage.lines[0]} to ${longest.stage.lines[1]}: ${(heldV / context.battery.cells).toFixed(2)} V a cell for ${longest.hours.toFixed(0)} h`,
    ];
    if (longest.letsGo)
      return {
        verdict: "only after a day",
        weight: "caution",
        sentence: `It held ${heldV.toFixed(2)} V for ${(longest.hours / 24).toFixed(1)} days before it let go; ${gasses}.`,
        why,
        wouldSettle: null,
        figures,
        doubts: [],
      };
    return {
      verdict: "no",
      weight: "bad",
      sentence: `It held ${heldV.toFixed(2)} V for ${(longest.hours / 24).toFixed(1)} days and was not seen to let go; ${gasses}.`,
      why,
      wouldSettle: null,
      figures,
      doubts: [],
    };
  },
};

/** Whether the charger itself then lowers its voltage or stops; current that goes because somebody took the clamps off is no letting go. */
function letsGoAfter(later: readonly Stage[], endedByCharger: boolean): boolean {
  const [next, afterNext] = later;
  const goesOn = afterNext !== undefined && !isOffBattery(afterNext);
  return next?.kind === "float" || (next?.kind === "rest" && (endedByCharger || goesOn));
}
