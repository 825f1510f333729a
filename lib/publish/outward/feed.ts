/**
 * Atom feeds (RFC 4287) of what was published, revised and corrected. Every date comes from the records: a build without news gives the same
 * bytes, and no reader is woken by it.
 */
import { chargerPath } from "../links.ts";
import { sentence } from "../pages/sentence.ts";
import type { ResultsFolder } from "../results-folder.ts";
import { chargerFeedPath, siteFeedPath, wholeAddress } from "./addresses.ts";
import { publisherOf } from "./citation.ts";
import { eventsOfCharger, eventsOfSite, type ResultEvent, testsOf, verdictWords } from "./history.ts";
import { escapeMarkup } from "./markup-text.ts";

type Feed = {
  readonly title: string;
  readonly path: string;
  readonly page: string;
  readonly events: readonly ResultEvent[];
};

/** The feed of the whole site; undefined where its address or every date is missing, since Atom asks for both. */
export function siteFeed(results: ResultsFolder): string | undefined {
  const { site } = results.index;
  return writeFeed(results, { title: site.title, path: siteFeedPath, page: "", events: eventsOfSite(results) });
}

/** The feed of one charger; undefined likewise. */
export function chargerFeed(results: ResultsFolder, id: string): string | undefined {
  const charger = results.charger(id);
  return writeFeed(results, {
    title: `${charger.name} · ${results.index.site.title}`,
    path: chargerFeedPath(id),
    page: chargerPath(id),
    events: eventsOfCharger(charger, testsOf(results, id)),
  });
}

function writeFeed(results: ResultsFolder, { title, path, page, events }: Feed): string | undefined {
  const { site } = results.index;
  const newest = events.at(-1);
  if (site.baseUrl === null || newest === undefined) return undefined;
  const base = site.baseUrl;
  const mark = (invented: boolean) => (invented ? "Invented data: " : "");
  const address = (target: string) => escapeMarkup(wholeAddress(base, target));
  return [
    '<?xml version="1.0" encoding="utf-8"?>',
    `<feed xmlns="http://www.w3.org/2005/Atom" xml:lang="${escapeMarkup(site.language)}">`,
    `  <id>${address(path)}</id>`,
    `  <title>${escapeMarkup(mark(site.invented) + title)}</title>`,
    `  <updated>${instantOf(newest.on)}</updated>`,
    `  <author><name>${escapeMarkup(publisherOf(results.index))}</name></author>`,
    `  <link rel="self" type="application/atom+xml" href="${address(path)}"/>`,
    `  <link rel="alternate" type="text/html" href="${address(page)}"/>`,
    ...(site.licence === null ? [] : [`  <rights>${escapeMarkup(site.licence)}</rights>`]),
    ...[...events].reverse().map((event) => entry(event, base, mark(site.invented || event.invented))),
    "</feed>",
    "",
  ].join("\n");
}

function entry(event: ResultEvent, base: string, mark: string): string {
  const title = event.kind === "published" ? event.what : `${event.kind.charAt(0).toUpperCase()}${event.kind.slice(1)}: ${event.what}`;
  const body = [event.what, event.why ?? "", verdictWords(event)].filter((part) => part !== "").map(sentence);
  return [
    "  <entry>",
    `    <id>${escapeMarkup(entryId(event, base))}</id>`,
    `    <title>${escapeMarkup(mark + title)}</title>`,
    `    <updated>${instantOf(event.on)}</updated>`,
    `    <published>${instantOf(event.on)}</published>`,
    `    <link rel="alternate" type="text/html" href="${escapeMarkup(wholeAddress(base, event.path))}"/>`,
    `    <content type="text">${escapeMarkup(body.join(" "))}</content>`,
    "  </entry>",
  ].join("\n");
}

/** A tag URI (RFC 4151): it stays the same if the site moves to another path of its host, and it names no file that could vanish. */
function entryId(event: ResultEvent, base: string): string {
  return `tag:${new URL(base).hostname},${event.on}:${event.id}`;
}

/** Records hold days; Atom asks for an instant, and the first one of the day in UTC is the same on every machine. */
const instantOf = (day: string): string => `${day}T00:00:00Z`;
