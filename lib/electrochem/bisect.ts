/** Inverts a rising function. */

/**
 * Finds the x in [low, high] at which a rising function takes the value wanted.
 * @param rising  continuous and strictly rising on [low, high]
 * @returns x to the last bit or two; NaN where the value wanted lies outside rising(low) to rising(high), or is NaN
 * Never throws. Halving is slow but cannot go astray, and fifty halvings cost microseconds.
 */
export function bisectRising(rising: (x: number) => number, wanted: number, low: number, high: number): number {
  if (!(wanted >= rising(low) && wanted <= rising(high))) return Number.NaN;
  let below = low;
  let above = high;
  for (;;) {
    const middle = (below + above) / 2;
    if (middle <= below || middle >= above) return middle;
    if (rising(middle) < wanted) below = middle;
    else above = middle;
    if (above - below < 1e-15 * (high - low)) return (below + above) / 2;
  }
}
