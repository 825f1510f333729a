/** Everything that leaves the site and is not a page: archives, descriptors, digests, feeds, pictures, and files for crawlers. */
import { mkdirSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import type { ResultsFolder } from "../results-folder.ts";
import {
  chargerFeedPath,
  chargerPicturePath,
  chargerSumsPath,
  packagePath,
  siteCitationPath,
  siteFeedPath,
  sitePackagePath,
  sitePicturePath,
  wholeAddress,
} from "./addresses.ts";
import { type Citable, citationFile } from "./citation.ts";
import { chargerFeed, siteFeed } from "./feed.ts";
import { chargerSums, fingerprintOf } from "./fingerprint.ts";
import { headlinesOf } from "./headlines.ts";
import { eventsOfCharger, eventsOfSite, testsOf, versionOf } from "./history.ts";
import { chargerPictureText, paintPicture, sitePictureText } from "./picture.ts";
import { sitePackage } from "./site-package.ts";
import { robots, sitemap } from "./sitemap.ts";
import { testArchive } from "./test-package.ts";

/** The fingerprint of each charger's result, by the charger's id. */
export type Fingerprints = Readonly<Record<string, string>>;

/**
 * Writes what stands beside the pages, and needs the downloads to be there.
 * Feeds and pictures are named by whole addresses, so a site that does not state its address gets none.
 * @returns the fingerprints, which pages print
 */
export function writeOutward(siteDir: string, results: ResultsFolder): Fingerprints {
  const { index } = results;
  const write = writerInto(siteDir);
  for (const { id } of index.tests) write(packagePath(id), testArchive(siteDir, index, results.test(id)));
  write(sitePackagePath, sitePackage(siteDir, results));
  write(siteCitationPath, citationFile(citableSite(results)));
  write(siteFeedPath, siteFeed(results));
  if (index.site.baseUrl !== null) write(sitePicturePath, paintPicture(sitePictureText(index)));
  return Object.fromEntries(index.chargers.map(({ id }) => [id, writeCharger(siteDir, results, id)]));
}

function writeCharger(siteDir: string, results: ResultsFolder, id: string): string {
  const { index } = results;
  const write = writerInto(siteDir);
  const charger = results.charger(id);
  const tests = testsOf(results, id);
  const sums = chargerSums(siteDir, results, id);
  write(chargerSumsPath(id), sums);
  write(chargerFeedPath(id), chargerFeed(results, id));
  if (index.site.baseUrl !== null) {
    const version = versionOf(eventsOfCharger(charger, tests));
    const invented = index.site.invented || charger.invented;
    write(chargerPicturePath(id), paintPicture(chargerPictureText(index, charger, headlinesOf(charger, tests), version, invented)));
  }
  return fingerprintOf(sums);
}

/**
 * Writes sitemap.xml and robots.txt, once all pages are there.
 * @param pages paths of the pages that may be found, such as "tests/first/index.html"
 */
export function writeForCrawlers(siteDir: string, results: ResultsFolder, pages: readonly string[]): void {
  const write = writerInto(siteDir);
  write("sitemap.xml", sitemap(results, pages));
  write("robots.txt", robots(results.index.site.baseUrl));
}

/** The whole site, for citing. */
export function citableSite(results: ResultsFolder): Citable {
  const { index } = results;
  return {
    key: "charger-tests",
    title: index.site.title,
    site: index,
    version: versionOf(eventsOfSite(results)),
    fingerprint: null,
    address: index.site.baseUrl === null ? null : wholeAddress(index.site.baseUrl, ""),
    invented: index.site.invented,
  };
}

/** Writes a file of the site; what is undefined is not written. */
function writerInto(siteDir: string): (path: string, content: string | Uint8Array | undefined) => void {
  return (path, content) => {
    if (content === undefined) return;
    const target = join(siteDir, path);
    mkdirSync(dirname(target), { recursive: true });
    writeFileSync(target, content);
  };
}
