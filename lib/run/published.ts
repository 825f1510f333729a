/** What a run hands to publish: the index, and each test and charger with its results to be fetched when they are asked for. */
import type { Entries } from "../cache/entries.ts";
import type { ChargerResult, SiteIndex, TestResult } from "../publish/results.ts";
import { getOrMake, type JobsByKey } from "./again.ts";
import type { AssembledChargers } from "./chargers.ts";
import type { Crew } from "./crew.ts";
import { chargerBody, type FieldDigests, type RowText, testBody, testSamples } from "./jobs.ts";
import type { RecordingSamples } from "./measure-test.ts";
import type { MeasuredTests } from "./tests.ts";

export type PublishedResult<Result> = {
  readonly id: string;
  /** Names its results: the same key, the same results. */
  readonly key: string;
  /** The digest of each field of its results. */
  readonly digests: FieldDigests;
  result(): Promise<Result>;
};

export type PublishedTest = PublishedResult<TestResult> & { samples(): Promise<readonly RecordingSamples[]> };
export type PublishedCharger = PublishedResult<ChargerResult> & { readonly rows: readonly RowText[] };

export type Published = {
  /** Without its rows, which stand beside it. */
  readonly index: SiteIndex;
  /** Rows of the comparison, in the order of the index. */
  readonly rows: readonly RowText[];
  readonly tests: readonly PublishedTest[];
  readonly chargers: readonly PublishedCharger[];
};

export function publishedOf(
  index: SiteIndex,
  rows: readonly RowText[],
  tests: MeasuredTests,
  chargers: AssembledChargers,
  jobs: JobsByKey,
  crew: Crew,
  entries: Entries,
): Published {
  const fetch = <T>(key: string, get: () => T): Promise<T> => getOrMake(key, get, jobs, crew, entries);
  return {
    index,
    rows,
    tests: tests.published.map(({ id, key, digests }) => ({
      id,
      key,
      digests,
      result: async () => (await fetch(key, () => testBody(entries, key))).result,
      samples: () => fetch(key, () => testSamples(entries, key)),
    })),
    chargers: chargers.shown.map(({ id, key, head }) => ({
      id,
      key,
      digests: head.digests,
      rows: head.rows,
      result: () => fetch(key, () => chargerBody(entries, key)),
    })),
  };
}
