import { lineSums } from "../../signal/line-sums.ts";
import { noiseOf } from "../../signal/noise.ts";
import type { Trace } from "../trace.ts";

/** How many samples on either side of a rough cut are looked at, at least. */
const leastReach = 12;

/**
 * The best place, near a rough one, to cut a trace in two: where one straight line before and one after leave the least, in
 * voltage and current together, each measured in its own noise.
 *
 * @param cut    rough place (the first sample of the later part)
 * @param from, to  the samples of the two parts; the cut stays inside them by at least two samples
 * @param reach  samples to look at on either side
 * @returns the refined place; the rough one where there are too few samples to tell
 */
export function refineCut(trace: Trace, cut: number, from: number, to: number, reach: number): number {
  const start = Math.max(from, cut - Math.max(reach, leastReach));
  const end = Math.min(to, cut + Math.max(reach, leastReach));
  if (end - start < 6) return cut;
  const times = trace.elapsedS.subarray(start, end);
  const channels = [trace.voltagesV, trace.currentsA].map((values) => {
    const window = values.subarray(start, end);
    return lineSums(times, window, noiseOf(window) || 1e-3 * Math.max(...window.map(Math.abs), 1e-9));
  });
  const misfit = (place: number): number =>
    channels.reduce((sum, channel) => sum + channel.residual(0, place - start) + channel.residual(place - start, end - start), 0);
  let best = cut;
  let least = misfit(cut);
  for (let place = start + 2; place <= end - 2; place++) {
    const left = misfit(place);
    if (left < least * (1 - 1e-9)) {
      best = place;
      least = left;
    }
  }
  return best;
}
