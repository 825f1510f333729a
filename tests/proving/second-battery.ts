/**
 * A second battery, to guard against tuning to the first: a voltage table, a resistance and two RC pairs. No acid, no gas, no heat.
 *
 *   table(charge) ──[ R0 ]──[ R1 ∥ C1 ]──[ R2(charge) ∥ C2 ]── posts
 */
import type { Source } from "../generator/battery.ts";
import { between, type PlantMaker } from "./plant.ts";

/** Open-circuit voltage of one cell at tenths of its charge. Common practice: 1.95 V flat, 2.13 V full. */
const restVoltagesV = [1.95, 1.975, 1.995, 2.015, 2.032, 2.05, 2.067, 2.084, 2.1, 2.116, 2.13] as const;

/** Where the charging resistance would become infinite, as a share of full charge. */
const resistancePole = 1.02;

/** Returns the circuit battery; resistances are drawn, times capacity, so that a cell of any size behaves alike. */
export const circuitPlant: PlantMaker = ({ cells, capacityAh, startCharge }, random) => {
  const seriesOhm = between(random, 0.05, 0.1) / capacityAh;
  const fastOhm = between(random, 0.15, 0.3) / capacityAh;
  const fastS = between(random, 60, 200);
  const slowS = between(random, 1200, 4000);
  const tail = between(random, 0.2, 0.35);
  let charge = startCharge;
  let fastV = 0;
  let slowV = 0;
  let cellV = restVoltage(charge);
  return {
    cells,
    capacityAh,
    voltageV: () => cellV * cells,
    step: (source) => {
      // Only charging meets the lack of what is left to convert.
      const slowOhm = (source === undefined || source.ohm < 0 ? 0.3 : 0.3 + tail / (resistancePole - charge)) / capacityAh;
      const backV = restVoltage(charge) + fastV + slowV;
      const currentA = currentInto(source, backV, seriesOhm, cells);
      cellV = backV + currentA * seriesOhm;
      fastV += (currentA * fastOhm - fastV) / fastS;
      slowV += (currentA * slowOhm - slowV) / slowS;
      // The fuller, the larger the share that charges nothing; nothing is lost on discharge.
      const kept = currentA > 0 ? 1 - charge ** 16 : 1;
      charge = Math.min(1, Math.max(0, charge + (currentA * kept) / 3600 / capacityAh));
      return currentA;
    },
  };
};

/** Straight lines between the table's tenths; `charge` from 0 to 1. */
function restVoltage(charge: number): number {
  const place = Math.min(9.999999, Math.max(0, charge * 10));
  const below = Math.floor(place);
  const [low, high] = [restVoltagesV[below] ?? Number.NaN, restVoltagesV[below + 1] ?? Number.NaN];
  return low + (high - low) * (place - below);
}

/** Current that a source drives into a battery of `cells` voltages behind their resistances, A. A charger never draws. */
function currentInto(source: Source | undefined, backV: number, seriesOhm: number, cells: number): number {
  if (source === undefined || source.limitA <= 0) return 0;
  const freeA = (source.voltageV - backV * cells) / (source.ohm + seriesOhm * cells);
  return source.ohm < 0 ? freeA : Math.max(0, Math.min(source.limitA, freeA));
}
