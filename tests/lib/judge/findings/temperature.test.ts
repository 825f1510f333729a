import { describe, expect, it } from "vitest";
import { temperature } from "../../../../lib/judge/findings/temperature.ts";
import { instrument } from "../../../../lib/nouns/instrument.ts";
import { benchInstruments, bulk, contextOf, logOf, plainRecorder, recordingOf, visit } from "../../measure/bench.ts";

type Values = Parameters<typeof visit>[2];
const thermometer = instrument.parse({ name: "Probe (invented)", kind: "thermometer", measures: { temperature: { plusMinus: 1 } } });
const onCharge = (values: Values, options: Parameters<typeof contextOf>[0] = {}) =>
  temperature.judge(contextOf({ instruments: { thermometer }, readings: [visit(1, 3, values, { charger: "connected" })], ...options }));

describe("was it too cold or too hot to charge?", () => {
  it("no, with acid, battery and air told apart and never mixed", () => {
    expect(onCharge({ acid_C: 31, battery_C: 27, air_C: 18 })).toMatchObject({
      verdict: "no, ordinary",
      weight: "good",
      sentence: "It was neither too cold nor too hot: the acid 31 °C, the battery 27 °C, the air 18 °C.",
      why: expect.arrayContaining(["visit 1, on charge: the acid 31 °C, the air 18 °C, 13 K warmer than the air"]),
      doubts: [],
    });
  });

  it("too hot, at 51 °C and more with a thermometer within 1 K: from 50 °C a charge should stop (common practice)", () => {
    expect(onCharge({ acid_C: 51 })).toMatchObject({ verdict: "too hot", weight: "bad" });
    expect(onCharge({ acid_C: 50 })).toMatchObject({ verdict: "warm", weight: "caution" });
  });

  it("warm, from 45 °C with the thermometer's error; by the air, since a battery on charge is up to 10 K warmer", () => {
    expect(onCharge({ battery_C: 44 })).toMatchObject({ verdict: "warm", wouldSettle: "the temperature of the acid during the charge" });
    expect(onCharge({ battery_C: 43 })).toMatchObject({ verdict: "no, ordinary" });
    expect(onCharge({ air_C: 34 })).toMatchObject({ verdict: "warm", sentence: expect.stringContaining("warmer still, by up to 10 K") });
  });

  it("follows the site's own limits", () => {
    const site = { rules: { acidTemperature: { cautionC: 38, stopC: 43 } } };
    expect(onCharge({ acid_C: 44 }, { site })).toMatchObject({ verdict: "too hot", sentence: expect.stringContaining("from 43 °C") });
  });

  it("in the cold, below 0 °C, with where the weakest acid freezes: 1.15 kg/l near −16 °C (CRC: 21.8 %)", () => {
    const readings = [visit(1, -5, { density_1: 1.15, acid_C: 25 }), visit(2, -1, { battery_C: -4 })];
    const finding = temperature.judge(contextOf({ instruments: { ...benchInstruments, thermometer }, readings }));
    expect(finding).toMatchObject({
      verdict: "in the cold",
      weight: "caution",
      sentence: expect.stringContaining("a frozen battery must never be charged"),
    });
    expect(finding?.why.at(-1)).toMatch(/1\.150 kg\/l at visit 1, freezes near -1[567] °C/);
    expect(finding?.doubts).toContain("neither acid nor battery was read while the charger was connected, when they are warmest");
  });

  it("in the cold, of a battery whose acid nobody read: told as a flat one", () => {
    expect(onCharge({ battery_C: -4 }, { battery: { construction: "AGM" } })?.why.at(-1)).toContain("freezes from about −8 °C");
  });

  it("knows little from the air alone", () => {
    expect(onCharge({ air_C: 18 })).toMatchObject({ verdict: "ordinary, by the air", weight: "note" });
  });

  it("takes a recorder's temperature only where its record says what the probe measures", () => {
    const log = logOf([bulk]);
    const withTemperature = { ...log, t: log.s.map(() => 52) };
    const by = (recorder: typeof plainRecorder) =>
      temperature.judge(contextOf({ connections: [{ onH: 0, offH: 10, recordings: [recordingOf(withTemperature, { recorder })] }] }));
    const probe = instrument.parse({ ...plainRecorder, measures: { temperature: { plusMinus: 1 } }, temperatureOf: "battery" });
    expect(by(probe)).toMatchObject({ verdict: "too hot", sentence: expect.stringContaining("(log.csv)") });
    expect(by(plainRecorder)).toMatchObject({ verdict: "not read" });
  });

  it("is untested where nobody read a temperature", () => {
    expect(temperature.judge(contextOf())).toMatchObject({ verdict: "not read", weight: "untested" });
  });
});
