import { densityFromRestVoltage } from "../../electrochem/rest-voltage.ts";
import { isSealed } from "../../measure/test-context.ts";
import type { FindingDefinition } from "../define-finding.ts";

/** Hours of rest after which a rest voltage may be turned into a density: vehicle manuals want 2 to 4, standards 24. */
const leastRestH = 4;
/** Disagreement that is a finding and no noise, kg/l. */
const clearDifference = 0.02;

export const densityAgainstVoltage: FindingDefinition = {
  id: "density-against-voltage",
  subject: "Do density and rest voltage agree?",
  explain:
    "Rest voltage follows the acid at the plates; the hydrometer dips into the top of the cell. Where the voltage says full and the hydrometer does not, heavy acid lies below, or the surface charge has not rested off.",
  source: "Bode's polynomial (six digits from memory, checked against two other routes); 0.020 as the limit is our rule.",
  checkedBy: ["W044 to W058"],
  judge(context) {
    if (isSealed(context.battery)) return undefined;
    const compared = context.readings.flatMap((reading) => {
      const restV = reading.values.rest_V?.value;
      if (restV === undefined || reading.density === undefined) return [];
      const restH = reading.values.rest_h?.value;
      const temperatureC = reading.values.battery_C?.value ?? reading.values.acid_C?.value;
      const byVoltage = densityFromRestVoltage(restV, context.battery.cells, temperatureC);
      return Number.isNaN(byVoltage)
        ? []
        : [{ reading, restH, byVoltage, difference: byVoltage - reading.density.meanAt25C, density: reading.density.meanAt25C }];
    });
    if (compared.length === 0) return undefined;
    const rested = compared.filter(({ restH }) => restH !== undefined && restH >= leastRestH);
    const figures = compared.map(({ reading }) => `reading/${reading.number}#density-at-25c`);
    if (rested.length === 0)
      return {
        verdict: "cannot tell",
        weight: "unsure",
        sentence: "Density and rest voltage cannot be compared: the battery had not rested long enough, or nobody noted for how long.",
        why: [`at least ${leastRestH} h of rest are needed`],
        wouldSettle: "a rest voltage after a night without charge",
        figures,
        doubts: [],
      };
    const worst = rested.reduce((a, b) => (Math.abs(b.difference) > Math.abs(a.difference) ? b : a));
    const why = [
      `visit ${worst.reading.number}: ${worst.reading.values.rest_V?.text ?? ""} V after ${worst.restH} h of rest stands for ${worst.byVoltage.toFixed(3)} kg/l, the hydrometer says ${worst.density.toFixed(3)}`,
    ];
    if (Math.abs(worst.difference) < clearDifference)
      return {
        verdict: "yes",
        weight: "good",
        sentence: "Density and rest voltage tell the same story at every rested visit.",
        why,
        wouldSettle: null,
        figures,
        doubts: [],
      };
    if (worst.difference > 0)
      return {
        verdict: "stratified or not rested",
        weight: "caution",
        sentence:
          "The rest voltage promises more than the hydrometer finds: heavy acid lies at the bottom of the cells, or the surface charge has not rested off.",
        why,
        wouldSettle:
          worst.reading.mixed === true
            ? "a rest voltage after another day"
            : "the density after the acid was mixed, or after some days of rest",
        figures,
        doubts: [],
      };
    return {
      verdict: "density above voltage",
      weight: "caution",
      sentence: "The hydrometer finds more than the rest voltage carries: a cell may be weak, or a reading or its temperature is wrong.",
      why,
      wouldSettle: "the voltage or density of each cell",
      figures,
      doubts: [],
    };
  },
};
