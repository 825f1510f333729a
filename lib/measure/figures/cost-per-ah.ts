import { costFigure } from "../cost-of-result.ts";
import type { FigureDefinition } from "../define.ts";
import type { TestContext } from "../test-context.ts";

export const costPerAh: FigureDefinition<TestContext> = {
  id: "cost-per-ah",
  label: "Cost per ampere-hour put back",
  unit: (context) => context.charger.price?.currency ?? "",
  version: 1,
  explain: "The cost per result over the charge that the density says went in.",
  formula: "cost per result / Q_density",
  source:
    "Our definition: no standard defines it. Intervals: each input moved alone, root of the sum of squares on either side (JCGM 100, 5.1.2).",
  checkedBy: ["Worked by hand in a small test record"],
  compute: (context) => costFigure(context, ({ perAh }) => perAh, "the charge put back is not known"),
};
