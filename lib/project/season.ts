/** A season on the charger: what holding a full battery costs in energy and water, and whether the voltage held suits the temperature. */
import type { BatteryBeliefs, Construction } from "./battery-priors.ts";
import { type ChargerBehaviour, isHoldingUnknown, middleDraw, type ProgrammeStep, settleCharger } from "./charger-behaviour.ts";
import { forecastCharge } from "./forecast.ts";
import { type Range, type Spread, spreadOf } from "./spread.ts";

/** Places where a battery winters or summers, °C. */
export const places = [
  { id: "cold-shed", label: "Cold shed", temperatureC: 0 },
  { id: "cellar", label: "Cellar", temperatureC: 15 },
  { id: "warm-garage", label: "Warm garage", temperatureC: 30 },
] as const;

/** Voltages between which a battery of this kind may be held, whole battery, and how they move with its temperature. */
export type FloatWindow = {
  readonly at25C: Range;
  /** Slopes in use, mV for each K and cell, both negative; all between them is allowed. */
  readonly leastMVPerKPerCell: number;
  readonly mostMVPerKPerCell: number;
  /** Beyond these temperatures the window moves no further, °C. */
  readonly fromC: number;
  readonly toC: number;
};

export type SeasonQuestion = {
  readonly beliefs: BatteryBeliefs;
  readonly construction: Construction;
  readonly ratedAh: number;
  readonly cells: number;
  readonly density: { readonly full: number; readonly empty: number };
  readonly window: FloatWindow;
  /** How the charger's own voltages move with temperature, mV for each K and cell; 0 for not at all. Left out: from 0 to the window's most. */
  readonly compensationMVPerKPerCell?: Range;
  /** Water above the plates that may be used up before topping up, g for the whole battery; left out where it is not known. */
  readonly reserveG?: Range;
};

export type SeasonAt = {
  readonly place: (typeof places)[number]["id"];
  readonly temperatureC: number;
  /** Over 30 days, the first charge left out; null where nobody knows what it does with a full battery. */
  readonly mainsKWh: Spread | null;
  readonly waterG: Spread | null;
  readonly restartsPerDay: Spread | null;
  /** Days until the reserve is used up, at the earliest, water being an upper bound; null also where no reserve is stated or the battery is sealed. */
  readonly topUpDays: Spread | null;
  /** Voltage held, V, or the two between which it goes on and off above the window; null where it holds none (it is off, or goes on and off), or nobody knows. */
  readonly heldV: Range | null;
  readonly windowV: Range;
  readonly inWindow: "inside" | "below" | "above" | "partly" | "holds no voltage" | "not known";
};

const days = 30;
const never = Number.POSITIVE_INFINITY;
/**
 * Water that a cell of a vented car battery can lose from its fill mark before its plates stand dry, g for each Ah of rated capacity.
 * Common practice: the acid stands 10 to 15 mm above the plates; a 60 Ah case of 242 mm by 175 mm (size L2 of EN 50342-2, from memory)
 * has some 0.03 m² of that free between walls, partitions and straps: 50 to 80 g in each of its six cells.
 */
export const cellReserveGPerAh: Range = { low: 0.8, high: 1.3 };
/** The first day tops up what a rested battery misses; the month is counted after it. */
const settlingH = 24;
const seasonDraws = 16;
/** An on-off charger's rounds repeat, and each takes many steps: so many days stand for the month. */
const onOffDays = 5;

/**
 * Holds a full battery for a month at each of three temperatures.
 * @returns one row a place. Water is the upper bound for a vented battery; a sealed one recombines most of it.
 */
export function holdSeason(behaviour: ChargerBehaviour, question: SeasonQuestion): SeasonAt[] {
  return places.map(({ id, temperatureC }) => holdAt(behaviour, question, id, temperatureC));
}

function holdAt(behaviour: ChargerBehaviour, question: SeasonQuestion, place: SeasonAt["place"], temperatureC: number): SeasonAt {
  const { beliefs, ratedAh, cells, density, window, reserveG, construction } = question;
  const windowV = windowAt(window, temperatureC, cells);
  if (isHoldingUnknown(behaviour)) {
    const costs = { mainsKWh: null, waterG: null, restartsPerDay: null, topUpDays: null };
    return { place, temperatureC, ...costs, heldV: null, windowV, inWindow: "not known" };
  }
  const slope = question.compensationMVPerKPerCell ?? { low: window.mostMVPerKPerCell, high: 0 };
  const compensated = compensate(behaviour, slope, clamp(temperatureC, window), cells);
  const run = (horizonH: number) =>
    forecastCharge(
      { beliefs },
      compensated,
      { ratedAh, cells, density, startShare: 0.98, startShareUncertainty: 0, airC: temperatureC, horizonH },
      { count: seasonDraws, longestStepH: 6 },
    ).draws;
  const seenDays = behaviour.steps.some((step) => step.kind === "off" && step.wakeBelowV !== undefined) ? onOffDays : days;
  const settled = run(settlingH);
  const whole = run(settlingH + seenDays * 24);
  const over = (read: (outcome: (typeof whole)[number]) => number): number[] =>
    whole.map((outcome, k) => (read(outcome) - (settled[k] === undefined ? 0 : read(settled[k]))) * (days / seenDays));
  const water = over(({ whole: sums }) => sums.waterG);
  const held = heldVoltage(compensated) ?? pausesAbove(compensated, windowV);
  const isSealed = construction === "AGM" || construction === "gel";
  return {
    place,
    temperatureC,
    mainsKWh: spreadOf(over(({ whole: sums }) => sums.mainsWh / 1000)),
    waterG: spreadOf(water),
    restartsPerDay: spreadOf(over(({ restarts }) => restarts / days)),
    topUpDays:
      reserveG === undefined || isSealed
        ? null
        : spreadOf(water.flatMap((grams) => reservesOf(reserveG).map((reserve) => (grams > 0 ? (reserve / grams) * days : never)))),
    heldV: held,
    windowV,
    inWindow: held === null ? "holds no voltage" : placeIn(held, windowV),
  };
}

/** The least, the middle and the most of a reserve: what a battery of the kind has is not known better. */
function reservesOf({ low, high }: Range): number[] {
  return [low, (low + high) / 2, high];
}

/** Voltages between which it goes on and off, where even the lowest lies above the window: it then wears a battery as a held voltage does. */
function pausesAbove({ steps }: ChargerBehaviour, window: Range): Range | null {
  const [charge, pause] = [steps.at(-2), steps.at(-1)];
  if (pause?.kind !== "off" || pause.wakeBelowV === undefined || pause.wakeBelowV.low <= window.high) return null;
  const top = charge !== undefined && "untilV" in charge ? charge.untilV : undefined;
  return { low: pause.wakeBelowV.low, high: Math.max(pause.wakeBelowV.high, top?.high ?? 0) };
}

/** Where a range lies against a window; "partly" where it reaches over an edge. */
export function placeIn(held: Range, window: Range): "inside" | "below" | "above" | "partly" {
  if (held.high < window.low) return "below";
  if (held.low > window.high) return "above";
  return held.low >= window.low && held.high <= window.high ? "inside" : "partly";
}

/** The window at a temperature, V: its lower end with the slope that lowers it most, its upper end with the one that raises it most. */
export function windowAt(window: FloatWindow, temperatureC: number, cells: number): Range {
  const offK = clamp(temperatureC, window) - 25;
  const shifts = [window.leastMVPerKPerCell, window.mostMVPerKPerCell].map((slope) => (slope * cells * offK) / 1000);
  return { low: window.at25C.low + Math.min(...shifts), high: window.at25C.high + Math.max(...shifts) };
}

function clamp(temperatureC: number, { fromC, toC }: FloatWindow): number {
  return Math.min(toC, Math.max(fromC, temperatureC));
}

/** Held voltages were measured near 25 °C; elsewhere they move by what the charger compensates, or may. */
function compensate(behaviour: ChargerBehaviour, slope: Range, effectiveC: number, cells: number): ChargerBehaviour {
  const shifts = [slope.low, slope.high].map((mV) => (mV * cells * (effectiveC - 25)) / 1000);
  const shift = { low: Math.min(...shifts), high: Math.max(...shifts) };
  const moved = (range: Range): Range => ({ low: range.low + shift.low, high: range.high + shift.high });
  const steps = behaviour.steps.map(
    (step): ProgrammeStep =>
      step.kind === "constant-voltage" || step.kind === "float" ? { ...step, voltageV: moved(step.voltageV) } : step,
  );
  return { ...behaviour, steps };
}

/** The voltage at which it ends up and stays, V; null where its last step is off. */
function heldVoltage(behaviour: ChargerBehaviour): Range | null {
  const last = behaviour.steps.at(-1);
  const settled = settleCharger(behaviour, middleDraw).steps.at(-1);
  if (last === undefined || settled?.kind !== "voltage" || (last.kind !== "float" && last.kind !== "constant-voltage")) return null;
  return last.voltageV;
}
