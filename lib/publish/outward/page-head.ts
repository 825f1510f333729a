/** What the head of a finished page gets for programs, decided by the page's address alone: its feeds, and what it describes. */
import type { Language } from "../../nouns/site.ts";
import { chargerPath, inLanguage } from "../links.ts";
import type { ResultsFolder } from "../results-folder.ts";
import { wordsIn } from "../words/index.ts";
import { chargerFeedPath, siteFeedPath, siteQuotePath, versionsPath, wholeAddress } from "./addresses.ts";
import { chargerFeed, siteFeed } from "./feed.ts";
import { escapeMarkup } from "./markup-text.ts";
import { structuredDataOf } from "./structured/index.ts";
import { jsonLdBlock } from "./structured/json-ld.ts";

/**
 * Adds them to a page; most pages stay as they are.
 * @param path of the page from the site's root: "" for the first page, "chargers/lantern/"
 * Throws where a page that needs them has no head.
 */
export function withPageHead(html: string, results: ResultsFolder, path: string): string {
  const { languages } = results.index.site;
  const { language, here } = inLanguage(languages, path);
  // One description a result is enough for programs, and it stands with the site's first language.
  const structured = language === languages[0] ? jsonLdBlock(structuredDataOf(results, here)) : "";
  const head = feedLinks(results, here, language ?? "en") + structured;
  if (head === "") return html;
  const end = html.indexOf("</head>");
  if (end < 0) throw new Error(`the page at "${path}" has no head`);
  return html.slice(0, end) + head + html.slice(end);
}

/** Feeds are announced where a reader of changes would look: the first page, corrections, quoting, and a charger's own pages. */
function feedLinks(results: ResultsFolder, path: string, language: Language): string {
  const { feeds: words } = wordsIn(language).reference;
  const { site, chargers } = results.index;
  if (site.baseUrl === null) return "";
  const charger = chargers.find(({ id }) => chargerPath(id) === path || versionsPath(id) === path);
  const feeds = [
    charger !== undefined && chargerFeed(results, charger.id) !== undefined
      ? { path: chargerFeedPath(charger.id), title: words.ofCharger(charger.name) }
      : undefined,
    ["", "corrections/", siteQuotePath].includes(path) && siteFeed(results) !== undefined
      ? { path: siteFeedPath, title: words.ofSite(site.title) }
      : undefined,
  ];
  const base = site.baseUrl;
  return feeds
    .filter((feed) => feed !== undefined)
    .map(
      (feed) =>
        `<link rel="alternate" type="application/atom+xml" title="${escapeMarkup(feed.title)}" href="${escapeMarkup(wholeAddress(base, feed.path))}"/>`,
    )
    .join("");
}
