import { chargeNeeded } from "../charge-needed.ts";
import { type FigureDefinition, notMeasured } from "../define.ts";
import type { TestContext } from "../test-context.ts";

export const chargeRequired: FigureDefinition<TestContext> = {
  id: "charge-required",
  label: "Charge that the density says went in",
  unit: "Ah",
  version: 1,
  explain:
    "What must have been charged to bring the acid from the first density read to the last: each ampere-hour sets free 3.66 g of acid in each cell and takes 0.67 g of water. It needs the mass of acid, given or estimated from capacity with a wide interval.",
  formula: "w₁ = (w₀ m₀ + 3.6595 g/Ah · Q)/(m₀ + 2.9873 g/Ah · Q), solved for Q",
  source: "Faraday's law, CODATA constants; acid density after Myhre 1998.",
  checkedBy: ["W001 to W004 and W060"],
  compute: (context) => {
    const needed = chargeNeeded(context);
    return "why" in needed ? notMeasured(needed.absent, needed.why, [context.recordEvidence]) : needed;
  },
};
