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

/** Values that are there. */
export const present = (values: Float64Array): Float64Array => values.filter((value) => !Number.isNaN(value));

/** The highest of many values; NaN where there are none. Spreading them over Math.max would overflow the stack. */
export const highest = (values: Float64Array): number =>
  values.reduce((high, value) => (value > high || Number.isNaN(high) ? value : high), Number.NaN);

/** Rows of a check in words: the first three, and how many more. */
export function rowsInWords(rows: readonly number[], say: (row: number) => string): string {
  const shown = rows.slice(0, 3).map(say).join(", ");
  return rows.length > 3 ? `${shown} and ${rows.length - 3} more` : shown;
}
