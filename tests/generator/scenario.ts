/** A scenario: a battery, a charger, instruments, and what the person at the bench does, hour by hour. */
import type { ReadingColumn } from "../../lib/nouns/reading.ts";
import type { BatteryModel } from "./battery.ts";
import type { ChargerModel } from "./charger.ts";
import type { Channel, Mishaps, RecorderModel } from "./recorder.ts";

export type Hydrometer = {
  /** Which density its scale shows; the names of lib/nouns/instrument.ts. */
  readonly scale: "kg/l at 25 °C" | "SG 20/20 °C";
  readonly correctsTemperature: boolean;
  readonly channel: Channel;
};

export type BenchInstruments = {
  readonly hydrometer?: Hydrometer;
  readonly voltmeter: Channel;
  readonly clampMeter: Channel;
  readonly thermometer: Channel;
  readonly batteryTester: Channel;
  /** What the mains energy meter shows before the test, and its step. */
  readonly energyMeter?: { readonly startKWh: number; readonly resolution: number };
};

export type Visit = {
  readonly reads: readonly ReadingColumn[];
  /** Acid bubbled or the battery tilted before reading. */
  readonly mixed?: boolean;
  readonly note?: string;
};

export type PlannedRecording = {
  readonly file: string;
  readonly recorder: RecorderModel;
  /** Hours from clamps on; the person presses stop at `untilH`, else it runs until its rule or the end of the connection. */
  readonly fromH?: number;
  readonly untilH?: number;
  readonly mishaps?: Mishaps;
};

export type PlanStep =
  | ({ readonly do: "visit" } & Visit)
  | { readonly do: "rest"; readonly hours: number }
  | {
      readonly do: "connect";
      /** Whole minutes, from clamps on to clamps off. */
      readonly hours: number;
      readonly recordings: readonly PlannedRecording[];
      /** Readings with the charger still connected. */
      readonly visits?: readonly (Visit & { readonly atH: number })[];
      readonly mainsOff?: { readonly fromH: number; readonly toH: number };
    };

export type Scenario = {
  readonly id: string;
  /** Bench time at the first event, without a zone, and the bench's offset from UTC then. */
  readonly startLocal: string;
  readonly offsetMin: number;
  readonly battery: BatteryModel;
  readonly storedAh: number;
  /** How much weaker than the mean the upper acid is at the start, as a mass fraction. */
  readonly upperDeficit: number;
  /** Each cell's own deviation of density, kg/l; its length is the number of cells. */
  readonly cellDeviations: readonly number[];
  readonly charger: ChargerModel;
  readonly instruments: BenchInstruments;
  readonly air: { readonly meanC: number; readonly swingC: number };
  readonly csv: { readonly delimiter: "," | ";"; readonly decimalMark: "." | ","; readonly zoned: boolean };
  readonly plan: readonly PlanStep[];
};
