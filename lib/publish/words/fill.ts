/** Messages as plain text with named places, for a script that serves every language: "{a} and {b} cost the same". */

/** What is set into the places, by their names. */
export type Values = Readonly<Record<string, string | number>>;

/** A message about a count: one text for each form that the language's counted nouns have, "other" among them. */
export type Forms = Readonly<Partial<Record<Intl.LDMLPluralRule, string>> & { other: string }>;

/** Sets values into a message. A place without a value stays as it is, so that a page shows what is missing. */
export const fill = (message: string, values: Values): string =>
  message.replace(/\{(\w+)\}/g, (place, name: string) => String(values[name] ?? place));

/**
 * Sets values into the form that a count takes, and the count itself into {count}.
 * @param language whose plural rules count, by the locale data of Unicode
 */
export function fillCounted(forms: Forms, count: number, language: string, values: Values = {}): string {
  return fill(forms[new Intl.PluralRules(language).select(count)] ?? forms.other, { count, ...values });
}
