import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { addAmounts, chargeOf, chargeOfAll, countedOnce, coveredHoursOfAll, energyOf } from "../../../lib/measure/integrals.ts";
import { absorption, benchStartMs, bulk, logOf, plainRecorder, recordingOf, steadyLog, unstatedRecorder } from "./bench.ts";

describe("adding amounts", () => {
  const part = (meter: string, standardUncertainty: number | undefined) => ({ value: 10, standardUncertainty, meter });

  it("adds the errors of one meter straight, since they are one and the same, and those of two as independent (JCGM 100, 5.2.2 and 5.1.2)", () => {
    expect(addAmounts([part("a", 0.3), part("a", 0.4)])).toEqual({ value: 20, standardUncertainty: 0.7 });
    expect(addAmounts([part("a", 0.3), part("b", 0.4)])).toEqual({ value: 20, standardUncertainty: 0.5 });
  });

  it("knows no uncertainty where that of one part is not known", () => {
    expect(addAmounts([part("a", 0.3), part("b", undefined)])).toEqual({ value: 20, standardUncertainty: undefined });
  });

  it("is nothing for no parts", () => {
    expect(addAmounts([])).toEqual({ value: 0, standardUncertainty: 0 });
  });
});

describe("charge and energy of a recording", () => {
  it("do not change when a log is cut in two, wherever it is cut", () => {
    const current = fc.double({ min: -2, max: 12, noNaN: true });
    fc.assert(
      fc.property(fc.array(current, { minLength: 6, maxLength: 60 }), fc.nat(), (currents, place) => {
        const s = currents.map((_, i) => i * 60);
        const v = currents.map((_, i) => 12 + 0.01 * i);
        const cut = 1 + (place % (currents.length - 2));
        const whole = recordingOf({ s, v, a: currents });
        const first = recordingOf({ s: s.slice(0, cut + 1), v: v.slice(0, cut + 1), a: currents.slice(0, cut + 1) });
        const second = recordingOf({ s: s.slice(cut), v: v.slice(cut), a: currents.slice(cut) });
        expect(chargeOf(first).value + chargeOf(second).value).toBeCloseTo(chargeOf(whole).value, 9);
        expect(energyOf(first).value + energyOf(second).value).toBeCloseTo(energyOf(whole).value, 9);
      }),
      { seed: 20260302, numRuns: 60 },
    );
  });

  it("are never surer with a less accurate recorder", () => {
    const errors = fc.double({ min: 0, max: 2, noNaN: true });
    fc.assert(
      fc.property(errors, errors, errors, (percent, fixedA, worseA) => {
        const uncertaintyOf = (plusMinus: number): number => {
          const current = { percentOfReading: percent, plusMinus, from: "data sheet" as const };
          const recorder = { ...plainRecorder, measures: { ...plainRecorder.measures, current } };
          return chargeOf(recordingOf(steadyLog(30, 13, 4), { recorder })).standardUncertainty ?? Number.NaN;
        };
        expect(uncertaintyOf(fixedA + worseA)).toBeGreaterThanOrEqual(uncertaintyOf(fixedA));
      }),
      { seed: 20260302, numRuns: 40 },
    );
  });

  it("have no uncertainty where the accuracy is not stated", () => {
    const recording = recordingOf(steadyLog(30, 13, 4), { recorder: unstatedRecorder });
    expect([chargeOf(recording).standardUncertainty, energyOf(recording).standardUncertainty]).toEqual([undefined, undefined]);
  });

  it("are 0 for one sample", () => {
    expect(chargeOf(recordingOf(steadyLog(1, 13, 4))).value).toBe(0);
  });
});

describe("counting each hour once", () => {
  const hour = (id: string, startMs: number | undefined) => recordingOf(steadyLog(61, 13, 6), { id, startMs });

  it("adds two hours that follow each other, and takes one that lies inside another for nothing (by hand)", () => {
    const [first, next] = [hour("a", benchStartMs), hour("b", benchStartMs + 3_600_000)];
    expect(chargeOfAll(countedOnce([next, first])).value).toBeCloseTo(12, 9);
    expect(chargeOfAll(countedOnce([first, hour("c", benchStartMs)])).value).toBeCloseTo(6, 9);
    expect(coveredHoursOfAll(countedOnce([first, hour("c", benchStartMs + 900_000)]))).toBeCloseTo(1.25, 9);
  });

  it("counts no hour in which the leads were off the battery, or the wrong way round, as one that shows it", () => {
    for (const offV of [0, -12.6]) {
      const log = logOf([bulk, absorption, { hours: 2, v: () => offV, a: () => 0 }]);
      const recording = recordingOf(log);
      const all = (recording.trace.spanS - (recording.stages.at(-1)?.startS ?? 0)) / 3600;
      expect(all, String(offV)).toBeCloseTo(2, 1);
      expect(coveredHoursOfAll(countedOnce([recording])), String(offV)).toBeCloseTo(recording.trace.spanS / 3600 - all, 9);
    }
  });

  it("counts a recording whole whose start nobody knows", () => {
    expect(chargeOfAll(countedOnce([hour("a", benchStartMs), hour("b", undefined)])).value).toBeCloseTo(12, 9);
  });

  it("keeps to a window of time", () => {
    const window = countedOnce([hour("a", benchStartMs)], benchStartMs + 600_000, benchStartMs + 1_200_000);
    expect(chargeOfAll(window).value).toBeCloseTo(1, 9);
  });
});
