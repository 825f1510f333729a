/** A charge of a battery not yet seen: the simulator run over a fixed set of draws of all that is not known. */
import { type BatteryBeliefs, type BatteryParameters, parameterNames, parametersAt } from "./battery-priors.ts";
import { makeCell, restedCell } from "./cell.ts";
import { type ChargerBehaviour, settleCharger } from "./charger-behaviour.ts";
import type { FittedBattery } from "./fit-battery.ts";
import { normalQuantile } from "./normal-quantile.ts";
import { partsOfStart } from "./parts-of-start.ts";
import { type ChargeMark, type ChargeOutcome, chargeMarks, simulateCharge } from "./simulate.ts";
import { sobolPoints } from "./sobol.ts";
import { type Spread, spreadOf } from "./spread.ts";

/** The battery and the place for which a charge is forecast. */
export type ChargeCase = {
  readonly ratedAh: number;
  readonly cells: number;
  /** kg/l at 25 °C of its acid, full and empty. */
  readonly density: { readonly full: number; readonly empty: number };
  /** State of charge at the start, 0 to 1 of what it holds, and its standard uncertainty. */
  readonly startShare: number;
  readonly startShareUncertainty: number;
  /** How the start hangs on the battery's own empty density; not at all where left out. See StartShare. */
  readonly startSharePerEmptyDensity?: number;
  readonly airC: number;
  /** Hours beyond which "never" is said. */
  readonly horizonH: number;
};

/**
 * What is known of the battery: beliefs by its kind (or moved by other batteries), and, where a log of this very battery was fitted under
 * those beliefs, that fit. The fit's start then is the forecast's, with all that the log ties together.
 */
export type BatteryKnowledge = { readonly beliefs: BatteryBeliefs; readonly fit?: FittedBattery };

export type ChargeForecast = {
  /** Hours to each mark; Infinity is "not within the horizon". */
  readonly hoursTo: Readonly<Record<ChargeMark, Spread>>;
  /** Energy from the mains until each mark, Wh; Infinity likewise. */
  readonly mainsWhTo: Readonly<Record<ChargeMark, Spread>>;
  /** Share of the draws in which the mark is reached within the horizon. */
  readonly reaches: Readonly<Record<ChargeMark, number>>;
  /** Until the charger leaves off or the horizon: ampere-hours in, stored, gassed; energy at the posts and from the mains; water. */
  readonly passedAh: Spread;
  readonly storedAh: Spread;
  readonly gassedAh: Spread;
  readonly dcWh: Spread;
  readonly mainsWh: Spread;
  readonly waterG: Spread;
  readonly finalShare: Spread;
  readonly draws: readonly ChargeOutcome[];
};

/** How many draws: a power of two, so that the points fill evenly. */
export const usualDraws = 64;

const emptyPlace = parameterNames.indexOf("emptyDensityOffset");
const markNames = Object.keys(chargeMarks) as ChargeMark[];
/** One coordinate a battery parameter, one for the start, five for the charger. */
const dimensions = parameterNames.length + 6;

/** The fixed draws; made once for each count, since every forecast shares them (common random numbers). */
const drawsByCount = new Map<number, readonly (readonly number[])[]>();

function drawsOf(count: number): readonly (readonly number[])[] {
  const known = drawsByCount.get(count);
  if (known !== undefined) return known;
  const points = sobolPoints(count, dimensions).map((point) =>
    // The battery's coordinates are normal, the charger's even.
    point.map((value, j) => (j <= parameterNames.length ? normalQuantile(value) : value)),
  );
  drawsByCount.set(count, points);
  return points;
}

/** How a forecast is run; `pathEveryH` keeps moments of every draw for a chart. */
export type ForecastOptions = {
  readonly count?: number;
  readonly stopWhenSettled?: boolean;
  readonly longestStepH?: number;
  readonly pathEveryH?: number;
};

/**
 * Forecasts a charge.
 * @param battery  what is known of the battery: by kind, moved by other batteries, or by its own log
 * @param behaviour  what is known of the charger
 * @returns hours, charge, energy and water with their spread. The same arguments give the same digits; draw k of one forecast uses the same
 *   chance as draw k of another, so that two chargers can be compared draw by draw.
 */
export function forecastCharge(
  battery: BatteryKnowledge,
  behaviour: ChargerBehaviour,
  chargeCase: ChargeCase,
  options: ForecastOptions = {},
): ChargeForecast {
  const draws = drawsOf(options.count ?? usualDraws).map((draw) => simulateDraw(draw, battery, behaviour, chargeCase, options));
  const spread = (read: (outcome: ChargeOutcome) => number): Spread => spreadOf(draws.map(read));
  return {
    hoursTo: byMark((mark) => spread(({ hoursTo }) => hoursTo[mark])),
    mainsWhTo: byMark((mark) => spread(({ mainsWhTo }) => mainsWhTo[mark])),
    reaches: byMark((mark) => draws.filter(({ hoursTo }) => Number.isFinite(hoursTo[mark])).length / draws.length),
    passedAh: spread(({ charge }) => charge.passedAh),
    storedAh: spread(({ charge }) => charge.storedAh),
    gassedAh: spread(({ charge }) => charge.gassedAh),
    dcWh: spread(({ charge }) => charge.dcWh),
    mainsWh: spread(({ charge }) => charge.mainsWh),
    waterG: spread(({ charge }) => charge.waterG),
    finalShare: spread(({ stateOfCharge }) => stateOfCharge),
    draws,
  };
}

function byMark<T>(read: (mark: ChargeMark) => T): Readonly<Record<ChargeMark, T>> {
  return Object.fromEntries(markNames.map((mark) => [mark, read(mark)])) as Record<ChargeMark, T>;
}

function simulateDraw(
  draw: readonly number[],
  battery: BatteryKnowledge,
  behaviour: ChargerBehaviour,
  chargeCase: ChargeCase,
  { count: _count, ...settings }: ForecastOptions,
): ChargeOutcome {
  const { ratedAh, cells, density, airC, horizonH } = chargeCase;
  const [current = 0.5, voltage = 0.5, end = 0.5, rule = 0.5, conversion = 0.5] = draw.slice(parameterNames.length + 1);
  const { parameters, startShare } = drawBattery(draw, battery, chargeCase);
  const cell = makeCell(ratedAh, cells, density, parameters);
  const state = restedCell(cell, startShare, airC);
  const charger = settleCharger(behaviour, { current, voltage, end, rule, conversion });
  return simulateCharge(cell, state, charger, { airC, horizonH, ...settings });
}

/** One battery out of those that what is known allows; the last of the normal numbers is for its start. */
function drawBattery(
  normals: readonly number[],
  { beliefs, fit }: BatteryKnowledge,
  chargeCase: ChargeCase,
): { parameters: BatteryParameters; startShare: number } {
  const size = parameterNames.length;
  if (fit === undefined) {
    const { middle, ofEmptyDensity, ownUncertainty } = partsOfStart(chargeCase, beliefs);
    const moved = ofEmptyDensity * (normals[emptyPlace] ?? 0) + ownUncertainty * (normals[size] ?? 0);
    return { parameters: parametersAt(beliefs, normals), startShare: clampShare(middle + moved) };
  }
  const open = fit.factor.map((row) => row.reduce((sum, value, j) => sum + value * (normals[j] ?? 0), 0));
  return {
    parameters: parametersAt(
      beliefs,
      fit.z.map((value, j) => value + (open[j] ?? 0)),
    ),
    startShare: clampShare(fit.startShare + fit.startShareScale * (open[size] ?? 0)),
  };
}

function clampShare(share: number): number {
  return Math.min(0.99, Math.max(0.005, share));
}
