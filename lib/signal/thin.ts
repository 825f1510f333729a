/**
 * Picks samples that draw a series without losing what it shows: in each of `buckets` equal stretches of x, the lowest and highest of
 * every channel, and the series' two ends. No averages are made, so every point drawn is a sample of the log.
 *
 * @param x         rising
 * @param channels  of x's length; NaN is passed over
 * @returns indices, rising; all of them where there are few enough
 */
export function thinned(x: Float64Array, channels: readonly Float64Array[], buckets: number): number[] {
  const n = x.length;
  if (n <= buckets * 2) return Array.from(x.keys());
  const first = x[0] as number;
  const width = ((x[n - 1] as number) - first) / buckets || 1;
  const picked = new Set<number>([0, n - 1]);
  let start = 0;
  while (start < n) {
    const bucket = Math.floor(((x[start] as number) - first) / width);
    let end = start;
    while (end < n && Math.floor(((x[end] as number) - first) / width) === bucket) end++;
    for (const channel of channels) {
      let low = -1;
      let high = -1;
      for (let i = start; i < end; i++) {
        const value = channel[i] as number;
        if (Number.isNaN(value)) continue;
        if (low < 0 || value < (channel[low] as number)) low = i;
        if (high < 0 || value > (channel[high] as number)) high = i;
      }
      if (low >= 0) picked.add(low);
      if (high >= 0) picked.add(high);
    }
    start = end;
  }
  return [...picked].sort((a, b) => a - b);
}
