/** The numbers of each stage: means, ends, charge, energy, and the taper where one fits. */
import { secondsPerHour } from "../../electrochem/constants.ts";
import type { Limiter, Stage, StageKind } from "../../nouns/stage.ts";
import { fitDecay } from "../../signal/fit-decay.ts";
import { isRefused } from "../../signal/fit-result.ts";
import { median } from "../../signal/order-statistics.ts";
import { trapezoid, trapezoidOfProduct } from "../../signal/trapezoid.ts";
import type { Trace } from "../trace.ts";
import type { FoundStage } from "./find-stages.ts";

/** A fit looks at no more points than this; more would not change it. */
const mostFitPoints = 2000;
/** A single exponential is given only where it misses the samples by less than this share of the fall. */
const worstMisfitShare = 0.06;

const limiterOf: Readonly<Record<StageKind, Limiter>> = {
  "soft-start": "charger",
  "constant-current": "charger",
  "finishing-current": "charger",
  throttled: "throttle",
  "on-off-holding": "charger",
  drooping: "charger",
  pulses: "charger",
  "constant-voltage": "battery",
  float: "battery",
  rest: "nobody",
  interrupted: "nobody",
  discharge: "nobody",
  "no-battery": "nobody",
  reversed: "unknown",
  unexplained: "unknown",
};

/**
 * Measures found stages.
 *
 * Charge and energy are integrated up to the next stage's first sample, so that the stages add up to the whole; a gap inside a stage
 * adds nothing. Means are time-weighted over what was covered.
 */
export function measureStages(trace: Trace, found: readonly FoundStage[]): Stage[] {
  const { elapsedS, voltagesV, currentsA } = trace;
  return found.map((stage) => {
    const { from, to } = stage;
    const end = Math.min(to + 1, trace.elapsedS.length);
    const ranges = trace.stretches.map(([a, b]) => [Math.max(a, from), Math.min(b, end)] as const).filter(([a, b]) => b > a);
    const coveredH = ranges.reduce(
      (sum, [a, b]) => sum + (elapsedS[b - 1] as number) / secondsPerHour - (elapsedS[a] as number) / secondsPerHour,
      0,
    );
    const integral = (values: Float64Array): number =>
      ranges.reduce((sum, [a, b]) => sum + trapezoid(elapsedS, values, a, b, secondsPerHour), 0);
    const chargeAh = integral(currentsA);
    const mean = (sum: number, values: Float64Array): number => (coveredH > 0 ? sum / coveredH : (values[from] as number));
    const edge = Math.max(1, Math.min(5, Math.floor((to - from) / 4)));
    const taper = stage.kind === "constant-voltage" ? fitTaper(trace, from, to) : { taper: null, taperRefused: null };
    const lines: [number, number] = [trace.lines[from] as number, trace.lines[to - 1] as number];
    return {
      kind: stage.kind,
      startS: trace.elapsedS[from] as number,
      endS: trace.elapsedS[end - 1] as number,
      lines: lines[0] <= lines[1] ? lines : [lines[1], lines[0]],
      limitedBy: limiterOf[stage.kind],
      voltageMeanV: mean(integral(voltagesV), voltagesV),
      voltageSpreadV: spreadOf(trace.voltagesV, from, to),
      voltageStartV: median(trace.voltagesV.subarray(from, from + edge)),
      voltageEndV: median(trace.voltagesV.subarray(to - edge, to)),
      currentMeanA: mean(chargeAh, currentsA),
      currentSpreadA: spreadOf(trace.currentsA, from, to),
      currentStartA: median(trace.currentsA.subarray(from, from + edge)),
      currentEndA: median(trace.currentsA.subarray(to - edge, to)),
      chargeAh,
      energyWh: ranges.reduce((sum, [a, b]) => sum + trapezoidOfProduct(elapsedS, voltagesV, currentsA, a, b, secondsPerHour), 0),
      ...taper,
      confidence: stage.confidence,
      why: stage.why,
    };
  });
}

/** Standard deviation of some values; 0 for fewer than two. */
function spreadOf(values: Float64Array, from: number, to: number): number {
  if (to - from < 2) return 0;
  let sum = 0;
  for (let i = from; i < to; i++) sum += values[i] as number;
  const mean = sum / (to - from);
  let squares = 0;
  for (let i = from; i < to; i++) squares += ((values[i] as number) - mean) ** 2;
  return Math.sqrt(squares / (to - from - 1));
}

function fitTaper(trace: Trace, from: number, to: number): Pick<Stage, "taper" | "taperRefused"> {
  const stride = Math.max(1, Math.ceil((to - from) / mostFitPoints));
  const timesH: number[] = [];
  const currentsA: number[] = [];
  for (let i = from; i < to; i += stride) {
    timesH.push((trace.elapsedS[i] as number) / 3600);
    currentsA.push(trace.currentsA[i] as number);
  }
  const fit = fitDecay(timesH, currentsA);
  if (isRefused(fit)) return { taper: null, taperRefused: fit.refused };
  const [levelA, amplitudeA, tauH] = fit.parameters;
  const [, , tauErrorH] = fit.standardErrors;
  if (!(amplitudeA > 0)) return { taper: null, taperRefused: "the current does not fall" };
  const rmsA = fit.residualStandardDeviation;
  if (rmsA > worstMisfitShare * amplitudeA)
    return {
      taper: null,
      taperRefused: `one exponential misses the samples by ${rmsA.toFixed(3)} A, more than ${worstMisfitShare * 100} % of the fall of ${amplitudeA.toFixed(2)} A`,
    };
  return {
    taper: {
      tauH,
      tauLowH: Math.max(0, tauH - 2 * tauErrorH),
      tauHighH: tauH + 2 * tauErrorH,
      levelA,
      endCurrentA: median(currentsA.slice(-5)),
      stillToComeAh: amplitudeA * tauH * Math.exp(-((timesH.at(-1) as number) - (timesH[0] as number)) / tauH),
      rmsA,
    },
    taperRefused: null,
  };
}
