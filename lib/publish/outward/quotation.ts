/** Words and markup for others to copy: one line for each figure, an HTML block without script or style, and the code of the embed. */
import { said } from "../pages/speech.tsx";
import type { ChargerResult, SiteIndex } from "../results.ts";
import { embedPath, versionPlace, wholeAddress } from "./addresses.ts";
import type { Headline, Headlines } from "./headlines.ts";
import { versionWords } from "./history.ts";
import { escapeMarkup } from "./markup-text.ts";
import type { OutwardSpeech } from "./outward-speech.ts";
import { standingNotice } from "./standing.ts";

/** Everything that a quotation of a charger needs. */
export type Quotable = {
  readonly index: SiteIndex;
  readonly charger: ChargerResult;
  readonly headlines: Headlines;
  readonly version: string;
  readonly fingerprint: string;
  readonly invented: boolean;
  readonly speech: OutwardSpeech;
  /** The folder of the language's pages, from the site's root. */
  readonly folder: string;
};

/** A headline in words: claimed, measured, outcome; or its absence and why. */
export function headlineWords({ label, claimed, text, absent, outcome }: Headline, { marks, outward }: OutwardSpeech): string {
  const words = outward.quotation;
  const value = text ?? (absent === null ? words.notStated : words.absent(marks.absences[absent.kind], absent.why.words));
  const stated = claimed === null ? "" : words.claimed(claimed);
  const said = outcome === null || outcome.id === absent?.kind ? "" : `: ${outcome.words}`;
  return `${label}: ${value}${stated}${said}`;
}

/** One figure as it may be quoted: with unit, condition, date, method version, id, and address where the site states one. */
export function quotationLine(headline: Headline, { index, charger, version, invented, speech, folder }: Quotable): string {
  const words = speech.outward.quotation;
  const { baseUrl, title } = index.site;
  const parts = [
    `${invented ? words.invented : ""}${charger.name}. ${headlineWords(headline, speech)} (${headline.condition}).`,
    words.source(title, versionWords(version, speech), index.methodVersion, headline.reference),
  ];
  return `${parts.join(" ")}${baseUrl === null ? "." : `: ${wholeAddress(baseUrl, folder + headline.path)}`}`;
}

/**
 * A block of plain HTML for another site: no script, no style, no picture; readable as text where markup is stripped.
 * It says which version it quotes, and links to the page that tells whether there is a newer one.
 * @returns null where the site does not state its address: a quotation without a way back to its evidence is not offered
 */
export function htmlBlock({ index, charger, headlines, version, fingerprint, invented, speech, folder }: Quotable): string | null {
  const words = speech.outward.quotation;
  const { baseUrl } = index.site;
  if (baseUrl === null) return null;
  const address = escapeMarkup(wholeAddress(baseUrl, folder + versionPlace(charger.id, version)));
  const notice = standingNotice(charger, speech);
  const items = [...headlines.promises, ...headlines.way].map(
    (headline) => `    <li>${escapeMarkup(headlineWords(headline, speech))}</li>`,
  );
  const lines = [
    `<figure lang="${speech.language}">`,
    `  <blockquote cite="${address}">`,
    ...(invented ? [`    <p><strong>${escapeMarkup(words.blockInvented)}</strong></p>`] : []),
    ...(index.site.sells === true ? [`    <p>${escapeMarkup(words.blockSells)}</p>`] : []),
    ...(notice === null ? [] : [`    <p><strong>${escapeMarkup(notice.words)}</strong></p>`]),
    `    <p><strong>${escapeMarkup(charger.name)}</strong>: ${escapeMarkup(said(speech, charger.verdict.sentence))}</p>`,
    "    <ul>",
    ...items.map((item) => `  ${item}`),
    "    </ul>",
    `    <p>${escapeMarkup(words.fullDensity(headlines.wayCondition))}${headlines.wayOthers === null ? "" : ` ${escapeMarkup(headlines.wayOthers)}`}</p>`,
    "  </blockquote>",
    `  <figcaption>${escapeMarkup(words.blockSource(index.site.title, versionWords(version, speech), index.methodVersion, fingerprint))}`,
    `    <a href="${address}">${escapeMarkup(words.newest)}</a></figcaption>`,
    "</figure>",
  ];
  return `${lines.join("\n")}\n`;
}

/** Room for most embeds where the frame is 360 px wide, px; a longer one scrolls inside its frame. */
const embedHeightPx = 960;

/** The code of a frame that always shows the newest result; null where the site does not state its address. */
export function frameCode({ index, charger, speech, folder }: Pick<Quotable, "index" | "charger" | "speech" | "folder">): string | null {
  const { baseUrl } = index.site;
  if (baseUrl === null) return null;
  const address = escapeMarkup(wholeAddress(baseUrl, folder + embedPath(charger.id)));
  const title = escapeMarkup(speech.outward.embed.title(charger.name, index.site.title));
  return `<iframe src="${address}" title="${title}" width="360" height="${embedHeightPx}" loading="lazy" referrerpolicy="no-referrer" sandbox="allow-popups allow-popups-to-escape-sandbox"></iframe>\n`;
}
