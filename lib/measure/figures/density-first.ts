import { type FigureDefinition, notMeasured } from "../define.ts";
import { isSealed, type TestContext } from "../test-context.ts";

export const densityFirst: FigureDefinition<TestContext> = {
  id: "density-first",
  label: "Density at the first visit",
  unit: "kg/l",
  version: 1,
  explain:
    "Mean of the cells read at the first visit with a density, at 25 °C. A hydrometer dips into the top of the cell; see the findings for stratified acid.",
  formula: "ρ₂₅ through the acid's own strength: w(ρ, ϑ) → ρ(w, 25 °C)",
  source: "Myhre, Nielsen and Saastad, J. Chem. Eng. Data 43 (1998) 617; conventions of the scale kept apart.",
  checkedBy: ["Density tables of five sources", "W032, W033 and W040 to W043"],
  compute: (context) => {
    if (isSealed(context.battery)) return notMeasured("not applicable", "the battery is sealed, so its density cannot be read");
    const reading = context.readings.find((reading) => reading.density !== undefined);
    if (reading?.density === undefined) return notMeasured("not measured", "no density was read", [context.recordEvidence]);
    const { meanAt25C, standardUncertainty, evidence, doubts } = reading.density;
    return { value: meanAt25C, standardUncertainty, evidence, doubts };
  },
};
