/** The descriptor of everything that the site publishes as data. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { ResultsFolder } from "../results-folder.ts";
import { wholeAddress } from "./addresses.ts";
import { comparisonFields, type DescribedFile, dataPackage, figureFields, readingAdvice } from "./data-package.ts";
import { sha256 } from "./fingerprint.ts";
import { eventsOfSite, versionOf } from "./history.ts";

/**
 * datapackage.json of the whole site. It lies at the site's root, since its paths must not climb.
 * A raw file that several tests rest on is listed once. Throws where a published file is not there yet.
 */
export function sitePackage(siteDir: string, results: ResultsFolder): string {
  const { index } = results;
  const published = (path: string, title: string, extra: Partial<DescribedFile> = {}): DescribedFile => {
    const bytes = readFileSync(join(siteDir, path));
    return { path, title, bytes: bytes.byteLength, sha256: sha256(bytes), ...extra };
  };
  const files = new Map<string, DescribedFile>();
  const add = (file: DescribedFile) => files.has(file.path) || files.set(file.path, file);
  add(published("data/index.json", "Comparison, methods, rules and every input file"));
  add(published("data/comparison.csv", "The comparison, one figure a row", { fields: comparisonFields }));
  for (const { id, name } of index.chargers) add(published(`data/chargers/${id}.json`, `Results of ${name}`));
  for (const { id, name } of index.tests) {
    add(published(`data/tests/${id}.json`, `Results of the test “${name}”`));
    add(published(`data/tests/${id}.figures.csv`, `Figures of the test “${name}”`, { fields: figureFields }));
  }
  for (const { id } of index.tests) {
    const test = results.test(id);
    for (const file of test.files) {
      const recording = test.recordings.find((candidate) => candidate.file === file.path);
      const advice = recording === undefined ? undefined : readingAdvice(recording);
      const { download: path, what: title, bytes, sha256: digest } = file;
      add({ path, title, bytes, sha256: digest, ...(advice === undefined ? {} : { description: advice }) });
    }
  }
  return dataPackage({
    index,
    name: "results",
    title: index.site.title,
    description: index.site.tagline ?? "Results of battery-charger tests with the evidence for every figure.",
    version: versionOf(eventsOfSite(results)),
    homepage: index.site.baseUrl === null ? null : wholeAddress(index.site.baseUrl, ""),
    invented: index.site.invented,
    files: [...files.values()],
  });
}
