import { type FigureDefinition, notMeasured } from "../define.ts";
import { evidenceOf } from "../recording.ts";
import type { TestContext } from "../test-context.ts";
import { examinationOf } from "../witnesses.ts";
import { evidenceOfVisits } from "./state-of-charge.ts";

export const chargeTaken: FigureDefinition<TestContext> = {
  id: "charge-taken",
  label: "Charge that the plates really took",
  unit: "Ah",
  version: 1,
  explain:
    "From the first to the last visit, by density, rest voltage, recorded charge and cranking current together. Charge that went into gas is not in it, charge that nobody recorded is.",
  formula: "median and 95 % interval of the cross-examination's posterior",
  source: "docs/reconciliation.md.",
  checkedBy: ["Generated campaigns with a known truth", "Simulation-based calibration (Talts et al. 2018)"],
  compute: (context) => {
    const examination = examinationOf(context);
    if (!examination.examined) return notMeasured("cannot tell", examination.why, [context.recordEvidence]);
    const { value, low95, high95 } = examination.takenAh;
    return {
      value,
      interval: { low: low95, high: high95 },
      evidence: [
        ...evidenceOfVisits(context),
        ...context.connections.flatMap((connection) => connection.recordings.map((recording) => evidenceOf(recording))),
      ],
      doubts: ["a model weighs the readings; its assumptions stand with the cross-examination"],
    };
  },
};
