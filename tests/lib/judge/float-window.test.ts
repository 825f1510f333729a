import { describe, expect, it } from "vitest";
import { floatWindowOf } from "../../../lib/judge/float-window.ts";
import { type Battery, battery, constructions } from "../../../lib/nouns/battery.ts";

const of = (construction: Battery["construction"], cells = 6) =>
  floatWindowOf(battery.parse({ name: "Bench", nominalVoltageV: cells * 2, cells, construction, capacityAh: 60 }));

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
