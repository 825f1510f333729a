/** Writes the downloads that are made from the results. */
import { mkdirSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { testPath } from "../links.ts";
import type { ResultsFolder } from "../results-folder.ts";
import { comparisonCsv, figuresCsv } from "./figures-csv.ts";
import { sha256Sums } from "./sha256-sums.ts";

/** Writes data/comparison.csv, and for each test its figures and the digests of its raw files, into the site's folder. */
export function writeDownloads(siteDir: string, results: ResultsFolder): void {
  const write = (path: string, text: string) => {
    const target = join(siteDir, path);
    mkdirSync(dirname(target), { recursive: true });
    writeFileSync(target, text);
  };
  write("data/comparison.csv", comparisonCsv(results.index));
  for (const { id } of results.index.tests) {
    const test = results.test(id);
    write(`data/tests/${id}.figures.csv`, figuresCsv(test));
    write(`${testPath(id)}SHA256SUMS`, sha256Sums(test));
  }
}
