/** How a language writes numbers: its marks, and the few words that stand among figures. */

import type { AbsenceKind } from "../nouns/figure.ts";

export type Notation = {
  readonly decimalMark: string;
  absence(kind: AbsenceKind): string;
  readonly notANumber: string;
  readonly notKnown: string;
  readonly noInterval: string;
  /** The open ends of an interval whose other end is a number. */
  readonly less: string;
  readonly more: string;
  between(low: string, high: string): string;
  orMore(low: string): string;
  orLess(high: string): string;
  moreThan(value: string): string;
  lessThan(value: string): string;
  /** A day, from "2026-03-14". */
  day(isoDate: string): string;
};

/** English keeps ISO dates: readers on both sides of an ocean read 03/04 differently. */
export const english: Notation = {
  decimalMark: ".",
  // English absences are called as the results name them.
  absence: (kind) => kind,
  notANumber: "not a number",
  notKnown: "not known",
  noInterval: "no interval",
  less: "less",
  more: "more",
  between: (low, high) => `${low} to ${high}`,
  orMore: (low) => `${low} or more`,
  orLess: (high) => `${high} or less`,
  moreThan: (value) => `more than ${value}`,
  lessThan: (value) => `less than ${value}`,
  day: (isoDate) => isoDate,
};
