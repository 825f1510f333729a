/** Works results out again that were kept and can no longer be read. */
import type { Entries } from "../cache/entries.ts";
import type { Crew } from "./crew.ts";
import { type ChargerHead, type ChargerJob, doTest, EntryLost, type TestJob, testBody, testSamples } from "./jobs.ts";

/** All jobs of a run, by the keys of what comes of them. */
export type JobsByKey = { readonly tests: ReadonlyMap<string, TestJob>; readonly chargers: ReadonlyMap<string, ChargerJob> };

export function jobsByKey(tests: readonly TestJob[], chargers: readonly ChargerJob[]): JobsByKey {
  const byKey = <T extends { readonly key: string }>(jobs: readonly T[]): Map<string, T> => new Map(jobs.map((job) => [job.key, job]));
  return { tests: byKey(tests), chargers: byKey(chargers) };
}

/** Puts a charger together; tests of which the results were lost meanwhile are measured again before. */
export async function chargerAgain(job: ChargerJob, jobs: JobsByKey, crew: Crew, entries: Entries): Promise<ChargerHead> {
  for (const { key } of [...job.tests, ...job.called]) await testAgain(key, jobs, entries);
  return crew.chargerHere(job);
}

/** Measures a test again where its results were lost; does nothing where they are there. */
async function testAgain(key: string, jobs: JobsByKey, entries: Entries): Promise<void> {
  const job = jobs.tests.get(key);
  if (job !== undefined && (isLost(() => testBody(entries, key)) || isLost(() => testSamples(entries, key)))) await doTest(job, entries);
}

function isLost(get: () => unknown): boolean {
  try {
    get();
    return false;
  } catch (error) {
    if (error instanceof EntryLost) return true;
    throw error;
  }
}

/** Gets something from the entries; where it was lost, it is worked out again first. */
export async function getOrMake<T>(key: string, get: () => T, jobs: JobsByKey, crew: Crew, entries: Entries): Promise<T> {
  if (!isLost(get)) return get();
  const charger = jobs.chargers.get(key);
  if (charger === undefined) await testAgain(key, jobs, entries);
  else await chargerAgain(charger, jobs, crew, entries);
  return get();
}
