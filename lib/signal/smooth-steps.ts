import { noiseOf } from "./noise.ts";

/** A change of more than this many steps from one value to the next is a jump. */
const jumpSteps = 1.5;

/**
 * Takes the stairs out of a slow channel that a coarse recorder wrote.
 *
 *   written          ▁▁▁▁▁▁▁▁▁▁▁▁▂▁▂▂▂▃▃▃▄▄▄      drawn: level as long as the tread is longer than its neighbour, then through
 *   passings                     ×   ×  ×         the passings
 *
 * Where the value changes by one step, the true one passed the middle between two marks at about that time. A value that trembles
 * between two marks passes their middle many times; those passings count as one, at the middle of them, and as none where it ends on
 * the side that it came from. On either side of a passing the value is taken to move on as fast as the shorter of the two treads says,
 * until it is level with its tread; that draws an even slope as a straight line and leaves a held level held. A change of more than one
 * step is a jump, and nothing is drawn across it.
 *
 * The result is nowhere further from the values than a step and a half. Source: reconstruction from level crossings, with the thresholds of the
 * quantiser as levels (from memory).
 *
 * @param times   rising
 * @param values  same length, no NaN
 * @param step    the distance of two marks; 0 for none
 * @returns a new array; the values themselves where more than half of them tremble, since averages then do the work
 */
export function smoothSteps(times: Float64Array, values: Float64Array, step: number): Float64Array {
  if (!(step > 0) || noiseOf(values) > 0) return values;
  const smooth = values.slice();
  let from = 0;
  for (let i = 1; i <= values.length; i++) {
    if (i < values.length && Math.abs((values[i] as number) - (values[i - 1] as number)) < jumpSteps * step) continue;
    drawThrough(knotsOf(treadsOf(times, values, from, i)), times, smooth, from, i);
    from = i;
  }
  return smooth;
}

/** A stretch at one mark, from one passing to the next. */
type Tread = { readonly level: number; readonly start: number; end: number };

/** The treads of [from, to), in which no two neighbours are more than a step apart. */
function treadsOf(times: Float64Array, values: Float64Array, from: number, to: number): Tread[] {
  const treads: Tread[] = [];
  const open = (level: number, start: number): void => {
    const last = treads.at(-1);
    if (last !== undefined) last.end = start;
    treads.push({ level, start, end: times[to - 1] as number });
  };
  open(values[from] as number, times[from] as number);
  let i = from + 1;
  while (i < to) {
    const [before, behind] = [values[i - 1] as number, values[i] as number];
    if (before === behind) {
      i++;
      continue;
    }
    const passings = [i];
    let next = i + 1;
    for (; next < to; next++) {
      const value = values[next] as number;
      if (value !== before && value !== behind) break;
      if (value !== values[next - 1]) passings.push(next);
    }
    const middle = passings[passings.length >> 1] as number;
    if (passings.length % 2 === 1) open(behind, ((times[middle - 1] as number) + (times[middle] as number)) / 2);
    i = next;
  }
  return treads;
}

/** A point that the drawn line goes through. */
type Knot = { readonly time: number; readonly value: number };

function knotsOf(treads: readonly Tread[]): Knot[] {
  const knots: Knot[] = [];
  treads.forEach((tread, index) => {
    const next = treads[index + 1];
    if (index === 0) knots.push({ time: tread.start, value: tread.level });
    if (next === undefined) {
      knots.push({ time: tread.end, value: tread.level });
      return;
    }
    const reach = Math.min(tread.end - tread.start, next.end - next.start) / 2;
    knots.push({ time: tread.end - reach, value: tread.level }, { time: next.start + reach, value: next.level });
  });
  return knots;
}

/** Writes the line through the knots into `drawn`, over [from, to). */
function drawThrough(knots: readonly Knot[], times: Float64Array, drawn: Float64Array, from: number, to: number): void {
  let place = from;
  for (let k = 1; k < knots.length; k++) {
    const [a, b] = [knots[k - 1] as Knot, knots[k] as Knot];
    const slope = b.time > a.time ? (b.value - a.value) / (b.time - a.time) : 0;
    for (; place < to && (times[place] as number) <= b.time; place++) drawn[place] = a.value + slope * ((times[place] as number) - a.time);
  }
}
