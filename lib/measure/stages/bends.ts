/**
 * Where a charger went over from one way of regulating to another, by the bend in the plane of current and voltage.
 *
 *   A │ ──────●        A charger that holds its current draws a level line there, one that holds its voltage an upright one, one that
 *     │       │        regulates neither a slanting one. Where two such lines meet the change is, however fast or slow the battery moved
 *     │       │        along them.
 *     └────────── V
 */
import { lineSums } from "../../signal/line-sums.ts";
import { planeSums } from "../../signal/plane-sums.ts";
import { roughness } from "../../signal/roughness.ts";
import { runningMedian } from "../../signal/running-median.ts";
import type { Segment } from "./segments.ts";
import type { Series } from "./series.ts";

/** The bend is looked for in this share of the two stretches, on either side of where they meet. */
const lookedAtShare = 0.5;
/** Lines through fewer places than this are none. */
const fewestPlaces = 5;

/**
 * Moves the change from an unregulated, a held or a lowered current to a held voltage, and from that to a held current, to its bend.
 * A charger that goes over from its limit to a held current lets the current jump first; the voltage follows slowly. So there a jump that
 * is left within a stretch counts against it.
 * Where the full current goes over to the limit the corner itself tells more (see corners).
 */
export function placeBends(segments: readonly Segment[], series: Series): Segment[] {
  // A tooth would pull a line out of its place.
  const voltagesV = runningMedian(series.voltagesV);
  const currentsA = runningMedian(series.currentsA);
  const offCurrent = lineSums(series.timesS, currentsA, series.noiseA).residual;
  const offLine = planeSums(voltagesV, currentsA, series.noiseV, series.noiseA).residual;
  const misfitOf = ({ regime }: Segment): Misfit => (regime === "I" || regime === "steady" ? offCurrent : offLine);
  const jumps = roughness(withoutGapSteps(currentsA, series.gapEnds), series.noiseA);
  const placed = [...segments];
  for (let i = 1; i < placed.length; i++) {
    const [before, behind] = [placed[i - 1] as Segment, placed[i] as Segment];
    if (!isBend(before, behind)) continue;
    const withJumps = (misfit: Misfit): Misfit => (behind.regime === "I" ? (from, to) => misfit(from, to) + jumps(from, to) : misfit);
    const at = bendBetween(before, behind, withJumps(misfitOf(before)), withJumps(misfitOf(behind)));
    placed[i - 1] = { ...before, to: at };
    placed[i] = { ...behind, from: at };
  }
  return placed;
}

/** What lies off the line that a regime draws, over a range of places, in units of the noise. */
type Misfit = (from: number, to: number) => number;

/** The currents with what happened in gaps taken out: where a taper went on unseen there is no jump. */
function withoutGapSteps(currentsA: Float64Array, gapEnds: readonly number[]): Float64Array {
  const ends = new Set(gapEnds);
  let stepsA = 0;
  return currentsA.map((currentA, at) => {
    if (ends.has(at)) stepsA += currentA - (currentsA[at - 1] as number);
    return currentA - stepsA;
  });
}

function isBend({ regime: before }: Segment, { regime: behind }: Segment): boolean {
  return behind === "U" ? before === "W" || before === "steady" : behind === "I" && before === "U";
}

/** The place from which two straight lines, one before it and one from it on, leave least; where they met, if they are too short. */
function bendBetween(before: Segment, behind: Segment, offBefore: Misfit, offBehind: Misfit): number {
  const meet = before.to;
  const from = meet - Math.ceil(lookedAtShare * (meet - before.from));
  const to = meet + Math.ceil(lookedAtShare * (behind.to - meet));
  let best = meet;
  let least = Number.POSITIVE_INFINITY;
  for (let at = from + fewestPlaces; at <= to - fewestPlaces; at++) {
    const left = offBefore(from, at) + offBehind(at, to);
    if (left >= least) continue;
    least = left;
    best = at;
  }
  return best;
}
