import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Cell, makeCell, restedCell } from "../../../lib/project/cell.ts";
import type { SettledStep } from "../../../lib/project/charger-behaviour.ts";
import { simulateCharge } from "../../../lib/project/simulate.ts";
import { chargerOf, density, held, never, usedBattery } from "./cases.ts";

const noGas = { ...usedBattery, gassingMA: 0, hardShare: 0, capacityShare: 1 };
const settings = { airC: 25, horizonH: 60 };

describe("a simulated charge", () => {
  it("takes the missing charge over the current while the current is held: 36 Ah at 6 A is 6 h (definition of the ampere-hour)", () => {
    const cell = makeCell(60, 6, density, noGas);
    const charger = chargerOf({ kind: "current", currentA: 6, ceilingV: never, endsAtCeiling: false, afterH: never });
    const { hoursTo } = simulateCharge(cell, restedCell(cell, 0.2, 25), charger, settings);
    // Summed in steps without any curve in them: rounding only.
    expect(hoursTo["80 %"]).toBeCloseTo(6, 9);
    expect(hoursTo["95 %"]).toBeCloseTo(7.5, 9);
  });

  it("approaches as an exponential where resistance is constant and rest voltage straight: dq/dt = (U - a - b·q)/r (closed form)", () => {
    const parameters = { ...noGas, baseOhmAh: 0.06, nearFullOhmAh: 0, resistancePerK: 0 };
    const cell: Cell = { ...makeCell(60, 6, density, parameters), rest: [2, 0.1, 0] };
    // At 2.095 V a cell charge would settle at 0.95 with a time constant of 0.06/0.1 h.
    const { path } = simulateCharge(cell, restedCell(cell, 0.2, 25), chargerOf(held(6 * 2.095, 1e4)), {
      ...settings,
      horizonH: 3,
      pathEveryH: 0,
    });
    // Steps that move a hundredth of the capacity leave less than a thousandth of it.
    for (const { hours, stateOfCharge } of path)
      expect(Math.abs(stateOfCharge - (0.95 - 0.75 * Math.exp(-hours / 0.6)))).toBeLessThan(0.001);
  });

  it("keeps the charge balance: what passed is what was stored and what split water, and the state moved by as much", () => {
    const cell = makeCell(60, 6, density, usedBattery);
    const start = restedCell(cell, 0.2, 15);
    const { whole, endState } = simulateCharge(cell, start, chargerOf(held(14.8, 8)), settings);
    expect(whole.passedAh).toBe(whole.storedAh + whole.gassedAh);
    expect(endState.storedAh - start.storedAh).toBeCloseTo(whole.storedAh, 9);
    expect(whole.gassedAh).toBeGreaterThan(0);
    // 0.33609 g an ampere-hour and cell (Faraday's law).
    expect(whole.waterG / whole.gassedAh / 6).toBeCloseTo(0.33609, 4);
  });

  it("obeys both limits of every charger on every battery (60 random ones)", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 13.4, max: 15.5, noNaN: true }),
        fc.double({ min: 0.5, max: 30, noNaN: true }),
        fc.double({ min: 4, max: 140, noNaN: true }),
        fc.double({ min: 0.05, max: 0.95, noNaN: true }),
        (voltageV, limitA, ratedAh, share) => {
          const cell = makeCell(ratedAh, 6, density, usedBattery);
          const outcome = simulateCharge(cell, restedCell(cell, share, 20), chargerOf(held(voltageV, limitA)), {
            ...settings,
            horizonH: 24,
          });
          expect(outcome.highestV).toBeLessThanOrEqual(voltageV + 1e-6);
          expect(outcome.highestA).toBeLessThanOrEqual(limitA + 1e-6);
          expect(outcome.stateOfCharge).toBeLessThanOrEqual(1.001);
        },
      ),
      { numRuns: 60, seed: 11 },
    );
  });

  it("takes longer for a bigger battery, a flatter one, a colder one and a weaker charger (20 random cases each)", () => {
    const hours = (ratedAh: number, share: number, airC: number, limitA: number): number => {
      const cell = makeCell(ratedAh, 6, density, { ...usedBattery, hardShare: 0.01 });
      return simulateCharge(cell, restedCell(cell, share, airC), chargerOf(held(14.4, limitA)), { airC, horizonH: 500 }).hoursTo["95 %"];
    };
    fc.assert(
      fc.property(
        fc.double({ min: 20, max: 100, noNaN: true }),
        fc.double({ min: 0.1, max: 0.7, noNaN: true }),
        fc.double({ min: 5, max: 25, noNaN: true }),
        fc.double({ min: 2, max: 10, noNaN: true }),
        (ratedAh, share, airC, limitA) => {
          const usual = hours(ratedAh, share, airC, limitA);
          expect(hours(1.2 * ratedAh, share, airC, limitA)).toBeGreaterThan(usual);
          expect(hours(ratedAh, share - 0.05, airC, limitA)).toBeGreaterThan(usual);
          expect(hours(ratedAh, share, airC - 10, limitA)).toBeGreaterThan(usual);
          expect(hours(ratedAh, share, airC, 0.7 * limitA)).toBeGreaterThan(usual);
        },
      ),
      { numRuns: 20, seed: 13 },
    );
  });

  it("does not depend on how it steps: with steps five times shorter the hours move by less than 1 %", () => {
    const cell = makeCell(60, 6, density, { ...usedBattery, hardShare: 0.01 });
    const run = (longestStepH: number) =>
      simulateCharge(cell, restedCell(cell, 0.2, 20), chargerOf(held(14.4, 6, 0.6), { ...held(13.6, 6), isFloat: true } as SettledStep), {
        ...settings,
        longestStepH,
      });
    const [usual, fine] = [run(0.5), run(0.1)];
    expect(usual.hoursTo["95 %"] / fine.hoursTo["95 %"]).toBeCloseTo(1, 2);
    expect(usual.leftOffH / fine.leftOffH).toBeCloseTo(1, 2);
  });

  it("goes to float at its end current, gives nothing at first, and goes on giving a little", () => {
    const cell = makeCell(60, 6, density, usedBattery);
    const float: SettledStep = { kind: "voltage", voltageV: 13.6, limitA: 6, belowA: 0, afterH: never, isFloat: true };
    const outcome = simulateCharge(cell, restedCell(cell, 0.3, 20), chargerOf(held(14.4, 6, 0.6), float), { ...settings, pathEveryH: 0 });
    expect(outcome.leftOffH).toBeGreaterThan(4);
    expect(outcome.leftOffH).toBeLessThan(20);
    expect(outcome.charge.hours).toBeCloseTo(outcome.leftOffH, 9);
    expect(outcome.whole.storedAh).toBeGreaterThan(outcome.charge.storedAh);
    for (const { hours, voltageV } of outcome.path) if (hours > outcome.leftOffH + 12) expect(voltageV).toBeCloseTo(13.6, 6);
  });

  it("wakes an on-off charger at its threshold, again and again, and never drives it above its ceiling", () => {
    const cell = makeCell(40, 6, density, { ...usedBattery, hardShare: 0.01 });
    const charger = chargerOf(
      { kind: "current", currentA: 5, ceilingV: 14.5, endsAtCeiling: true, afterH: never },
      { kind: "off", wakeBelowV: 13, wakeTo: 0 },
    );
    const outcome = simulateCharge(cell, restedCell(cell, 0.5, 20), charger, settings);
    expect(outcome.restarts).toBeGreaterThan(3);
    expect(outcome.highestV).toBeLessThanOrEqual(14.5 + 1e-6);
    expect(outcome.stateOfCharge).toBeGreaterThan(0.8);
  });

  it("halves the charge put in when a throttle halves the current half of the time, to three quarters", () => {
    const cell = makeCell(100, 6, density, noGas);
    const steps: SettledStep[] = [{ kind: "current", currentA: 4, ceilingV: never, endsAtCeiling: false, afterH: never }];
    const charger = { ...chargerOf(...steps), throttle: { afterH: 0.5, forH: 0.5, share: 0.5 } };
    const { whole } = simulateCharge(cell, restedCell(cell, 0.1, 25), charger, { ...settings, horizonH: 10 });
    expect(whole.passedAh).toBeCloseTo(0.75 * 40, 6);
  });

  it("never gets there, and says so, when the charger switches off early; energy is counted to the end", () => {
    const cell = makeCell(60, 6, density, usedBattery);
    const outcome = simulateCharge(
      cell,
      restedCell(cell, 0.2, 20),
      chargerOf({ kind: "current", currentA: 6, ceilingV: never, endsAtCeiling: false, afterH: 2 }),
      settings,
    );
    expect(outcome.hoursTo.full).toBe(never);
    expect(outcome.leftOffH).toBeCloseTo(2, 9);
    expect(outcome.charge.passedAh).toBeCloseTo(12, 9);
    expect(outcome.whole.mainsWh).toBeCloseTo(outcome.whole.dcWh / 0.8 + 2 * 60, 6);
  });

  it("counts energy to a mark as a charge does that is taken off there, to a part in a thousand of step length", () => {
    const cell = makeCell(60, 6, density, usedBattery);
    const charge = (horizonH: number) =>
      simulateCharge(cell, restedCell(cell, 0.2, 20), chargerOf(held(14.4, 6)), { ...settings, horizonH });
    const long = charge(60);
    for (const mark of ["80 %", "95 %"] as const) expect(charge(long.hoursTo[mark]).whole.mainsWh / long.mainsWhTo[mark]).toBeCloseTo(1, 3);
    expect(charge(1).mainsWhTo["95 %"]).toBe(never);
  });

  it("ends, with NaN, for a battery of impossible acid", () => {
    const cell = makeCell(60, 6, { full: 3, empty: 2 }, usedBattery);
    expect(simulateCharge(cell, restedCell(cell, 0.2, 20), chargerOf(held(14.4, 6)), settings).stateOfCharge).toBeNaN();
  });
});
