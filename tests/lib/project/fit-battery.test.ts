import { describe, expect, it } from "vitest";
import { chargeForDensityRise, densityAfterCharge } from "../../../lib/electrochem/acid-balance.ts";
import { type BatteryParameters, beliefsOf, parameterNames } from "../../../lib/project/battery-priors.ts";
import { makeCell, restedCell } from "../../../lib/project/cell.ts";
import { type BatteryTest, fitBattery, fitBatteryTests } from "../../../lib/project/fit-battery.ts";
import { fitMap } from "../../../lib/project/fit-map.ts";
import { thinLog } from "../../../lib/project/log-points.ts";
import { poolBatteries } from "../../../lib/project/pool-batteries.ts";
import { simulateCharge } from "../../../lib/project/simulate.ts";
import { startShareFromDensity } from "../../../lib/project/start-share.ts";
import { chargerOf, density, held, usedBattery } from "./cases.ts";

const beliefs = beliefsOf("flooded", "used");
const known = { ratedAh: 60, cells: 6, density, startShare: 0.3, startShareUncertainty: 0.05, airC: 20 };

/** A log that the model itself made. */
function logOf(parameters: BatteryParameters, startShare: number, points = 60) {
  const cell = makeCell(60, 6, density, parameters);
  const { path } = simulateCharge(cell, restedCell(cell, startShare, 20), chargerOf(held(14.4, 6)), {
    airC: 20,
    horizonH: 24,
    pathEveryH: 1 / 30,
    longestStepH: 1 / 30,
  });
  return thinLog(
    Float64Array.from(path, ({ hours }) => hours * 3600),
    Float64Array.from(path, ({ voltageV }) => voltageV),
    Float64Array.from(path, ({ currentA }) => currentA),
    points,
  );
}

describe("a battery fitted to its log", () => {
  const truth = { ...usedBattery, baseOhmAh: 0.4, nearFullOhmAh: 7, polePower: 1.45, hardShare: 0.07, capacityShare: 0.9 };
  const fit = fitBattery(logOf(truth, 0.35), known, beliefs);

  it("gives back what made the log: missing charge within 3 %, resistance near full within 20 %, hard sulphate within 0.02", () => {
    // The beliefs pull a little towards what is usual, and a fit's long steps cost some millivolts.
    const missing = (share: number, capacityShare: number) => (1 - share) * capacityShare;
    expect(missing(fit?.startShare ?? 0, fit?.parameters.capacityShare ?? 0) / missing(0.35, 0.9)).toBeCloseTo(1, 1);
    expect(Math.abs(missing(fit?.startShare ?? 0, fit?.parameters.capacityShare ?? 0) / missing(0.35, 0.9) - 1)).toBeLessThan(0.03);
    expect(Math.abs((fit?.parameters.nearFullOhmAh ?? 0) / 7 - 1)).toBeLessThan(0.2);
    expect(Math.abs((fit?.parameters.hardShare ?? 0) - 0.07)).toBeLessThan(0.02);
    expect(fit?.rmsV).toBeLessThan(0.01);
  });

  it("never claims to know less than before the log", () => {
    for (const deviation of fit?.standardDeviations ?? []) expect(deviation).toBeLessThanOrEqual(1);
    expect(fit?.standardDeviations).toHaveLength(parameterNames.length);
  });

  it("does not get surer from the same log cut finer: neighbouring points resemble each other", () => {
    const finer = fitBattery(logOf(truth, 0.35, 160), known, beliefs);
    for (const [j, deviation] of (fit?.standardDeviations ?? []).entries())
      expect(finer?.standardDeviations[j] ?? 0).toBeGreaterThan(0.8 * deviation);
  });

  it("is undefined for fewer than five points", () => {
    expect(fitBattery(logOf(truth, 0.35).slice(0, 4), known, beliefs)).toBeUndefined();
  });
});

describe("a battery fitted to several of its tests", () => {
  // The same battery from three starts, each read a little wrong; its empty density is 0.01 kg/l above the one taken for it.
  const truth = { ...usedBattery, nearFullOhmAh: 7, hardShare: 0.06, softeningH: 18, capacityShare: 0.9, emptyDensityOffset: 0.01 };
  const readings = [0.2, 0.35, 0.5].map((share) => startShareFromDensity(densityAt(share, truth.emptyDensityOffset), 0.002, density));
  const tests = [0.2, 0.35, 0.5].map((share, index): BatteryTest => {
    const { share: startShare, standardUncertainty, perEmptyDensity } = readings[index] ?? startShareFromDensity(Number.NaN, 0, density);
    return {
      points: logOf(truth, share),
      known: { ...known, startShare, startShareUncertainty: standardUncertainty, startSharePerEmptyDensity: perEmptyDensity },
    };
  });
  const [first, second, third] = tests;
  const asked = (test: BatteryTest | undefined): BatteryTest => ({ points: [], known: test?.known ?? known });
  const fromTwo = fitBatteryTests([first, second].filter(isTest), asked(third), beliefs);
  const fromOne = fitBatteryTests([first].filter(isTest), asked(third), beliefs);

  it("knows a test to come nearly as well as one that was logged: missing charge within 5 %, hard sulphate within 0.02", () => {
    // The density repeats to 0.002 kg/l, a hundredth of the charge or so, and the beliefs pull towards what is usual.
    const missing = (1 - (fromTwo?.startShare ?? 0)) * (fromTwo?.parameters.capacityShare ?? 0);
    expect(Math.abs(missing / (0.5 * 0.9) - 1)).toBeLessThan(0.05);
    expect(Math.abs((fromTwo?.parameters.hardShare ?? 0) - 0.06)).toBeLessThan(0.02);
  });

  it("learns from the others what reading and label get wrong: of a missing charge taken 11 % too large, more than half is mended", () => {
    const missingOf = (share: number, capacityShare: number): number => (1 - share) * capacityShare;
    const wide = { ...beliefs, capacityShare: { ...beliefs.capacityShare, mean: Math.log(1.05) } };
    const after = fitBatteryTests([first, second].filter(isTest), asked(third), wide);
    const unlearnt = missingOf(asked(third).known.startShare, 1.05);
    const learnt = missingOf(after?.startShare ?? 0, after?.parameters.capacityShare ?? 0);
    expect(Math.abs(learnt - 0.45)).toBeLessThan(0.5 * Math.abs(unlearnt - 0.45));
  });

  it("is surer with each test, and never as sure of the next test's hard sulphate as of a level", () => {
    for (const [j, deviation] of (fromOne?.standardDeviations ?? []).entries())
      expect(fromTwo?.standardDeviations[j] ?? 1).toBeLessThan(deviation + 0.02);
    expect(fromTwo?.standardDeviations[parameterNames.indexOf("hardShare")]).toBeGreaterThan(Math.sqrt(0.1));
  });

  it("is the same in whatever order the others come", () => {
    const turned = fitBatteryTests([second, first].filter(isTest), asked(third), beliefs);
    // A fit stops when a round gains less than 1e-4 of half a square; its path there differs with the order of sums.
    for (const [j, z] of (fromTwo?.z ?? []).entries()) expect(turned?.z[j]).toBeCloseTo(z, 2);
  });

  it("is undefined where no log has five points, and believes a start that is known exactly", () => {
    expect(fitBatteryTests([asked(first)], asked(second), beliefs)).toBeUndefined();
    const exact = { points: first?.points ?? [], known: { ...known, startShare: 0.2, startShareUncertainty: 0 } };
    expect(fitBatteryTests([], exact, beliefs)?.startShare).toBe(0.2);
  });
});

function isTest(test: BatteryTest | undefined): test is BatteryTest {
  return test !== undefined;
}

/** Density of a battery that holds a share of its charge and whose empty density lies so much above the one stated. */
function densityAt(share: number, offset: number): number {
  const empty = density.empty + offset;
  return densityAfterCharge(1, empty, share * chargeForDensityRise(1, empty, density.full));
}

describe("the most probable parameters", () => {
  it("are the weighted mean of prior and data for a straight model, with its variance (closed form)", () => {
    // r = (z - 3)/0.5 under a standard normal prior: mean 3·4/(4 + 1), variance 1/5.
    const { z, standardDeviations, converged } = fitMap(([value = 0]) => Float64Array.of((value - 3) / 0.5), 1);
    expect(z[0]).toBeCloseTo(2.4, 6);
    expect(standardDeviations[0]).toBeCloseTo(Math.sqrt(1 / 5), 6);
    expect(converged).toBe(true);
  });

  it("tie together what the data only know together", () => {
    // z0 + z1 = 1 ± 0.01: each alone stays open, their sum does not.
    const { factor } = fitMap(([a = 0, b = 0]) => Float64Array.of((a + b - 1) / 0.01), 2);
    const [[l00 = 0] = [], [l10 = 0, l11 = 0] = []] = factor;
    expect(l00).toBeCloseTo(Math.SQRT1_2, 2);
    expect(Math.hypot(l00 + l10, l11)).toBeCloseTo(0.01, 3);
  });
});

describe("a thinned log", () => {
  it("loses no charge: mean current times length adds up to the trapezoids", () => {
    const elapsedS = Float64Array.from({ length: 500 }, (_, i) => i * 60);
    const currentsA = elapsedS.map((s) => 6 * Math.exp(-s / 9000));
    const points = thinLog(
      elapsedS,
      elapsedS.map(() => 14.4),
      currentsA,
      30,
    );
    let [charge, fromH] = [0, 0];
    for (const { endH, currentA } of points) {
      charge += currentA * (endH - fromH);
      fromH = endH;
    }
    const trapezoids = currentsA.slice(1).reduce((sum, current, i) => sum + ((current + (currentsA[i] ?? 0)) / 2) * (60 / 3600), 0);
    expect(charge).toBeCloseTo(trapezoids, 9);
    expect(points.length).toBeLessThanOrEqual(31);
  });

  it("is cut into parts where the current falls, and its parts carry the stretch's charge", () => {
    const elapsedS = Float64Array.from({ length: 500 }, (_, i) => i * 60);
    const flat = elapsedS.map(() => 14.4);
    const falling = thinLog(
      elapsedS,
      flat,
      elapsedS.map((s) => 6 * Math.exp(-s / 9000)),
      10,
    );
    let fromH = 0;
    for (const { endH, currentA, parts } of falling) {
      let [charge, partFromH] = [0, fromH];
      for (const part of parts) {
        charge += part.currentA * (part.endH - partFromH);
        partFromH = part.endH;
      }
      expect(charge).toBeCloseTo(currentA * (endH - fromH), 9);
      expect(parts.length).toBeGreaterThan(1);
      fromH = endH;
    }
    const steady = thinLog(
      elapsedS,
      flat,
      elapsedS.map(() => 6),
      10,
    );
    for (const { parts } of steady) expect(parts).toHaveLength(1);
  });

  it("is empty for fewer than three samples, and passes over missing ones", () => {
    expect(thinLog(Float64Array.of(0, 60), Float64Array.of(12, 13), Float64Array.of(5, 5), 10)).toEqual([]);
    const elapsedS = Float64Array.of(0, 60, 120, 180);
    const points = thinLog(elapsedS, Float64Array.of(12, Number.NaN, 13, 14), Float64Array.of(5, 500, 5, 5), 10);
    // A charge of 5 A, and nothing of the 500 A that stand beside a missing voltage.
    expect(new Set(points.map(({ currentA }) => currentA))).toEqual(new Set([5]));
    expect(points.at(-1)).toMatchObject({ endH: 0.05, voltageV: 14 });
  });
});

describe("pooled batteries", () => {
  const fit = fitBattery(logOf({ ...usedBattery, nearFullOhmAh: 8 }, 0.35), known, beliefs);
  const fits = fit === undefined ? [] : [fit];

  it("leave beliefs as they were where there are none", () => {
    expect(poolBatteries(beliefs, [])).toEqual(beliefs);
  });

  it("move beliefs towards what was seen, the more the oftener, and never narrow them below the spread between batteries", () => {
    const once = poolBatteries(beliefs, fits).nearFullOhmAh;
    const often = poolBatteries(
      beliefs,
      Array.from({ length: 50 }, () => fits[0]).flatMap((one) => (one === undefined ? [] : [one])),
    ).nearFullOhmAh;
    expect(once.mean).toBeGreaterThan(beliefs.nearFullOhmAh.mean);
    expect(often.mean).toBeGreaterThan(once.mean);
    expect(once.standardDeviation).toBeLessThan(beliefs.nearFullOhmAh.standardDeviation);
    expect(often.standardDeviation).toBeGreaterThanOrEqual(beliefs.nearFullOhmAh.standardDeviation * Math.SQRT1_2);
  });

  it("are moved together, not each, by what a log only tells of two together (closed form)", () => {
    // A fit that knows z0 + z1 = 1 exactly and nothing of z0 - z1. With b = c = 1/2: the sum of the middles has variance 1 before, the sum
    // seen 1 more between batteries, so the middles' sum is 1/2, shared alike; the difference stays as open as it was.
    const size = parameterNames.length;
    const factor = Array.from({ length: size + 1 }, (_, i) =>
      Array.from({ length: size + 1 }, (_, j) =>
        i < 2 && j < 2 ? (j === 0 ? (i === 0 ? Math.SQRT1_2 : -Math.SQRT1_2) : 0) : i === j ? 1 : 0,
      ),
    );
    const z = parameterNames.map((_, j) => (j < 2 ? 0.5 : 0));
    const pooled = poolBatteries(
      beliefs,
      fits.slice(0, 1).map((one) => ({ ...one, z, factor })),
    );
    for (const name of parameterNames.slice(0, 2)) {
      const { mean, standardDeviation } = beliefs[name];
      expect((pooled[name].mean - mean) / standardDeviation).toBeCloseTo(0.25, 3);
    }
    const { mean, standardDeviation } = beliefs.polePower;
    expect(pooled.polePower.mean).toBeCloseTo(mean, 6);
    expect(pooled.polePower.standardDeviation).toBeCloseTo(standardDeviation, 6);
  });
});
