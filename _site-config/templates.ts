/** What a template is made of: where its pages stand, and how they are drawn. A page that the last build drew of the same things is kept. */
import type { PageSources, SitePages } from "../lib/publish/pages-of-site.ts";
import type { PageData } from "./eleventy.config.ts";

type Given = { readonly sitePages: SitePages };
type Pages = { readonly paths?: readonly string[]; readonly pagination: object; readonly permalink: (data: never) => string };
type Draw = (data: never) => Promise<string>;

/** The template of a single page, such as "method/index.html". */
export function onePage(path: string, draw: (sources: PageSources) => string | Promise<string>): { data: Pages; render: Draw } {
  return {
    data: {
      paths: [path],
      pagination: { data: "paths", size: 1, alias: "path", before: staleOnly((one: string) => one) },
      permalink: () => `/${path}`,
    },
    render: ({ sitePages }: Given) => sitePages.draw(path, draw),
  };
}

/**
 * The template of one page for each id of a list.
 * @param pathOf  the page's folder, ending in "/"
 */
export function pageForEach(
  list: keyof PageData,
  pathOf: (id: string) => string,
  draw: (sources: PageSources, id: string) => string | Promise<string>,
): { data: Pages; render: Draw } {
  const fileOf = (id: string): string => `${pathOf(id)}index.html`;
  return {
    data: {
      pagination: { data: list, size: 1, alias: "id", before: staleOnly(fileOf) },
      permalink: ({ id }: { readonly id: string }) => `/${fileOf(id)}`,
    },
    render: ({ sitePages, id }: Given & { readonly id: string }) => sitePages.draw(fileOf(id), (sources) => draw(sources, id)),
  };
}

const staleOnly =
  (fileOf: (item: string) => string) =>
  (items: readonly string[], { sitePages }: Given): string[] =>
    items.filter((item) => sitePages.isStale(fileOf(item)));
