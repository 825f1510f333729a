/** Everything that leaves the site and is not a page: archives, descriptors, digests, feeds, pictures, and files for crawlers. */
import { fileOf, type SiteMaker, valueMadeBy } from "../keep/maker.ts";
import type { ResultsFolder } from "../results-folder.ts";
import type { SitePart } from "../site-part.ts";
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
import type { DescribedFile } from "./data-package.ts";
import { chargerFeed, siteFeed } from "./feed.ts";
import { chargerSums, fingerprintOf } from "./fingerprint.ts";
import { headlinesOf } from "./headlines.ts";
import { eventsOfCharger, eventsOfSite, testsOf, versionOf } from "./history.ts";
import { outwardSpeechIn } from "./outward-speech.ts";
import { chargerPictureText, paintPicture, sitePictureText } from "./picture.ts";
import { describedTest, sitePackage } from "./site-package.ts";
import { robots, sitemap } from "./sitemap.ts";
import { testArchive } from "./test-package.ts";

/** The fingerprint of each charger's result, by the charger's id. */
export type Fingerprints = Readonly<Record<string, string>>;

/** A test whole, as an archive; needs its downloads to be there. */
export function writeArchive(id: string, maker: SiteMaker): SitePart {
  return (results, { reads, write }) => {
    const test = results.test(id);
    for (const file of test.files) reads(fileOf(file.download));
    reads(fileOf(`data/tests/${id}.figures.csv`));
    write(packagePath(id), testArchive(maker.dir, results.index, test));
  };
}

/** Where digests of a charger's results and raw files stand; gives back their fingerprint. Needs the downloads to be there. */
export function writeSums(id: string, maker: SiteMaker): SitePart<string> {
  return (results, { reads, write }) => {
    reads(fileOf(`data/chargers/${id}.json`));
    for (const test of results.charger(id).tests) reads(fileOf(`data/tests/${test.id}.figures.csv`));
    const sums = chargerSums(maker.dir, results, id);
    write(chargerSumsPath(id), sums);
    return fingerprintOf(sums);
  };
}

/** Feeds are named by whole addresses, so a site that does not state its address has none. */
export function writeChargerFeed(id: string): SitePart {
  return (results, { write }) => {
    const feed = chargerFeed(results, id);
    if (feed !== undefined) write(chargerFeedPath(id), feed);
  };
}

export function writeChargerPicture(id: string): SitePart {
  return (results, { write }) => {
    const { index } = results;
    if (index.site.baseUrl === null) return;
    const charger = results.charger(id);
    const tests = testsOf(results, id);
    const version = versionOf(eventsOfCharger(charger, tests));
    const invented = index.site.invented || charger.invented;
    write(
      chargerPicturePath(id),
      paintPicture(chargerPictureText(index, charger, headlinesOf(charger, tests, outwardSpeechIn("en")), version, invented)),
    );
  };
}

/** The version of the whole site. */
export const tellSiteVersion: SitePart<string> = (results) => versionOf(eventsOfSite(results));

export const writeSiteCitation: SitePart = (results, { write }) => write(siteCitationPath, citationFile(citableSite(results)));

export const writeSiteFeed: SitePart = (results, { write }) => {
  const feed = siteFeed(results);
  if (feed !== undefined) write(siteFeedPath, feed);
};

export const writeSitePicture: SitePart = ({ index }, { write }) => {
  if (index.site.baseUrl !== null) write(sitePicturePath, paintPicture(sitePictureText(index)));
};

/** The files of a test that the descriptor of the site lists. */
export function describeTest(id: string, maker: SiteMaker): SitePart<DescribedFile[]> {
  return (results, { reads }) => {
    for (const path of [`data/tests/${id}.json`, `data/tests/${id}.figures.csv`]) reads(fileOf(path));
    return describedTest(results.test(id), maker.file);
  };
}

/** @param described  the files of each test, by its id */
export function writeSitePackage(maker: SiteMaker, version: string, described: ReadonlyMap<string, readonly DescribedFile[]>): SitePart {
  return (results, { reads, write }) => {
    const { index } = results;
    reads(valueMadeBy("site version"));
    for (const { id } of index.tests) reads(valueMadeBy(`description of test ${id}`));
    const file = (path: string) => {
      reads(fileOf(path));
      return maker.file(path);
    };
    write(sitePackagePath, sitePackage(index, version, described, file));
  };
}

/**
 * Writes sitemap.xml and robots.txt, once all pages are there.
 * @param pages paths of the pages that may be found, such as "tests/first/index.html"
 */
export function writeForCrawlers(pages: readonly string[]): SitePart {
  return (results, { reads, write }) => {
    reads(valueMadeBy("pages to be found"));
    const map = sitemap(results, pages);
    if (map !== undefined) write("sitemap.xml", map);
    const advice = robots(results.index.site.baseUrl);
    if (advice !== undefined) write("robots.txt", advice);
  };
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
