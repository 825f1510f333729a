import { describe, expect, it } from "vitest";
import { fitRestVoltage, leastRestForH, surfaceChargeLeftV } from "../../../lib/electrochem/surface-charge.ts";
import { isRefused } from "../../../lib/signal/fit-result.ts";
import { restedBattery, stepBattery } from "../../generator/battery.ts";
import { jettySixty } from "../../generator/demo/batteries.ts";

const hours = [0.5, 1, 1.5, 2, 3, 4, 6, 8, 12];
const decaying = (h: number): number => 12.7 + 0.4 * Math.exp(-h / 3);

describe("rest voltage from several readings after one charge", () => {
  it("finds level, surface charge and time constant of a made-up decay", () => {
    const fit = fitRestVoltage(hours, hours.map(decaying));
    if (isRefused(fit)) throw new Error(fit.refused);
    // Nothing scatters, so only the fit's own stopping rule (1e-9 of each parameter) is left.
    expect(fit.restV).toBeCloseTo(12.7, 6);
    expect(fit.surfaceV).toBeCloseTo(0.4 * Math.exp(-0.5 / 3), 6);
    expect(fit.timeConstantH).toBeCloseTo(3, 5);
  });

  it("comes to the fully relaxed voltage of the generator's battery, which shares no code with it, within its own interval", () => {
    const state = restedBattery(jettySixty, 40, 20);
    for (let s = 0; s < 3 * 3600; s += 10) stepBattery(jettySixty, state, { limitA: 6, voltageV: 14.4, ohm: 0.015 }, 20, 10);
    const voltages = new Map<number, number>();
    for (let minute = 1; minute <= 12 * 60; minute++) {
      stepBattery(jettySixty, state, undefined, 20, 60);
      voltages.set(minute / 60, state.cellV * jettySixty.cells);
    }
    const relaxedV = (state.cellV - state.fastV - state.slowV) * jettySixty.cells;
    const late = hours.filter((h) => h >= 1);
    const fit = fitRestVoltage(
      late,
      late.map((h) => voltages.get(h) ?? Number.NaN),
    );
    if (isRefused(fit)) throw new Error(fit.refused);
    // A millivolt a cell is what the relaxing layers themselves move the level by in those hours.
    expect(Math.abs(fit.restV - relaxedV)).toBeLessThan(fit.halfWidthV + 0.006);
    expect(fit.timeConstantH).toBeGreaterThan(2.5);
    expect(fit.timeConstantH).toBeLessThan(3.5);
  });

  it("refuses too few readings, a rising voltage, and readings that end before the decay", () => {
    expect(isRefused(fitRestVoltage([1, 2, 3], [13, 12.9, 12.8]))).toBe(true);
    expect(
      fitRestVoltage(
        hours,
        hours.map((h) => 12.3 - 0.2 * Math.exp(-h / 3)),
      ),
    ).toEqual({
      refused: "the voltage rises: what goes is not a surface charge",
    });
    const early = [0.5, 0.6, 0.7, 0.8, 0.9, 1, 1.1];
    expect(isRefused(fitRestVoltage(early, early.map(decaying)))).toBe(true);
  });

  it("leaves readings without a number out", () => {
    const withGap = hours.map((h) => (h === 3 ? Number.NaN : decaying(h)));
    const fit = fitRestVoltage(hours, withGap);
    expect(isRefused(fit)).toBe(false);
  });
});

describe("what is left of a surface charge", () => {
  it("falls to 37 % in one time constant, and leastRestForH is its inverse", () => {
    expect(surfaceChargeLeftV(0.3, 3.2, 3.2)).toBeCloseTo(0.3 / Math.E, 12);
    expect(surfaceChargeLeftV(0.3, leastRestForH(0.3, 0.02, 3.2), 3.2)).toBeCloseTo(0.02, 12);
  });

  it("needs no rest for less than is tolerable, and has no answer for what cannot be", () => {
    expect(leastRestForH(0.01, 0.02, 3)).toBe(0);
    expect(leastRestForH(0.3, 0, 3)).toBeNaN();
    expect(surfaceChargeLeftV(0.3, -1, 3)).toBeNaN();
    expect(surfaceChargeLeftV(0.3, 1, Number.NaN)).toBeNaN();
  });
});
