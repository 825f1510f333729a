/**
 * A campaign drawn by chance: a battery, a charger, a recorder, instruments, and what the person does. Everything comes from the seed. The
 * numbers are invented within what docs/demo.md calls usual; none is taken from lib/reconcile, whose priors are to be tested by it.
 */
import type { BatteryModel } from "../generator/battery.ts";
import type { ChargerModel } from "../generator/charger.ts";
import type { Random } from "../generator/random.ts";
import type { CampaignKind } from "./kinds.ts";

export type CampaignPlan = {
  readonly kind: CampaignKind;
  readonly battery: BatteryModel;
  readonly ratedAh: number;
  readonly storedAtStart: number;
  /** How much less charge the weak cell holds than the others, Ah; 0 where all are alike. */
  readonly weakCellAh: number;
  readonly weakCell: number;
  /** Each cell's own deviation, kg/l. */
  readonly cellDeviations: readonly number[];
  readonly charger: ChargerModel;
  readonly labelCurrentA: number;
  readonly airC: number;
  readonly connections: readonly {
    readonly hours: number;
    /** Hours from clamps on until the recorder stops; it never runs on after the clamps come off. */
    readonly recordedH: number;
    readonly restH: number;
    /** Whether the acid is mixed before it is read. */
    readonly mixed: boolean;
  }[];
  readonly says: {
    readonly acidMass: boolean;
    readonly fullDensity: boolean;
    readonly cranking: boolean;
    readonly cells: boolean;
    readonly bound: boolean;
  };
  readonly errors: {
    readonly recorderGain: number;
    readonly recorderUncertainty: number;
    readonly hydrometer: number;
    readonly hydrometerUncertainty: number;
    readonly hydrometerStep: number;
    readonly hydrometerNoise: number;
    readonly voltmeter: number;
    readonly voltmeterUncertaintyV: number;
    readonly testerGain: number;
  };
};

const cells = 6;

/** Draws a plan of this kind. The same random numbers give the same plan. */
export function drawPlan(kind: CampaignKind, random: Random): CampaignPlan {
  const between = (low: number, high: number): number => low + (high - low) * random.uniform();
  const chance = (share: number): boolean => random.uniform() < share;
  const capacityAh = between(40, 110);
  const layers = kind === "stratified-acid";
  const battery: BatteryModel = {
    cells,
    capacityAh,
    fullDensityAt25C: 1.28 + 0.004 * random.normal(),
    electrolyteFullG: capacityAh * between(15, 17.5),
    ohmicOhm: 0.06 / capacityAh,
    chargeOhmAh: between(0.4, 0.55),
    acceptance: between(0.28, 0.36),
    tailPower: between(1.3, 1.8),
    hardAh: capacityAh * between(0.02, 0.15),
    softeningH: between(12, 40),
    gasA: layers ? between(0.003, 0.012) : between(0.008, 0.04),
    sinkingShare: layers ? between(0.45, 0.8) : between(0, 0.25),
    crankingA: capacityAh * between(8, 10),
    crankingHealth: between(0.84, 1),
    heatCapacityJPerK: 240 * capacityAh,
    heatLossWPerK: 1.3,
  };
  const currentA = between(kind === "honest-slow-charger" ? 3 : 4, kind === "honest-slow-charger" ? 6 : 12);
  const visits = 3 + Math.floor(6 * random.uniform());
  const early = kind === "read-too-soon";
  // Charge enough over the whole campaign to come near full, shared out unevenly.
  const wholeH = ((capacityAh * between(0.8, 1.3)) / currentA + between(4, 16)) * (kind === "recorder-stopped-early" ? 1.3 : 1);
  const shares = Array.from({ length: visits - 1 }, () => between(0.6, 1.4));
  const sum = shares.reduce((total, share) => total + share, 0);
  const hydrometerUncertainty = between(0.0015, 0.003);
  const voltmeterUncertaintyV = between(0.008, 0.025);
  const recorderUncertainty = between(0.004, 0.015);
  const offset = (chance(0.5) ? 1 : -1) * between(0.014, 0.03);
  return {
    kind,
    battery,
    ratedAh: kind === "wrong-rating" ? capacityAh / between(0.55, 0.72) : capacityAh / between(0.88, 1.01),
    storedAtStart: between(kind === "weak-cell" ? 0.35 : 0.08, 0.5),
    weakCellAh: kind === "weak-cell" ? capacityAh * between(0.14, 0.32) : 0,
    weakCell: Math.floor(cells * random.uniform()),
    cellDeviations: Array.from({ length: cells }, () => 0.003 * random.normal()),
    charger: drawCharger(currentA, layers, random),
    labelCurrentA: currentA,
    airC: between(14, 27),
    connections: shares.map((share) => {
      const hours = Math.max(2, (wholeH * share) / sum);
      return {
        hours,
        recordedH: hours - unseenHours(kind, hours, random),
        restH: early && chance(0.8) ? between(0.4, 2.5) : between(12, 30),
        mixed: layers ? false : chance(0.4),
      };
    }),
    says: {
      acidMass: kind !== "wrong-rating" && chance(0.4),
      fullDensity: chance(0.6),
      cranking: chance(0.7),
      cells: kind === "weak-cell" || chance(0.6),
      bound: chance(0.7),
    },
    errors: {
      recorderGain: 1 + recorderUncertainty * random.normal(),
      recorderUncertainty,
      hydrometer: hydrometerUncertainty * random.normal() + (kind === "hydrometer-offset" ? offset : 0),
      hydrometerUncertainty,
      hydrometerStep: chance(0.5) ? 0.005 : 0.001,
      hydrometerNoise: between(0.0006, 0.0015),
      voltmeter: voltmeterUncertaintyV * random.normal(),
      voltmeterUncertaintyV,
      testerGain: 1 + 0.03 * random.normal(),
    },
  };
}

/** Early enough to miss much, or so late that only a trickle goes unseen, or never. */
function unseenHours(kind: CampaignKind, hours: number, random: Random): number {
  const share = random.uniform();
  const stops = random.uniform();
  if (kind === "recorder-stopped-early") return stops < 0.75 ? hours - Math.min(hours, 1.5 + share * Math.max(0, 0.6 * hours - 1.5)) : 0;
  return stops < 0.35 ? Math.min(0.3 * hours, 0.5 + 3 * share) : 0;
}

/** Holds a voltage, falls back to float, stays gentle at 14.1 V, or droops unregulated. */
function drawCharger(currentA: number, gentle: boolean, random: Random): ChargerModel {
  const rest = { leadOhm: 0.015, warmSag: 0.02, efficiency: 0.83, standbyW: 2 };
  const which = gentle ? 2 : Math.floor(4 * random.uniform());
  const highV = 14.4 + 0.3 * random.uniform();
  if (which === 3) return { ...rest, steps: [{ kind: "droop", openV: 12.3 + currentA * 0.4, ohm: 0.32, untilV: 15.6 }, { kind: "off" }] };
  const limitV = which === 2 ? (gentle ? 13.5 + 0.6 * random.uniform() : 14.1) : highV;
  const bulk = { kind: "current", currentA, untilV: limitV - 0.02 } as const;
  if (which === 1)
    return {
      ...rest,
      steps: [
        bulk,
        { kind: "voltage", voltageV: limitV, limitA: currentA, untilBelowA: 0.08 * currentA, forS: 1200, maxH: 10 },
        { kind: "float", voltageV: 13.6, limitA: currentA },
      ],
    };
  return { ...rest, steps: [bulk, { kind: "voltage", voltageV: limitV, limitA: currentA }] };
}
