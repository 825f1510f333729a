/** What a template is made of: where its pages stand, and how they are drawn. A page that the last build drew of the same things is kept. */
import type { Language } from "../lib/nouns/site.ts";
import { languageFolder, type PagePath } from "../lib/publish/links.ts";
import type { PageSources, SitePages } from "../lib/publish/pages-of-site.ts";
import type { Languages, PageData } from "./eleventy.config.ts";

type Given = Languages & { readonly sitePages: SitePages };
/** A page in the making: its file, what it is about, and the language it speaks. */
type Made = { readonly file: string; readonly id: string; readonly language: Language };
type Pages = { readonly pagination: object; readonly permalink: (data: never) => string };
type Draw = (data: never) => Promise<string>;
type Template = { readonly data: Pages & { readonly alone?: readonly string[] }; readonly render: Draw };

/** The template of a page that each language has, such as "method/". */
export function onePage(path: PagePath, draw: (sources: PageSources, language: Language) => string | Promise<string>): Template {
  return template(
    "alone",
    (languages) => languages.map((language) => ({ file: fileIn(languages, language, path), id: path, language })),
    (sources, { language }) => draw(sources, language),
  );
}

/** The template of a page that a site has once, in its first language, such as "404.html". */
export function pageOnce(file: string, draw: (sources: PageSources) => string | Promise<string>): Template {
  return template(
    "alone",
    (languages) => languages.slice(0, 1).map((language) => ({ file, id: file, language })),
    (sources) => draw(sources),
  );
}

/**
 * The template of one page for each id of a list, in each language.
 * @param pathOf  the page's folder, ending in "/"
 */
export function pageForEach(
  list: keyof PageData,
  pathOf: (id: string) => PagePath,
  draw: (sources: PageSources, id: string, language: Language) => string | Promise<string>,
): Template {
  return template(
    list,
    (languages, ids) => languages.flatMap((language) => ids.map((id) => ({ file: fileIn(languages, language, pathOf(id)), id, language }))),
    (sources, { id, language }) => draw(sources, id, language),
  );
}

const fileIn = (languages: readonly Language[], language: Language, path: PagePath): string =>
  `${languageFolder(languages, language)}${path}index.html`;

function template(
  list: keyof PageData | "alone",
  pagesOf: (languages: readonly Language[], ids: readonly string[]) => Made[],
  draw: (sources: PageSources, made: Made) => string | Promise<string>,
): Template {
  const staleOnly = (ids: readonly string[], { siteLanguages, sitePages }: Given): Made[] =>
    pagesOf(siteLanguages, ids).filter(({ file }) => sitePages.isStale(file));
  return {
    data: {
      // Pagination asks for a list; a template without one of its own has this.
      ...(list === "alone" ? { alone: ["page"] } : {}),
      pagination: { data: list, size: 1, alias: "made", before: staleOnly },
      permalink: ({ made }: { readonly made: Made }) => `/${made.file}`,
    },
    render: ({ sitePages, made }: Given & { readonly made: Made }) => sitePages.draw(made.file, (sources) => draw(sources, made)),
  };
}
