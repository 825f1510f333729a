/**
 * Translations for pages that a script makes from a data file: the file stays in English and stands once, and beside it each other language
 * has a small one that says what its statements mean. An English page fetches none.
 */
import type { Language } from "../../nouns/site.ts";
import type { Phrases } from "./phrases-path.ts";
import { sayIn } from "./speech-in.ts";

/** The statements that have a translation, each once, in the order given. */
export function phrasesOf(statements: readonly string[], language: Language): Phrases {
  return Object.fromEntries(
    [...new Set(statements)].flatMap((statement) => {
      const told = sayIn(language, statement);
      return told === undefined ? [] : [[statement, told]];
    }),
  );
}
