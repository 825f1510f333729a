import { standardUncertaintyOf } from "../../units/uncertainty.ts";
import { type FigureDefinition, notMeasured } from "../define.ts";
import { addAmounts, energyOf } from "../integrals.ts";
import { evidenceOf } from "../recording.ts";
import { evidenceOfCell, type TestContext } from "../test-context.ts";

export const energyMains: FigureDefinition<TestContext> = {
  id: "energy-mains",
  label: "Energy from the mains",
  unit: "kWh",
  version: 1,
  explain:
    "From the energy meter's readings where it was read at two visits; else the energy recorded at the battery over the stated efficiency, which leaves out what was not recorded.",
  formula: "E_last − E_first, or W_recorded / η",
  source: "Definition; the efficiency is a stated rule with bounds.",
  checkedBy: ["Small invented test records"],
  compute: (context) => {
    const read = context.readings.filter((reading) => reading.values.mains_kWh !== undefined);
    const first = read[0]?.values.mains_kWh;
    const last = read.at(-1)?.values.mains_kWh;
    if (first !== undefined && last !== undefined && read.length > 1) {
      const accuracy = context.instruments.energyMeter?.measures?.energy;
      const value = last.value - first.value;
      return {
        value,
        standardUncertainty: accuracy === undefined ? undefined : standardUncertaintyOf(accuracy, value),
        evidence: [
          ...evidenceOfCell(context, read[0] as (typeof read)[number], "mains_kWh"),
          ...evidenceOfCell(context, read.at(-1) as (typeof read)[number], "mains_kWh"),
        ],
      };
    }
    const recordings = context.connections
      .flatMap((connection) => connection.recordings)
      .filter((recording) => recording.trace.hasCurrent && recording.trace.hasVoltage);
    if (recordings.length === 0)
      return notMeasured("not measured", "no energy meter was read and no energy was recorded", [context.recordEvidence]);
    const { value: energyWh } = addAmounts(
      recordings.map((recording) => ({ ...energyOf(recording), meter: recording.recorderId ?? recording.id })),
    );
    const { low, high } = context.rules.chargerEfficiency;
    return {
      value: energyWh / 1000 / ((low + high) / 2),
      interval: { low: energyWh / 1000 / high, high: energyWh / 1000 / low },
      basis: "projected",
      evidence: recordings.map((recording) => evidenceOf(recording)),
      doubts: ["no energy meter was read: recorded energy over a stated efficiency, and unrecorded hours are left out"],
    };
  },
};
