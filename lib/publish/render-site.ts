/** Turns published results into pages. Everything it reads and writes lies in one folder; the same results give the same bytes. */
import { existsSync } from "node:fs";
import { join, relative } from "node:path";
import { fileURLToPath } from "node:url";
import Eleventy from "@11ty/eleventy";
import { configureEleventy, pageData } from "../../_site-config/eleventy.config.ts";
import { startable } from "../packed.ts";
import { assetPaths, publishAssets } from "./assets.ts";
import { findBrokenLinks } from "./check-links.ts";
import { writeComparisonCsv, writeTestDownloads } from "./downloads/index.ts";
import { writeFindData } from "./find/write-find-data.ts";
import { type SiteMaker, siteMaker } from "./keep/maker.ts";
import { emptyRecord } from "./keep/site-record.ts";
import { watchedResults } from "./keep/watched-results.ts";
import type { DescribedFile } from "./outward/data-package.ts";
import {
  describeTest,
  type Fingerprints,
  tellSiteVersion,
  writeArchive,
  writeChargerFeed,
  writeChargerPicture,
  writeForCrawlers,
  writeSiteCitation,
  writeSiteFeed,
  writeSitePackage,
  writeSitePicture,
  writeSums,
} from "./outward/index.ts";
import { pagesToCheck, type SitePages, sitePages, sumsStep } from "./pages-of-site.ts";
import { openResults, type ResultsFolder } from "./results-folder.ts";
import { buildSearchIndex } from "./search-index.ts";
import { writeCompared, writeComparedIndex } from "./side-by-side/write-compared.ts";
import type { SitePart } from "./site-part.ts";

const project = fileURLToPath(new URL("../../", import.meta.url));
const templates = startable("_site-config/pages", project);

export type RenderOptions = {
  /** Told after each page, and once at the start with 0 done. */
  readonly onPage?: ((done: number, total: number) => void) | undefined;
  /** Told after each part of the work what it took, s. */
  readonly onCost?: ((what: string, seconds: number) => void) | undefined;
};

/**
 * Writes all pages, downloads and the search index of a site, and checks its links.
 * @param siteDir a folder that holds data/index.json, data/tests/*.json, data/chargers/*.json and the raw downloads
 * @returns how many pages there are
 * Throws where the results do not fit their format, and with the whole list where links are broken.
 */
export async function renderSite(siteDir: string, options: RenderOptions = {}): Promise<{ pages: number }> {
  const results = openResults(siteDir);
  return renderWith(folderMaker(siteDir, results), results, options);
}

/** A maker for a folder of results that somebody else wrote: it remembers nothing, and keeps nothing. */
export function folderMaker(siteDir: string, { index, test }: ResultsFolder): SiteMaker {
  const maker = siteMaker(siteDir, "", emptyRecord(""), new Set(), () => "");
  const given = maker.begin("results");
  given.wrote("data/index.json");
  for (const { id } of index.chargers) given.wrote(`data/chargers/${id}.json`);
  for (const { id } of index.tests) given.wrote(`data/tests/${id}.json`);
  for (const path of new Set(index.tests.flatMap(({ id }) => test(id).files.map((file) => file.download))))
    if (existsSync(join(siteDir, path))) given.wrote(path);
  return maker;
}

/** Renders a site whose results are there, and makes anew only what the maker does not keep. */
export async function renderWith(maker: SiteMaker, results: ResultsFolder, options: RenderOptions = {}): Promise<{ pages: number }> {
  const fingerprints = await timed("downloads", options.onCost, () => writeParts(maker, results));
  const { facts, drawn } = await timed("pages", options.onCost, () => writePages(maker, results, fingerprints, options));
  const found = [...facts]
    .filter(([, page]) => page.found)
    .map(([path]) => path)
    .sort();
  const part = partsOf(maker, results);
  // Found out in every build: it follows from all pages, and reads nothing by which it could be kept.
  maker.begin("pages to be found").end(found);
  await part("for crawlers", writeForCrawlers(found));
  const searched = [...facts].filter(([, page]) => page.searched).map(([path]) => path);
  await timed("search index", options.onCost, () => buildSearchIndex(maker, searched));
  const suspects = pagesToCheck(facts, drawn, (path) => maker.files().has(path));
  const broken = findBrokenLinks(maker.dir, results.index.site.baseUrl, suspects, (page) => drawn.has(page));
  if (broken.length > 0) throw new Error(`${broken.length} broken links:\n${broken.join("\n")}`);
  return { pages: facts.size };
}

/** Does a part of the work and tells what it took. */
export async function timed<T>(what: string, onCost: RenderOptions["onCost"], work: () => T | Promise<T>): Promise<T> {
  const started = performance.now();
  const value = await work();
  onCost?.(what, (performance.now() - started) / 1000);
  return value;
}

/** Runs parts as steps that note what they read of the results. */
function partsOf(maker: SiteMaker, results: ResultsFolder) {
  return <T>(name: string, part: SitePart<T>): Promise<T> => maker.step(name, (step) => part(watchedResults(results, step.reads), step));
}

/** Writes all that is no page, charger by charger, so that a charger's results are at hand for all that is made of them. */
export async function writeParts(maker: SiteMaker, results: ResultsFolder): Promise<Fingerprints> {
  const { index } = results;
  const part = partsOf(maker, results);
  const fingerprints: Record<string, string> = {};
  const described = new Map<string, DescribedFile[]>();
  const writeTest = async (id: string): Promise<void> => {
    await part(`downloads of test ${id}`, writeTestDownloads(id));
    await part(`archive of test ${id}`, writeArchive(id, maker));
    described.set(id, await part(`description of test ${id}`, describeTest(id, maker)));
  };
  const { languages } = index.site;
  await maker.step(`assets in ${languages.join(", ")}`, ({ clear, wrote }) => {
    const paths = assetPaths(languages);
    paths.forEach(clear);
    publishAssets(`${project}_site-config/assets`, maker.dir, languages);
    paths.forEach(wrote);
  });
  for (const { id } of index.chargers) {
    for (const test of results.testsOf(id)) if (!described.has(test)) await writeTest(test);
    await part(`side by side of charger ${id}`, writeCompared(id));
    fingerprints[id] = await part(sumsStep(id), writeSums(id, maker));
    await part(`feed of charger ${id}`, writeChargerFeed(id));
    await part(`picture of charger ${id}`, writeChargerPicture(id));
  }
  for (const { id } of index.tests) if (!described.has(id)) await writeTest(id);
  await part("comparison as CSV", writeComparisonCsv);
  await part("index side by side", writeComparedIndex);
  await part("find data", writeFindData);
  const version = await part("site version", tellSiteVersion);
  await part("site package", writeSitePackage(maker, version, described));
  await part("site citation", writeSiteCitation);
  await part("site feed", writeSiteFeed);
  await part("site picture", writeSitePicture);
  return fingerprints;
}

let canLoadTemplates = templates.isPacked;

/** Eleventy loads the page templates by itself, so Node must know how to read TypeScript and TSX, whatever folder we were started in. */
async function teachNodeToLoadTemplates(): Promise<void> {
  if (canLoadTemplates) return;
  const { register } = await import("tsx/esm/api");
  register({ tsconfig: `${project}tsconfig.json` });
  canLoadTemplates = true;
}

async function writePages(
  maker: SiteMaker,
  results: ResultsFolder,
  fingerprints: Fingerprints,
  { onPage }: RenderOptions,
): Promise<ReturnType<SitePages["finish"]>> {
  await teachNodeToLoadTemplates();
  const total = countPages(results);
  let done = 0;
  onPage?.(done, total);
  const pages = sitePages(maker, results, fingerprints, () => {
    done += 1;
    onPage?.(done, total);
  });
  do {
    const eleventy = new Eleventy(fromHere(templates.path), fromHere(maker.dir), {
      quietMode: true,
      // No configuration file is looked for: what counts is the function below.
      configPath: "",
      config: (userConfig) => configureEleventy(userConfig, results.index, pages),
    });
    eleventy.disableLogger();
    await eleventy.write();
  } while (pages.endRound());
  return pages.finish();
}

/** Pages that each language has once; the other templates make one for each id of a list. */
const pagesOfLanguage = 9;
/** That of an address that leads nowhere. */
const pagesOfSite = 1;
/** A charger's own page, its card, its embed, how to quote it, and its versions. */
const pagesOfCharger = 5;

function countPages({ index }: ResultsFolder): number {
  const { testIds, chargerIds, methodIds, proseIds } = pageData(index);
  const inLanguage = pagesOfLanguage + testIds.length + pagesOfCharger * chargerIds.length + methodIds.length + proseIds.length;
  return pagesOfSite + index.site.languages.length * inLanguage;
}

/** Eleventy takes paths from the working directory only. */
const fromHere = (path: string) => `./${relative(process.cwd(), path).replaceAll("\\", "/")}`;
