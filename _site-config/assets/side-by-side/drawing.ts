/** Where lines and labels of the overlaid profiles go. */

/** A place to draw in: the values at its two ends, and the pixels they stand at. */
export type Axis = { readonly from: number; readonly to: number; readonly fromPx: number; readonly toPx: number };

/** The pixel of a value; an axis without length puts everything at its start. */
export function placeOn({ from, to, fromPx, toPx }: Axis, value: number): number {
  return to === from ? fromPx : fromPx + ((value - from) / (to - from)) * (toPx - fromPx);
}

/**
 * One SVG path through points; a missing value lifts the pen, so that a gap is never bridged.
 * @returns "" where nothing is to be drawn
 */
export function pathThrough(xs: readonly (number | null)[], ys: readonly (number | null)[], x: Axis, y: Axis): string {
  let isPenDown = false;
  return xs
    .map((across, index) => {
      const up = ys[index] ?? null;
      if (across === null || up === null) {
        isPenDown = false;
        return "";
      }
      const step = `${isPenDown ? "L" : "M"}${placeOn(x, across).toFixed(1)} ${placeOn(y, up).toFixed(1)}`;
      isPenDown = true;
      return step;
    })
    .join("");
}

/** The last point that both lists have a value for; undefined for none. */
export function lastPoint(xs: readonly (number | null)[], ys: readonly (number | null)[]): { x: number; y: number } | undefined {
  for (let index = xs.length - 1; index >= 0; index--) {
    const x = xs[index] ?? null;
    const y = ys[index] ?? null;
    if (x !== null && y !== null) return { x, y };
  }
  return undefined;
}

/**
 * Moves labels apart so that neighbours are at least `apartPx` from each other, keeping their order and staying inside from above.
 * @param placesPx where they would stand, in any order
 * @returns where they stand, in the same order
 */
export function spreadLabels(placesPx: readonly number[], apartPx: number, lowestPx: number): number[] {
  const order = placesPx.map((_, index) => index).sort((a, b) => (placesPx[a] ?? 0) - (placesPx[b] ?? 0));
  const spread = [...placesPx];
  let ceiling = Number.POSITIVE_INFINITY;
  // From the lowest on the page upwards: pushed up by the edge first, then by the neighbour below.
  for (const index of [...order].reverse()) {
    const place = Math.min(spread[index] ?? 0, lowestPx, ceiling - apartPx);
    spread[index] = place;
    ceiling = place;
  }
  return spread;
}
