/**
 * Air needed where batteries are charged, after IEC 62485-2 and 62485-3 as given on public pages. Hydrogen explodes from 4 % in air:
 * the room's own rules, local codes and the battery maker come before these figures.
 */

/**
 * Gassing currents to design for, mA per Ah of rated capacity, up to 40 °C, already with the standard's safety margin.
 * Source: IEC 62485-2 as given on public pages. One page prints them per 100 Ah, which is wrong by a factor of a hundred.
 */
export const designGassingMAPerAh = {
  vented: { float: 5, boost: 20 },
  "valve-regulated": { float: 1, boost: 8 },
} as const;

/**
 * m3/h of air per cell and ampere of gassing current: 24 times the hydrogen (to stay under 4 %) × 0.42e-3 m3/Ah (at 0 °C) × 5 (margin),
 * which the standard rounds to 0.05.
 */
const airM3PerHPerCellAmpere = 0.05;

/**
 * Air flow that keeps hydrogen safely below 4 %.
 * @param cells  cells in series
 * @param gassingMAPerAh  mA per Ah of capacity; see designGassingMAPerAh
 * @param capacityAh  rated capacity, Ah (the standard means C10)
 * @returns m3/h; NaN for a negative or missing value
 */
export function ventilationAirFlowM3PerH(cells: number, gassingMAPerAh: number, capacityAh: number): number {
  if (!(cells >= 0 && gassingMAPerAh >= 0 && capacityAh >= 0)) return Number.NaN;
  return (airM3PerHPerCellAmpere * cells * gassingMAPerAh * capacityAh) / 1000;
}

/** Free area in cm2 of each of two openings, inlet and outlet, that lets that air through unaided: A = 28·Q. NaN for a negative flow. */
export function ventilationOpeningCm2(airFlowM3PerH: number): number {
  return airFlowM3PerH >= 0 ? 28 * airFlowM3PerH : Number.NaN;
}
