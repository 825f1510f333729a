import { describe, expect, it } from "vitest";
import { floatWindowOf } from "../../../lib/judge/float-window.ts";
import type { BatteryTemperature } from "../../../lib/measure/span-temperature.ts";
import { type Battery, battery, constructions } from "../../../lib/nouns/battery.ts";
import type { CompensationRule } from "../../../lib/nouns/rules.ts";

const usual: CompensationRule = { leastMVPerKPerCell: -3, mostMVPerKPerCell: -5, fromC: 5, toC: 40 };
const exactly = (temperatureC: number): BatteryTemperature => ({ lowC: temperatureC, highC: temperatureC, words: "read", evidence: [] });
const of = (construction: Battery["construction"], cells = 6, temperature?: BatteryTemperature, rule = usual) =>
  floatWindowOf(battery.parse({ name: "Bench", nominalVoltageV: cells * 2, cells, construction, capacityAh: 60 }), temperature, rule);

describe("float windows of a 12 V battery at 25 °C, against published figures", () => {
  it.each([
    // A public maker's page: 13.4 V for flooded batteries with antimony.
    ["flooded-antimony", 13.4],
    // Common practice of trade pages for calcium batteries.
    ["flooded-calcium", 13.65],
    // AGM makers' figures: 13.6 V, and 13.67 V ± 0.06 V.
    ["AGM", 13.6],
    ["AGM", 13.67],
    // A gel maker's lowest, 13.05 V as printed to the nearest 0.05 V, and the usual 13.8 V (from memory).
    ["gel", 13.1],
    ["gel", 13.8],
  ] as const)("%s: holds the %f V that makers print", (construction, printedV) => {
    const { lowV, highV } = of(construction);
    expect(printedV).toBeGreaterThanOrEqual(lowV);
    expect(printedV).toBeLessThanOrEqual(highV);
  });

  it.each(constructions)(
    "%s: lies inside IEC 60896-11's 2.14 to 2.25 V a cell for vented batteries or, at the upper end, 2.30 V",
    (construction) => {
      const { lowV, highV } = of(construction);
      expect(lowV / 6).toBeGreaterThanOrEqual(2.14);
      expect(highV / 6).toBeLessThanOrEqual(2.3 + 1e-9);
    },
  );

  it.each(constructions)(
    "%s: stays below the gassing voltage of 2.40 V a cell, and says its source and whose word is last",
    (construction) => {
      const { highV, words } = of(construction);
      expect(highV / 6).toBeLessThan(2.4);
      expect(words).toContain("the battery's maker has the last word");
      expect(words).toContain("25 °C");
    },
  );

  it("goes with the number of cells: half of it for 6 V, twice for 24 V", () => {
    expect(of("AGM", 3).highV).toBeCloseTo(6.9, 9);
    expect(of("AGM", 12).lowV).toBeCloseTo(27, 9);
  });
});

describe("float windows at other temperatures", () => {
  // A printed example (read on a battery maker's page): -18 mV/K for 12 V make 13.50 V at 25 °C into 13.77 V at 10 °C and 13.32 V at 35 °C.
  const printed: CompensationRule = { ...usual, leastMVPerKPerCell: -3, mostMVPerKPerCell: -3 };
  it.each([
    // The window is printed for 20 to 25 °C, so the cold example's 15 K begin at 20 °C.
    [5, 13.77],
    [35, 13.32],
  ])("moves the lower end, 13.50 V, at %f °C to the %f V that is printed", (temperatureC, printedV) => {
    const { lowV, standardUncertainty } = of("AGM", 6, exactly(temperatureC), printed);
    expect(lowV).toBeCloseTo(printedV, 9);
    expect(standardUncertainty).toBe(0);
  });

  it("does not know where between -3 and -5 mV/K the battery's own slope lies, and carries that as uncertainty", () => {
    // 15 K and 6 cells: 0.27 to 0.45 V, so 0.36 ± 0.09 V, rectangular.
    const { lowV, highV, standardUncertainty } = of("AGM", 6, exactly(5));
    expect(lowV).toBeCloseTo(13.86, 9);
    expect(highV).toBeCloseTo(14.16, 9);
    expect(standardUncertainty).toBeCloseTo(0.09 / Math.sqrt(3), 9);
  });

  it.each([20, 22, 25])("holds as printed at %f °C, between the two temperatures that makers print it for", (temperatureC) => {
    expect(of("AGM", 6, exactly(temperatureC))).toMatchObject({ lowV: 13.5, highV: 13.8, standardUncertainty: 0 });
  });

  it("moves no further beyond the rule's range of temperatures", () => {
    expect(of("AGM", 6, exactly(-10)).lowV).toBe(of("AGM", 6, exactly(0)).lowV);
    expect(of("AGM", 6, exactly(0)).lowV).toBeGreaterThan(of("AGM", 6, exactly(10)).lowV);
  });

  it("tells the trade's rule of thumb beside it in the cold: 0.3 V more for 12 V at 0 °C (common practice)", () => {
    expect(of("AGM", 6, exactly(0)).words).toContain("about +0.30 V");
    expect(of("AGM", 6, exactly(20)).words).not.toContain("rule of thumb");
  });
});
