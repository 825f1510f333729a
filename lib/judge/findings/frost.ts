import { freezingPointC, frostWarningDensity } from "../../electrochem/freezing.ts";
import type { FindingDefinition } from "../define-finding.ts";

export const frost: FindingDefinition = {
  id: "frost",
  subject: "Could it have frozen?",
  explain: "Weak acid freezes: at 1.15 kg/l near −15 °C, at 1.10 near −8 °C. A frozen battery must not be charged.",
  source: "Freezing points of sulphuric acid, as in service manuals and the CRC Handbook.",
  checkedBy: ["Freezing-point table of the reference pack"],
  judge(context) {
    const weakest = context.readings
      .flatMap((reading) => (reading.density === undefined ? [] : [{ reading, density: reading.density.meanAt25C }]))
      .reduce<{ reading: { number: number }; density: number } | undefined>(
        (lowest, next) => (lowest === undefined || next.density < lowest.density ? next : lowest),
        undefined,
      );
    if (weakest === undefined || weakest.density >= frostWarningDensity) return undefined;
    return {
      verdict: "in hard frost",
      weight: "caution",
      sentence: `At ${weakest.density.toFixed(3)} kg/l this acid freezes at about ${freezingPointC(weakest.density).toFixed(0)} °C. Never charge a frozen battery.`,
      why: [`lowest density read, at visit ${weakest.reading.number}`],
      wouldSettle: null,
      figures: [`reading/${weakest.reading.number}#density-at-25c`],
      doubts: [],
    };
  },
};
