/** Puts the data of the page that finds a charger where its script can fetch them. */
import { mkdirSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import type { ResultsFolder } from "../results-folder.ts";
import { findDataOf, findDataPath } from "./find-data.ts";

/** Writes data/find.json into a site that is being made. The same results give the same bytes. */
export function writeFindData(siteDir: string, results: ResultsFolder): void {
  const target = join(siteDir, findDataPath);
  mkdirSync(dirname(target), { recursive: true });
  writeFileSync(target, `${JSON.stringify(findDataOf(results))}\n`);
}
