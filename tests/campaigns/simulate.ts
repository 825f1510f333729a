/** Runs a plan on the generator's battery, which knows nothing of lib/reconcile, and keeps what truly happened. */
import { acidDensity, openCircuitVoltage } from "../generator/acid.ts";
import {
  acidPerAhG,
  type BatteryState,
  massFractions,
  mixAcid,
  restedBattery,
  stepBattery,
  waterBoundPerAhG,
} from "../generator/battery.ts";
import { advanceCharger, offer, startedCharger } from "../generator/charger.ts";
import type { CampaignPlan } from "./plan.ts";

/** The battery's true state at a visit, mixed first where the plan says so. */
export type TrueVisit = {
  readonly atH: number;
  readonly stateOfCharge: number;
  readonly storedAh: number;
  /** kg/l at 25 °C. */
  readonly topDensity: number;
  readonly meanDensity: number;
  /** How much weaker the weak cell's acid is, kg/l; 0 where all are alike. */
  readonly weakCellDeficit: number;
  readonly terminalV: number;
  /** What is left of the polarisation, V of the battery. */
  readonly surfaceV: number;
  readonly temperatureC: number;
};

export type TrueInterval = {
  readonly passedAh: number;
  /** Of that, while the recorder ran. */
  readonly seenAh: number;
  readonly unseenH: number;
  readonly seenHoursAboveGassing: number;
  readonly hours: number;
};

export type Truth = { readonly visits: readonly TrueVisit[]; readonly intervals: readonly TrueInterval[] };

/** Seconds a step: the generator's own second would cost ten times as much, and moves no figure here by more than a reading's last digit. */
const chargeStepS = 10;
const restStepS = 60;
/** Rest voltage rises with warmth, V per K and cell: Vinal's table at 1.20 to 1.25 (from memory). The generator's battery leaves it out. */
const voltPerKelvin = 0.000_27;
/** Voltage a cell from which the acid is said to be mixed by gas, at 20 °C. */
const gassingV = 2.4;

export function simulate(plan: CampaignPlan): Truth {
  const state = restedBattery(plan.battery, plan.storedAtStart * plan.battery.capacityAh, plan.airC);
  const visits: TrueVisit[] = [look(plan, state, 0)];
  const intervals: TrueInterval[] = [];
  let atH = 0;
  for (const connection of plan.connections) {
    const before = state.passedAh;
    const seen = charge(plan, state, connection.hours, connection.recordedH);
    for (let second = 0; second < connection.restH * 3600; second += restStepS)
      stepBattery(plan.battery, state, undefined, plan.airC, restStepS);
    atH += connection.hours + connection.restH;
    if (connection.mixed) mixAcid(state);
    intervals.push({
      passedAh: state.passedAh - before,
      seenAh: seen.ah,
      unseenH: connection.hours - connection.recordedH,
      seenHoursAboveGassing: seen.hoursAboveGassing,
      hours: connection.hours + connection.restH,
    });
    visits.push(look(plan, state, atH));
  }
  return { visits, intervals };
}

function charge(plan: CampaignPlan, state: BatteryState, hours: number, recordedH: number): { ah: number; hoursAboveGassing: number } {
  const charger = startedCharger();
  let ah = 0;
  let hoursAboveGassing = 0;
  for (let second = 0; second < hours * 3600; second += chargeStepS) {
    const source = offer(plan.charger, charger);
    const currentA = stepBattery(plan.battery, state, source.limitA > 0 ? source : undefined, plan.airC, chargeStepS);
    if (second < recordedH * 3600) {
      ah += (currentA * chargeStepS) / 3600;
      if (state.cellV >= gassingV) hoursAboveGassing += chargeStepS / 3600;
    }
    for (let tick = 0; tick < chargeStepS; tick++) advanceCharger(plan.charger, charger, state.cellV * plan.battery.cells, currentA);
  }
  return { ah, hoursAboveGassing };
}

function look(plan: CampaignPlan, state: BatteryState, atH: number): TrueVisit {
  const { upper, lower, mean } = massFractions(state);
  const massG = state.upperAcidG + state.upperWaterG + state.lowerAcidG + state.lowerWaterG;
  const weakMean = (mean * massG - acidPerAhG * plan.weakCellAh) / (massG - (acidPerAhG - waterBoundPerAhG) * plan.weakCellAh);
  const weaker = mean - weakMean;
  const plates = lower + 0.25 * (upper - lower);
  const lostV = openCircuitVoltage(plates) - openCircuitVoltage(plates - weaker);
  return {
    atH,
    stateOfCharge: state.storedAh / plan.battery.capacityAh,
    storedAh: state.storedAh,
    topDensity: acidDensity(upper, 25),
    meanDensity: acidDensity(mean, 25),
    weakCellDeficit: acidDensity(upper, 25) - acidDensity(upper - weaker, 25),
    terminalV: plan.battery.cells * (state.cellV + voltPerKelvin * (state.temperatureC - 25)) - lostV,
    surfaceV: (state.fastV + state.slowV) * plan.battery.cells,
    temperatureC: state.temperatureC,
  };
}
