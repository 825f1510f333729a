import { describe, expect, it } from "vitest";
import { ampereHoursPerMol } from "../../../lib/electrochem/constants.ts";
import {
  acidReleasedG,
  hydrogenVolumeL,
  meanGassingCurrentA,
  overchargeFromLossAh,
  waterElectrolysedG,
  waterFormedG,
} from "../../../lib/electrochem/faraday.ts";

describe("Faraday's law", () => {
  it("turns over one mole of acid and of water a mole of electrons, and electrolyses half a mole of water", () => {
    expect(acidReleasedG(ampereHoursPerMol, 1)).toBeCloseTo(98.079, 9);
    expect(waterFormedG(ampereHoursPerMol, 1)).toBeCloseTo(18.01528, 9);
    expect(waterElectrolysedG(ampereHoursPerMol, 1)).toBeCloseTo(18.01528 / 2, 9);
  });

  it("takes water from every cell in series", () => {
    expect(waterElectrolysedG(5, 6)).toBeCloseTo(6 * waterElectrolysedG(5, 1), 12);
  });

  it("finds the overcharge of a loss that an overcharge has caused", () => {
    expect(overchargeFromLossAh(waterElectrolysedG(12.5, 6), 6)).toBeCloseTo(12.5, 10);
    expect(meanGassingCurrentA(waterElectrolysedG(12.5, 6), 6, 100)).toBeCloseTo(0.125, 12);
  });

  it("has no mean current over no time", () => {
    expect(meanGassingCurrentA(10, 6, 0)).toBeNaN();
  });

  it("frees the hydrogen that IEC 62485-2 counts on, 0.42 l per Ah and cell at 0 °C", () => {
    // The standard rounds to two digits.
    expect(hydrogenVolumeL(1, 1, 0)).toBeCloseTo(0.42, 2);
  });

  it("frees what 0.127 ml/s per ampere and cell is at 25 °C, the other figure in use", () => {
    // 0.127e-3 l/s × 3600 s = 0.457 l, known to three digits.
    expect(hydrogenVolumeL(1, 1, 25)).toBeCloseTo(0.127e-3 * 3600, 2);
  });
});
