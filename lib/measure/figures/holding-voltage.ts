import { type FigureDefinition, notMeasured } from "../define.ts";
import { evidenceOf } from "../recording.ts";
import type { TestContext } from "../test-context.ts";
import { uncertaintyOfReading } from "../uncertainty-of-reading.ts";
import { missingAccuracy } from "./shared-doubts.ts";

export const holdingVoltage: FigureDefinition<TestContext> = {
  id: "holding-voltage",
  label: "Voltage held at the end",
  unit: "V",
  version: 1,
  explain:
    "Mean voltage of the last float that was recorded or, where no float was seen, what the voltmeter read with the charger connected at the last visit.",
  formula: null,
  source: "Our definition.",
  checkedBy: ["Float voltages of an open field log (17 Ah battery)"],
  compute: (context) => {
    const recordings = context.connections.flatMap((connection) => connection.recordings);
    for (const recording of [...recordings].reverse()) {
      const stage = recording.stages.findLast((candidate) => candidate.kind === "float");
      if (stage === undefined || stage.voltageEndV === null) continue;
      return {
        value: stage.voltageEndV,
        standardUncertainty: uncertaintyOfReading(recording, "voltage", stage.voltageEndV),
        evidence: [{ ...evidenceOf(recording), lines: stage.lines }],
        doubts: [
          ...missingAccuracy([recording], "voltage"),
          ...(stage.endS - stage.startS < 1800 ? ["less than half an hour of it was recorded"] : []),
        ],
      };
    }
    return notMeasured(
      "not recorded",
      "no recording reaches a float",
      recordings.map((recording) => evidenceOf(recording)),
    );
  },
};
