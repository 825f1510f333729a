/** What is taken for granted of a battery that nobody has logged, by how it is built and how it has lived. */
import type { Battery } from "../nouns/battery.ts";

export type Construction = Battery["construction"];

/** How a battery has lived, in the shop's words; it decides how much hard sulphate is expected. */
export type Condition = "new" | "used" | "neglected" | "not stated";

/** The numbers of one battery that a forecast needs, in the order in which draws and fits carry them. */
export const parameterNames = [
  "capacityShare",
  "baseOhmAh",
  "nearFullOhmAh",
  "polePower",
  "gassingMA",
  "hardShare",
  "softeningH",
  "softeningV",
  "resistancePerK",
  "emptyDensityOffset",
] as const;
export type ParameterName = (typeof parameterNames)[number];

/** One battery's parameters, plain values with their units. */
export type BatteryParameters = {
  /** What it really holds, over what is printed. */
  readonly capacityShare: number;
  /** Resistance to charging that does not depend on the state of charge, one cell, Ω·Ah. */
  readonly baseOhmAh: number;
  /** What is added to it when a tenth of the charge is missing, one cell, Ω·Ah, and the power of the missing charge with which that rises. */
  readonly nearFullOhmAh: number;
  readonly polePower: number;
  /** Gassing current at 2.23 V a cell and 25 °C, mA for 100 Ah. */
  readonly gassingMA: number;
  /** Share of its capacity that is bound in hard sulphate at the start and takes charge only as it dissolves. */
  readonly hardShare: number;
  /** Time constant of that dissolving at 2.40 V a cell, h. */
  readonly softeningH: number;
  /** Volts a cell by which that dissolving speeds up e-fold. */
  readonly softeningV: number;
  /** How fast the resistance falls with warmth, 1/K. */
  readonly resistancePerK: number;
  /** How far the density of its acid when empty lies above the one taken for it, kg/l. */
  readonly emptyDensityOffset: number;
};

/** A normal distribution of one parameter, of its logarithm where `isLog`. */
export type Belief = { readonly mean: number; readonly standardDeviation: number; readonly isLog: boolean };
export type BatteryBeliefs = { readonly [name in ParameterName]: Belief };

const logNormal = (median: number, logSpread: number): Belief => ({ mean: Math.log(median), standardDeviation: logSpread, isLog: true });

/**
 * Gassing current at 2.23 V and 25 °C, mA for 100 Ah. Schiffer 2007 has 10 for valve-regulated (read in open code) and 20 for vented
 * (from memory); what separates the kinds of vented battery is our assumption: antimony in the grids gasses more, calcium less.
 */
const gassingMA: Readonly<Record<Construction, number>> = {
  "flooded-antimony": 50,
  "flooded-calcium": 15,
  flooded: 22,
  EFB: 15,
  AGM: 10,
  gel: 10,
};

/** Share of the capacity in hard sulphate, median and spread of the logarithm. Our assumption throughout; no measurement was at hand. */
const hardShare: Readonly<Record<Condition, readonly [median: number, logSpread: number]>> = {
  new: [0.008, 0.7],
  used: [0.04, 0.5],
  neglected: [0.1, 0.4],
  "not stated": [0.04, 0.9],
};

/** Rest density of the acid in a full and an empty battery, kg/l at 25 °C: trade defaults (read); AGM and gel from their rest voltage. */
export const densitiesByKind: Readonly<Record<Construction, { readonly full: number; readonly empty: number }>> = {
  "flooded-antimony": { full: 1.27, empty: 1.12 },
  "flooded-calcium": { full: 1.28, empty: 1.12 },
  flooded: { full: 1.275, empty: 1.12 },
  EFB: { full: 1.28, empty: 1.12 },
  AGM: { full: 1.3, empty: 1.1 },
  gel: { full: 1.29, empty: 1.1 },
};

/** How far a battery's own empty density may be from its kind's, kg/l, standard: our judgement of the trade's spread. */
export const emptyDensityUncertainty = 0.009;

/**
 * What to expect of a battery before any of its logs is looked at.
 *
 * - capacityShare: batteries hold 0.95 of what is printed, ±7 % (our assumption; less for a neglected one).
 * - nearFullOhmAh and polePower: Copetti, Lorenzo and Chenlo 1993 come to 0.48/0.1^1.2 = 7.6 and have a power of 1.2; Schiffer et al.
 *   2007 come to 3.3 and have 1 (all from memory). Between them: 5 within a factor of 1.6, and 1.3 ± 0.3.
 * - baseOhmAh: the former's first and third term at a tenth of the capacity come to 0.8 for 60 to 100 Ah, the latter have 0.42 in all
 *   (from memory). Between them: 0.5 within a factor of 1.8.
 * - softeningH and softeningV: 24 h within a factor of 1.5, e-fold faster for 0.12 V within a factor of 1.3: our assumption.
 * - emptyDensityOffset: none, ± 0.009 kg/l: what separates the trade's figures (our judgement).
 * - resistancePerK: they have 0.025 (from memory); 0.015 ± 0.008 since a battery warmed evenly shows less (our assumption).
 */
export function beliefsOf(construction: Construction, condition: Condition): BatteryBeliefs {
  const [hard, hardSpread] = hardShare[condition];
  return {
    capacityShare: logNormal(condition === "neglected" ? 0.9 : 0.95, condition === "neglected" ? 0.1 : 0.07),
    baseOhmAh: logNormal(0.5, 0.6),
    nearFullOhmAh: logNormal(5, 0.5),
    polePower: { mean: 1.3, standardDeviation: 0.3, isLog: false },
    gassingMA: logNormal(gassingMA[construction], 0.9),
    hardShare: logNormal(hard, hardSpread),
    softeningH: logNormal(24, 0.4),
    softeningV: logNormal(0.12, 0.25),
    resistancePerK: { mean: 0.015, standardDeviation: 0.008, isLog: false },
    emptyDensityOffset: { mean: 0, standardDeviation: emptyDensityUncertainty, isLog: false },
  };
}

/**
 * A battery's parameters at so many standard deviations from what is expected.
 * @param z  one number a parameter, in the order of parameterNames; a missing one counts as 0
 * @returns parameters held within what a battery can be: no more than 35 % hard sulphate, capacity 0.3 to 1.5 of the print
 */
export function parametersAt(beliefs: BatteryBeliefs, z: readonly number[]): BatteryParameters {
  const at = (name: ParameterName): number => {
    const { mean, standardDeviation, isLog } = beliefs[name];
    const value = mean + standardDeviation * (z[parameterNames.indexOf(name)] ?? 0);
    return isLog ? Math.exp(value) : value;
  };
  return {
    capacityShare: Math.min(1.5, Math.max(0.3, at("capacityShare"))),
    baseOhmAh: at("baseOhmAh"),
    nearFullOhmAh: at("nearFullOhmAh"),
    polePower: Math.min(2.2, Math.max(0.7, at("polePower"))),
    gassingMA: at("gassingMA"),
    hardShare: Math.min(0.35, at("hardShare")),
    softeningH: at("softeningH"),
    softeningV: at("softeningV"),
    resistancePerK: Math.min(0.04, Math.max(0, at("resistancePerK"))),
    emptyDensityOffset: Math.min(0.03, Math.max(-0.03, at("emptyDensityOffset"))),
  };
}
