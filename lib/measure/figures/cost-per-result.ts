import { costFigure } from "../cost-of-result.ts";
import type { FigureDefinition } from "../define.ts";
import type { TestContext } from "../test-context.ts";

export const costPerResult: FigureDefinition<TestContext> = {
  id: "cost-per-result",
  label: "Cost per result",
  unit: (context) => context.charger.price?.currency ?? "",
  version: 2,
  explain:
    "What it costs to bring this battery to its target once: the purchase spread over its uses, energy from the mains, what the charger takes beside it, and the owner's time where the site values it.",
  formula: "price / uses + (E_mains + E_standby) · price per kWh + visits",
  source:
    "Our definition: no standard defines it. Intervals: each input moved alone, root of the sum of squares on either side (JCGM 100, 5.1.2).",
  checkedBy: ["Worked by hand in a small test record"],
  compute: (context) => costFigure(context, ({ perResult }) => perResult, "no cost could be made"),
};
