/** Writes the downloads that are made from the results. */
import { testPath } from "../links.ts";
import type { SitePart } from "../site-part.ts";
import { comparisonCsv, figuresCsv } from "./figures-csv.ts";
import { sha256Sums } from "./sha256-sums.ts";

/** Writes data/comparison.csv. */
export const writeComparisonCsv: SitePart = ({ index }, { write }) => write("data/comparison.csv", comparisonCsv(index));

/** Writes a test's figures, and the digests of its raw files. */
export function writeTestDownloads(id: string): SitePart {
  return (results, { write }) => {
    const test = results.test(id);
    write(`data/tests/${id}.figures.csv`, figuresCsv(test));
    write(`${testPath(id)}SHA256SUMS`, sha256Sums(test));
  };
}
