/** Writes the small files that the page side by side fetches. */
import { mkdirSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import type { ResultsFolder } from "../results-folder.ts";
import { assembleCompared } from "./assemble-compared.ts";
import { type ComparedIndex, comparedIndexPath, comparedPath } from "./compared.ts";

/** Writes data/compare/index.json and one file a charger into the site's folder. */
export function writeCompared(siteDir: string, results: ResultsFolder): void {
  const write = (path: string, value: unknown): void => {
    const target = join(siteDir, path);
    mkdirSync(dirname(target), { recursive: true });
    writeFileSync(target, `${JSON.stringify(value)}\n`);
  };
  const { index } = results;
  const list: ComparedIndex = index.chargers.map(({ id, name }) => ({ id, name }));
  write(comparedIndexPath, list);
  for (const { id } of list) {
    const charger = results.charger(id);
    const tests = charger.tests.map((test) => results.test(test.id));
    write(comparedPath(id), assembleCompared(charger, index.rows, tests));
  }
}
