/** What a page in a language needs to speak. */
import type { Figure } from "../../nouns/figure.ts";
import type { Language } from "../../nouns/site.ts";
import { type Formats, formatsWith } from "../../units/formats.ts";
import { english, type Notation } from "../../units/notation.ts";
import { german } from "../../units/notations/german.ts";
import { polish } from "../../units/notations/polish.ts";
import type { Speech } from "../pages/speech.tsx";
import { translatePhrase } from "../phrases/translate.ts";
import { labels as englishLabels } from "./en/labels.ts";
import { wordsIn } from "./index.ts";

export const notations: Readonly<Record<Language, Notation>> = { en: english, pl: polish, de: german };

/** Numbers as a language writes them. */
export const formatsIn = (language: Language): Formats => formatsWith(notations[language]);

type LabelId = keyof typeof englishLabels;
const idOfLabel = new Map((Object.keys(englishLabels) as LabelId[]).map((id) => [englishLabels[id], id]));

/** A label of the results in another language; two labels joined by a colon, such as a figure and its spread, are told one by one. */
function translateLabel(text: string, language: Language): string | undefined {
  const id = idOfLabel.get(text);
  if (id !== undefined) return wordsIn(language).labels[id];
  const [figure, aspect, ...more] = text.split(": ");
  if (figure === undefined || aspect === undefined || more.length > 0) return undefined;
  const ids = [idOfLabel.get(figure), idOfLabel.get(aspect)] as const;
  if (ids[0] === undefined || ids[1] === undefined) return undefined;
  return `${wordsIn(language).labels[ids[0]]}: ${wordsIn(language).labels[ids[1]]}`;
}

/** What the results say, in another language: a label by its table, a statement by the phrase book. An English page says what they say. */
export function sayIn(language: Language, text: string): string | undefined {
  return language === "en" ? text : (translateLabel(text, language) ?? translatePhrase(text, language));
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
