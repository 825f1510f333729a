/** Several recordings in one file: told apart by a column that numbers them, by headings that come again, or by a clock that starts anew. */
import { headingsAgain, type Rows } from "./row-reader.ts";

export type Part = {
  /** Samples from (included) and to (excluded). */
  readonly from: number;
  readonly to: number;
  /** How the part shows itself. */
  readonly label: string;
};

/** A clock that counts has started anew where it falls back to where the log began, give or take so many usual steps. */
const nearStartSteps = 2;

/**
 * Finds a file's recordings.
 * @param counts  whether the times count from the start: only such a clock can start anew; a clock on the wall that falls back was set
 * @returns one part at least, in file order, that together hold every sample
 */
export function findParts(
  { timesS, marks, lines, isRising }: Pick<Rows, "timesS" | "marks" | "lines" | "isRising">,
  counts: boolean,
): Part[] {
  const starts = new Map<number, string>();
  if (timesS.length > 0) starts.set(0, `from line ${lines[0]}`);
  // Headings that come again while a clock on the wall goes on only show that the recorder was switched on again.
  for (const { at, label } of marks) if (at < timesS.length && (label !== headingsAgain || (counts && at > 0))) starts.set(at, label);
  if (counts && !isRising) for (const at of restarts(timesS)) if (!starts.has(at)) starts.set(at, "the clock starts again");
  const sorted = [...starts].sort(([a], [b]) => a - b);
  return sorted.map(([from, label], index) => ({ from, to: sorted[index + 1]?.[0] ?? timesS.length, label }));
}

function restarts(timesS: Float64Array): number[] {
  const found: number[] = [];
  let startS = timesS[0] ?? 0;
  let stepS = Number.POSITIVE_INFINITY;
  let sinceStart = 0;
  for (let i = 1; i < timesS.length; i++) {
    const step = (timesS[i] as number) - (timesS[i - 1] as number);
    if (step > 0) stepS = Math.min(stepS, step);
    sinceStart++;
    const near = Number.isFinite(stepS) ? nearStartSteps * stepS : 0;
    if (step < 0 && sinceStart >= 2 && (timesS[i] as number) <= startS + near) {
      found.push(i);
      startS = timesS[i] as number;
      sinceStart = 0;
    }
  }
  return found;
}
