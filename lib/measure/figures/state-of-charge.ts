import type { Evidence } from "../../nouns/evidence.ts";
import type { ReadingColumn } from "../../nouns/reading.ts";
import { type FigureDefinition, notMeasured } from "../define.ts";
import { evidenceOfCell, type TestContext } from "../test-context.ts";
import { examinationOf } from "../witnesses.ts";

export const stateOfCharge: FigureDefinition<TestContext> = {
  id: "state-of-charge",
  label: "How full the battery was at the last visit",
  unit: "%",
  version: 1,
  explain:
    "Charge held over what this battery really holds, by density, rest voltage, recorded charge and cranking current together. One witness alone misleads: the hydrometer dips into the top of the cell, and rest voltage carries surface charge.",
  formula: "median and 95 % interval of the cross-examination's posterior",
  source: "docs/reconciliation.md.",
  checkedBy: ["Generated campaigns with a known truth", "Simulation-based calibration (Talts et al. 2018)"],
  compute: (context) => {
    const examination = examinationOf(context);
    if (!examination.examined) return notMeasured("cannot tell", examination.why, [context.recordEvidence]);
    const last = examination.visits.at(-1);
    if (last === undefined) return notMeasured("not measured", "no visit was made", [context.recordEvidence]);
    const { value, low95, high95 } = last.stateOfCharge;
    return {
      value: 100 * value,
      interval: { low: 100 * low95, high: 100 * high95 },
      evidence: evidenceOfVisits(context),
      doubts: ["a model weighs the readings; its assumptions stand with the cross-examination"],
    };
  },
};

/** Where the readings stand that the cross-examination heard. */
export function evidenceOfVisits(context: TestContext): Evidence[] {
  const heard: readonly ReadingColumn[] = ["rest_V", "cranking_A"];
  return context.readings.flatMap((reading) => [
    ...(reading.density?.evidence ?? []),
    ...heard.flatMap((column) => evidenceOfCell(context, reading, column)),
  ]);
}
