/** The k-th smallest of many values, without sorting them. */

/** Below this many values the ends are narrowed by sampling no more. */
const largeRange = 600;

/**
 * Moves values about until the k-th smallest stands at k, none larger before it and none smaller behind it.
 *
 * @param values  any order, NaN must not occur, 0 and -0 are alike; they are moved
 * @param k       counted from 0, within [from, to)
 * @returns that value
 * Source: R. W. Floyd and R. L. Rivest, Algorithm 489: SELECT, Communications of the ACM 18 (1975) 173 (from memory).
 */
export function selectKth(values: Float64Array, k: number, from = 0, to = values.length): number {
  let left = from;
  let right = to - 1;
  while (right > left) {
    if (right - left > largeRange) {
      // A sample around k tells between which two places the value most likely lies.
      const count = right - left + 1;
      const place = k - left + 1;
      const log = Math.log(count);
      const size = 0.5 * Math.exp((2 * log) / 3);
      const spread = 0.5 * Math.sqrt((log * size * (count - size)) / count) * Math.sign(place - count / 2);
      const newLeft = Math.max(left, Math.floor(k - (place * size) / count + spread));
      const newRight = Math.min(right, Math.floor(k + ((count - place) * size) / count + spread));
      selectKth(values, k, newLeft, newRight + 1);
    }
    const pivot = values[k] as number;
    let low = left;
    let high = right;
    swap(values, left, k);
    if ((values[right] as number) > pivot) swap(values, left, right);
    while (low < high) {
      swap(values, low, high);
      low++;
      high--;
      while ((values[low] as number) < pivot) low++;
      while ((values[high] as number) > pivot) high--;
    }
    if (values[left] === pivot) swap(values, left, high);
    else {
      high++;
      swap(values, high, right);
    }
    if (high <= k) left = high + 1;
    if (k <= high) right = high - 1;
  }
  return values[k] as number;
}

function swap(values: Float64Array, one: number, other: number): void {
  const kept = values[one] as number;
  values[one] = values[other] as number;
  values[other] = kept;
}
