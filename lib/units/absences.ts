/** What an absence is called, by language. Plain tables, so that a script holds its own language's only. */
import type { AbsenceKind } from "../nouns/figure.ts";

/** The kinds of the results, and those that a page tells by itself. */
export type Absences = Readonly<Record<AbsenceKind | "not put to the test" | "nothing claimed" | "not claimed", string>>;

export const englishAbsences: Absences = {
  "not recorded": "not recorded",
  "not measured": "not measured",
  "not stated": "not stated",
  "not reached": "not reached",
  "not applicable": "not applicable",
  "cannot tell": "cannot tell",
  "not put to the test": "not put to the test",
  "nothing claimed": "nothing claimed",
  "not claimed": "not claimed",
};

export const polishAbsences: Absences = {
  "not recorded": "nie zapisano",
  "not measured": "nie zmierzono",
  "not stated": "nie podano",
  "not reached": "nie osiągnięto",
  "not applicable": "nie dotyczy",
  "cannot tell": "nie da się ustalić",
  "not put to the test": "nie poddano próbie",
  "nothing claimed": "niczego nie zadeklarowano",
  "not claimed": "nie zadeklarowano",
};

export const germanAbsences: Absences = {
  "not recorded": "nicht aufgezeichnet",
  "not measured": "nicht gemessen",
  "not stated": "nicht angegeben",
  "not reached": "nicht erreicht",
  "not applicable": "trifft nicht zu",
  "cannot tell": "nicht feststellbar",
  "not put to the test": "nicht auf die Probe gestellt",
  "nothing claimed": "nichts zugesagt",
  "not claimed": "nicht zugesagt",
};
