/** The results as they lie on disk under data/, parsed and checked when they are asked for. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { toJson } from "./json.ts";
import {
  type ChargerResult,
  type ComparisonRow,
  chargerResult,
  comparisonRow,
  type SiteIndex,
  siteIndex,
  type TestResult,
  testResult,
} from "./results.ts";

/** What pages may ask of the results. */
export type ResultsFolder = {
  readonly index: SiteIndex;
  test(id: string): TestResult;
  charger(id: string): ChargerResult;
  /** The rows of a charger's tests, in the order of the index. */
  rowsOf(charger: string): readonly ComparisonRow[];
  /** The tests of those rows, which are asked for without reading the rows. */
  testsOf(charger: string): readonly string[];
};

/** So many results of each kind are held; a page that shows one is seldom far from the next that does. */
const mostHeld = 200;

/**
 * Opens the results of a site.
 * @param siteDir a folder that holds data/index.json, data/tests/*.json and data/chargers/*.json
 * Throws, naming the file, where one is missing or does not fit the published schema.
 */
export function openResults(siteDir: string): ResultsFolder {
  const index = readData(siteDir, "index.json", (value) => siteIndex.parse(value));
  const rowsByCharger = once(() => groupRows(index.rows));
  const rowsOf = (charger: string): readonly ComparisonRow[] => rowsByCharger().get(charger) ?? [];
  return { index, ...openFiles(siteDir), rowsOf, testsOf: (charger) => rowsOf(charger).map((row) => row.test.id) };
}

function openFiles(siteDir: string): Pick<ResultsFolder, "test" | "charger"> {
  return {
    test: held((id) => readData(siteDir, `tests/${id}.json`, (value) => testResult.parse(value))),
    charger: held((id) => readData(siteDir, `chargers/${id}.json`, (value) => chargerResult.parse(value))),
  };
}

function readData<T>(siteDir: string, name: string, parse: (value: unknown) => T): T {
  try {
    return parse(JSON.parse(readFileSync(join(siteDir, "data", name), "utf8")));
  } catch (cause) {
    throw new Error(`data/${name} does not hold results of the published format: ${(cause as Error).message}`, { cause });
  }
}

/** What is published, before all of it stands in files: the index without its rows, and the rows as texts. */
export type PublishedRows = {
  readonly index: SiteIndex;
  readonly rows: readonly { readonly text: string }[];
  readonly chargers: readonly { readonly id: string; readonly rows: readonly { readonly test: string; readonly text: string }[] }[];
};

/**
 * Opens the results of a site that is being made: tests and chargers from their files as they come, the index from what is published.
 * Throws where the index does not fit the published schema.
 */
export function openPublished(siteDir: string, { index, rows, chargers }: PublishedRows): ResultsFolder {
  const parseRows = (texts: readonly { readonly text: string }[]) => texts.map(({ text }) => comparisonRow.parse(JSON.parse(text)));
  const allRows = once(() => parseRows(rows));
  const checked = siteIndex.parse({ ...(JSON.parse(toJson(index)) as SiteIndex), rows: [] });
  Object.defineProperty(checked, "rows", { enumerable: true, get: allRows });
  const rowsByCharger = new Map(chargers.map((charger) => [charger.id, once(() => parseRows(charger.rows))]));
  const testsByCharger = new Map(chargers.map(({ id, rows: own }) => [id, own.map((row) => row.test)]));
  return {
    index: checked,
    ...openFiles(siteDir),
    rowsOf: (charger) => rowsByCharger.get(charger)?.() ?? [],
    testsOf: (charger) => testsByCharger.get(charger) ?? [],
  };
}

function groupRows(rows: readonly ComparisonRow[]): Map<string, ComparisonRow[]> {
  const groups = new Map<string, ComparisonRow[]>();
  for (const row of rows) {
    const group = groups.get(row.charger.id);
    if (group === undefined) groups.set(row.charger.id, [row]);
    else group.push(row);
  }
  return groups;
}

function once<T>(make: () => T): () => T {
  let made: { value: T } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}

/** Loads by id, and holds the ones that were asked for last. */
function held<T>(load: (id: string) => T): (id: string) => T {
  const values = new Map<string, T>();
  return (id) => {
    const value = values.get(id) ?? load(id);
    values.delete(id);
    values.set(id, value);
    if (values.size > mostHeld) for (const oldest of [...values.keys()].slice(0, 1)) values.delete(oldest);
    return value;
  };
}
