/** The place of the highest value, the first of equals; -1 for no values. NaN is never the highest. */
export function placeOfHighest(values: ArrayLike<number>): number {
  let at = -1;
  let highest = Number.NEGATIVE_INFINITY;
  for (let place = 0; place < values.length; place++) {
    const value = values[place] as number;
    if (!(value > highest)) continue;
    highest = value;
    at = place;
  }
  return at;
}
