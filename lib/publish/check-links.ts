/** Checks that every internal link of a finished site leads to a file, and every fragment to an element. */
import { existsSync, readdirSync, readFileSync, statSync } from "node:fs";
import { dirname, join, posix, relative, sep } from "node:path";

type Link = { readonly page: string; readonly target: string };

/** All HTML files of a folder, as paths with forward slashes, sorted. */
export function htmlFilesIn(siteDir: string): string[] {
  return readdirSync(siteDir, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name.endsWith(".html"))
    .map((entry) => relative(siteDir, join(entry.parentPath, entry.name)).split(sep).join("/"))
    .sort();
}

/** Our pages write attributes with double quotes and the five XML entities only, so that patterns suffice to read them back. */
const attributes = (html: string, names: string) =>
  [...html.matchAll(new RegExp(`\\s(?:${names})="([^"]*)"`, "g"))].map((match) => (match[1] ?? "").replaceAll("&amp;", "&"));

const leadsOutside = (target: string) => /^[a-z][a-z0-9+.-]*:/i.test(target) || target.startsWith("//");

/** What a page links to, short enough to be remembered of every page. */
export type LinksOfPage = {
  /** Files that it links to, each once. */
  readonly files: readonly string[];
  /** Those of them of which it names an element. */
  readonly pages: readonly string[];
};

/** The path at which a site begins on its server, if known: links that start at the server's root are looked up from there. */
const rootOf = (baseUrl: string | null): string => (baseUrl === null ? "/" : new URL(baseUrl).pathname.replace(/\/?$/, "/"));

/** What a page of a site links to inside the site. A link that climbs out of it counts as one to "". */
export function linksOf(page: string, html: string, baseUrl: string | null): LinksOfPage {
  const files = new Set<string>();
  const pages = new Set<string>();
  for (const target of new Set(attributes(html, "href|src"))) {
    if (leadsOutside(target)) continue;
    const { file = "", fragment } = partsOf(page, target, rootOf(baseUrl));
    files.add(file);
    if (fragment && file.endsWith(".html")) pages.add(file);
  }
  return { files: [...files], pages: [...pages] };
}

function partsOf(page: string, target: string, rootPath: string): { file: string | undefined; fragment: string | undefined } {
  const [path = "", fragment] = target.split("#", 2);
  return { file: resolveFrom(page, decodeURI(path.split("?")[0] ?? ""), rootPath), fragment };
}

/**
 * @param siteDir the finished site
 * @param baseUrl where the site will stand, if known
 * @param pages   the pages to look into; all where left out
 * @param isNew   whether a page was drawn since the links were last checked; an element that one page of old names on another is not
 *                looked for again. All are new where left out
 * @returns one sentence for each broken link, in the order of pages; [] where all hold
 */
export function findBrokenLinks(
  siteDir: string,
  baseUrl: string | null,
  pages: readonly string[] = htmlFilesIn(siteDir),
  isNew: (page: string) => boolean = () => true,
): string[] {
  const rootPath = rootOf(baseUrl);
  const known = new Map<string, ReadonlySet<string>>();
  const idsOf = (page: string): ReadonlySet<string> => {
    const ids = known.get(page) ?? new Set(attributes(readFileSync(join(siteDir, page), "utf8"), "id"));
    known.set(page, ids);
    return ids;
  };
  const explain = ({ page, target }: Link): string | undefined => {
    const { file, fragment } = partsOf(page, target, rootPath);
    if (file === undefined || !isFile(join(siteDir, file))) return `${page}: expected a file at "${target}", found none`;
    if (!fragment || !file.endsWith(".html") || !(isNew(page) || isNew(file))) return undefined;
    return idsOf(file).has(decodeURIComponent(fragment)) ? undefined : `${page}: expected an element "${fragment}" in ${file}, found none`;
  };
  return pages.flatMap((page) => {
    const targets = new Set(attributes(readFileSync(join(siteDir, page), "utf8"), "href|src"));
    return [...targets]
      .filter((target) => !leadsOutside(target))
      .map((target) => explain({ page, target }))
      .filter((problem) => problem !== undefined);
  });
}

/** The file that a link means; undefined where it climbs out of the site. */
function resolveFrom(page: string, path: string, rootPath: string): string | undefined {
  if (path === "") return page;
  const fromRoot = path.startsWith(rootPath) ? path.slice(rootPath.length) : undefined;
  if (path.startsWith("/") && fromRoot === undefined) return undefined;
  const joined = posix.normalize(fromRoot ?? posix.join(dirname(page), path));
  if (joined.startsWith("..")) return undefined;
  return joined === "." || joined === "" || joined.endsWith("/") ? posix.join(joined, "index.html") : joined;
}

const isFile = (path: string) => existsSync(path) && statSync(path).isFile();
