/** Axes, legends, and the sentences that stand for charts. */
import { oneOrMany } from "../plural.ts";

export const charts = {
  hoursFromFirstEvent: "Hours from the first event",
  hoursFromFirstRow: "Hours from the recording's first row",
  densityAxis: "Density at 25 °C, kg/l",
  voltageAxis: "Voltage, V",
  currentAxis: "Current, A",
  target: (density: string) => `target ${density} kg/l`,
  densitySentence: (ends: readonly string[], target: string | null) =>
    `Acid density over time. ${ends.join("; ")}. ${target === null ? "No target was set." : `The target is ${target} kg/l.`}`,
  densityEnds: (label: string, first: string, firstAt: string, last: string, lastAt: string) =>
    `${label}: ${first} at ${firstAt}, ${last} at ${lastAt}`,
  stageFor: (number: number, stage: string, length: string) => `${number} ${stage} for ${length}`,
  profileSentence: (recording: string, stages: readonly string[], gaps: number, ending: string) =>
    `Voltage and current over time in ${recording}. Stages: ${stages.join("; ") || "none found"}. ${gaps === 0 ? "no gaps" : `${gaps} ${oneOrMany(gaps, "gap", "gaps")}`}. Recording ended by: ${ending}.`,
  witnesses: {
    density: "Density",
    "rest-voltage": "Rest voltage",
    "charge-balance": "Charge balance",
    cranking: "Cranking current",
  },
  together: "All together",
  visit: (number: number) => `visit ${number}`,
  nothingExamined: "Nothing was examined.",
  witnessesSentence: (visits: number, low: string, high: string) =>
    `How full the battery was at ${visits} ${oneOrMany(visits, "visit", "visits")}, by each witness and by all together; at the last, all together say ${low} to ${high} %.`,
};
