import { describe, expect, it } from "vitest";
import { chargeNeeded } from "../../../lib/measure/charge-needed.ts";
import { benchInstruments, contextOf, visit } from "./bench.ts";

const readings = [visit(1, 0, { density_1: 1.2, acid_C: 25 }), visit(2, 20, { density_1: 1.25, acid_C: 25 })];
const needed = (options: Parameters<typeof contextOf>[0]) => {
  const outcome = chargeNeeded(contextOf({ readings, ...options }));
  if ("why" in outcome) throw new Error(outcome.why);
  return outcome;
};

describe("charge that a rise of density stands for", () => {
  it("rests on the densities of both visits", () => {
    expect(needed({}).evidence.map((place) => place.lines)).toEqual([
      [2, 2],
      [3, 3],
    ]);
  });

  it("goes with the mass of acid", () => {
    const of = (electrolyteKgPerCell: number): number => needed({ battery: { electrolyteKgPerCell } }).value;
    expect(of(1) / of(0.5)).toBeCloseTo(2, 9);
  });

  it("is never surer with a worse hydrometer", () => {
    const widthOf = (plusMinus: number): number => {
      const hydrometer = { ...benchInstruments.hydrometer, measures: { density: { plusMinus, from: "data sheet" as const } } };
      return needed({ instruments: { hydrometer } }).standardUncertainty ?? Number.NaN;
    };
    expect(widthOf(0.01)).toBeGreaterThan(widthOf(0.005));
  });
});
