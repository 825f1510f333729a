import { designGassingMAPerAh, ventilationAirFlowM3PerH, ventilationOpeningCm2 } from "../../electrochem/ventilation.ts";
import type { Evidence } from "../../nouns/evidence.ts";
import type { StageKind } from "../../nouns/stage.ts";
import { standardUncertaintyOf } from "../../units/uncertainty.ts";
import { type FigureDefinition, notMeasured } from "../define.ts";
import { highestHeld } from "../held-voltage.ts";
import { evidenceOf } from "../recording.ts";
import { evidenceOfCell, isSealed, type TestContext } from "../test-context.ts";

/** The voltages a cell up to which a float counts as one, and beyond which the standard's design current is not meant, V; our rule. */
const floatUpToV = 2.3;
const designedUpToV = 2.4;

export const ventilationNeed: FigureDefinition<TestContext> = {
  id: "ventilation-need",
  label: "Fresh air asked for while charging",
  unit: "m³/h",
  version: 1,
  explain:
    "Air flow that keeps hydrogen well under 4 %, for this one battery with this charger: cells times capacity times the design gassing current of IEC 62485-2, 5 mA per Ah on float and 20 above it for vented batteries, 1 and 8 for sealed ones. Which of the two follows from the highest voltage that was held; up to 2.30 V a cell, the top of usual float windows, counts as float, the meter's error on the safe side. A design value with the standard's own margin, so it carries no interval. Local codes, the battery's maker and licensed practice decide; this figure allows nothing.",
  formula: "Q = 0.05 · cells · I_gas · C / 1000",
  source: "IEC 62485-2 as given on public pages; where float ends is our rule.",
  checkedBy: ["W011: 0.36 m³/h for 6 cells, 20 mA/Ah and 60 Ah", "W012: openings of 10.08 cm² for it"],
  compute: (context) => {
    const { cells, capacityAh, capacityRateH } = context.battery;
    const gassing = designGassingMAPerAh[isSealed(context.battery) ? "valve-regulated" : "vented"];
    const held = highestVoltage(context);
    if (held === undefined)
      return notMeasured(
        "not recorded",
        `no voltage that the charger holds was recorded or read; until it is, count with the higher design current, ${ventilationAirFlowM3PerH(cells, gassing.boost, capacityAh).toFixed(2)} m³/h`,
        [context.recordEvidence],
      );
    const perCellV = held.voltageV / cells;
    // On the safe side: a voltage that may be above float, by the meter's error, counts as above it.
    const isFloat = (held.voltageV + context.rules.coverageFactor * (held.standardUncertainty ?? 0)) / cells <= floatUpToV;
    const airFlow = ventilationAirFlowM3PerH(cells, isFloat ? gassing.float : gassing.boost, capacityAh);
    return {
      value: airFlow,
      basis: "projected",
      evidence: held.evidence,
      doubts: [
        "local codes, the battery's maker and licensed practice decide; hydrogen explodes from 4 % in air",
        `${held.words}, ${perCellV.toFixed(2)} V a cell, calls for ${isFloat ? "the float" : "the higher"} design current of ${isFloat ? gassing.float : gassing.boost} mA per Ah, up to 40 °C`,
        `by nature alone it takes two openings of ${ventilationOpeningCm2(airFlow).toFixed(0)} cm² each, one low and one high (IEC 62485-3)`,
        ...(perCellV > designedUpToV + 0.02
          ? [
              `above 2.40 V a cell the standard's design current is not meant: more gas can come, and more air may be needed${allGasWords(held.currentA, cells)}`,
            ]
          : []),
        ...(capacityRateH === 10
          ? []
          : [`the standard means the capacity over 10 h; over ${capacityRateH} h, as rated here, it is the larger one`]),
      ],
    };
  },
};

/** Stages in which no charge goes in. An unregulated charger holds no limit, so the end of any other stage counts. */
const withoutCharge: ReadonlySet<StageKind> = new Set(["rest", "interrupted", "discharge", "no-battery", "reversed", "unexplained"]);

type HighestVoltage = {
  readonly voltageV: number;
  readonly standardUncertainty: number | undefined;
  /** Current that flowed at it, where read. */
  readonly currentA: number | undefined;
  readonly words: string;
  readonly evidence: readonly Evidence[];
};

/** The highest voltage at the end of a charging stage of ten minutes or more, in any recording or, without one, read at a visit with the charger connected. */
function highestVoltage(context: TestContext): HighestVoltage | undefined {
  const recordings = context.connections.flatMap((connection) => connection.recordings);
  const held = recordings
    .flatMap((recording) => highestHeld(recording, ({ kind }) => !withoutCharge.has(kind)) ?? [])
    .sort((a, b) => b.valueV - a.valueV)[0];
  if (held !== undefined)
    return {
      voltageV: held.valueV,
      standardUncertainty: held.standardUncertainty,
      currentA: held.stage.currentEndA ?? undefined,
      words: `${held.valueV.toFixed(2)} V, the highest at the end of a stage (${held.recording.id})`,
      evidence: [{ ...evidenceOf(held.recording), lines: held.stage.lines }],
    };
  const read = context.readings
    .filter((reading) => reading.values.terminal_V !== undefined && reading.charger !== "disconnected")
    .sort((a, b) => (b.values.terminal_V?.value ?? 0) - (a.values.terminal_V?.value ?? 0))[0];
  const readV = read?.values.terminal_V?.value;
  const accuracy = context.instruments.voltmeter?.measures?.voltage;
  return read === undefined || readV === undefined
    ? undefined
    : {
        voltageV: readV,
        standardUncertainty: accuracy === undefined ? undefined : standardUncertaintyOf(accuracy, readV),
        currentA: read.values.clamp_A?.value,
        words: `${readV.toFixed(2)} V, read at visit ${read.number} with the charger connected`,
        evidence: evidenceOfCell(context, read, "terminal_V"),
      };
}

/** The air that the current at that voltage would ask for, were all of it gas: the most there can be. */
function allGasWords(currentA: number | undefined, cells: number): string {
  if (currentA === undefined || currentA <= 0) return "";
  const airFlow = ventilationAirFlowM3PerH(cells, 1000 * currentA, 1);
  return `; were all of the ${currentA.toFixed(2)} A that flowed there gas, ${airFlow.toFixed(2)} m³/h with the same margin`;
}
