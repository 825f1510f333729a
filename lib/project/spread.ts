/** Outcomes of many draws, some of which may be "never": their quantiles, and ranges of a number that is not known exactly. */

/** A number known to lie between two; low = high where it is known. */
export type Range = { readonly low: number; readonly high: number };

/** A range of no width. */
export function exactly(value: number): Range {
  return { low: value, high: value };
}

/**
 * The value at a share of the way through a range.
 * @param share  0 to 1
 */
export function within(range: Range, share: number): number {
  return range.low + (range.high - range.low) * share;
}

/** The smallest range that holds all values; undefined for none. NaN values are left out. */
export function rangeOf(values: readonly number[]): Range | undefined {
  const known = values.filter((value) => !Number.isNaN(value));
  if (known.length === 0) return undefined;
  return { low: Math.min(...known), high: Math.max(...known) };
}

/** A range made wider by as much on either side; it never goes below `floor`. */
export function widened(range: Range, by: number, floor = Number.NEGATIVE_INFINITY): Range {
  return { low: Math.max(floor, range.low - by), high: range.high + by };
}

/** Median, the middle 80 %, the middle 90 % and the middle 95 % of draws; Infinity stands for "never". */
export type Spread = {
  readonly median: number;
  readonly middle80: Range;
  readonly middle90: Range;
  readonly middle95: Range;
};

/**
 * The quantiles of draws by weight.
 * @param values  any order, Infinity allowed, NaN not
 * @param weights  as many, not negative; all alike where left out
 * @returns NaN throughout for no draws
 */
export function spreadOf(values: ArrayLike<number>, weights?: ArrayLike<number>): Spread {
  const at = quantiles(values, [0.5, 0.1, 0.9, 0.05, 0.95, 0.025, 0.975], weights);
  const [median = Number.NaN, low80 = median, high80 = median, low90 = median, high90 = median, low95 = median, high95 = median] = at;
  return {
    median,
    middle80: { low: low80, high: high80 },
    middle90: { low: low90, high: high90 },
    middle95: { low: low95, high: high95 },
  };
}

/** A middle and the ends of the middle 95 %; Infinity stands for "never". */
export type Middle = { readonly value: number } & Range;

/**
 * The median and the middle 95 % of draws of equal weight, open above wherever a draw never comes: of some sixty draws one stands for about
 * as much as the tail that is left out, so no draw that did come can close the interval.
 * @returns NaN throughout for no draws
 */
export function middleOfDraws(draws: readonly number[]): Middle {
  const { median, middle95 } = spreadOf(draws);
  return { value: median, low: middle95.low, high: draws.includes(Number.POSITIVE_INFINITY) ? Number.POSITIVE_INFINITY : middle95.high };
}

/**
 * Quantiles of draws by weight, straight between the middles of neighbouring draws; beside "never" there is no between, and the nearer
 * draw is taken.
 * @param shares  each 0 to 1
 */
export function quantiles(values: ArrayLike<number>, shares: readonly number[], weights?: ArrayLike<number>): number[] {
  const order = Array.from({ length: values.length }, (_, i) => i).sort((a, b) => compare(values[a] ?? 0, values[b] ?? 0));
  const weightOf = (i: number): number => weights?.[i] ?? 1;
  const total = order.reduce((sum, i) => sum + weightOf(i), 0);
  if (order.length === 0 || !(total > 0)) return shares.map(() => Number.NaN);
  const places: number[] = [];
  let below = 0;
  for (const i of order) {
    places.push((below + weightOf(i) / 2) / total);
    below += weightOf(i);
  }
  return shares.map((share) => {
    const next = places.findIndex((place) => place >= share);
    const above = next < 0 ? order.length - 1 : next;
    const under = Math.max(0, above - 1);
    const [low, high] = [values[order[under] ?? 0] ?? Number.NaN, values[order[above] ?? 0] ?? Number.NaN];
    const [lowPlace, highPlace] = [places[under] ?? 0, places[above] ?? 0];
    if (next < 0 || above === under || !(highPlace > lowPlace)) return high;
    const between = (share - lowPlace) / (highPlace - lowPlace);
    if (!Number.isFinite(high)) return between < 0.5 ? low : high;
    return low + (high - low) * between;
  });
}

function compare(a: number, b: number): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
