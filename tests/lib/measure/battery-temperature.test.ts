import { describe, expect, it } from "vitest";
import { batteryTemperature } from "../../../lib/measure/battery-temperature.ts";
import type { MeasuredRecording } from "../../../lib/measure/recording.ts";
import { instrument } from "../../../lib/nouns/instrument.ts";
import { benchInstruments, bulk, contextOf, logOf, plainRecorder, recordingOf, visit } from "./bench.ts";

/** The bulk's recording runs from 0 to 5 h. */
const temperatureWith = (options: Parameters<typeof contextOf>[0], recording = recordingOf(logOf([bulk]))) => {
  const context = contextOf({ connections: [{ onH: 0, offH: 5, recordings: [recording] }], ...options });
  const [made] = context.connections[0]?.recordings ?? [];
  if (made === undefined) throw new Error("the bench has one recording");
  return batteryTemperature(made, 0, 5 * 3600);
};

describe("the battery's temperature during a recording", () => {
  it("spans what the visits near it read, ±2 K with a thermometer that nobody states the accuracy of", () => {
    const readings = [visit(1, -1, { battery_C: 12 }), visit(2, 6, { battery_C: 18 }), visit(3, 40, { battery_C: 30 })];
    expect(temperatureWith({ readings })).toMatchObject({ lowC: 10, highC: 20, words: "the battery's, read at visits 1 and 2" });
  });

  it("takes the thermometer's own error where it is stated", () => {
    const thermometer = instrument.parse({ name: "Probe (invented)", kind: "thermometer", measures: { temperature: { plusMinus: 0.5 } } });
    const found = temperatureWith({ readings: [visit(1, 1, { acid_C: 20 })], instruments: { ...benchInstruments, thermometer } });
    expect(found?.lowC).toBeCloseTo(19.5, 9);
    expect(found?.highC).toBeCloseTo(20.5, 9);
  });

  it("lets the air stand in for a battery up to 10 K warmer, and takes the battery's own before it", () => {
    expect(temperatureWith({ readings: [visit(1, 1, { air_C: 5 })] })).toMatchObject({ lowC: 3, highC: 17 });
    expect(temperatureWith({ readings: [visit(1, 1, { air_C: 5 }), visit(2, 2, { battery_C: 9 })] })).toMatchObject({ lowC: 7, highC: 11 });
  });

  it("is not known where no visit within six hours read one", () => {
    expect(temperatureWith({ readings: [visit(1, 12, { battery_C: 20 })] })).toBeUndefined();
  });

  it("takes the recorder's probe only where its record says that it sits on the battery, and only for the time asked for", () => {
    const log = logOf([bulk]);
    const probed = (temperatureOf?: "battery" | "air"): MeasuredRecording =>
      recordingOf({ ...log, t: log.s.map((s) => 10 + s / 3600) }, { recorder: { ...plainRecorder, temperatureOf } });
    const fromTwoToThree = batteryTemperature(probed("battery"), 7200, 10_800);
    expect(fromTwoToThree?.lowC).toBeCloseTo(12 - 2, 9);
    expect(fromTwoToThree?.highC).toBeCloseTo(13 + 2, 9);
    expect(batteryTemperature(probed("air"), 7200, 10_800)).toBeUndefined();
    expect(batteryTemperature(probed(), 7200, 10_800)).toBeUndefined();
  });
});
