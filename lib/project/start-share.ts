/** The state of charge with which a forecast begins, from what was read before. */
import { chargeForDensityRise } from "../electrochem/acid-balance.ts";
import { densityFromRestVoltage } from "../electrochem/rest-voltage.ts";
import { emptyDensityUncertainty } from "./battery-priors.ts";

/** A share of what the battery holds, 0 to 1, and its standard uncertainty. */
export type StartShare = {
  readonly share: number;
  readonly standardUncertainty: number;
  /** By how much it would be another for each kg/l by which the battery's own empty density is higher: alike at all tests of a battery. */
  readonly perEmptyDensity: number;
};

/** The battery's densities, kg/l at 25 °C; `fullUncertainty` where its own full density was measured, else the trade's spread is taken. */
export type StatedDensities = { readonly full: number; readonly empty: number; readonly fullUncertainty?: number };

/** How far a battery's own full density may be from its kind's, kg/l, standard: our judgement of the trade's spread. */
const kindsFullUncertainty = 0.005;

/**
 * State of charge from the mean density of evenly mixed acid: by the acid balance, between this battery's empty and full density.
 * @param densityAt25C  kg/l at 25 °C
 * @param standardUncertainty  of that reading, kg/l, its conversion included. An error that the same hydrometer made when the battery was
 *   full may be left out: what it does to the share, the uncertainty of the empty density does too
 * @param density  the battery's own full and empty density, or its kind's
 * @returns share held within 0 and 1, NaN for a NaN reading; its uncertainty counts the reading and both end points
 */
export function startShareFromDensity(densityAt25C: number, standardUncertainty: number, density: StatedDensities): StartShare {
  const span = density.full - density.empty;
  // The mass of acid cancels: only the ratio of two charges is asked for.
  const share = chargeForDensityRise(1, density.empty, densityAt25C) / chargeForDensityRise(1, density.empty, density.full);
  const held = Math.min(1, Math.max(0, share));
  const perEmptyDensity = -(1 - held) / span;
  return {
    share: held,
    standardUncertainty: Math.hypot(
      standardUncertainty / span,
      (held * (density.fullUncertainty ?? kindsFullUncertainty)) / span,
      perEmptyDensity * emptyDensityUncertainty,
    ),
    perEmptyDensity,
  };
}

/**
 * State of charge from the rest voltage of a battery left alone for long enough.
 * @param restV  V of the whole battery
 * @param standardUncertaintyV  V of the whole battery, what is left of its surface charge included
 */
export function startShareFromRestVoltage(
  restV: number,
  standardUncertaintyV: number,
  cells: number,
  density: StatedDensities,
): StartShare {
  const densityAt25C = densityFromRestVoltage(restV, cells);
  const perV = (densityFromRestVoltage(restV + 0.01, cells) - densityFromRestVoltage(restV - 0.01, cells)) / 0.02;
  return startShareFromDensity(densityAt25C, Math.abs(perV) * standardUncertaintyV, density);
}
