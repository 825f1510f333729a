/** The descriptor of everything that the site publishes as data. */
import type { SiteIndex, TestResult } from "../results.ts";
import { wholeAddress } from "./addresses.ts";
import { comparisonFields, type DescribedFile, dataPackage, figureFields, readingAdvice } from "./data-package.ts";

/** Size and digest of a published file. Throws where it is not there yet. */
export type FileFacts = (path: string) => { readonly bytes: number; readonly sha256: string };

/** A test's files: its results and figures first, then what they rest on. */
export function describedTest(test: TestResult, file: FileFacts): DescribedFile[] {
  const { id, title } = test;
  return [
    publishedFile(file, `data/tests/${id}.json`, `Results of the test “${title}”`),
    publishedFile(file, `data/tests/${id}.figures.csv`, `Figures of the test “${title}”`, { fields: figureFields }),
    ...test.files.map(({ path: raw, download: path, what, bytes, sha256 }) => {
      const recording = test.recordings.find((candidate) => candidate.file === raw);
      const advice = recording === undefined ? undefined : readingAdvice(recording);
      return { path, title: what, bytes, sha256, ...(advice === undefined ? {} : { description: advice }) };
    }),
  ];
}

/**
 * datapackage.json of the whole site. It lies at the site's root, since its paths must not climb.
 * A raw file that several tests rest on is listed once, and raw files after all results.
 *
 * @param described  the files of each test, by its id
 */
export function sitePackage(
  index: SiteIndex,
  version: string,
  described: ReadonlyMap<string, readonly DescribedFile[]>,
  file: FileFacts,
): string {
  const files = new Map<string, DescribedFile>();
  const add = (one: DescribedFile) => files.has(one.path) || files.set(one.path, one);
  add(publishedFile(file, "data/index.json", "Comparison, methods, rules and every input file"));
  add(publishedFile(file, "data/comparison.csv", "The comparison, one figure a row", { fields: comparisonFields }));
  for (const { id, name } of index.chargers) add(publishedFile(file, `data/chargers/${id}.json`, `Results of ${name}`));
  const ofTests = index.tests.map(({ id }) => described.get(id) ?? []);
  for (const [results, figures] of ofTests) for (const one of [results, figures]) if (one !== undefined) add(one);
  for (const [, , ...raw] of ofTests) raw.forEach(add);
  return dataPackage({
    index,
    name: "results",
    title: index.site.title,
    description: index.site.tagline ?? "Results of battery-charger tests with the evidence for every figure.",
    version,
    homepage: index.site.baseUrl === null ? null : wholeAddress(index.site.baseUrl, ""),
    invented: index.site.invented,
    files: [...files.values()],
  });
}

function publishedFile(file: FileFacts, path: string, title: string, extra: Partial<DescribedFile> = {}): DescribedFile {
  const { bytes, sha256 } = file(path);
  return { path, title, bytes, sha256, ...extra };
}
