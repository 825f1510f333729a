/** Where translations for pages that a script makes lie, and what they are; the script itself needs no more than this. */
import type { Language } from "../../nouns/site.ts";

/** What English statements mean in a language. */
export type Phrases = Readonly<Record<string, string>>;

/** data/find.json has data/find.pl.json beside it. */
export const phrasesPath = (dataPath: string, language: Language): string => dataPath.replace(/\.json$/, `.${language}.json`);
