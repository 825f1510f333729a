/** The chargers of a run: what each rests on, and having those put together that are not known. */
import type { Entries } from "../cache/entries.ts";
import { type BenchTest, nearestTests } from "../judge/forecast/battery-tests.ts";
import type { Problem } from "../nouns/problem.ts";
import { testsCalled } from "../publish/assemble/prose.ts";
import type { Workspace } from "../read/workspace.ts";
import { chargerAgain, type JobsByKey } from "./again.ts";
import type { Crew } from "./crew.ts";
import { type ChargerHead, type ChargerJob, EntryLost, type KeyedBenchTest, keptCharger, keyOfCharger } from "./jobs.ts";
import type { ReadyTest } from "./tests.ts";

export type AssembledCharger = { readonly id: string; readonly key: string; readonly head: ChargerHead };

export type AssembledChargers = {
  /** Those with a published test, in the order of the workspace. */
  readonly shown: readonly AssembledCharger[];
  readonly problems: readonly Problem[];
  /** Ids of those that were put together in this run. */
  readonly worked: readonly string[];
};

/** One job a charger, in the order of the workspace. */
export function chargerJobs(
  { chargers, reviews, site, files }: Pick<Workspace, "chargers" | "reviews" | "site" | "files">,
  tests: readonly ReadyTest[],
  code: string,
): ChargerJob[] {
  if (site === undefined) return [];
  const fileByPath = new Map(files.map((file) => [file.path, file]));
  const testById = new Map(tests.map((test) => [test.id, test]));
  const byCharger = new Map<string, ReadyTest[]>();
  for (const test of tests) byCharger.set(test.charger, [...(byCharger.get(test.charger) ?? []), test]);
  const byBattery = new Map<string, BenchTest[]>();
  for (const { bench } of tests) byBattery.set(bench.test.battery, [...(byBattery.get(bench.test.battery) ?? []), bench.test]);
  const knownBy = (own: readonly ReadyTest[]): KeyedBenchTest[] => {
    const bench = own.flatMap(({ bench: { test } }) => [test, ...nearestTests(test, byBattery.get(test.battery) ?? [])]);
    return [...new Set(bench.map(({ id }) => id))].flatMap((id) => testById.get(id)?.bench ?? []);
  };
  const keys = ({ id, key }: ReadyTest) => ({ id, key });
  return [...chargers].map(([id, { value, file, text }]) => {
    const source = fileByPath.get(file);
    if (source === undefined) throw new Error(`${file} was read, yet is not among the workspace's files`);
    const prose = reviews.get(id);
    const called = prose === undefined ? [] : testsCalled(prose);
    const own = byCharger.get(id) ?? [];
    const job = {
      id,
      record: { value, file, text },
      evidence: { file, sha256: source.sha256 },
      tests: own.map(keys),
      bench: knownBy(own),
      prose,
      called: called.flatMap((test) => testById.get(test) ?? []).map(keys),
      published: called.every((test) => testById.has(test)) ? [] : tests.map((test) => test.id),
      language: site.value.language,
    };
    return { kind: "charger", key: keyOfCharger(job, code), ...job };
  });
}

/** Looks each charger up and has the others put together. */
export async function assembleChargers(
  jobs: readonly ChargerJob[],
  all: JobsByKey,
  crew: Crew,
  entries: Entries,
  onCharger?: (done: number, total: number, id: string) => void,
): Promise<AssembledChargers> {
  const heads = jobs.map((job) => keptCharger(entries, job.key));
  const missing = jobs.map((job, place) => ({ job, place })).filter(({ place }) => heads[place] === undefined);
  let done = jobs.length - missing.length;
  crew.expect(missing.length);
  await Promise.all(
    missing.map(async ({ job, place }) => {
      heads[place] = await putTogether(job, all, crew, entries);
      done += 1;
      onCharger?.(done, jobs.length, job.id);
    }),
  );
  const assembled = jobs.flatMap(({ id, key }, place) => {
    const head = heads[place];
    return head === undefined ? [] : [{ id, key, head }];
  });
  return {
    shown: assembled.filter(({ head }) => head.rows.length > 0),
    problems: assembled.flatMap(({ head }) => head.problems),
    worked: missing.map(({ job }) => job.id),
  };
}

async function putTogether(job: ChargerJob, all: JobsByKey, crew: Crew, entries: Entries): Promise<ChargerHead> {
  try {
    return await crew.charger(job);
  } catch (error) {
    if (!(error instanceof EntryLost)) throw error;
    return chargerAgain(job, all, crew, entries);
  }
}
