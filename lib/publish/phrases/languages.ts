/** Languages that the phrase book speaks beside English, the language of the results. */
export const languages = ["pl", "de"] as const;
export type Language = (typeof languages)[number];

/**
 * Forms that a word takes beside a number, in the order in which a wording lists them. Numbers with decimals take "other"; a Polish wording
 * may leave it out where the count is always whole.
 * Source: plural rules of the Unicode CLDR, as Intl.PluralRules has them.
 */
export const formOrder: Readonly<Record<Language, readonly Intl.LDMLPluralRule[]>> = {
  pl: ["one", "few", "many", "other"],
  de: ["one", "other"],
};
