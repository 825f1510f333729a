/**
 * What the results say in English, said in another language.
 *
 * The results are one format for everybody, and its sentences are English. Pages in another language look them up here; what the phrase book
 * does not hold comes back as undefined, and the page shows the English, marked as such.
 */
import { type Book, openBook } from "./book.ts";
import { chapters } from "./chapters.ts";
import type { Language } from "./languages.ts";
import { capitalised, sayPhrase } from "./say.ts";

/** Opened when the first text is asked for: a site in English needs none. */
let opened: Book | undefined;

/** The phrase book of this project. */
export function phraseBook(): Book {
  opened ??= openBook(chapters);
  return opened;
}

/** Characters of the longest text that is looked up: three times what the longest explanation has. Longer ones are somebody's prose. */
const longestText = 2000;

/** Sentences that one phrase can hold at most; the longest explanations have six. */
const mostSentences = 8;

/**
 * Translates a generated text of the results.
 *
 * @param text      one string as the results hold it: a clause, a sentence or several sentences; a clause may have been given the capital
 *                  and the full stop of a sentence, and keeps them
 * @param language  the language to say it in
 * @returns undefined where the phrase book does not hold the whole of it; never a part, never a guess. Numbers, dates, units and names
 *   are those of the text, written as the language writes numbers.
 */
export function translatePhrase(text: string, language: Language): string | undefined {
  if (text.length > longestText) return undefined;
  return translateWhole(text, language) ?? translateSentences(text, language);
}

/** Tries a text as it stands, then as the bare clause that it may have been made from. */
function translateWhole(text: string, language: Language): string | undefined {
  const book = phraseBook();
  const asItIs = book.find("text", text);
  if (asItIs !== undefined) return sayPhrase(asItIs, language);
  const hasStop = text.endsWith(".");
  for (const clause of clausesOf(text)) {
    const found = book.find("text", clause);
    if (found === undefined) continue;
    const said = sayPhrase(found, language);
    const begun = clause.charAt(0) === text.charAt(0) ? said : capitalised(said, language);
    return hasStop && !clause.endsWith(".") && !begun.endsWith(".") ? `${begun}.` : begun;
  }
  return undefined;
}

function clausesOf(text: string): string[] {
  const bare = text.endsWith(".") ? [text.slice(0, -1)] : [];
  return [
    ...bare,
    ...[text, ...bare].map((one) => one.charAt(0).toLowerCase() + one.slice(1)).filter((one) => one.charAt(0) !== text.charAt(0)),
  ];
}

/** Several sentences in one string: as many as are one phrase together, then the rest in the same way. */
function translateSentences(text: string, language: Language): string | undefined {
  const ends = [...text.matchAll(/(?<=[.?!]) (?=\p{Lu})/gu)].slice(0, mostSentences);
  for (const { index } of ends.reverse()) {
    const first = translateWhole(text.slice(0, index), language);
    const rest = first === undefined ? undefined : translatePhrase(text.slice(index + 1), language);
    if (first !== undefined && rest !== undefined) return `${first} ${rest}`;
  }
  return undefined;
}
