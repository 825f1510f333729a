import { polishAbsences } from "../absences.ts";
import type { Notation } from "../notation.ts";
import { dayIn, decimalMarkOf } from "./locale.ts";

export const polish: Notation = {
  decimalMark: /* @__PURE__ */ decimalMarkOf("pl"),
  absence: (kind) => polishAbsences[kind],
  notANumber: "to nie liczba",
  notKnown: "nie wiadomo",
  noInterval: "brak przedziału",
  less: "mniej",
  more: "więcej",
  between: (low, high) => `${low} do ${high}`,
  orMore: (low) => `${low} lub więcej`,
  orLess: (high) => `${high} lub mniej`,
  moreThan: (value) => `ponad ${value}`,
  lessThan: (value) => `poniżej ${value}`,
  day: /* @__PURE__ */ dayIn("pl"),
};
