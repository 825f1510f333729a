/**
 * A trace: a recording's samples made fit for arithmetic. Time rises strictly, breaks are known, nothing is invented.
 */
import type { Samples } from "../nouns/samples.ts";
import { quantileByMoving, quantilesByMoving } from "../signal/order-statistics.ts";

export type Gap = { readonly startS: number; readonly endS: number; readonly lines: readonly [number, number] };

export type Trace = {
  /** Where the first sample stands on the log's own clock, s from the log's first row. */
  readonly firstRowS: number;
  /** Seconds from the first row, strictly rising. */
  readonly elapsedS: Float64Array;
  /** Volts; all NaN where the log has no voltage. */
  readonly voltagesV: Float64Array;
  /** Amperes into the battery; all NaN where the log has no current. */
  readonly currentsA: Float64Array;
  /** What the recorder's own temperature channel showed, °C; NaN where a row has none, empty where it has no such channel. */
  readonly temperaturesC: Float64Array;
  readonly lines: Uint32Array;
  readonly hasVoltage: boolean;
  readonly hasCurrent: boolean;
  /** The usual time between rows, s (median). */
  readonly intervalS: number;
  /** A short time between rows, s (10th percentile): the pace of a recorder that writes when something moves. */
  readonly shortIntervalS: number;
  /** A longer time between rows than this is a gap, s. */
  readonly gapAboveS: number;
  readonly gaps: readonly Gap[];
  /** Half-open ranges of samples without a gap in them; together they hold every sample. */
  readonly stretches: readonly (readonly [number, number])[];
  /** First to last row, s. */
  readonly spanS: number;
  /** Span less gaps, s. */
  readonly coveredS: number;
  readonly clock: {
    /** Rows that stood a little out of order and were put into it. */
    readonly outOfOrder: number;
    /** Rows whose time equals that of the row before; they were averaged. */
    readonly equal: number;
    /** Steps back too large for disorder: the clock was set. The row after is taken to follow at the usual interval. */
    readonly setBack: readonly { readonly line: number; readonly byS: number }[];
  };
};

/** Disorder of up to this many usual intervals is mended by sorting; a longer step back is a clock that was set. */
const disorderIntervals = 3;

/** A gap is a pause longer than this many times the longest usual pause (99th percentile). */
const gapFactor = 2.5;

/**
 * Makes a trace of a log's samples.
 *
 * @param samples          as read
 * @param longestIntervalS the longest pause the recorder makes by design, where its record says so
 * @returns the trace; its columns are empty where no row has values
 */
export function makeTrace(samples: Samples, longestIntervalS: number | undefined): Trace {
  const { columns, firstRowS, clock } = isFit(samples) ? asTheyAre(samples) : mended(samples);
  const { elapsedS } = columns;

  const { shortIntervalS, intervalS, usualLongestS } = paceOf(elapsedS);
  const gapAboveS =
    longestIntervalS === undefined ? gapFactor * Math.max(usualLongestS, intervalS) : Math.max(longestIntervalS * 1.05, intervalS * 1.5);

  const gaps: Gap[] = [];
  const stretches: [number, number][] = [];
  let from = 0;
  for (let i = 1; i < elapsedS.length; i++) {
    if ((elapsedS[i] as number) - (elapsedS[i - 1] as number) <= gapAboveS) continue;
    gaps.push({
      startS: elapsedS[i - 1] as number,
      endS: elapsedS[i] as number,
      lines: [columns.lines[i - 1] as number, columns.lines[i] as number],
    });
    stretches.push([from, i]);
    from = i;
  }
  if (elapsedS.length > 0) stretches.push([from, elapsedS.length]);
  const spanS = (elapsedS.at(-1) ?? 0) - (elapsedS[0] ?? 0);
  const gapS = gaps.reduce((sum, gap) => sum + gap.endS - gap.startS, 0);
  return {
    ...columns,
    firstRowS,
    hasVoltage: samples.hasVoltage,
    hasCurrent: samples.hasCurrent,
    intervalS,
    shortIntervalS,
    gapAboveS,
    gaps,
    stretches,
    spanS,
    coveredS: spanS - gapS,
    clock,
  };
}

/** The usual times between rows: 10th, 50th and 99th percentile (the 90th of a short log); NaN for fewer than two rows. */
function paceOf(elapsedS: Float64Array): { shortIntervalS: number; intervalS: number; usualLongestS: number } {
  const stepAt = (i: number): number => (elapsedS[i] as number) - (elapsedS[i - 1] as number);
  const count = Math.max(0, elapsedS.length - 1);
  const firstStepS = stepAt(1);
  let even = 0;
  while (even < count && stepAt(even + 1) === firstStepS) even++;
  // Most recorders keep an even pace, and then there is nothing to order.
  if (count > 0 && even === count) return { shortIntervalS: firstStepS, intervalS: firstStepS, usualLongestS: firstStepS };
  const steps = new Float64Array(count);
  for (let i = 1; i <= count; i++) steps[i - 1] = stepAt(i);
  const shares = [0.1, 0.5, count < 200 ? 0.9 : 0.99];
  const [shortIntervalS, intervalS, usualLongestS] = quantilesByMoving(steps, shares) as [number, number, number];
  return { shortIntervalS, intervalS, usualLongestS };
}

type Columns = Pick<Trace, "elapsedS" | "voltagesV" | "currentsA" | "temperaturesC" | "lines">;
type Fit = { readonly columns: Columns; readonly firstRowS: number; readonly clock: Trace["clock"] };

/** Whether every row has its values and stands behind the row before, as in most logs: then there is nothing to mend. */
function isFit({ elapsedS, voltagesV, currentsA, hasVoltage, hasCurrent }: Samples): boolean {
  if (elapsedS[0] !== 0) return false;
  let lastS = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < elapsedS.length; i++) {
    const timeS = elapsedS[i] as number;
    if (!(timeS > lastS) || (hasVoltage && Number.isNaN(voltagesV[i])) || (hasCurrent && Number.isNaN(currentsA[i]))) return false;
    lastS = timeS;
  }
  return true;
}

/** The samples' own columns, which nobody writes to once they are read: a second copy of a long log would only fill the memory. */
function asTheyAre({ elapsedS, voltagesV, currentsA, temperaturesC, lines }: Samples): Fit {
  return {
    columns: { elapsedS, voltagesV, currentsA, temperaturesC, lines },
    firstRowS: 0,
    clock: { outOfOrder: 0, equal: 0, setBack: [] },
  };
}

function mended(samples: Samples): Fit {
  const kept = rowsWithValues(samples);
  const { times, order, outOfOrder, setBack } = repairClock(samples, kept);
  const columns = mergeEqualTimes(samples, times, order);
  return {
    columns,
    firstRowS: samples.elapsedS[kept[0] ?? 0] ?? 0,
    clock: { outOfOrder, equal: times.length - columns.elapsedS.length, setBack },
  };
}

/** Rows that have every value the log records. A row with only a temperature is no sample of voltage and current. */
function rowsWithValues({ elapsedS, voltagesV, currentsA, hasVoltage, hasCurrent }: Samples): Uint32Array {
  const rows = new Uint32Array(elapsedS.length);
  let count = 0;
  for (let i = 0; i < elapsedS.length; i++) {
    if (hasVoltage && Number.isNaN(voltagesV[i])) continue;
    if (hasCurrent && Number.isNaN(currentsA[i])) continue;
    rows[count++] = i;
  }
  return rows.subarray(0, count);
}

function repairClock(
  samples: Samples,
  rows: Uint32Array,
): {
  times: Float64Array;
  order: Uint32Array;
  outOfOrder: number;
  setBack: { line: number; byS: number }[];
} {
  const times = new Float64Array(rows.length);
  const firstS = samples.elapsedS[rows[0] ?? 0] ?? 0;
  const rawS = (i: number): number => (samples.elapsedS[rows[i] as number] as number) - firstS;
  const steps = new Float64Array(rows.length);
  let rising = 0;
  for (let i = 1; i < rows.length; i++) {
    const step = rawS(i) - rawS(i - 1);
    if (step > 0) steps[rising++] = step;
  }
  const usualS = quantileByMoving(steps.subarray(0, rising), 0.5) || 1;
  const setBack: { line: number; byS: number }[] = [];
  let shiftS = 0;
  let latestS = Number.NEGATIVE_INFINITY;
  let outOfOrder = 0;
  for (let i = 0; i < rows.length; i++) {
    let timeS = rawS(i) + shiftS;
    if (timeS < latestS - disorderIntervals * usualS) {
      const byS = latestS - timeS;
      setBack.push({ line: samples.lines[rows[i] as number] as number, byS });
      shiftS += byS + usualS;
      timeS = latestS + usualS;
    } else if (timeS < latestS) outOfOrder++;
    times[i] = timeS;
    latestS = Math.max(latestS, timeS);
  }
  if (outOfOrder > 0) {
    const ranks = Array.from(times.keys()).sort((a, b) => (times[a] as number) - (times[b] as number) || a - b);
    return {
      times: Float64Array.from(ranks, (i) => times[i] as number),
      order: Uint32Array.from(ranks, (i) => rows[i] as number),
      outOfOrder,
      setBack,
    };
  }
  return { times, order: rows, outOfOrder, setBack };
}

/** Rows of one and the same time become one sample with their mean: a trapezoid of no width would drop all but the last. */
function mergeEqualTimes(
  samples: Samples,
  times: Float64Array,
  order: Uint32Array,
): Pick<Trace, "elapsedS" | "voltagesV" | "currentsA" | "temperaturesC" | "lines"> {
  const elapsedS = new Float64Array(times.length);
  const voltagesV = new Float64Array(times.length);
  const currentsA = new Float64Array(times.length);
  const temperaturesC = new Float64Array(samples.temperaturesC.length === 0 ? 0 : times.length);
  const lines = new Uint32Array(times.length);
  let length = 0;
  let count = 0;
  for (let i = 0; i < times.length; i++) {
    const row = order[i] as number;
    const isSame = length > 0 && times[i] === elapsedS[length - 1];
    if (!isSame) {
      length++;
      count = 0;
    }
    const at = length - 1;
    count++;
    elapsedS[at] = times[i] as number;
    voltagesV[at] = (voltagesV[at] as number) + ((samples.voltagesV[row] as number) - (voltagesV[at] as number)) / count;
    currentsA[at] = (currentsA[at] as number) + ((samples.currentsA[row] as number) - (currentsA[at] as number)) / count;
    if (isSame) continue;
    lines[at] = samples.lines[row] as number;
    if (temperaturesC.length > 0) temperaturesC[at] = samples.temperaturesC[row] as number;
  }
  return {
    elapsedS: elapsedS.subarray(0, length),
    voltagesV: voltagesV.subarray(0, length),
    currentsA: currentsA.subarray(0, length),
    temperaturesC: temperaturesC.subarray(0, length),
    lines: lines.subarray(0, length),
  };
}
