/**
 * Eleventy's configuration. Its input is the folder pages/ beside this file and nothing else:
 * contributed words reach pages as data, through the results, and never as templates.
 */
import type { UserConfig } from "@11ty/eleventy";
import type { Language } from "../lib/nouns/site.ts";
import { methodIds } from "../lib/publish/pages/method-pages.tsx";
import type { SitePages } from "../lib/publish/pages-of-site.ts";
import type { SiteIndex } from "../lib/publish/results.ts";

/** The lists that templates make one page each of, by the names that templates ask for them. */
export type PageData = {
  readonly testIds: readonly string[];
  readonly chargerIds: readonly string[];
  readonly methodIds: readonly string[];
  readonly proseIds: readonly string[];
};

/** The site's languages, for templates to make each page once in each. */
export type Languages = { readonly siteLanguages: readonly Language[] };

/** The lists, from the index. */
export function pageData(index: SiteIndex): PageData {
  const ids = (items: readonly { readonly id: string }[]) => items.map((item) => item.id);
  return {
    testIds: ids(index.tests),
    chargerIds: ids(index.chargers),
    methodIds: methodIds(index),
    proseIds: ids(index.pages),
  };
}

/** Templates are given the lists, and the pages, which tell what must be drawn. */
export function configureEleventy(config: UserConfig, index: SiteIndex, pages: SitePages): void {
  config.addExtension(["11ty.ts", "11ty.tsx"], { key: "11ty.js" });
  // As they stand here, and as they are packed.
  config.setTemplateFormats(["11ty.ts", "11ty.tsx", "11ty.js"]);
  lockDown(config);
  for (const [name, value] of Object.entries(pageData(index))) config.addGlobalData(name, () => value);
  config.addGlobalData("siteLanguages", () => index.site.languages);
  config.addGlobalData("sitePages", () => pages);
}

/** Nothing lying about may add data, run as code, or change what is read. */
function lockDown(config: UserConfig): void {
  const refuse = () => {
    throw new Error("front matter in a programming language is not allowed");
  };
  config.setDataFileSuffixes([]);
  config.setUseGitIgnore(false);
  config.setFrontMatterParsingOptions({ engines: { js: refuse, javascript: refuse, node: refuse } });
}
