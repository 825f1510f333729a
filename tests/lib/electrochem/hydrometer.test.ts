import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { weightFractionOfAcid } from "../../../lib/electrochem/acid.ts";
import { correctByRule, correctionRules, densityAt25C, errorOfRule } from "../../../lib/electrochem/hydrometer.ts";
import { densityConventions } from "../../../lib/nouns/instrument.ts";

const seed = 20260311;

describe("density at 25 °C from a hydrometer", () => {
  it.each([
    // The same printed 1.265 on three scales; weight percent from the reference pack's table, printed to 0.01.
    ["kg/l at 25 °C", 36.03],
    ["SG 25/25 °C", 35.59],
    ["SG 60/60 °F", 35.08],
  ] as const)("1.265 by %s is acid of %f weight percent", (convention, weightPercent) => {
    const { densityAt25C: density } = densityAt25C(1.265, convention, undefined, true);
    expect(100 * weightFractionOfAcid(density, 25)).toBeCloseTo(weightPercent, 1);
  });

  it("leaves a reading in kg/l at 25 °C alone, and claims no uncertainty for it", () => {
    const { densityAt25C: density, standardUncertainty } = densityAt25C(1.265, "kg/l at 25 °C", 25, false);
    expect(density).toBeCloseTo(1.265, 9);
    expect(standardUncertainty).toBe(0);
  });

  it("raises a warm reading and lowers a cold one", () => {
    expect(densityAt25C(1.25, "kg/l at 25 °C", 35, false).densityAt25C).toBeGreaterThan(1.25);
    expect(densityAt25C(1.25, "kg/l at 25 °C", 15, false).densityAt25C).toBeLessThan(1.25);
  });

  it("does not correct twice for an instrument that corrects by itself", () => {
    expect(densityAt25C(1.25, "kg/l at 25 °C", 35, true)).toEqual(densityAt25C(1.25, "kg/l at 25 °C", undefined, true));
  });

  it("refers a corrected reading at 20 °C to 25 °C: 0.0035 less for battery acid", () => {
    expect(densityAt25C(1.265, "kg/l at 20 °C", undefined, true).densityAt25C).toBeCloseTo(1.2614, 4);
  });

  it("with no temperature carries ±10 K at the acid's own slope", () => {
    const { standardUncertainty } = densityAt25C(1.265, "kg/l at 25 °C", undefined, false);
    // 0.00072 per K at 36 wt %, rectangular: 0.0072/√3 = 0.00416.
    expect(standardUncertainty).toBeCloseTo(0.0072 / Math.sqrt(3), 4);
  });

  it("with no convention covers what every convention would have said", () => {
    for (const reading of [1.1, 1.15, 1.2, 1.265, 1.28, 1.3]) {
      const unstated = densityAt25C(reading, "not stated", undefined, true);
      expect(unstated.standardUncertainty).toBeCloseTo(0.004 / Math.sqrt(3), 10);
      for (const convention of densityConventions) {
        const { densityAt25C: density } = densityAt25C(reading, convention, undefined, true);
        // Half of the spread is 0.0038 to 0.0041, rounded to 0.004; the middle is 0.0003 off centre for strong acid.
        expect(Math.abs(density - unstated.densityAt25C), `${reading} ${convention}`).toBeLessThan(0.0045);
      }
    }
  });

  it("never gets surer by knowing less", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1.05, max: 1.3, noNaN: true }),
        fc.double({ min: 15, max: 35, noNaN: true }),
        (reading, acidTemperatureC) => {
          const known = densityAt25C(reading, "SG 25/25 °C", acidTemperatureC, false).standardUncertainty;
          const noTemperature = densityAt25C(reading, "SG 25/25 °C", undefined, false).standardUncertainty;
          const nothing = densityAt25C(reading, "not stated", undefined, false).standardUncertainty;
          expect(noTemperature).toBeGreaterThan(known);
          expect(nothing).toBeGreaterThan(noTemperature);
        },
      ),
      { seed },
    );
  });

  it("is NaN, with its uncertainty, for a reading that is no acid or acid beyond 0 to 50 °C", () => {
    for (const { densityAt25C: density, standardUncertainty } of [
      densityAt25C(0.9, "kg/l at 25 °C", 25, false),
      densityAt25C(1.25, "kg/l at 25 °C", -5, false),
      densityAt25C(Number.NaN, "not stated", undefined, false),
    ]) {
      expect(density).toBeNaN();
      expect(standardUncertainty).toBeNaN();
    }
  });
});

describe("the trade's correction rules", () => {
  it("change nothing at their own temperature", () => {
    for (const rule of Object.keys(correctionRules) as (keyof typeof correctionRules)[]) {
      expect(correctByRule(1.25, correctionRules[rule].referenceC, rule)).toBe(1.25);
    }
  });

  it("miss the real acid as the reference pack says: 1.265 at 0 °C comes out 0.003 high by 0.001 per 3 °F", () => {
    // 1.2500 by the rule, 1.2468 through the acid; both printed to 0.0001.
    expect(errorOfRule(1.265, 0, "0.001 per 3 °F from 77 °F")).toBeCloseTo(0.0032, 3);
  });
});
