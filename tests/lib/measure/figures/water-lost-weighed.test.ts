import { describe, expect, it } from "vitest";
import { waterLostWeighed } from "../../../../lib/measure/figures/water-lost-weighed.ts";
import { instrument } from "../../../../lib/nouns/instrument.ts";
import { benchInstruments, contextOf, visit } from "../bench.ts";

/** ±5 g, so that the interval can be worked by hand: u = 5/√3 g each, U = 2·√2·5/√3 = 8.165 g. */
const scale = instrument.parse({ name: "Scale (invented)", kind: "scale", measures: { weight: { plusMinus: 0.005 } } });
const weighed = (readings: readonly ReturnType<typeof visit>[], more: Parameters<typeof contextOf>[0] = {}) =>
  waterLostWeighed.compute(contextOf({ instruments: { ...benchInstruments, scale }, readings, ...more }));

describe("water lost, by weighing", () => {
  it("is 50 g for 15.200 kg that became 15.150 kg, ±8.2 g (by hand)", () => {
    expect(weighed([visit(1, 0, { weight_kg: 15.2 }), visit(2, 700, { weight_kg: 15.15 })])).toMatchObject({
      value: expect.closeTo(50, 6),
      interval: { low: expect.closeTo(50 - 8.165, 2), high: expect.closeTo(50 + 8.165, 2) },
    });
  });

  it("adds water that was topped up after the first weighing and before the last, and none after it", () => {
    const readings = [
      visit(1, 0, { weight_kg: 15.2, topped_up_g: 30 }),
      visit(2, 100, { topped_up_g: 20 }),
      visit(3, 700, { weight_kg: 15.15, topped_up_g: 500 }),
    ];
    expect(weighed(readings)).toMatchObject({ value: expect.closeTo(100, 6) });
  });

  it("leaves out a weighing with the clamps on: leads weigh too", () => {
    const readings = [
      visit(1, 0, { weight_kg: 15.2 }),
      visit(2, 10, { weight_kg: 15.19 }),
      visit(3, 20, { weight_kg: 15.4 }, { charger: "connected" }),
    ];
    expect(weighed(readings)).toMatchObject({ value: expect.closeTo(10, 6) });
  });

  it("holds for a sealed battery too, where weight is the only measurement", () => {
    const readings = [visit(1, 0, { weight_kg: 15.2 }), visit(2, 700, { weight_kg: 15.15 })];
    expect(weighed(readings, { battery: { construction: "AGM" } })).toMatchObject({ value: expect.closeTo(50, 6) });
  });

  it("cannot tell where the battery grew heavier by more than the scale's error, and is nothing within it", () => {
    const gained = (g: number) => weighed([visit(1, 0, { weight_kg: 15.2 }), visit(2, 700, { weight_kg: 15.2 + g / 1000 })]);
    expect(gained(60)).toMatchObject({ absent: "cannot tell", why: expect.stringContaining("grew heavier by 60 g") });
    expect(gained(4)).toMatchObject({ value: 0, interval: { low: 0, high: expect.closeTo(4.165, 2) } });
  });

  it("has no interval where the scale's accuracy is not stated", () => {
    const readings = [visit(1, 0, { weight_kg: 15.2 }), visit(2, 700, { weight_kg: 15.15 })];
    expect(weighed(readings, { instruments: benchInstruments })).toMatchObject({
      interval: undefined,
      doubts: expect.arrayContaining([expect.stringContaining("accuracy is not stated")]),
    });
  });

  it("is absent for one weighing, or none", () => {
    expect(weighed([visit(1, 0, { weight_kg: 15.2 })])).toMatchObject({ absent: "not measured" });
    expect(weighed([])).toMatchObject({ absent: "not measured" });
  });
});
