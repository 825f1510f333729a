import { parse } from "csv-parse/sync";
import { describe, expect, it } from "vitest";
import { fitDecay } from "../../../lib/signal/fit-decay.ts";
import { isRefused } from "../../../lib/signal/fit-result.ts";
import { readReference } from "../../reference/read-table.ts";

/** Seeded scatter: a linear congruence and Box-Muller, so that a failure can be run again. */
function makeScatter(seed: number): () => number {
  let state = seed;
  const uniform = (): number => {
    state = (state * 1664525 + 1013904223) >>> 0;
    return (state + 0.5) / 2 ** 32;
  };
  return () => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
}

const decayAt = (elapsedS: number): number => 0.4 + 3 * Math.exp(-elapsedS / 3600);

function fitted(t: readonly number[], y: readonly number[]) {
  const fit = fitDecay(t, y);
  if (isRefused(fit)) throw new Error(fit.refused);
  return fit;
}

describe("decay towards a level", () => {
  const times = Array.from({ length: 400 }, (_, i) => i * 30);

  it("finds back what a decay without scatter was made of", () => {
    const { parameters } = fitted(times, times.map(decayAt));
    // Polished to 1e-9 of each.
    expect(parameters[0]).toBeCloseTo(0.4, 7);
    expect(parameters[1]).toBeCloseTo(3, 7);
    expect(parameters[2] / 3600).toBeCloseTo(1, 8);
  });

  it("finds a rise as well, and time constants three decades apart", () => {
    for (const tau of [60, 3600, 60_000]) {
      const { parameters } = fitted(
        times,
        times.map((elapsedS) => 12.7 - 0.5 * Math.exp(-elapsedS / tau)),
      );
      expect(parameters[1]).toBeCloseTo(-0.5, 5);
      expect(parameters[2] / tau).toBeCloseTo(1, 5);
    }
  });

  it("counts the distance from the level at the first sample, however late that is", () => {
    const late = times.map((elapsedS) => elapsedS + 1e7);
    expect(fitted(late, times.map(decayAt)).parameters[1]).toBeCloseTo(3, 5);
  });

  it("commutes with the unit of time", () => {
    const scatter = makeScatter(7);
    const y = times.map((elapsedS) => decayAt(elapsedS) + 0.05 * scatter());
    const inSeconds = fitted(times, y);
    const inHours = fitted(
      times.map((elapsedS) => elapsedS / 3600),
      y,
    );
    expect((3600 * inHours.parameters[2]) / inSeconds.parameters[2]).toBeCloseTo(1, 7);
    expect((3600 * inHours.standardErrors[2]) / inSeconds.standardErrors[2]).toBeCloseTo(1, 6);
  });

  it.each([
    // 200 runs: the standard deviation of a share near 0.9 is 0.02, and the lag-one approximation is known to be a little short.
    [0, 0.9],
    [0.9, 0.84],
  ])("covers the truth with two standard errors where neighbours correlate by %f", (correlation, leastShare) => {
    const scatter = makeScatter(42);
    let covered = 0;
    for (let run = 0; run < 200; run++) {
      let error = 0;
      const y = times.map((elapsedS) => {
        error = correlation * error + Math.sqrt(1 - correlation ** 2) * scatter();
        return decayAt(elapsedS) + 0.05 * error;
      });
      const { parameters, standardErrors } = fitted(times, y);
      if (Math.abs(parameters[2] - 3600) <= 1.96 * standardErrors[2]) covered++;
    }
    expect(covered / 200).toBeGreaterThanOrEqual(leastShare);
  });

  it("agrees with an independent script on three charges of a real battery", () => {
    const samples = (parse(readReference("leadacid-17ah/telemetry.csv"), { columns: true }) as Record<string, string>[])
      .filter((row) => row.current !== "")
      .map((row) => ({ atS: Date.parse(`${row.time?.replace(" ", "T")}Z`) / 1000, currentA: -Number(row.current) }));
    const charges = parse(readReference("leadacid-17ah/expected.csv"), { columns: true }) as Record<string, string>[];
    expect(charges).toHaveLength(3);
    for (const charge of charges) {
      const start = /start (\S+) (\S+)/.exec(charge.note ?? "");
      const fromS = Date.parse(`${start?.[1]}T${start?.[2]}Z`) / 1000 + Number(charge.t_cc_h) * 3600;
      const toS = fromS + Number(charge.t_cv_h) * 3600;
      // The hours are printed to 0.0001, a third of a second.
      const taper = samples.filter(({ atS }) => atS >= fromS - 0.4 && atS <= toS + 0.4);
      const { parameters, residualStandardDeviation } = fitted(
        taper.map(({ atS }) => (atS - fromS) / 3600),
        taper.map(({ currentA }) => currentA),
      );
      // Printed to 0.0001; a sample more or less at an end moves the fit by about as much.
      expect(Math.abs(parameters[0] - Number(charge.fit_Iinf_A))).toBeLessThan(0.0003);
      expect(Math.abs(parameters[1] - Number(charge.fit_A_A))).toBeLessThan(0.0003);
      expect(Math.abs(parameters[2] - Number(charge.fit_tau_h))).toBeLessThan(0.0006);
      // Theirs divides by n, ours by n - 3: half a per cent of 0.07.
      expect(Math.abs(residualStandardDeviation - Number(charge.fit_rms_A))).toBeLessThan(0.0006);
    }
  });

  it("takes well under a second for 5,000 points", () => {
    const many = Array.from({ length: 5000 }, (_, i) => i * 2);
    const began = performance.now();
    fitted(many, many.map(decayAt));
    // 20 to 30 ms when tried; the rest is for slow and busy machines.
    expect(performance.now() - began).toBeLessThan(1000);
  });

  it.each([
    ["too few points", [0, 1, 2], [3, 2, 1.5], /too few/],
    ["nothing", [], [], /too few/],
    ["values all alike", [0, 1, 2, 3, 4, 5], [2, 2, 2, 2, 2, 2], /all alike/],
    ["a clock that runs back", [0, 1, 2, 1, 4, 5], [3, 2, 1, 0.5, 0.3, 0.2], /backwards/],
    ["a clock that stands", [1, 1, 1, 1, 1, 1], [3, 2, 1, 0.5, 0.3, 0.2], /stand still/],
    ["a straight line", [0, 1, 2, 3, 4, 5, 6, 7], [8, 7, 6, 5, 4, 3, 2, 1], /straight line/],
    ["a step", [0, 1, 2, 3, 4, 5, 6, 7], [8, 1, 1, 1, 1, 1, 1, 1], /within one sample/],
  ] as const)("refuses %s", (_, t, y, reason) => {
    const fit = fitDecay(t, y);
    if (!isRefused(fit)) throw new Error("it was fitted");
    expect(fit.refused).toMatch(reason);
  });

  it("refuses mere scatter", () => {
    const scatter = makeScatter(3);
    expect(fitDecay(times, times.map(scatter))).toHaveProperty("refused");
  });
});
