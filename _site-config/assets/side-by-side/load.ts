/** Fetches the small files of the chargers, each once. */
import { type ComparedCharger, type ComparedIndex, comparedIndexPath, comparedPath } from "../../../lib/publish/side-by-side/compared.ts";

export type Loader = {
  /** Rejects where the list cannot be fetched. */
  index(): Promise<ComparedIndex>;
  /** Rejects, in words that name the charger, where its file cannot be fetched. */
  charger(id: string): Promise<ComparedCharger>;
};

/** @param root the way from the page to the site's root, such as "../" */
export function loaderFrom(root: string): Loader {
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
    charger: (id) => get(comparedPath(id)) as Promise<ComparedCharger>,
  };
}
