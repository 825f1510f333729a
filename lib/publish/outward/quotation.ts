/** Words and markup for others to copy: one line for each figure, an HTML block without script or style, and the code of the embed. */
import type { ChargerResult, SiteIndex } from "../results.ts";
import { embedPath, versionPlace, wholeAddress } from "./addresses.ts";
import type { Headline, Headlines } from "./headlines.ts";
import { versionWords } from "./history.ts";
import { escapeMarkup } from "./markup-text.ts";
import { standingNotice } from "./standing.ts";

/** Everything that a quotation of a charger needs. */
export type Quotable = {
  readonly index: SiteIndex;
  readonly charger: ChargerResult;
  readonly headlines: Headlines;
  readonly version: string;
  readonly fingerprint: string;
  readonly invented: boolean;
};

/** A headline in words: claimed, measured, outcome; or its absence and why. */
export function headlineWords({ label, claimed, text, absent, outcome }: Headline): string {
  const value = text ?? (absent === null ? "not stated" : `${absent.kind}, ${absent.why}`);
  const stated = claimed === null ? "" : `, claimed ${claimed}`;
  const said = outcome === null || outcome.words === absent?.kind ? "" : `: ${outcome.words}`;
  return `${label}: ${value}${stated}${said}`;
}

/** One figure as it may be quoted: with unit, condition, date, method version, id, and address where the site states one. */
export function quotationLine(headline: Headline, { index, charger, version, invented }: Quotable): string {
  const { baseUrl, title } = index.site;
  const parts = [
    `${invented ? "[Invented data] " : ""}${charger.name}. ${headlineWords(headline)} (${headline.condition}).`,
    `${title}, result ${versionWords(version)}, method ${index.methodVersion}, figure ${headline.reference}`,
  ];
  return `${parts.join(" ")}${baseUrl === null ? "." : `: ${wholeAddress(baseUrl, headline.path)}`}`;
}

/**
 * A block of plain HTML for another site: no script, no style, no picture; readable as text where markup is stripped.
 * It says which version it quotes, and links to the page that tells whether there is a newer one.
 * @returns null where the site does not state its address: a quotation without a way back to its evidence is not offered
 */
export function htmlBlock({ index, charger, headlines, version, fingerprint, invented }: Quotable): string | null {
  const { baseUrl } = index.site;
  if (baseUrl === null) return null;
  const address = escapeMarkup(wholeAddress(baseUrl, versionPlace(charger.id, version)));
  const notice = standingNotice(charger);
  const items = [...headlines.promises, ...headlines.way].map((headline) => `    <li>${escapeMarkup(headlineWords(headline))}</li>`);
  const lines = [
    `<figure lang="${escapeMarkup(index.site.language)}">`,
    `  <blockquote cite="${address}">`,
    ...(invented ? ["    <p><strong>Invented data: no real product is judged here.</strong></p>"] : []),
    ...(index.site.sells === true ? ["    <p>The publisher of these results sells chargers or batteries.</p>"] : []),
    ...(notice === null ? [] : [`    <p><strong>${escapeMarkup(notice.words)}</strong></p>`]),
    `    <p><strong>${escapeMarkup(charger.name)}</strong>: ${escapeMarkup(charger.verdict.sentence)}</p>`,
    "    <ul>",
    ...items.map((item) => `  ${item}`),
    "    </ul>",
    `    <p>Full density: ${escapeMarkup(headlines.wayCondition)}.${headlines.wayOthers === null ? "" : ` ${escapeMarkup(headlines.wayOthers)}`}</p>`,
    "  </blockquote>",
    `  <figcaption>${escapeMarkup(index.site.title)}, result ${escapeMarkup(versionWords(version))}, method ${escapeMarkup(index.methodVersion)}, fingerprint ${fingerprint}.`,
    `    <a href="${address}">Is this still the newest result? Evidence for every figure</a></figcaption>`,
    "</figure>",
  ];
  return `${lines.join("\n")}\n`;
}

/** Room for most embeds where the frame is 360 px wide, px; a longer one scrolls inside its frame. */
const embedHeightPx = 960;

/** The code of a frame that always shows the newest result; null where the site does not state its address. */
export function frameCode({ index, charger }: Pick<Quotable, "index" | "charger">): string | null {
  const { baseUrl } = index.site;
  if (baseUrl === null) return null;
  const address = escapeMarkup(wholeAddress(baseUrl, embedPath(charger.id)));
  const title = escapeMarkup(`${charger.name}: results of ${index.site.title}`);
  return `<iframe src="${address}" title="${title}" width="360" height="${embedHeightPx}" loading="lazy" referrerpolicy="no-referrer" sandbox="allow-popups allow-popups-to-escape-sandbox"></iframe>\n`;
}
