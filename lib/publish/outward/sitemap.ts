/** sitemap.xml and robots.txt, for crawlers. Both need the site's address. */
import { chargerPath, inLanguage, testPath } from "../links.ts";
import type { ResultsFolder } from "../results-folder.ts";
import { quotePath, versionsPath, wholeAddress } from "./addresses.ts";
import { eventsOfCharger, eventsOfSite, eventsOfTest, type ResultEvent, testsOf } from "./history.ts";
import { escapeMarkup } from "./markup-text.ts";

/**
 * The sitemap (sitemaps.org, version 0.9), in the order of the addresses.
 * @param pages paths from the site's root, such as "tests/first/index.html"; whoever calls leaves out what should not be found
 * @returns undefined where the site's address is not stated
 * A page has a `lastmod` only where the records date what it shows. More than 50 000 pages, the format's limit, throw.
 */
export function sitemap(results: ResultsFolder, pages: readonly string[]): string | undefined {
  const { baseUrl, languages } = results.index.site;
  if (baseUrl === null) return undefined;
  if (pages.length > 50_000) throw new Error(`a sitemap holds 50000 pages at most, found ${pages.length}`);
  const changed = lastChanges(results);
  const urls = [...pages].sort().map((page) => {
    const path = page.replace(/(^|\/)index\.html$/, "$1");
    const day = changed.get(inLanguage(languages, path).here);
    return `  <url><loc>${escapeMarkup(wholeAddress(baseUrl, path))}</loc>${day === undefined ? "" : `<lastmod>${day}</lastmod>`}</url>`;
  });
  return [
    '<?xml version="1.0" encoding="utf-8"?>',
    '<urlset xmlns="http://www.sitemaps.org/schemas/sitemap/0.9">',
    ...urls,
    "</urlset>",
    "",
  ].join("\n");
}

/** The day of the last event behind a page, by the page's path. */
function lastChanges(results: ResultsFolder): Map<string, string> {
  const days = new Map<string, string>();
  const note = (path: string, events: readonly ResultEvent[]) => {
    const last = events.at(-1);
    if (last !== undefined) days.set(path, last.on);
  };
  const ofSite = eventsOfSite(results);
  for (const path of ["", "corrections/", "data/"]) note(path, ofSite);
  for (const { id } of results.index.tests) note(testPath(id), eventsOfTest(results.test(id)));
  for (const { id } of results.index.chargers) {
    const events = eventsOfCharger(results.charger(id), testsOf(results, id));
    for (const path of [chargerPath(id), quotePath(id), versionsPath(id)]) note(path, events);
  }
  return days;
}

/**
 * robots.txt: everything may be read, and here is the sitemap. undefined where the site's address is not stated.
 * Crawlers look for it at the root of a host only, so a site in a sub-folder is told to have it copied there.
 */
export function robots(baseUrl: string | null): string | undefined {
  if (baseUrl === null) return undefined;
  const inSubFolder = new URL(baseUrl).pathname.replace(/\/$/, "") !== "";
  const advice = "# Crawlers read this file at the root of a host only: copy the Sitemap line into the robots.txt there.\n";
  return `${inSubFolder ? advice : ""}User-agent: *\nAllow: /\n\nSitemap: ${wholeAddress(baseUrl, "sitemap.xml")}\n`;
}
