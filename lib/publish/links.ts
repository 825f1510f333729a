/**
 * Addresses inside the site. Every link is relative, and names index.html, so that the folder works
 * in any sub-folder of a server and straight from a memory stick.
 */

/** Where a page stands, from the site's root: "" for the first page, "tests/first-run/", "404.html". */
export type PagePath = string;

/**
 * The relative address of a target seen from a page.
 * @param from the page's own path
 * @param target path from the site's root, a folder ending in "/" for a page, with or without "#fragment"
 */
export function relativeLink(from: PagePath, target: string): string {
  const [path = "", fragment] = target.split("#", 2);
  const file = path === "" || path.endsWith("/") ? `${path}index.html` : path;
  const steps = file.split("/").map(encodeURIComponent).join("/");
  return "../".repeat(from.split("/").length - 1) + steps + (fragment === undefined ? "" : `#${fragment}`);
}

/** Where the pages of a language begin: "" for the site's first language, a folder such as "pl/" for each other. */
export const languageFolder = (languages: readonly string[], language: string): PagePath =>
  language === languages[0] ? "" : `${language}/`;

/** Splits a page's path into its language and the address that it has in every language: "pl/find/" is "find/" in Polish. */
export function inLanguage<L extends string>(languages: readonly L[], path: PagePath): { language: L | undefined; here: PagePath } {
  const language = languages.slice(1).find((candidate) => path.startsWith(`${candidate}/`));
  return language === undefined ? { language: languages[0], here: path } : { language, here: path.slice(language.length + 1) };
}

/** Whether a target is a page, which each language has for itself; anything else is a file, which the site has once. */
export function isPage(target: string): boolean {
  const [path = ""] = target.split("#", 1);
  return path === "" || path.endsWith("/");
}

/**
 * Turns any name into letters that are safe in an address and as an id: "recording/day 1.csv" → "recording-day-1.csv".
 * Two names that differ only in other characters can meet; ids of the results are slugs and file names, which do not.
 */
export function addressPart(name: string): string {
  return name.replace(/[^A-Za-z0-9._-]+/g, "-").replace(/^-+|-+$/g, "");
}

/** The id of the element that shows a figure on its page. */
export function figureAnchor(figure: { readonly of: string; readonly id: string }): string {
  return `figure-${addressPart(figure.of)}-${addressPart(figure.id)}`;
}

/** The id of the element that shows a finding on its page. */
export const findingAnchor = (id: string) => `finding-${addressPart(id)}`;

export const testPath = (id: string): PagePath => `tests/${addressPart(id)}/`;
export const chargerPath = (id: string): PagePath => `chargers/${addressPart(id)}/`;
export const methodPath = (id: string): PagePath => `method/${addressPart(id)}/`;

/** The method's id, without its version: "charge-recorded/1" → "charge-recorded". */
export function methodId(method: string): string {
  return method.split("/")[0] ?? method;
}

/** The folder with a recording's samples for the log explorer, from the site's root. */
export const logSamplesPath = (testId: string, recordingId: string) => `data/logs/${addressPart(testId)}/${addressPart(recordingId)}/`;
