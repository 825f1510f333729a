import { describe, expect, it } from "vitest";
import { densityAgainstVoltage } from "../../../../lib/judge/findings/density-against-voltage.ts";
import { contextOf, visit } from "../../measure/bench.ts";

/** 12.70 V stands for 1.2669 kg/l and 12.20 V for 1.1756 at 25 °C (W055, W057). */
const judged = (density: number, restV: number, rest_h: number | undefined, mixed = false) =>
  densityAgainstVoltage.judge(
    contextOf({
      readings: [visit(1, 20, { density_1: density, acid_C: 25, rest_V: restV, ...(rest_h === undefined ? {} : { rest_h }) }, { mixed })],
    }),
  );

describe("do density and rest voltage agree?", () => {
  it("yes, where 12.70 V after a day of rest meets 1.267 kg/l (W055)", () => {
    expect(judged(1.267, 12.7, 24)).toMatchObject({ verdict: "yes", weight: "good" });
  });

  it("stratified or not rested, where the voltage promises more; what settles it depends on whether the acid was mixed", () => {
    expect(judged(1.22, 12.7, 24)).toMatchObject({
      verdict: "stratified or not rested",
      wouldSettle: expect.stringContaining("after the acid was mixed"),
    });
    expect(judged(1.22, 12.7, 24, true)).toMatchObject({ wouldSettle: "a rest voltage after another day" });
  });

  it("density above voltage, where the hydrometer finds more than the voltage carries (W057)", () => {
    expect(judged(1.25, 12.2, 24)).toMatchObject({ verdict: "density above voltage", weight: "caution" });
  });

  it("cannot tell, where the battery had not rested or nobody noted for how long", () => {
    expect(judged(1.22, 12.7, 1)).toMatchObject({ verdict: "cannot tell", weight: "unsure" });
    expect(judged(1.22, 12.7, undefined)).toMatchObject({
      verdict: "cannot tell",
      wouldSettle: "a rest voltage after a night without charge",
    });
  });

  it("does not arise for a sealed battery, or where one of the two was not read", () => {
    expect(densityAgainstVoltage.judge(contextOf({ battery: { construction: "AGM" } }))).toBeUndefined();
    expect(densityAgainstVoltage.judge(contextOf({ readings: [visit(1, 20, { rest_V: 12.7, rest_h: 24 })] }))).toBeUndefined();
  });
});
