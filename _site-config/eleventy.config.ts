/**
 * Eleventy's configuration. Its input is the folder pages/ beside this file and nothing else:
 * contributed words reach pages as data, through the results, and never as templates.
 */
import type { UserConfig } from "@11ty/eleventy";
import type { Fingerprints } from "../lib/publish/outward/index.ts";
import { withPageHead } from "../lib/publish/outward/page-head.ts";
import { labelCells } from "../lib/publish/pages/label-cells.ts";
import { methodIds } from "../lib/publish/pages/method-pages.tsx";
import type { ResultsFolder } from "../lib/publish/results-folder.ts";

/** What every template is given: the results, and the lists that it can make one page each of. */
export type PageData = {
  readonly results: ResultsFolder;
  readonly testIds: readonly string[];
  readonly chargerIds: readonly string[];
  readonly methodIds: readonly string[];
  readonly proseIds: readonly string[];
};

/** What pages that leave the site are given besides. */
export type OutwardPageData = PageData & { readonly fingerprints: Fingerprints };

/** The lists, from the results. */
export function pageData(results: ResultsFolder): PageData {
  const { index } = results;
  const ids = (items: readonly { readonly id: string }[]) => items.map((item) => item.id);
  return {
    results,
    testIds: ids(index.tests),
    chargerIds: ids(index.chargers),
    methodIds: methodIds(index),
    proseIds: ids(index.pages),
  };
}

/** @param onPage called after each page that was rendered */
export function configureEleventy(config: UserConfig, results: ResultsFolder, fingerprints: Fingerprints, onPage: () => void): void {
  config.addExtension(["11ty.ts", "11ty.tsx"], { key: "11ty.js" });
  config.setTemplateFormats(["11ty.ts", "11ty.tsx"]);
  lockDown(config);
  for (const [name, value] of Object.entries(pageData(results))) config.addGlobalData(name, () => value);
  config.addGlobalData("fingerprints", () => fingerprints);
  config.addTransform("page-head", function (content) {
    return withPageHead(content, results, this.page.url.slice(1));
  });
  config.addTransform("label-cells", labelCells);
  config.addTransform("count-pages", (content) => {
    onPage();
    return content;
  });
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
