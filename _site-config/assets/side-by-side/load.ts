/** Fetches the small files of the chargers, each once. */
import type { Language } from "../../../lib/nouns/site.ts";
import { type ComparedCharger, type ComparedIndex, comparedIndexPath, comparedPath } from "../../../lib/publish/side-by-side/compared.ts";
import { type Phrases, phrasesPath } from "../../../lib/publish/words/phrases-path.ts";

export type Loader = {
  /** Rejects where the list cannot be fetched. */
  index(): Promise<ComparedIndex>;
  /** A charger, and what its texts mean in the page's language. Rejects where its file cannot be fetched; phrases that cannot are none. */
  charger(id: string): Promise<readonly [ComparedCharger, Phrases]>;
};

/**
 * @param root the way from the page to the site's root, such as "../"
 * @param language of the page; one in English fetches no phrases
 */
export function loaderFrom(root: string, language: Language): Loader {
  const fetched = new Map<string, Promise<unknown>>();
  const get = (path: string): Promise<unknown> => {
    const known = fetched.get(path);
    if (known !== undefined) return known;
    const asked = fetch(root + path).then((response) => {
      if (!response.ok) throw new Error(`${path}: ${response.status}`);
      return response.json();
    });
    fetched.set(path, asked);
    // A failure may pass, so it is not remembered.
    asked.catch(() => fetched.delete(path));
    return asked;
  };
  return {
    index: () => get(comparedIndexPath) as Promise<ComparedIndex>,
    charger: (id) => {
      const path = comparedPath(id);
      const phrases = language === "en" ? {} : get(phrasesPath(path, language)).catch(() => ({}));
      return Promise.all([get(path), phrases]) as Promise<[ComparedCharger, Phrases]>;
    },
  };
}
