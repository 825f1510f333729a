/** What each page tells machines, decided by its address alone. */
import { chargerPath, testPath } from "../../links.ts";
import type { ResultsFolder } from "../../results-folder.ts";
import { testsOf } from "../history.ts";
import { siteCatalog, testDataset } from "./dataset.ts";
import type { NamedThing } from "./json-ld.ts";
import { chargerReview } from "./review.ts";

/**
 * The things that a page describes; [] for most pages, and for all of a site whose address is not stated, since their names are addresses.
 * @param path from the site's root: "tests/first/"
 */
export function structuredDataOf(results: ResultsFolder, path: string): NamedThing[] {
  const { index } = results;
  const base = index.site.baseUrl;
  if (base === null) return [];
  if (path === "data/") return [siteCatalog(results, base)];
  const test = index.tests.find(({ id }) => testPath(id) === path);
  if (test !== undefined) return [testDataset(index, results.test(test.id), base)];
  const charger = index.chargers.find(({ id }) => chargerPath(id) === path);
  const review = charger === undefined ? undefined : chargerReview(index, results.charger(charger.id), testsOf(results, charger.id), base);
  return review === undefined ? [] : [review];
}
