/** What a person reads at a visit, and the readings.csv that it is noted in. */
import type { ReadingColumn } from "../../lib/nouns/reading.ts";
import { acidDensity } from "./acid.ts";
import { type BatteryModel, type BatteryState, massFractions } from "./battery.ts";
import type { Random } from "./random.ts";
import { measure, roundTo } from "./recorder.ts";
import type { Scenario, Visit } from "./scenario.ts";

export type NotedVisit = {
  /** Seconds from the scenario's start. */
  readonly atS: number;
  readonly values: Readonly<Partial<Record<ReadingColumn, number>>>;
  readonly mixed: boolean | undefined;
  readonly charger: "connected" | "disconnected";
  readonly note: string | undefined;
};

export type Arrival = {
  readonly atS: number;
  readonly restS: number;
  readonly currentA: number;
  readonly connected: boolean;
  readonly mainsKWh: number;
  readonly airC: number;
};

/** Density of water in kg/l at 20 °C, to which the scale of a 20/20 hydrometer is cut (from memory). */
const waterDensityAt20C = 0.998204;

/** Decimals with which each value is noted. */
const decimals: Partial<Record<ReadingColumn, number>> = {
  acid_C: 0,
  battery_C: 0,
  air_C: 0,
  rest_h: 1,
  rest_V: 2,
  terminal_V: 2,
  clamp_A: 2,
  cranking_A: 0,
  mains_kWh: 2,
};

/** Returns the values that a visit notes: true ones seen through the bench's instruments. */
export function readVisit(scenario: Scenario, state: BatteryState, visit: Visit, arrival: Arrival, random: Random): NotedVisit {
  const values: Partial<Record<ReadingColumn, number>> = {};
  for (const column of visit.reads) {
    const value = readColumn(column, scenario, state, arrival, random);
    if (value !== undefined) values[column] = value;
  }
  return {
    atS: arrival.atS,
    values,
    mixed: visit.mixed,
    charger: arrival.connected ? "connected" : "disconnected",
    note: visit.note,
  };
}

/**
 * Returns the current that a battery tester would show, in amperes: the rating, less what this battery has lost for good, less what
 * its acid lacks. Linear in state of charge from 45 % of the full value; invented, in the range that conductance testers show.
 */
export function crankingCurrent(model: BatteryModel, state: BatteryState): number {
  const filled = Math.min(1, Math.max(0, state.storedAh / model.capacityAh));
  return model.crankingA * model.crankingHealth * (0.45 + 0.55 * filled);
}

/** Returns readings.csv as text: one row a visit, with the columns that any visit of the scenario used. */
export function writeReadings(scenario: Scenario, visits: readonly NotedVisit[]): string {
  const { delimiter, decimalMark, zoned } = scenario.csv;
  const columns = columnsOf(visits);
  const someMixed = visits.some((visit) => visit.mixed !== undefined);
  const heading = ["at", ...columns, ...(someMixed ? ["mixed"] : []), "charger", "note"];
  const startMs = Date.parse(`${scenario.startLocal}:00Z`);
  const offset = `${scenario.offsetMin < 0 ? "-" : "+"}${String(Math.abs(scenario.offsetMin) / 60).padStart(2, "0")}:00`;
  const lines = visits.map((visit) => {
    const local = new Date(startMs + visit.atS * 1000).toISOString().slice(0, 16);
    const at = zoned ? `${local}:00${offset}` : local.replace("T", " ");
    const cells = columns.map((column) => {
      const value = visit.values[column];
      return value === undefined ? "" : value.toFixed(decimals[column] ?? 3).replace(".", decimalMark);
    });
    const mixed = visit.mixed === undefined ? "" : visit.mixed ? "yes" : "no";
    return [at, ...cells, ...(someMixed ? [mixed] : []), visit.charger, quote(visit.note ?? "", delimiter)].join(delimiter);
  });
  return [heading.join(delimiter), ...lines].map((line) => `${line}\n`).join("");
}

function columnsOf(visits: readonly NotedVisit[]): ReadingColumn[] {
  const seen = new Set<ReadingColumn>();
  for (const visit of visits) for (const column of Object.keys(visit.values) as ReadingColumn[]) seen.add(column);
  return [...seen].sort((a, b) => columnRank(a) - columnRank(b));
}

const columnOrder = ["density", "acid_C", "battery_C", "air_C", "rest_h", "rest_V", "terminal_V", "clamp_A", "cranking_A", "mains_kWh"];

function columnRank(column: ReadingColumn): number {
  if (column.startsWith("density_")) return Number(column.slice(8)) / 100;
  return columnOrder.indexOf(column);
}

function readColumn(column: ReadingColumn, scenario: Scenario, state: BatteryState, arrival: Arrival, random: Random): number | undefined {
  const { instruments, battery } = scenario;
  const terminalV = state.cellV * battery.cells;
  if (column.startsWith("density_")) return readDensity(scenario, state, Number(column.slice(8)), random);
  switch (column) {
    case "acid_C":
    case "battery_C":
      return measure(instruments.thermometer, state.temperatureC, random);
    case "air_C":
      return measure(instruments.thermometer, arrival.airC, random);
    case "rest_h":
      return roundTo(arrival.restS / 3600, 0.5);
    case "rest_V":
    case "terminal_V":
      return measure(instruments.voltmeter, terminalV, random);
    case "clamp_A":
      return measure(instruments.clampMeter, arrival.currentA, random);
    case "cranking_A":
      return measure(instruments.batteryTester, crankingCurrent(battery, state), random);
    case "mains_kWh":
      return instruments.energyMeter === undefined
        ? undefined
        : roundTo(instruments.energyMeter.startKWh + arrival.mainsKWh, instruments.energyMeter.resolution);
    default:
      return undefined;
  }
}

function readDensity(scenario: Scenario, state: BatteryState, cell: number, random: Random): number | undefined {
  const hydrometer = scenario.instruments.hydrometer;
  const deviation = scenario.cellDeviations[cell - 1];
  if (hydrometer === undefined || deviation === undefined) return undefined;
  const referenceC = hydrometer.scale === "SG 20/20 °C" ? 20 : 25;
  const acidC = hydrometer.correctsTemperature ? referenceC : state.temperatureC;
  const density = acidDensity(massFractions(state).upper, acidC) + deviation;
  return measure(hydrometer.channel, hydrometer.scale === "SG 20/20 °C" ? density / waterDensityAt20C : density, random);
}

function quote(text: string, delimiter: string): string {
  return text.includes(delimiter) || text.includes('"') ? `"${text.replaceAll('"', '""')}"` : text;
}
