/**
 * A made-up campaign: one charger tested on several batteries. Everything comes from the seed, and is drawn within what docs/demo.md and the
 * proving ground call usual. The batteries are the generator's, whose equations are not those of lib/project.
 */
import type { Condition } from "../../lib/project/battery-priors.ts";
import type { BatteryModel } from "../generator/battery.ts";
import type { ChargerModel } from "../generator/charger.ts";
import { type Random, seededRandom } from "../generator/random.ts";

export const chargerKinds = ["IU", "IUoU", "IUa", "W", "on-off"] as const;
export type ChargerKind = (typeof chargerKinds)[number];

/** One test of the charger, as it truly is. */
export type DrawnTest = {
  readonly battery: BatteryModel;
  readonly ratedAh: number;
  readonly condition: Condition;
  readonly startShare: number;
  readonly airC: number;
  /** Hours after which the recorder gives up. */
  readonly recordedH: number;
};

export type DrawnCampaign = {
  readonly seed: number;
  /** What the noise of readings and recorder grows from; no two campaigns of a shop have the same. */
  readonly noiseSeed: number;
  readonly kind: ChargerKind;
  readonly charger: ChargerModel;
  readonly recorder: { readonly gainA: number; readonly offsetV: number };
  /** The hydrometer's error, kg/l, the same at every visit. */
  readonly hydrometerError: number;
  readonly tests: readonly DrawnTest[];
};

const cells = 6;

/** Draws a campaign of one charger kind with so many tests. */
export function drawCampaign(seed: number, kind: ChargerKind, testCount: number): DrawnCampaign {
  const random = seededRandom(seed * 1009 + chargerKinds.indexOf(kind) * 17 + 5);
  const between = (low: number, high: number): number => low + (high - low) * random.uniform();
  const currentA = 2 * 6 ** random.uniform();
  const charger = drawCharger(kind, currentA, random);
  return {
    seed,
    noiseSeed: seed * 7919,
    kind,
    charger,
    recorder: { gainA: 1 + 0.005 * random.normal(), offsetV: 0.01 * random.normal() },
    hydrometerError: 0.003 * random.normal(),
    tests: Array.from({ length: testCount }, () => drawTest(currentA, between, random)),
  };
}

type Between = (low: number, high: number) => number;

function drawTest(currentA: number, between: Between, random: Random): DrawnTest {
  // From C/3 to C/15: what a shop would put on such a charger.
  const capacityAh = Math.min(110, Math.max(10, currentA * 3 * 5 ** random.uniform()));
  return drawVisit(drawBattery(capacityAh, between, random), between, random);
}

/** A battery of a capacity, what is printed on it, and how it has lived. */
export type DrawnBattery = Pick<DrawnTest, "battery" | "ratedAh" | "condition">;

/** Draws a battery: new, used or neglected, its constants within what the proving ground calls usual. */
export function drawBattery(capacityAh: number, between: Between, random: Random): DrawnBattery {
  const life = random.uniform();
  const condition: Condition = life < 0.35 ? "new" : life < 0.85 ? "used" : "neglected";
  const hardShare = condition === "new" ? between(0.002, 0.015) : condition === "used" ? between(0.02, 0.07) : between(0.06, 0.15);
  const battery: BatteryModel = {
    cells,
    capacityAh,
    fullDensityAt25C: 1.28 + 0.004 * random.normal(),
    electrolyteFullG: capacityAh * between(15, 16.5),
    ohmicOhm: between(0.05, 0.08) / capacityAh,
    chargeOhmAh: between(0.35, 0.55),
    acceptance: between(0.28, 0.36),
    tailPower: between(1.35, 1.8),
    hardAh: capacityAh * hardShare,
    softeningH: between(12, 40),
    gasA: between(0.008, 0.045),
    sinkingShare: 0.3,
    crankingA: 9 * capacityAh,
    crankingHealth: 0.95,
    heatCapacityJPerK: 240 * capacityAh,
    heatLossWPerK: 0.022 * capacityAh,
  };
  const holdsOfPrint = condition === "neglected" ? 0.9 : 0.95;
  return { battery, ratedAh: capacityAh / Math.exp(Math.log(holdsOfPrint) + 0.06 * random.normal()), condition };
}

/** Draws how flat a battery is put on, how warm the room is, and when the recorder gives up. */
export function drawVisit(battery: DrawnBattery, between: Between, random: Random): DrawnTest {
  return {
    ...battery,
    startShare: between(0.08, 0.6),
    // A workshop: the generator's resistance knows no temperature, so a wide range would test nothing but that.
    airC: between(15, 25),
    recordedH: random.uniform() < 0.3 ? between(4, 16) : 48,
  };
}

/** Draws a charger of a kind, its limits and ends within what such chargers have. */
export function drawCharger(kind: ChargerKind, currentA: number, random: Random): ChargerModel {
  const between = (low: number, high: number): number => low + (high - low) * random.uniform();
  const limitV = between(14.2, 14.8);
  const endA = currentA * between(0.04, 0.15);
  const base = { leadOhm: 0.01, warmSag: between(0, 0.05), efficiency: between(0.75, 0.9), standbyW: 2 };
  switch (kind) {
    case "IU":
      return { ...base, steps: [{ kind: "voltage", voltageV: limitV, limitA: currentA }] };
    case "IUoU":
      return {
        ...base,
        steps: [
          { kind: "voltage", voltageV: limitV, limitA: currentA, untilBelowA: endA },
          { kind: "float", voltageV: between(13.4, 13.8), limitA: currentA },
        ],
      };
    case "IUa":
      return {
        ...base,
        steps: [
          random.uniform() < 0.5
            ? { kind: "voltage", voltageV: limitV, limitA: currentA, untilBelowA: endA }
            : { kind: "voltage", voltageV: limitV, limitA: currentA, maxH: between(6, 24) },
          { kind: "off" },
        ],
      };
    case "W": {
      // Full current into 12.2 V, and the voltage without load that a transformer of this sort has.
      const openV = between(15.2, 17);
      return { ...base, steps: [{ kind: "droop", openV, ohm: (openV - 12.2) / currentA }] };
    }
    case "on-off":
      return {
        ...base,
        steps: [
          { kind: "current", currentA, untilV: between(14.4, 15.2) },
          { kind: "off", wakeBelowV: between(12.8, 13), wakeTo: 0 },
        ],
      };
  }
}
