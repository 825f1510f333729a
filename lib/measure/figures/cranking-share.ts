import { standardUncertaintyOf } from "../../units/uncertainty.ts";
import { type FigureDefinition, notMeasured } from "../define.ts";
import { evidenceOfCell, type TestContext } from "../test-context.ts";

export const crankingShare: FigureDefinition<TestContext> = {
  id: "cranking-share",
  label: "Cranking current at the last visit, of its rating",
  unit: "%",
  version: 1,
  explain:
    "The tester's figure over the battery's rating, only where both are in the same standard: figures of different standards do not convert.",
  formula: "I_read / I_rated",
  source: "EN 50342-1, SAE J537 and others test differently; see docs/electrochemistry.md.",
  checkedBy: ["Worked by hand in a small test record"],
  compute: (context) => {
    const rating = context.battery.crankingRating;
    const tester = context.instruments.batteryTester;
    const reading = context.readings.findLast((candidate) => candidate.values.cranking_A !== undefined);
    const value = reading?.values.cranking_A?.value;
    if (reading === undefined || value === undefined) return notMeasured("not measured", "no cranking current was read");
    const evidence = evidenceOfCell(context, reading, "cranking_A");
    if (rating === undefined) return notMeasured("not stated", "the battery's rating is not stated", evidence);
    if (tester?.cranking === undefined || tester.cranking.standard !== rating.standard || rating.standard === "not stated")
      return notMeasured(
        "cannot tell",
        `the tester reads ${tester?.cranking?.standard ?? "an unstated standard"}, the rating is ${rating.standard}; they do not convert`,
        evidence,
      );
    const accuracy = tester.measures?.crankingCurrent;
    return {
      value: (100 * value) / rating.currentA,
      standardUncertainty: accuracy === undefined ? undefined : (100 * standardUncertaintyOf(accuracy, value)) / rating.currentA,
      evidence,
      doubts: tester.cranking.method === "conductance" ? ["estimated from conductance, not under load"] : [],
    };
  },
};
