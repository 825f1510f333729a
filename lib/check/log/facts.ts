import type { Battery } from "../../nouns/battery.ts";
import type { Problem } from "../../nouns/problem.ts";
import type { Samples } from "../../nouns/samples.ts";

/** What a check of one log is given. */
export type LogFacts = {
  readonly samples: Samples;
  readonly battery: Battery;
  /** From the workspace's root, for messages. */
  readonly file: string;
  readonly testId: string;
  /** The connection's ends, ms since 1970 UTC, where the record has them. */
  readonly onMs: number | undefined;
  readonly offMs: number | undefined;
  /** Where the recorder's record describes its way of writing. */
  readonly notes: readonly string[];
};

/** A check's own part of a problem; the rest is the log's. `row` is the sample at which it shows, the first where left out. */
export type Finding = {
  readonly level: Problem["level"];
  readonly row?: number;
  readonly found: string;
  readonly expected: string;
  readonly mend: string;
  readonly notes?: readonly string[];
};

/** A finding as a problem of the log, at the line of its row. */
export function problemOfLog(id: string, facts: LogFacts, { level, row, found, expected, mend, notes }: Finding): Problem {
  const line = facts.samples.lines[row ?? 0] ?? 1;
  return {
    id,
    level,
    place: { file: facts.file, line, column: 1 },
    found,
    expected,
    mend,
    notes: [...facts.notes, ...(notes ?? [])],
    test: facts.testId,
  };
}

/** Four digits are enough to see a wrong unit. */
export const round = (value: number): number => Number(value.toPrecision(4));

/** Values that are there: the column itself where none is missing, which is not to be written to. */
export function present(values: Float64Array): Float64Array {
  let missing = 0;
  for (let row = 0; row < values.length; row++) if (Number.isNaN(values[row])) missing++;
  return missing === 0 ? values : values.filter((value) => !Number.isNaN(value));
}

/** The lowest and the highest of the values that are there; undefined where there are none. */
export function rangeOf(values: Float64Array): { readonly low: number; readonly high: number } | undefined {
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (let row = 0; row < values.length; row++) {
    const value = values[row] as number;
    if (value < low) low = value;
    if (value > high) high = value;
  }
  return low <= high ? { low, high } : undefined;
}

/** Rows of a check in words: the first three, and how many more. */
export function rowsInWords(rows: readonly number[], say: (row: number) => string): string {
  const shown = rows.slice(0, 3).map(say).join(", ");
  return rows.length > 3 ? `${shown} and ${rows.length - 3} more` : shown;
}
