/** What a page in a language needs to speak. */
import type { Figure } from "../../nouns/figure.ts";
import type { Language } from "../../nouns/site.ts";
import { type Formats, formatsWith } from "../../units/formats.ts";
import { english, type Notation } from "../../units/notation.ts";
import { german } from "../../units/notations/german.ts";
import { polish } from "../../units/notations/polish.ts";
import type { Speech } from "../pages/speech.tsx";
import { translatePhrase } from "../phrases/translate.ts";
import { wordsIn } from "./index.ts";

export const notations: Readonly<Record<Language, Notation>> = { en: english, pl: polish, de: german };

/** Numbers as a language writes them. */
export const formatsIn = (language: Language): Formats => formatsWith(notations[language]);

/** What the results say, in another language, by the phrase book. An English page says what they say. */
export function sayIn(language: Language, text: string): string | undefined {
  return language === "en" ? text : translatePhrase(text, language);
}

type PageSpeech = Speech & { readonly language: Language; readonly formats: Formats; basis(basis: Figure["basis"]): string };

export function speechIn(language: Language): PageSpeech {
  const { absences, bases } = wordsIn(language).marks;
  return {
    language,
    formats: formatsIn(language),
    absence: (kind) => absences[kind],
    basis: (basis) => bases[basis],
    say: (text) => sayIn(language, text),
  };
}
