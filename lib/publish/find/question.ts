/** A reader's question: my battery, how flat, how cold, by when; and its form in an address. */
import { type Condition, type Construction, flatnesses } from "../../project/index.ts";
import type { FindSpeech } from "./find-speech.ts";

export const voltagesV = [6, 12, 24] as const;

/** Choices are named here, and worded by the page (lib/publish/words/en/find.ts). */
export const kindChoices: readonly { readonly id: Construction }[] = [
  { id: "flooded" },
  { id: "flooded-antimony" },
  { id: "flooded-calcium" },
  { id: "EFB" },
  { id: "AGM" },
  { id: "gel" },
];

export const conditionChoices: readonly { readonly id: Condition }[] = [
  { id: "new" },
  { id: "used" },
  { id: "neglected" },
  { id: "not stated" },
];

/** How flat is told in a word, by its rest voltage, or by the density of its acid. */
export const flatChoices = [...flatnesses.map(({ id }) => ({ id })), { id: "rest-voltage" }, { id: "density" }] as const;

export const deadlineChoices = [
  { id: "tomorrow-morning" },
  { id: "tomorrow-evening" },
  { id: "sunday-evening" },
  { id: "12h" },
  { id: "24h" },
  { id: "48h" },
  { id: "at" },
] as const;

export type Question = {
  readonly voltageV: number;
  /** Capacity at the 20 h rate, as printed. */
  readonly ratedAh: number;
  readonly kind: Construction;
  readonly condition: Condition;
  /** One of flatChoices. */
  readonly flat: string;
  /** V of the whole battery, and kg/l at 25 °C; NaN where it was not read. */
  readonly restV: number;
  readonly densityAt25C: number;
  /** °C of the place, and of the battery that has stood there. */
  readonly airC: number;
  /** One of deadlineChoices; `at` is then the date and time, as in 2026-03-15T18:00, on the reader's own clock. */
  readonly by: string;
  readonly at: string;
  /** In the currency of the reader's choice; NaN where none is given. */
  readonly pricePerKWh: number;
};

export const defaultQuestion: Question = {
  voltageV: 12,
  ratedAh: 68,
  kind: "flooded",
  condition: "used",
  flat: "half",
  restV: Number.NaN,
  densityAt25C: Number.NaN,
  airC: 20,
  by: "tomorrow-morning",
  at: "",
  pricePerKWh: Number.NaN,
};

/** Names in the address, and in the form. */
export const questionFields: Readonly<Record<keyof Question, string>> = {
  voltageV: "v",
  ratedAh: "ah",
  kind: "kind",
  condition: "condition",
  flat: "flat",
  restV: "volts",
  densityAt25C: "density",
  airC: "air",
  by: "by",
  at: "at",
  pricePerKWh: "kwh",
};

/**
 * Reads a question from an address or a form.
 * @param value  what a field holds; undefined or empty text is the default
 * @returns a question of known choices: an unknown one falls back to the default. A number is kept as it is, NaN where it is none.
 */
export function readQuestion(value: (field: string) => string | null | undefined): Question {
  const told = (name: keyof Question): string => value(questionFields[name])?.trim() ?? "";
  const number = (name: "voltageV" | "ratedAh" | "airC" | "restV" | "densityAt25C" | "pricePerKWh"): number =>
    told(name) === "" ? defaultQuestion[name] : Number(told(name).replace(",", "."));
  const choice = <T extends string>(name: keyof Question, choices: readonly { readonly id: T }[], otherwise: T): T =>
    choices.find(({ id }) => id === told(name))?.id ?? otherwise;
  return {
    voltageV: voltagesV.find((volts) => volts === number("voltageV")) ?? defaultQuestion.voltageV,
    ratedAh: number("ratedAh"),
    kind: choice("kind", kindChoices, defaultQuestion.kind),
    condition: choice("condition", conditionChoices, defaultQuestion.condition),
    flat: choice<string>("flat", flatChoices, defaultQuestion.flat),
    restV: number("restV"),
    densityAt25C: number("densityAt25C"),
    airC: number("airC"),
    by: choice<string>("by", deadlineChoices, defaultQuestion.by),
    at: told("at"),
    pricePerKWh: number("pricePerKWh"),
  };
}

/** The question as an address holds it: what is as in the default is left out, and so is what the choices made do not use. */
export function writeQuestion(question: Question): URLSearchParams {
  const query = new URLSearchParams();
  const isUsed = (name: keyof Question): boolean =>
    (name !== "restV" || question.flat === "rest-voltage") &&
    (name !== "densityAt25C" || question.flat === "density") &&
    (name !== "at" || question.by === "at");
  for (const name of Object.keys(questionFields) as (keyof Question)[])
    if (isUsed(name) && !Object.is(question[name], defaultQuestion[name])) query.set(questionFields[name], String(question[name]));
  return query;
}

/** What is wrong with a question: the field in the address and a sentence on how to mend it. */
export type Complaint = { readonly field: string; readonly words: string };

/** Ranges within which an answer is worth something: our judgement; colder acid than -30 °C and hotter than 50 °C no model here covers. */
export const questionRanges = { ratedAh: { low: 1, high: 400 }, airC: { low: -30, high: 50 }, pricePerKWh: { low: 0, high: 100 } } as const;

/** The first field that keeps a question from being answered; undefined where none does. Flatness and deadline are looked at by their own modules. */
export function complaintOf(question: Question, { words }: Pick<FindSpeech, "words">): Complaint | undefined {
  const { complaints } = words;
  const isWithin = (value: number, { low, high }: { readonly low: number; readonly high: number }): boolean =>
    value >= low && value <= high;
  const { ratedAh, airC, pricePerKWh } = questionRanges;
  if (!isWithin(question.ratedAh, ratedAh))
    return {
      field: questionFields.ratedAh,
      words: complaints.capacity(ratedAh.low, ratedAh.high),
    };
  if (!isWithin(question.airC, airC)) return { field: questionFields.airC, words: complaints.temperature(airC.low, airC.high) };
  if (!Number.isNaN(question.pricePerKWh) && !isWithin(question.pricePerKWh, pricePerKWh))
    return { field: questionFields.pricePerKWh, words: complaints.price };
  return undefined;
}
