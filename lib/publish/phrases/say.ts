/** Says a phrase that was found in another language. */
import type { Found } from "./book.ts";
import { formOrder, type Language } from "./languages.ts";
import type { Value } from "./match.ts";
import { joints } from "./pattern.ts";
import { countOf, writeValue } from "./values.ts";

/** The wording of a phrase with its values set in: numbers as the language writes them, words in the form that goes with their number. */
export function sayPhrase({ entry, values }: Found, language: Language): string {
  return entry.wordings[language]
    .map((part) => {
      if (typeof part === "string") return part;
      const value = values.get(part.name);
      if (value === undefined) throw new Error(`{${part.name}} has no place in: ${entry.phrase.en}`);
      if (part.forms !== null) return formFor(value, part.forms, language);
      return part.isCapital ? capitalised(sayValue(value, language), language) : sayValue(value, language);
    })
    .join("");
}

function sayValue(value: Value<Found>, language: Language): string {
  switch (value.kind) {
    case "plain":
      return writeValue(value.as, value.text, language);
    case "phrase":
      return sayPhrase(value.found, language);
    case "list":
      return value.items.map((item) => sayPhrase(item, language)).join(joints[value.joint][language]);
  }
}

/** A text with its first letter large. */
export function capitalised(text: string, language: Language): string {
  return text.charAt(0).toLocaleUpperCase(language) + text.slice(1);
}

/** The form of a word beside a number: "wizyta" for 1, "wizyty" for 2, "wizyt" for 5, where a wording lists these three. */
function formFor(value: Value<Found>, forms: readonly string[], language: Language): string {
  const { count, decimals } = countOf(value.kind === "plain" ? value.text : "");
  const rule = new Intl.PluralRules(language, { minimumFractionDigits: decimals }).select(count);
  return forms[formOrder[language].indexOf(rule)] ?? forms.at(-1) ?? "";
}
