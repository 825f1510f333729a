/** Batteries and chargers that several tests share; all invented. */
import { type BatteryParameters, beliefsOf, parametersAt } from "../../../lib/project/battery-priors.ts";
import type { ChargerBehaviour, SettledCharger, SettledStep } from "../../../lib/project/charger-behaviour.ts";
import { exactly } from "../../../lib/project/spread.ts";

export const never = Number.POSITIVE_INFINITY;
export const density = { full: 1.28, empty: 1.12 };

/** The middle of what is expected of a used flooded battery. */
export const usedBattery: BatteryParameters = parametersAt(beliefsOf("flooded", "used"), []);

/** A charger of given steps with round other numbers. */
export function chargerOf(...steps: SettledStep[]): SettledCharger {
  return { steps, efficiency: 0.8, standbyW: 2 };
}

/** A held voltage with a current limit, for ever. */
export function held(voltageV: number, limitA: number, belowA = 0): SettledStep {
  return { kind: "voltage", voltageV, limitA, belowA, afterH: never, isFloat: false };
}

/** A charger of IUoU kind whose every number is known. */
export function behaviourIUoU(currentA: number): ChargerBehaviour {
  return {
    steps: [
      { kind: "constant-voltage", voltageV: exactly(14.4), limitA: exactly(currentA), end: { belowA: exactly(0.1 * currentA) } },
      { kind: "float", voltageV: exactly(13.6), limitA: exactly(currentA), end: {} },
    ],
    efficiency: { low: 0.75, high: 0.85 },
    standbyW: exactly(2),
    unknowns: [],
  };
}
