/** The results as they lie on disk under data/, parsed and checked when they are asked for. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { type ChargerResult, chargerResult, type SiteIndex, siteIndex, type TestResult, testResult } from "./results.ts";

/** What pages may ask of the results. A test is read once, however many pages show it. */
export type ResultsFolder = {
  readonly index: SiteIndex;
  test(id: string): TestResult;
  charger(id: string): ChargerResult;
};

/**
 * Opens the results of a site.
 * @param siteDir a folder that holds data/index.json, data/tests/*.json and data/chargers/*.json
 * Throws, naming the file, where one is missing or does not fit the published schema.
 */
export function openResults(siteDir: string): ResultsFolder {
  const read = <T>(name: string, parse: (value: unknown) => T): T => {
    try {
      return parse(JSON.parse(readFileSync(join(siteDir, "data", name), "utf8")));
    } catch (cause) {
      throw new Error(`data/${name} does not hold results of the published format: ${(cause as Error).message}`, { cause });
    }
  };
  const once = <T>(load: (id: string) => T) => {
    const loaded = new Map<string, T>();
    return (id: string): T => {
      const known = loaded.get(id) ?? load(id);
      loaded.set(id, known);
      return known;
    };
  };
  return {
    index: read("index.json", (value) => siteIndex.parse(value)),
    test: once((id) => read(`tests/${id}.json`, (value) => testResult.parse(value))),
    charger: once((id) => read(`chargers/${id}.json`, (value) => chargerResult.parse(value))),
  };
}
