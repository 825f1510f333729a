/** Turns published results into pages. Everything it reads and writes lies in one folder; the same results give the same bytes. */
import { readFileSync } from "node:fs";
import { join, relative } from "node:path";
import { fileURLToPath } from "node:url";
import Eleventy from "@11ty/eleventy";
import { register } from "tsx/esm/api";
import { configureEleventy, pageData } from "../../_site-config/eleventy.config.ts";
import { publishAssets } from "./assets.ts";
import { findBrokenLinks, htmlFilesIn } from "./check-links.ts";
import { writeDownloads } from "./downloads/index.ts";
import { writeFindData } from "./find/write-find-data.ts";
import { wholeAddress } from "./outward/addresses.ts";
import { type Fingerprints, writeForCrawlers, writeOutward } from "./outward/index.ts";
import { openResults, type ResultsFolder } from "./results-folder.ts";
import { buildSearchIndex } from "./search-index.ts";
import { writeCompared } from "./side-by-side/write-compared.ts";

const siteConfigDir = fileURLToPath(new URL("../../_site-config/", import.meta.url));

export type RenderOptions = {
  /** Told after each page, and once at the start with 0 done. */
  readonly onPage?: (done: number, total: number) => void;
};

/**
 * Writes all pages, downloads and the search index of a site, and checks its links.
 * @param siteDir a folder that holds data/index.json, data/tests/*.json, data/chargers/*.json and the raw downloads
 * @returns how many pages were written
 * Throws where the results do not fit their format, and with the whole list where links are broken.
 */
export async function renderSite(siteDir: string, options: RenderOptions = {}): Promise<{ pages: number }> {
  const results = openResults(siteDir);
  publishAssets(`${siteConfigDir}assets`, siteDir);
  writeDownloads(siteDir, results);
  writeCompared(siteDir, results);
  writeFindData(siteDir, results);
  const fingerprints = writeOutward(siteDir, results);
  const pages = await writePages(siteDir, results, fingerprints, options);
  writeForCrawlers(siteDir, results, pagesToBeFound(siteDir, results));
  await buildSearchIndex(siteDir);
  const broken = findBrokenLinks(siteDir, results.index.site.baseUrl);
  if (broken.length > 0) throw new Error(`${broken.length} broken links:\n${broken.join("\n")}`);
  return { pages };
}

/** Pages that ask search engines neither to stay away nor to show another page instead. */
function pagesToBeFound(siteDir: string, results: ResultsFolder): string[] {
  const { baseUrl } = results.index.site;
  return htmlFilesIn(siteDir).filter((page) => {
    const html = readFileSync(join(siteDir, page), "utf8");
    if (html.includes('<meta name="robots" content="noindex"')) return false;
    const [, shown] = /<link rel="canonical" href="([^"]+)"/.exec(html) ?? [];
    return baseUrl === null || shown === wholeAddress(baseUrl, page.replace(/(^|\/)index\.html$/, "$1"));
  });
}

let canLoadTemplates = false;

/** Eleventy loads the page templates by itself, so Node must know how to read TypeScript and TSX, whatever folder we were started in. */
function teachNodeToLoadTemplates(): void {
  if (canLoadTemplates) return;
  register({ tsconfig: fileURLToPath(new URL("../../tsconfig.json", import.meta.url)) });
  canLoadTemplates = true;
}

async function writePages(siteDir: string, results: ResultsFolder, fingerprints: Fingerprints, options: RenderOptions): Promise<number> {
  teachNodeToLoadTemplates();
  const total = countPages(results);
  let done = 0;
  options.onPage?.(done, total);
  const eleventy = new Eleventy(fromHere(`${siteConfigDir}pages`), fromHere(siteDir), {
    quietMode: true,
    // No configuration file is looked for: what counts is the function below.
    configPath: "",
    config: (userConfig) =>
      configureEleventy(userConfig, results, fingerprints, () => {
        done += 1;
        options.onPage?.(done, total);
      }),
  });
  eleventy.disableLogger();
  await eleventy.write();
  return done;
}

/** Templates that make one page each; the others make one for each id of a list. */
const singlePages = 10;
/** A charger's own page, its card, its embed, how to quote it, and its versions. */
const pagesOfCharger = 5;

function countPages(results: ResultsFolder): number {
  const { testIds, chargerIds, methodIds, proseIds } = pageData(results);
  return singlePages + testIds.length + pagesOfCharger * chargerIds.length + methodIds.length + proseIds.length;
}

/** Eleventy takes paths from the working directory only. */
const fromHere = (path: string) => `./${relative(process.cwd(), path).replaceAll("\\", "/")}`;
