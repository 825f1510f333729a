/** Fingerprints: whether a result is still the one that was quoted, even where nobody noted a change. */
import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { writeSums } from "../downloads/sha256-sums.ts";
import type { ResultsFolder } from "../results-folder.ts";
import { chargerSumsPath } from "./addresses.ts";
import { testsOf } from "./history.ts";

/** SHA-256 of bytes or of text in UTF-8, in hexadecimal. */
export const sha256 = (content: string | Uint8Array): string => createHash("sha256").update(content).digest("hex");

/**
 * The list of digests of everything that a charger's result consists of: its JSON, the JSON and CSV of its tests, and their raw files, in
 * the form that `sha256sum -c` reads from the list's own folder.
 * Throws where a file of the results is not there yet.
 */
export function chargerSums(siteDir: string, results: ResultsFolder, charger: string): string {
  const up = "../".repeat(chargerSumsPath(charger).split("/").length - 1);
  const digests = new Map<string, string>();
  const addPublished = (path: string) => digests.set(up + path, sha256(readFileSync(join(siteDir, path))));
  addPublished(`data/chargers/${charger}.json`);
  for (const test of testsOf(results, charger)) {
    addPublished(`data/tests/${test.id}.json`);
    addPublished(`data/tests/${test.id}.figures.csv`);
    for (const file of [...test.files, ...test.recordings]) digests.set(up + file.download, file.sha256);
  }
  return writeSums(digests);
}

/**
 * The fingerprint of a list of digests: the first twelve hexadecimal digits of its own SHA-256.
 * 48 bits are enough to notice a change, and short enough to be read aloud; they are no protection against a forger, the list is.
 */
export const fingerprintOf = (sums: string): string => sha256(sums).slice(0, 12);
