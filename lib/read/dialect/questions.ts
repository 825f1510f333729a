/** What a file leaves open: a question with the readings that are possible, and for each the line that settles it. */

/** One possible answer. */
export type Option = {
  /** For the command line. */
  readonly answer: string;
  /** For the recorder's record, below `dialect:`. */
  readonly yaml: string;
  /** What the file then says. */
  readonly reads: string;
};

export type Question = {
  readonly found: string;
  readonly expected: string;
  readonly mend: string;
  /** Empty where only a person who knows the recorder can tell. */
  readonly options: readonly Option[];
};

export function choice(found: string, expected: string, mend: string, options: readonly Option[]): Question {
  return { found, expected, mend, options };
}
