import { describe, expect, it } from "vitest";
import { water } from "../../../../lib/judge/findings/water.ts";
import { instrument } from "../../../../lib/nouns/instrument.ts";
import { absorption, benchInstruments, bulk, contextOf, float, logOf, type Part, recordingOf, visit } from "../../measure/bench.ts";

const scale = instrument.parse({ name: "Scale (invented)", kind: "scale", measures: { weight: { plusMinus: 0.002 } } });
const fineClamp = instrument.parse({ name: "Fine clamp (invented)", kind: "clamp-meter", measures: { current: { plusMinus: 0.005 } } });
const instruments = { ...benchInstruments, scale, clampMeter: fineClamp };
const left = [{ onH: 0, offH: 720 }];

/** A month connected, and a clamp meter's word at its end. */
const heldAt = (clamp_A: number, more: Parameters<typeof contextOf>[0] = {}) =>
  water.judge(
    contextOf({
      instruments,
      connections: left,
      readings: [visit(1, 700, { terminal_V: 13.6, clamp_A }, { charger: "connected" })],
      ...more,
    }),
  );
/** A month connected between two weighings. */
const weighed = (lostG: number, more: Parameters<typeof contextOf>[0] = {}) =>
  water.judge(
    contextOf({
      instruments,
      connections: left,
      readings: [visit(1, -1, { weight_kg: 15 }), visit(2, 721, { weight_kg: 15 - lostG / 1000 })],
      ...more,
    }),
  );
const recorded = (parts: readonly Part[], more: Parameters<typeof contextOf>[0] = {}) =>
  water.judge(contextOf({ connections: [{ onH: 0, offH: 60, recordings: [recordingOf(logOf(parts))] }], ...more }));

describe("what does leaving it on cost in water?", () => {
  it("little, where less flows than a full vented battery takes on float: 30 mA of 60 Ah are 0.24 g a day and cell (W005)", () => {
    expect(heldAt(0.03)).toMatchObject({
      verdict: "little",
      weight: "good",
      // 0.336087 g/Ah · 0.03 A · 24 h = 0.242 g; times six cells and thirty days 43.6 g.
      sentence: expect.stringContaining("up to 0.24 g of water a day in each cell, 44 g a month"),
      wouldSettle: "weighing the battery before and after some weeks connected",
    });
  });

  it("may be more than a float, where more flows; about one, where the meter cannot say", () => {
    expect(heldAt(0.24)).toMatchObject({
      verdict: "may be more than a float",
      weight: "caution",
      sentence: expect.stringContaining("every week at first"),
    });
    expect(heldAt(0.06)).toMatchObject({ verdict: "about a float at most", weight: "note" });
  });

  it("cannot tell, where the meter's accuracy is not stated", () => {
    expect(heldAt(0.03, { instruments: { ...instruments, clampMeter: instrument.parse({ ...fineClamp, measures: {} }) } })).toMatchObject({
      verdict: "cannot tell",
      weight: "unsure",
    });
  });

  it("says for how long the stated reserve lasts, with the meter's error against it", () => {
    const surelyA = 0.24 + (2 * 0.005) / Math.sqrt(3);
    const days = (60 / (0.336087 * 24 * surelyA)).toFixed(0);
    expect(heldAt(0.24, { battery: { waterReserveGPerCell: 60 } })?.sentence).toContain(`lasts at least ${days} days`);
  });

  it("carries the caution: distilled water, acid, hydrogen, and who decides", () => {
    for (const finding of [heldAt(0.03), weighed(50), water.judge(contextOf())])
      expect(finding?.why.join(" ")).toMatch(/distilled water only.*acid.*hydrogen.*local codes/);
  });

  it("goes by weight wherever the battery was weighed: 50 g in 720 h are a mean of 34.44 mA (W008), 0.57 mA per Ah of 60 Ah", () => {
    const readings = [
      visit(1, -1, { weight_kg: 15 }),
      visit(2, 700, { terminal_V: 13.6, clamp_A: 0.5 }, { charger: "connected" }),
      visit(3, 721, { weight_kg: 14.95 }),
    ];
    expect(weighed(50, { readings })).toMatchObject({
      verdict: "little",
      sentence: expect.stringContaining("lost 50 g of water in 720 h connected, by weight: 0.28 g a day in each cell"),
      why: expect.arrayContaining([expect.stringContaining("a mean of 0.57 mA per Ah")]),
      wouldSettle: null,
    });
  });

  it("more than a float by weight, with what the reserve is worth at that pace", () => {
    // 300 g in 30 days over six cells: 1.667 g a day, so 60 g last 36 days.
    expect(weighed(300, { battery: { waterReserveGPerCell: 60 } })).toMatchObject({
      verdict: "more than a float",
      weight: "caution",
      sentence: expect.stringContaining("lasts about 36 days"),
    });
  });

  it("tells a weighing over less than a day connected beside its verdict, and does not judge by it", () => {
    const finding = weighed(20, { connections: [{ onH: 0, offH: 10 }] });
    expect(finding).toMatchObject({ verdict: "not put to the test", doubts: [expect.stringMatching(/20 g lost.*10 h.*too short a time/)] });
  });

  it("doubts a weighed loss that the recorded overcharge cannot explain", () => {
    const readings = [
      visit(1, -1, { weight_kg: 15, density_1: 1.2, acid_C: 25 }),
      visit(2, 721, { weight_kg: 14, density_1: 1.21, acid_C: 25 }),
    ];
    const recordings = [recordingOf(logOf([{ ...bulk, hours: 8 }]))];
    expect(weighed(1000, { readings, connections: [{ onH: 0, offH: 720, recordings }] })?.doubts.join(" ")).toContain(
      "more than the recorded overcharge explains",
    );
  });

  it("takes the end of a recorded float", () => {
    expect(recorded([bulk, absorption, { ...float, hours: 30 }])?.why[0]).toMatch(
      /0\.1\d\d A .*flowed at the end, at 13\.60 V, at a temperature that nobody read/,
    );
  });

  it("holds a current that was still falling against no charger, and tells what the charge itself can have cost", () => {
    const readings = [visit(1, -1, { density_1: 1.2, acid_C: 25 }), visit(2, 30, { density_1: 1.21, acid_C: 25 })];
    expect(recorded([bulk, absorption, { ...float, a: () => 0.5 }], { readings })).toMatchObject({
      verdict: "cannot tell yet",
      weight: "unsure",
      why: [
        expect.anything(),
        expect.stringMatching(/^the charge itself, in this test: \d+ g at most/),
        expect.anything(),
        expect.anything(),
      ],
      doubts: expect.arrayContaining([expect.stringContaining("the current may fall further")]),
    });
  });

  it("does not know what was not seen, and tells the charge's own share where it can", () => {
    expect(water.judge(contextOf())).toMatchObject({ verdict: "not put to the test", weight: "untested" });
    const readings = [visit(1, -1, { density_1: 1.2, acid_C: 25 }), visit(2, 30, { density_1: 1.21, acid_C: 25 })];
    expect(recorded([{ ...bulk, hours: 8 }], { readings })).toMatchObject({
      verdict: "only the charge was seen",
      weight: "untested",
      sentence: expect.stringMatching(/can have cost \d+ g at most/),
    });
  });

  it("goes by weight alone for a sealed battery, and never speaks of topping it up", () => {
    const battery = { construction: "AGM" };
    expect(weighed(30, { battery })).toMatchObject({
      verdict: "it lost weight",
      weight: "caution",
      sentence: expect.stringContaining("cannot be put back"),
    });
    expect(weighed(1, { battery })).toMatchObject({ verdict: "no loss shows", weight: "note" });
    expect(heldAt(0.03, { battery })).toMatchObject({ verdict: "cannot be read", weight: "untested" });
    for (const finding of [weighed(30, { battery }), weighed(1, { battery }), heldAt(0.03, { battery })])
      expect(JSON.stringify(finding)).not.toMatch(/top up|distilled/i);
  });
});
