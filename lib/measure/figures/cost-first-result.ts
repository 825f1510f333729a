import { costFigure } from "../cost-of-result.ts";
import type { FigureDefinition } from "../define.ts";
import type { TestContext } from "../test-context.ts";

export const costFirstResult: FigureDefinition<TestContext> = {
  id: "cost-first-result",
  label: "Cost of the first result",
  unit: (context) => context.charger.price?.currency ?? "",
  version: 1,
  explain: "The same with the whole purchase on the first result: what a buyer pays who needs it once.",
  formula: "price + (E_mains + E_standby) · price per kWh + visits",
  source:
    "Our definition: no standard defines it. Intervals: each input moved alone, root of the sum of squares on either side (JCGM 100, 5.1.2).",
  checkedBy: ["Worked by hand in a small test record"],
  compute: (context) => costFigure(context, ({ firstResult }) => firstResult, "no cost could be made"),
};
