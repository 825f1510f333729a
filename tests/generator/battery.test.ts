import { describe, expect, it } from "vitest";
import { acidPerAhG, massFractions, mixAcid, restedBattery, stepBattery, waterBoundPerAhG, waterSplitPerAhG } from "./battery.ts";
import { jettySixty } from "./demo/batteries.ts";

describe("battery", () => {
  it("keeps the books of charge, acid and water at constant current, to rounding", () => {
    const state = restedBattery(jettySixty, 12, 20);
    const acidG = state.upperAcidG + state.lowerAcidG;
    const waterG = state.upperWaterG + state.lowerWaterG;
    for (let second = 0; second < 8 * 3600; second++) stepBattery(jettySixty, state, { limitA: 6, voltageV: 40, ohm: 0.02 }, 20, 1);
    // 28 800 sums of numbers near 1e-3 leave about 1e-11 of dust.
    expect(state.passedAh).toBeCloseTo(48, 8);
    expect(state.reactedAh + state.gassedAh).toBeCloseTo(state.passedAh, 8);
    expect(state.upperAcidG + state.lowerAcidG - acidG).toBeCloseTo(acidPerAhG * state.reactedAh, 6);
    const waterLostG = waterBoundPerAhG * state.reactedAh + waterSplitPerAhG * state.gassedAh;
    expect(waterG - state.upperWaterG - state.lowerWaterG).toBeCloseTo(waterLostG, 6);
  });

  it("meets 14.4 V after some six hours at 6 A when it began near 12.1 V, as a 60 Ah battery does", () => {
    const state = restedBattery({ ...jettySixty, hardAh: 0 }, 12.4, 20);
    expect(state.cellV * 6).toBeGreaterThan(12.05);
    expect(state.cellV * 6).toBeLessThan(12.15);
    let seconds = 0;
    while (state.cellV * 6 < 14.4 && seconds < 20 * 3600) {
      stepBattery(jettySixty, state, { limitA: 6, voltageV: 40, ohm: 0.02 }, 20, 1);
      seconds += 1;
    }
    expect(seconds / 3600).toBeGreaterThan(5);
    expect(seconds / 3600).toBeLessThan(7);
  });

  it("gives the same course with steps of 60 s as with steps of 1 s while it rests, within 1 mV", () => {
    const courses = [1, 60].map((stepS) => {
      const state = restedBattery(jettySixty, 12, 20);
      for (let second = 0; second < 3600; second++) stepBattery(jettySixty, state, { limitA: 6, voltageV: 40, ohm: 0.02 }, 20, 1);
      for (let atS = 0; atS < 6 * 3600; atS += stepS) stepBattery(jettySixty, state, undefined, 20, stepS);
      return state.cellV;
    });
    expect(Math.abs((courses[0] ?? 0) - (courses[1] ?? 1))).toBeLessThan(0.001);
  });

  it("draws nothing from a charger whose voltage is below the battery's", () => {
    const state = restedBattery(jettySixty, 50, 20);
    expect(Math.abs(stepBattery(jettySixty, state, { limitA: 5, voltageV: 12, ohm: 0.02 }, 20, 1))).toBeLessThan(1e-9);
  });

  it("lets surface charge die away: under 13 V within an hour of 14.4 V, and falling still after six", () => {
    const state = restedBattery(jettySixty, 20, 20);
    for (let second = 0; second < 10 * 3600; second++) stepBattery(jettySixty, state, { limitA: 6, voltageV: 14.4, ohm: 0.02 }, 20, 1);
    const restV = [0, 1, 6, 24].map((hours, place, all) => {
      for (let minute = (all[place - 1] ?? 0) * 60; minute < hours * 60; minute++) stepBattery(jettySixty, state, undefined, 20, 60);
      return state.cellV * 6;
    });
    expect(restV[1]).toBeLessThan(13);
    expect(restV[1]).toBeGreaterThan(restV[2] ?? 0);
    expect((restV[2] ?? 0) - (restV[3] ?? 0)).toBeGreaterThan(0);
    expect((restV[2] ?? 0) - (restV[3] ?? 0)).toBeLessThan(0.06);
  });

  it("layers below gassing voltage and mixes above it", () => {
    const gapAfter = (voltageV: number): number => {
      const state = restedBattery(jettySixty, 12, 20);
      for (let second = 0; second < 24 * 3600; second++) stepBattery(jettySixty, state, { limitA: 6, voltageV, ohm: 0.02 }, 20, 1);
      const { upper, mean } = massFractions(state);
      return mean - upper;
    };
    // 0.01 in mass fraction is about 0.008 kg/l, more than a hydrometer's step; a third of it is not seen.
    expect(gapAfter(13.4)).toBeGreaterThan(0.03);
    expect(gapAfter(16)).toBeLessThan(0.003);
  });

  it("keeps acid and water when mixed, and has one strength afterwards", () => {
    const state = restedBattery(jettySixty, 30, 20, 0.05);
    const before = { ...state };
    mixAcid(state);
    expect(state.upperAcidG + state.lowerAcidG).toBeCloseTo(before.upperAcidG + before.lowerAcidG, 9);
    expect(state.upperWaterG + state.lowerWaterG).toBeCloseTo(before.upperWaterG + before.lowerWaterG, 9);
    expect(massFractions(state).upper).toBeCloseTo(massFractions(state).lower, 12);
  });
});
