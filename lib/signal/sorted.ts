/** Looks up places in rising values by halving, so that a long log is not walked through for one of its ends. */

/**
 * The first place in [from, to) whose value is at least as high as another; `to` where none is.
 * @param values  rising from `from` to `to`, no NaN
 */
export function firstAtOrAfter(values: Float64Array, least: number, from = 0, to = values.length): number {
  return firstWhere((place) => (values[place] as number) >= least, from, to);
}

/** As firstAtOrAfter, for the first value that is higher. */
export function firstAfter(values: Float64Array, below: number, from = 0, to = values.length): number {
  return firstWhere((place) => (values[place] as number) > below, from, to);
}

/** The first place for which something holds that, once it does, holds for all behind it. */
function firstWhere(holds: (place: number) => boolean, from: number, to: number): number {
  let low = from;
  let high = to;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (holds(middle)) high = middle;
    else low = middle + 1;
  }
  return low;
}
