/** What a charger is tied to: a battery that takes a source for one second at a time, whichever model stands behind it. */
import { type BatteryModel, restedBattery, type Source, stepBattery } from "../generator/battery.ts";
import type { Random } from "../generator/random.ts";

export type Plant = {
  readonly cells: number;
  readonly capacityAh: number;
  /** At the posts, after the last step. */
  voltageV(): number;
  /** Lets one second pass and returns the current into the posts, A; undefined while nothing is connected. */
  step(source: Source | undefined, airC: number): number;
};

/** What is drawn for each case before a plant is built. */
export type Size = { readonly cells: 3 | 6; readonly capacityAh: number; readonly startCharge: number; readonly airC: number };

/** Builds a battery of the size asked for; what the size leaves open is drawn. */
export type PlantMaker = (size: Size, random: Random) => Plant;

/** Returns a number drawn evenly between two. */
export function between(random: Random, low: number, high: number): number {
  return low + (high - low) * random.uniform();
}

/**
 * Returns the generator's electrochemical battery, with age, acid and gassing drawn within what its demo uses.
 * Ohmic part, acid, heat capacity and heat loss grow with capacity as they do between the demo's batteries.
 */
export const electrochemicalPlant: PlantMaker = ({ cells, capacityAh, startCharge, airC }, random) => {
  const model: BatteryModel = {
    cells,
    capacityAh,
    fullDensityAt25C: between(random, 1.265, 1.29),
    electrolyteFullG: 15.5 * capacityAh,
    ohmicOhm: between(random, 0.05, 0.08) / capacityAh,
    chargeOhmAh: between(random, 0.35, 0.55),
    acceptance: between(random, 0.28, 0.36),
    tailPower: between(random, 1.35, 1.8),
    hardAh: between(random, 0.02, 0.12) * capacityAh,
    softeningH: between(random, 12, 40),
    gasA: between(random, 0.008, 0.045),
    sinkingShare: 0.4,
    crankingA: 9 * capacityAh,
    crankingHealth: 0.95,
    heatCapacityJPerK: 240 * capacityAh * (cells / 6),
    heatLossWPerK: 0.022 * capacityAh * (cells / 6),
  };
  const state = restedBattery(model, startCharge * capacityAh, airC);
  return {
    cells,
    capacityAh,
    voltageV: () => state.cellV * cells,
    step: (source, air) => stepBattery(model, state, source, air, 1),
  };
};

/**
 * Returns a load of nearly constant current, as a source.
 *
 * The generator's battery refuses a source that would draw from it, as a charger does not. A source far above the battery behind a
 * negative resistance passes that gate and draws (V₀ − V) / |R|: within 2 % of the current asked for, whatever the battery's voltage.
 */
export function loadOf(currentA: number): Source {
  const farV = 1000;
  return { limitA: Number.POSITIVE_INFINITY, voltageV: farV, ohm: -farV / currentA };
}
