/** Holds forecasts against the truth: do the intervals hold it as often as they say, and how far is the middle from it. */
import type { Condition } from "../../lib/project/battery-priors.ts";
import type { ChargeForecast } from "../../lib/project/forecast.ts";
import { type ChargeMark, chargeMarks } from "../../lib/project/simulate.ts";
import { quantiles } from "../../lib/project/spread.ts";
import { median } from "../../lib/signal/order-statistics.ts";
import type { ChargerKind } from "./draw-campaign.ts";
import type { ObservedTest } from "./run-test.ts";

export const markNames = Object.keys(chargeMarks) as ChargeMark[];

/** One mark of one left-out test. */
export type Scored = {
  readonly seed: number;
  readonly kind: ChargerKind;
  readonly condition: Condition;
  readonly mark: ChargeMark;
  /** Hours; Infinity is "not within the horizon". */
  readonly truthH: number;
  readonly medianH: number;
  readonly low90H: number;
  readonly high90H: number;
  /** Hours of every draw. */
  readonly drawsH: readonly number[];
};

/** Makes the scores of one forecast, a row a mark. */
export function scoreForecast(seed: number, kind: ChargerKind, forecast: ChargeForecast, { test, truth }: ObservedTest): Scored[] {
  return markNames.map((mark) => {
    const { median: medianH, middle90 } = forecast.hoursTo[mark];
    const drawsH = forecast.draws.map(({ hoursTo }) => hoursTo[mark]);
    const { condition } = test;
    return { seed, kind, condition, mark, truthH: truth[mark], medianH, low90H: middle90.low, high90H: middle90.high, drawsH };
  });
}

/** What a table shows of many scores. */
export type Summary = {
  readonly count: number;
  /** Share whose 90 % interval holds the truth; "never" is held where the interval is open. */
  readonly held: number;
  /** Median of |forecast - truth| / truth over the tests in which both are within the horizon, and how many those are. */
  readonly medianError: number;
  readonly bothReached: number;
  /** Median of forecast / truth over the same: 1 without bias. */
  readonly medianRatio: number;
  /** Tests in which the median says "reached" and truth "never", or the other way about. */
  readonly wrongOutcome: number;
  /** Median width of the 90 % interval over its middle, where it is closed. */
  readonly medianWidth: number;
};

/** Summarises scores; NaN where there is nothing to take a share of. */
export function summarise(scores: readonly Scored[]): Summary {
  const both = scores.filter(({ truthH, medianH }) => Number.isFinite(truthH) && Number.isFinite(medianH));
  const closed = scores.filter(({ high90H }) => Number.isFinite(high90H));
  return {
    count: scores.length,
    held: scores.filter(isHeld).length / scores.length,
    medianError: median(both.map(({ truthH, medianH }) => Math.abs(medianH - truthH) / truthH)),
    bothReached: both.length,
    medianRatio: median(both.map(({ truthH, medianH }) => medianH / truthH)),
    wrongOutcome: scores.filter(({ truthH, medianH }) => Number.isFinite(truthH) !== Number.isFinite(medianH)).length,
    medianWidth: median(closed.map(({ low90H, high90H, medianH }) => (high90H - low90H) / medianH)),
  };
}

function isHeld({ truthH, low90H, high90H }: Scored): boolean {
  return truthH >= low90H && truthH <= high90H;
}

/**
 * How often the truth lies at or below each stated share of the draws: a calibrated forecast gives the share itself.
 * @returns one row a share. Where the quantile itself is "never", every truth lies at or below it, so such tests are left out and counted.
 */
export function calibration(scores: readonly Scored[], shares: readonly number[]): { share: number; observed: number; count: number }[] {
  return shares.map((share) => {
    const placed = scores.flatMap(({ truthH, drawsH }) => {
      const [quantileH = Number.NaN] = quantiles(drawsH, [share]);
      return Number.isFinite(quantileH) || Number.isFinite(truthH) ? [truthH <= quantileH] : [];
    });
    return { share, observed: placed.filter(Boolean).length / placed.length, count: placed.length };
  });
}
