import { germanAbsences } from "../absences.ts";
import type { Notation } from "../notation.ts";
import { dayIn, decimalMarkOf } from "./locale.ts";

export const german: Notation = {
  decimalMark: /* @__PURE__ */ decimalMarkOf("de"),
  absence: (kind) => germanAbsences[kind],
  notANumber: "keine Zahl",
  notKnown: "nicht bekannt",
  noInterval: "kein Intervall",
  less: "weniger",
  more: "mehr",
  between: (low, high) => `${low} bis ${high}`,
  orMore: (low) => `${low} oder mehr`,
  orLess: (high) => `${high} oder weniger`,
  moreThan: (value) => `mehr als ${value}`,
  lessThan: (value) => `weniger als ${value}`,
  day: /* @__PURE__ */ dayIn("de"),
};
