/** What the statements of a data file mean in the page's language. The data are in English. */
import { phrasesPath } from "../../lib/publish/words/phrases-path.ts";
import { language } from "./language.ts";

/** A statement in the page's language; undefined where nobody has translated it. */
export type Say = (statement: string) => string | undefined;

/** An English page says what the data say. */
export const asItIs: Say = (statement) => (language === "en" ? statement : undefined);

/**
 * @param address of the English data; the translations lie beside them (lib/publish/words/phrases-of.ts)
 * Never rejects: what cannot be fetched leaves the statements in English.
 */
export async function fetchPhrases(address: string): Promise<Say> {
  if (language === "en") return asItIs;
  try {
    const response = await fetch(phrasesPath(address, language));
    if (!response.ok) return asItIs;
    const phrases = new Map(Object.entries((await response.json()) as Record<string, string>));
    return (statement) => phrases.get(statement);
  } catch {
    return asItIs;
  }
}
