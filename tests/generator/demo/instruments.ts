/** The demo's instruments as they truly err; data/instruments/ says how far they may. All invented. */
import type { RecorderModel } from "../recorder.ts";
import type { BenchInstruments, Hydrometer } from "../scenario.ts";

export const tern: RecorderModel = {
  id: "recorder-tern",
  dialect: "tern",
  intervalS: 20,
  voltage: { gain: 1.0007, offset: 0.002, noise: 0.003, resolution: 0.001 },
  current: { gain: 0.9965, offset: 0.004, noise: 0.006, resolution: 0.001 },
  temperature: { gain: 1, offset: 0.3, noise: 0.1, resolution: 0.1 },
  leadOhm: 0,
  stop: { belowA: 0.2, forS: 1800 },
};

export const crab: RecorderModel = {
  id: "recorder-crab",
  dialect: "crab",
  intervalS: 20,
  voltage: { gain: 0.9992, offset: 0, noise: 0.002, resolution: 0.001 },
  current: { gain: 1.004, offset: -0.003, noise: 0.004, resolution: 0.001 },
  leadOhm: 0.004,
  stop: { afterH: 24 },
};

export const mussel: RecorderModel = {
  id: "recorder-mussel",
  dialect: "mussel",
  intervalS: 10,
  voltage: { gain: 1.001, offset: 0, noise: 0.006, resolution: 0.01 },
  current: { gain: 1.006, offset: 0.01, noise: 0.012, resolution: 0.01 },
  temperature: { gain: 1, offset: -0.4, noise: 0.2, resolution: 1 },
  leadOhm: 0,
  stop: { afterRows: 6000 },
};

export const shoal: RecorderModel = {
  id: "recorder-shoal",
  dialect: "shoal",
  intervalS: 5,
  voltage: { gain: 0.9995, offset: 0.004, noise: 0.004, resolution: 0.01 },
  current: { gain: 0.998, offset: 0.002, noise: 0.005, resolution: 0.001 },
  leadOhm: 0,
  mainsPowered: true,
  stop: { afterRows: 9000 },
};

export const curlew: RecorderModel = {
  id: "recorder-curlew",
  dialect: "curlew",
  intervalS: 10,
  onChange: { voltageV: 0.03, currentA: 0.05, atLeastEveryS: 900 },
  voltage: { gain: 1.0003, offset: -0.001, noise: 0.0015, resolution: 0.001 },
  current: { gain: 1.002, offset: 0.001, noise: 0.002, resolution: 0.001 },
  leadOhm: 0,
  stop: {},
};

const glassHydrometer: Hydrometer = {
  scale: "kg/l at 25 °C",
  correctsTemperature: false,
  channel: { gain: 1, offset: 0.001, noise: 0.0012, resolution: 0.005 },
};

const digitalHydrometer: Hydrometer = {
  scale: "SG 20/20 °C",
  correctsTemperature: true,
  channel: { gain: 1, offset: -0.0005, noise: 0.0006, resolution: 0.001 },
};

const bench: BenchInstruments = {
  voltmeter: { gain: 1.0004, offset: 0, noise: 0.003, resolution: 0.01 },
  clampMeter: { gain: 1.01, offset: 0.01, noise: 0.006, resolution: 0.01 },
  thermometer: { gain: 1, offset: 0.2, noise: 0.3, resolution: 1 },
  batteryTester: { gain: 0.99, offset: 0, noise: 4, resolution: 5 },
};

/** The bench with its glass hydrometer, with its digital one, and for sealed batteries with none. */
export const glassBench: BenchInstruments = { ...bench, hydrometer: glassHydrometer };
export const digitalBench: BenchInstruments = { ...bench, hydrometer: digitalHydrometer };
export const sealedBench: BenchInstruments = bench;
