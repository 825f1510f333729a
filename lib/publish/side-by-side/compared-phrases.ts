/** What a charger's file for the page side by side means in another language. */
import type { Language } from "../../nouns/site.ts";
import { phrasesOf } from "../words/phrases-of.ts";
import type { Phrases } from "../words/phrases-path.ts";
import type { ComparedCharger } from "./compared.ts";

/**
 * Pairs each text of the English file with what it is in a language.
 * @param english what assembleCompared makes in English
 * @param told    the same charger, with the texts that are made for the page in that language
 * @returns the statements of the results that have a translation, and the texts made for the page; names have none, and are left out by that
 */
export function comparedPhrases(english: ComparedCharger, told: ComparedCharger, language: Language): Phrases {
  const texts = textsOf(english);
  const toldTexts = textsOf(told);
  const made = texts.flatMap((text, place) => (toldTexts[place] === text ? [] : [[text, toldTexts[place] ?? text] as const]));
  return { ...phrasesOf(texts, language), ...Object.fromEntries(made) };
}

/** Every text of a value, in the order in which it holds them. */
function textsOf(value: unknown): string[] {
  if (typeof value === "string") return [value];
  return value === null || typeof value !== "object" ? [] : Object.values(value).flatMap(textsOf);
}
