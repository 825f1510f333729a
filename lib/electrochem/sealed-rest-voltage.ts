/** Rest voltage of sealed batteries: they hold stronger acid than flooded ones, and so stand higher at the same state of charge. */

/**
 * How much higher a full 12 V battery of this construction rests than a flooded one, V, with the half-width that the sources leave.
 * AGM: 0.10 to 0.15 V with acid of 1.28 to 1.30; one maker puts full at 13.0 V (both read). Gel: from memory, and doubtful.
 */
export const sealedRestOffsetV = {
  AGM: { offsetV: 0.15, halfWidthV: 0.1 },
  gel: { offsetV: 0.15, halfWidthV: 0.15 },
} as const;

export type SealedConstruction = keyof typeof sealedRestOffsetV;

/**
 * That offset for a battery of so many cells.
 * @param cells  cells in series, a positive whole number
 * @returns V of the whole battery and the standard uncertainty (rectangular); NaN for an impossible number of cells
 */
export function sealedRestOffset(
  construction: SealedConstruction,
  cells: number,
): { readonly offsetV: number; readonly standardUncertaintyV: number } {
  const share = Number.isInteger(cells) && cells > 0 ? cells / 6 : Number.NaN;
  const { offsetV, halfWidthV } = sealedRestOffsetV[construction];
  return { offsetV: offsetV * share, standardUncertaintyV: (halfWidthV * share) / Math.sqrt(3) };
}
