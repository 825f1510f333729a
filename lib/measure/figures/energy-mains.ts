import { standardUncertaintyOf } from "../../units/uncertainty.ts";
import { type FigureDefinition, notMeasured } from "../define.ts";
import { countedOnce, energyOfAll } from "../integrals.ts";
import { evidenceOf } from "../recording.ts";
import { evidenceOfCell, isSealed, type TestContext } from "../test-context.ts";
import { chargeUnrecorded } from "./charge-unrecorded.ts";

export const energyMains: FigureDefinition<TestContext> = {
  id: "energy-mains",
  label: "Energy from the mains",
  unit: "kWh",
  version: 1,
  explain:
    "From the energy meter's readings where it was read at two visits; else the energy that went into the battery over the stated efficiency: what was recorded, and what the density says went in unrecorded.",
  formula: "E_last − E_first, or (W_recorded + U · Q_unrecorded) / η",
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
      .filter((recording) => recording.trace.hasCurrent && recording.trace.hasVoltage && recording.trace.elapsedS.length > 1);
    if (recordings.length === 0)
      return notMeasured("not measured", "no energy meter was read and no energy was recorded", [context.recordEvidence]);
    const { value: energyWh } = energyOfAll(countedOnce(recordings));
    const { low, high } = context.rules.chargerEfficiency;
    const unrecorded = unrecordedWh(context);
    return {
      value: (energyWh + unrecorded.value) / 1000 / ((low + high) / 2),
      interval: { low: (energyWh + unrecorded.low) / 1000 / high, high: (energyWh + unrecorded.high) / 1000 / low },
      basis: "projected",
      evidence: recordings.map((recording) => evidenceOf(recording)),
      doubts: ["no energy meter was read: energy at the battery over a stated efficiency", ...unrecorded.doubts],
    };
  },
};

/** Volts for each nominal volt at which unrecorded charge is taken to have gone in: 13.8 V of 12 V, between bulk and limit. */
const chargingVPerNominalV = 1.15;

/** Energy of the charge that nobody recorded, Wh: nothing where none shows, and a doubt where it cannot be told. */
function unrecordedWh(context: TestContext): { value: number; low: number; high: number; doubts: string[] } {
  const charge = chargeUnrecorded.compute(context);
  const voltageV = chargingVPerNominalV * context.battery.nominalVoltageV;
  if (!("absent" in charge)) {
    const low = charge.interval?.low ?? charge.value;
    const high = charge.interval?.high ?? charge.value;
    return { value: charge.value * voltageV, low: low * voltageV, high: high * voltageV, doubts: [] };
  }
  const doubts = charge.absent === "not applicable" && !isSealed(context.battery) ? [] : ["hours that were not recorded are left out"];
  return { value: 0, low: 0, high: 0, doubts };
}
