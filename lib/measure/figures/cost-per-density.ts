import { costFigure } from "../cost-of-result.ts";
import type { FigureDefinition } from "../define.ts";
import type { TestContext } from "../test-context.ts";

export const costPerDensity: FigureDefinition<TestContext> = {
  id: "cost-per-density",
  label: "Cost per 0.01 kg/l gained",
  unit: (context) => context.charger.price?.currency ?? "",
  version: 1,
  explain: "The cost per result over the density gained, in hundredths of a kilogram a litre.",
  formula: "cost per result / (d_last − d_first) · 0.01 kg/l",
  source:
    "Our definition: no standard defines it. Intervals: each input moved alone, root of the sum of squares on either side (JCGM 100, 5.1.2).",
  checkedBy: ["Worked by hand in a small test record"],
  compute: (context) => costFigure(context, ({ perHundredthKgPerL }) => perHundredthKgPerL, "no density was gained"),
};
