import { describe, expect, it } from "vitest";
import { chargeRequired } from "../../../../lib/measure/figures/charge-required.ts";
import { benchInstruments, contextOf, valueIn, visit } from "../bench.ts";

const fromTo = (first: number, last: number) => [
  visit(1, 0, { density_1: first, acid_C: 25 }),
  visit(2, 20, { density_1: last, acid_C: 25 }),
];

describe("charge that the density says went in", () => {
  it("is 20 Ah for 0.80 kg of acid a cell from 1.200 to 1.2537 kg/l (W060)", () => {
    // The battery's record gives the mass when full; 0.80 kg at 1.200 becomes 0.80 + 20 · 2.9873 g = 0.8597 kg at 1.2537.
    const battery = { electrolyteKgPerCell: 0.859746, fullDensity: { value: 1.2537, convention: "kg/l at 25 °C" } };
    const outcome = chargeRequired.compute(contextOf({ battery, readings: fromTo(1.2, 1.2537) }));
    // W060 is printed to 0.001 kg/l, which stands for 0.4 Ah here.
    expect(Math.abs(valueIn(outcome) - 20)).toBeLessThan(0.4);
    expect(outcome).toHaveProperty("doubts", expect.arrayContaining([expect.stringContaining("taken within 5 %")]));
  });

  it("takes the mass from the capacity where the record gives none, with a wider interval and a doubt", () => {
    const given = chargeRequired.compute(contextOf({ battery: { electrolyteKgPerCell: 0.75 }, readings: fromTo(1.15, 1.27) }));
    const estimated = chargeRequired.compute(contextOf({ readings: fromTo(1.15, 1.27) }));
    const share = (outcome: object): number =>
      ("standardUncertainty" in outcome ? Number(outcome.standardUncertainty) : Number.NaN) / valueIn(outcome);
    expect(share(estimated)).toBeGreaterThan(share(given));
    expect(estimated).toHaveProperty("doubts", expect.arrayContaining(["the mass of acid is estimated from the rated capacity"]));
  });

  it("says so where the hydrometer's accuracy is not stated, and takes 0.005 kg/l for it", () => {
    const { hydrometer } = benchInstruments;
    const unstated = contextOf({ instruments: { hydrometer: { ...hydrometer, measures: {} } }, readings: fromTo(1.15, 1.27) });
    expect(chargeRequired.compute(unstated)).toHaveProperty(
      "doubts",
      expect.arrayContaining([expect.stringContaining("±0.005 kg/l is taken")]),
    );
  });

  it("is absent for a sealed battery, for one visit, and outside what acid can be", () => {
    expect(chargeRequired.compute(contextOf({ battery: { construction: "AGM" }, readings: fromTo(1.15, 1.27) }))).toMatchObject({
      absent: "not applicable",
    });
    expect(chargeRequired.compute(contextOf({ readings: fromTo(1.15, 1.27).slice(0, 1) }))).toMatchObject({
      absent: "not measured",
      why: "density was read at fewer than two visits",
    });
  });
});
