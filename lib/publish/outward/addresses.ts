/**
 * Addresses of what leaves the site. Other people's pages, printed cards and citations hold them, so none ever changes;
 * docs/publishing.md lists them all.
 */
import { addressPart, chargerPath, type PagePath } from "../links.ts";

export const cardPath = (charger: string): PagePath => `cards/${addressPart(charger)}/`;
export const embedPath = (charger: string): PagePath => `embed/${addressPart(charger)}/`;
export const quotePath = (charger: string): PagePath => `quote/${addressPart(charger)}/`;
export const versionsPath = (charger: string): PagePath => `results/${addressPart(charger)}/`;

/** The place on the page of versions that tells what became of one version: "results/<charger>/#v-2026-04-02". */
export const versionPlace = (charger: string, version: string): string => `${versionsPath(charger)}#${versionAnchor(version)}`;
export const versionAnchor = (version: string): string => `v-${addressPart(version)}`;

export const chargerSumsPath = (charger: string): string => `${versionsPath(charger)}SHA256SUMS`;
export const chargerFeedPath = (charger: string): string => `${chargerPath(charger)}feed.xml`;
export const chargerPicturePath = (charger: string): string => `${chargerPath(charger)}picture.png`;
/** Named like the JSON and CSV of the same test, which stand beside it. */
export const packagePath = (test: string): string => `data/tests/${test}.zip`;

export const siteFeedPath = "feed.xml";
export const sitePicturePath = "picture.png";
export const siteQuotePath: PagePath = "quote/";
export const siteCitationPath = "CITATION.cff";
export const sitePackagePath = "datapackage.json";

/**
 * The whole address of a path of the site.
 * @param baseUrl where the site stands, with or without a slash at its end
 * @param target path from the site's root, a folder ending in "/" for a page, with or without "#fragment"; "" is the first page
 */
export function wholeAddress(baseUrl: string, target: string): string {
  const [path = "", fragment] = target.split("#", 2);
  // Written as browsers and scanners write it: lower-case host, no letters beyond ASCII.
  const root = new URL(baseUrl.endsWith("/") ? baseUrl : `${baseUrl}/`).href;
  const steps = path.split("/").map(encodeURIComponent).join("/");
  return `${root}${steps}${fragment === undefined ? "" : `#${fragment}`}`;
}

/** An address as people type it: without its scheme. */
export const typedAddress = (address: string): string => address.replace(/^https?:\/\//, "");
