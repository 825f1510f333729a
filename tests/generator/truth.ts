/** What the generator knows and the tool has to find out: truth/<test>.json. */
import type { Ender, StageKind } from "../../lib/nouns/stage.ts";

export type StageTruth = {
  readonly kind: StageKind;
  /** The current that the charger allowed itself, before the sag of warming; with constant current only. */
  readonly limitA?: number;
  /** Seconds of true time from the recording's first row. */
  readonly startS: number;
  readonly endS: number;
  /** Charge and energy at the posts within it. */
  readonly chargeAh: number;
  readonly energyWh: number;
};

export type RecordingTruth = {
  readonly file: string;
  readonly connection: number;
  readonly startAt: string;
  /** First to last row in true time; the recorder's clock may say otherwise. */
  readonly spanS: number;
  readonly rows: number;
  /** At the posts over the span, integrated second by second. */
  readonly chargeAh: number;
  readonly energyWh: number;
  /** The same without what passed in gaps. */
  readonly chargeWithoutGapsAh: number;
  readonly energyWithoutGapsWh: number;
  /** The same again as this very device shows it, with its own gain, offset and leads; noise and steps left out. */
  readonly shownChargeAh: number;
  readonly shownEnergyWh: number;
  readonly gaps: readonly { readonly startS: number; readonly endS: number; readonly chargeAh: number }[];
  readonly clockBackS: number;
  readonly highestVoltageV: number;
  readonly highestCurrentA: number;
  readonly stages: readonly StageTruth[];
  /** Why the rows end: the charger had switched off inside the recording, the recorder's rule, a person, or the mains. */
  readonly endedBy: Ender;
  /** Who stopped the rows, whatever the charger did. */
  readonly rowsEndedBy: Ender;
  /** Whether the charger was still charging, or would go on after a pause, when the last row was written. */
  readonly chargerWorkedOn: boolean;
};

export type ConnectionTruth = {
  readonly number: number;
  readonly on: string;
  readonly off: string;
  readonly chargeAh: number;
  readonly energyWh: number;
  /** The shares of that charge: kept by the plates, and spent on splitting water. */
  readonly reactedAh: number;
  readonly gassedAh: number;
  readonly mainsKWh: number;
  readonly stages: readonly StageTruth[];
};

export type VisitTruth = {
  readonly number: number;
  readonly at: string;
  readonly stateOfCharge: number;
  readonly storedAh: number;
  /** kg/l at 25 °C: the layer that a hydrometer reaches, and the whole cell. */
  readonly upperDensityAt25C: number;
  readonly meanDensityAt25C: number;
  readonly acidC: number;
  /** At the posts now, and after endless rest. */
  readonly terminalV: number;
  readonly relaxedV: number;
  readonly currentA: number;
};

export type TestTruth = {
  readonly test: string;
  readonly seed: number;
  readonly startAt: string;
  readonly battery: {
    readonly capacityAh: number;
    readonly cells: number;
    readonly fullDensityAt25C: number;
    readonly electrolyteFullG: number;
    readonly startStoredAh: number;
    readonly endStoredAh: number;
  };
  readonly chargeAh: number;
  readonly reactedAh: number;
  readonly gassedAh: number;
  /** Grams of one cell at the test's start and end, for the balance. */
  readonly acidStartG: number;
  readonly acidEndG: number;
  readonly waterStartG: number;
  readonly waterEndG: number;
  readonly connections: readonly ConnectionTruth[];
  readonly recordings: readonly RecordingTruth[];
  readonly visits: readonly VisitTruth[];
};

/** Returns a value with so many decimals: truth files should differ only where something did. */
export function roundTruth(value: number, decimals: number): number {
  return Number(value.toFixed(decimals));
}
