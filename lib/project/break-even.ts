/** From how many uses on a charger that is dearer to buy is the cheaper one of two. */

/**
 * The number of uses after which what is saved makes up for what was paid more, draw by draw.
 * @param extraToBuy  what it costs more to buy, in the unit of `savedPerUse`; 0 and less is earned back before the first use
 * @param savedPerUse  what one use costs less to run in each draw of what nobody knows; negative where it costs more
 * @returns as many uses, rising; infinity for a draw in which it is never earned back. NaN counts as never
 */
export function breakEvenUses(extraToBuy: number, savedPerUse: readonly number[]): number[] {
  const usesOf = (saved: number): number => (extraToBuy <= 0 ? 0 : saved > 0 ? extraToBuy / saved : Number.POSITIVE_INFINITY);
  return savedPerUse.map(usesOf).sort((a, b) => a - b);
}
