import { describe, expect, it } from "vitest";
import { seededRandom, seedFromName } from "./random.ts";
import { type Look, lookAt, measure, type RecorderModel, type RecordingState, roundTo, startedRecording } from "./recorder.ts";

const exact = { gain: 1, offset: 0, noise: 0, resolution: 0.001 };
const plain: RecorderModel = {
  id: "plain",
  dialect: "tern",
  intervalS: 10,
  voltage: exact,
  current: exact,
  leadOhm: 0,
  stop: {},
};

function record(model: RecorderModel, currentAt: (atS: number) => number, seconds: number): RecordingState {
  const state = startedRecording(0);
  const random = seededRandom(1);
  for (let atS = 0; atS <= seconds && !state.stopped; atS += model.intervalS) {
    const look: Look = {
      atS,
      voltageV: 12.5,
      currentA: currentAt(atS),
      temperatureC: 20,
      passedAh: 0,
      passedWh: 0,
      passedVh: 0,
      passedA2h: 0,
    };
    lookAt(model, {}, state, look, random);
  }
  return state;
}

describe("recorder", () => {
  it("stops when the current was small for long enough, and not when it came back in between", () => {
    const model: RecorderModel = { ...plain, stop: { belowA: 0.2, forS: 60 } };
    expect(record(model, (atS) => (atS < 100 ? 5 : 0.1), 1000).rows.at(-1)?.clockS).toBe(160);
    expect(record(model, (atS) => (atS % 60 === 0 ? 5 : 0.1), 1000).stopped).toBe(false);
  });

  it("stops after its rows and after its hours", () => {
    expect(record({ ...plain, stop: { afterRows: 7 } }, () => 5, 1000).rows.length).toBe(7);
    expect(record({ ...plain, stop: { afterH: 0.1 } }, () => 5, 1000).rows.at(-1)?.clockS).toBe(360);
  });

  it("writes on change the look before it too, so that a straight line between rows invents no charge", () => {
    const onChange = { voltageV: 1, currentA: 0.5, atLeastEveryS: 300 };
    const { rows } = record({ ...plain, onChange }, (atS) => (atS < 500 ? 0 : 2), 600);
    expect(rows.map((row) => [row.clockS, row.currentA])).toEqual([
      [0, 0],
      [300, 0],
      [490, 0],
      [500, 2],
    ]);
  });

  it("rounds to its step, errs by gain and offset, and never writes a minus before zero", () => {
    expect(roundTo(12.3449, 0.01)).toBe(12.34);
    expect(Object.is(roundTo(-0.0001, 0.001), 0)).toBe(true);
    expect(measure({ gain: 1.01, offset: 0.1, noise: 0, resolution: 0.01 }, 10, seededRandom(1))).toBe(10.2);
  });
});

describe("random", () => {
  it("repeats for a seed, and differs for another name", () => {
    const draw = (name: string): number[] => {
      const random = seededRandom(seedFromName(name));
      return [random.uniform(), random.uniform(), random.normal()];
    };
    expect(draw("quay")).toEqual(draw("quay"));
    expect(draw("quay")).not.toEqual(draw("pier"));
  });

  it("has the mean and spread that its names promise, within four standard errors of 20 000 draws", () => {
    const random = seededRandom(7);
    const count = 20_000;
    const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;
    const uniforms = Array.from({ length: count }, () => random.uniform());
    const normals = Array.from({ length: count }, () => random.normal());
    expect(Math.abs(mean(uniforms) - 0.5)).toBeLessThan((4 * Math.sqrt(1 / 12)) / Math.sqrt(count));
    expect(Math.abs(mean(normals))).toBeLessThan(4 / Math.sqrt(count));
    // The variance of a squared normal value is 2.
    expect(Math.abs(mean(normals.map((value) => value ** 2)) - 1)).toBeLessThan((4 * Math.SQRT2) / Math.sqrt(count));
  });
});
