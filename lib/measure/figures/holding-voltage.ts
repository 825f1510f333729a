import { standardUncertaintyOf } from "../../units/uncertainty.ts";
import { type FigureDefinition, notMeasured } from "../define.ts";
import { hoursOf, lastHeldReading, lastLongHold } from "../long-hold.ts";
import { evidenceOf } from "../recording.ts";
import { evidenceOfCell, type TestContext } from "../test-context.ts";
import { uncertaintyOfReading } from "../uncertainty-of-reading.ts";
import { missingAccuracy } from "./shared-doubts.ts";

export const holdingVoltage: FigureDefinition<TestContext> = {
  id: "holding-voltage",
  label: "Voltage held for long",
  unit: "V",
  version: 1,
  explain:
    "What the charger holds when it is left on: the voltage at the end of the last float that was recorded, or of a limit held for a day or more; where neither was recorded, what a voltmeter read at a visit with the charger connected for a day or more.",
  formula: null,
  source: "Our definition.",
  checkedBy: ["Float voltages of an open field log (17 Ah battery)"],
  compute: (context) => {
    const hold = lastLongHold(context);
    const value = hold?.stage.voltageEndV;
    if (hold !== undefined && value !== null && value !== undefined)
      return {
        value,
        standardUncertainty: uncertaintyOfReading(hold.recording, "voltage", value),
        evidence: [{ ...evidenceOf(hold.recording), lines: hold.stage.lines }],
        doubts: [
          ...missingAccuracy([hold.recording], "voltage"),
          ...(hoursOf(hold.stage) < 0.5 ? ["less than half an hour of it was recorded"] : []),
        ],
      };
    const reading = lastHeldReading(context);
    const readV = reading?.values.terminal_V?.value;
    if (reading !== undefined && readV !== undefined) {
      const accuracy = context.instruments.voltmeter?.measures?.voltage;
      return {
        value: readV,
        standardUncertainty: accuracy === undefined ? undefined : standardUncertaintyOf(accuracy, readV),
        evidence: evidenceOfCell(context, reading, "terminal_V"),
        doubts: ["one reading at a visit, not a recording"],
      };
    }
    const recordings = context.connections.flatMap((connection) => connection.recordings);
    return notMeasured(
      "not recorded",
      "no recording reaches a float or a day at the limit, and no voltmeter was read with the charger connected for a day",
      recordings.map((recording) => evidenceOf(recording)),
    );
  },
};
