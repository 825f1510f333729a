/**
 * A problem is something in the workspace that a person should look at, said so that they can mend it.
 *
 * Problems are values: every stage returns the ones it found, and they are printed together, sorted by file and place.
 * An `error` stops the publication of what it touches; a `doubt` is published beside the figures it touches.
 */
export type ProblemLevel = "error" | "doubt";

/** Where something stands in a file. Lines and columns count from 1, columns in characters, as an editor shows them. */
export type Place = {
  /** Path from the workspace's root, with forward slashes. */
  readonly file: string;
  readonly line?: number;
  readonly column?: number;
};

export type Problem = {
  /** Names the check that found it; docs/problems.md has one entry for each id. */
  readonly id: string;
  readonly level: ProblemLevel;
  readonly place: Place;
  /** What was found, the reader's own text in double quotes. */
  readonly found: string;
  readonly expected: string;
  /** What the reader can do about it. */
  readonly mend: string;
  readonly notes?: readonly string[];
  /** The test that the problem touches, by id, where it touches just one. */
  readonly test?: string;
};

/** A value together with the problems met on the way to it. */
export type Checked<T> = { readonly value: T; readonly problems: readonly Problem[] };

/** Says a problem in the form that every command prints. */
export function formatProblem(problem: Problem): string {
  const lines = [
    `${formatPlace(problem.place)}: ${problem.level} ${problem.id}: expected ${problem.expected}, found ${problem.found}`,
    ...(problem.notes ?? []).map((note) => `  note: ${note}`),
    `  mend: ${problem.mend}`,
  ];
  return lines.join("\n");
}

/** `file:line:column`, leaving out what is not known. */
export function formatPlace(place: Place): string {
  if (place.line === undefined) return place.file;
  return place.column === undefined ? `${place.file}:${place.line}` : `${place.file}:${place.line}:${place.column}`;
}

/** Sorts by file, then line, then column, then id; the order does not depend on the machine's language. */
export function sortProblems(problems: readonly Problem[]): Problem[] {
  return [...problems].sort(
    (a, b) =>
      compareText(a.place.file, b.place.file) ||
      (a.place.line ?? 0) - (b.place.line ?? 0) ||
      (a.place.column ?? 0) - (b.place.column ?? 0) ||
      compareText(a.id, b.id) ||
      compareText(a.found, b.found),
  );
}

function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
