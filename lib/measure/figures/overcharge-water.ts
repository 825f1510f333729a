import { waterElectrolysedG } from "../../electrochem/faraday.ts";
import type { FigureDefinition } from "../define.ts";
import { findOvercharge, inProportion } from "../overcharge.ts";
import type { TestContext } from "../test-context.ts";
import { waterLostWeighed } from "./water-lost-weighed.ts";

export const overchargeWater: FigureDefinition<TestContext> = {
  id: "overcharge-water",
  label: "Water that overcharge can have cost, at most",
  unit: "g",
  version: 1,
  explain:
    "Charge recorded between the first and the last density beyond what the density needs, taken as if all of it had split water: an upper bound for a vented battery. Unrecorded charge is not in it. Weighing is the measurement; this is a plausibility check, and where the battery was weighed, water-lost-weighed counts.",
  formula: "m = 0.336 g/Ah · cells · (Q_recorded − Q_density)",
  source: "Faraday's law; says nothing for sealed batteries, which recombine the gas.",
  checkedBy: ["W005 to W008"],
  compute: (context) => {
    const outcome = inProportion(findOvercharge(context), waterElectrolysedG(1, context.battery.cells));
    const wasWeighed = !("absent" in waterLostWeighed.compute(context));
    return wasWeighed && !("absent" in outcome)
      ? { ...outcome, doubts: [...(outcome.doubts ?? []), "the battery was weighed, and water-lost-weighed counts before this"] }
      : outcome;
  },
};
