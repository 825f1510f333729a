import type { LineSums } from "./line-sums.ts";

/** Two channels of a long series, brought to bins of equal width in time. */
export type Bins = {
  /** Mean time of the bin's samples. */
  readonly times: Float64Array;
  readonly first: Float64Array;
  readonly second: Float64Array;
  /** Index of each bin's first sample; one more entry at the end. */
  readonly samples: Uint32Array;
  readonly width: number;
};

/**
 * Brings two channels to bins of equal width in time, by means.
 *
 * A recorder that writes only when something moves leaves long pauses. Where a pause within a stretch is longer than a bin and its two
 * rows are much alike, the bins in it are filled by the straight line between them, so that a quiet hour weighs as an hour and not as
 * one row. Where they are not alike nobody knows when the change came, and nothing is filled in; nor are breaks between stretches.
 *
 * @param times     rising; @param first, second same length; no NaN
 * @param stretches half-open ranges of samples without a gap, in order
 * @param alike     how far two rows may be apart, in each channel, to be much alike
 */
export function binned(
  times: Float64Array,
  first: Float64Array,
  second: Float64Array,
  stretches: readonly (readonly [number, number])[],
  width: number,
  alike: readonly [number, number],
): Bins {
  const t: number[] = [];
  const a: number[] = [];
  const b: number[] = [];
  const starts: number[] = [];
  const push = (time: number, one: number, other: number, start: number): void => {
    t.push(time);
    a.push(one);
    b.push(other);
    starts.push(start);
  };
  for (const [from, to] of stretches) {
    const origin = times[from] ?? 0;
    const binOf = (i: number): number => Math.floor(((times[i] as number) - origin) / width);
    let i = from;
    while (i < to) {
      const bin = binOf(i);
      const start = i;
      let sumT = 0;
      let sumA = 0;
      let sumB = 0;
      while (i < to && binOf(i) === bin) {
        sumT += times[i] as number;
        sumA += first[i] as number;
        sumB += second[i] as number;
        i++;
      }
      const count = i - start;
      push(sumT / count, sumA / count, sumB / count, start);
      if (i >= to) break;
      const left = i - 1;
      const areAlike =
        Math.abs((first[i] as number) - (first[left] as number)) <= alike[0] &&
        Math.abs((second[i] as number) - (second[left] as number)) <= alike[1];
      if (!areAlike) continue;
      const stepT = (times[i] as number) - (times[left] as number);
      for (let missing = bin + 1; missing < binOf(i); missing++) {
        const time = origin + (missing + 0.5) * width;
        const share = (time - (times[left] as number)) / stepT;
        if (share <= 0 || share >= 1) continue;
        push(
          time,
          (first[left] as number) + share * ((first[i] as number) - (first[left] as number)),
          (second[left] as number) + share * ((second[i] as number) - (second[left] as number)),
          i,
        );
      }
    }
  }
  starts.push(stretches.at(-1)?.[1] ?? 0);
  return {
    times: Float64Array.from(t),
    first: Float64Array.from(a),
    second: Float64Array.from(b),
    samples: Uint32Array.from(starts),
    width,
  };
}

/**
 * Places where something may have changed: the edges of the largest dyadic blocks over which both channels are straight within
 * their noise. A quiet week becomes a handful of blocks; around a change the blocks stay as small as a bin.
 *
 * @param channels  sums with σ as noise
 * @param longest   no block holds more bins than this
 * @returns edges from 0 to the number of bins
 */
export function changeableEdges(channels: readonly LineSums[], longest: number): number[] {
  const n = channels[0]?.length ?? 0;
  const edges: number[] = [];
  const isStraight = (from: number, to: number): boolean => {
    // Any two points lie on a line; a pair is kept together only where the two agree.
    if (to - from === 2) return channels.every((channel) => channel.differ(from) <= 4 * Math.SQRT2);
    const freedom = to - from - 2;
    // χ² of that many degrees of freedom lies below this in all but a few of ten thousand cases (normal approximation, 4 σ).
    const allowed = freedom + 4 * Math.sqrt(2 * freedom);
    return channels.every((channel) => channel.residual(from, to) <= allowed);
  };
  let from = 0;
  while (from < n) {
    let size = 1;
    while (size * 2 <= longest && from % (size * 2) === 0 && from + size * 2 <= n && isStraight(from, from + size * 2)) size *= 2;
    edges.push(from);
    from += size;
  }
  edges.push(n);
  return edges;
}
