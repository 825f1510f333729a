/**
 * The five stages, one after the other.
 *
 *   read ──► check ──► measure ──► judge ──► publish
 *   files     problems   figures     findings   JSON, then pages
 *
 * Each test is measured from its basis (lib/run/basis.ts), each charger put together from its tests. What was worked out once lies among
 * the entries (lib/cache) under a key of everything it rests on, and is not worked out again; the results stay there until they are asked
 * for, so that a thousand of them need no more memory than one.
 */
import { codeVersion, figureSources } from "./cache/code-version.ts";
import { type Entries, memoryEntries } from "./cache/entries.ts";
import { recallWorkspace } from "./cache/workspace.ts";
import { type Problem, sortProblems } from "./nouns/problem.ts";
import type { Forecaster } from "./publish/assemble/forecast.ts";
import type { ComparisonRow, Results } from "./publish/results.ts";
import type { Workspace } from "./read/workspace.ts";
import { getOrMake, jobsByKey } from "./run/again.ts";
import { assembleChargers, chargerJobs } from "./run/chargers.ts";
import { hireCrew } from "./run/crew.ts";
import { indexOf } from "./run/index-of-run.ts";
import { testBody } from "./run/jobs.ts";
import { type Published, publishedOf } from "./run/published.ts";
import { ofShard, type Shard } from "./run/shard.ts";
import { measureTests, testJobs } from "./run/tests.ts";

/** What a run is given, and what it tells while it works. */
export type RunEffects = {
  onTest?(done: number, total: number, id: string): void;
  onCharger?(done: number, total: number, id: string): void;
  /** Where results are kept and looked up; in memory, for this run alone, where left out. */
  entries?: Entries;
  /** How many threads may work; as many as the machine has processors where left out. Entries in memory are for one. */
  threads?: number;
  /** Makes a mode's forecast in place of the entries' own forecaster; everything is then done in this thread. */
  forecast?: Forecaster;
};

/** What was worked out anew in a run, by id; all else was known. */
export type Worked = { readonly tests: readonly string[]; readonly chargers: readonly string[] };

type Told = {
  readonly workspace: Workspace;
  readonly problems: readonly Problem[];
  /** Samples read from logs. */
  readonly rows: number;
  readonly testsRead: number;
};

/** Undefined results: the site's own record has errors, and nothing can be published. */
export type RunOutcome = Told & { readonly results: Results | undefined };
export type Measured = Told & { readonly worked: Worked; readonly published: Published | undefined };

/**
 * Runs read, check, measure and judge over a workspace, and leaves the results among the entries.
 *
 * @param root  the folder that holds data/ and content/; nothing in it is written to
 */
export async function measureWorkspace(root: string, effects: RunEffects = {}): Promise<Measured> {
  const { entries = memoryEntries() } = effects;
  const code = codeVersion(figureSources);
  const crew = hireCrew(entries, effects);
  try {
    // 1. read
    const { value: workspace, problems: ofReading } = await recallWorkspace(root, entries, code);
    // 2. check, 3. measure, 4. judge
    const jobs = testJobs(workspace, ofReading, code);
    const tests = await measureTests(jobs, crew, entries, effects.onTest);
    // 5. the first half of publish: what of all tests belongs together
    const ofChargers = chargerJobs(workspace, tests.published, code);
    const all = jobsByKey(jobs, ofChargers);
    const chargers = await assembleChargers(ofChargers, all, crew, entries, effects.onCharger);
    const found = [...ofReading, ...tests.problems, ...chargers.problems];
    const resultOf = async (key: string) => (await getOrMake(key, () => testBody(entries, key), all, crew, entries)).result;
    const { index, rows, problems } = await indexOf(workspace, tests, chargers, found, resultOf);
    return {
      workspace,
      problems: sortProblems(problems),
      rows: tests.rows,
      testsRead: jobs.length,
      worked: { tests: tests.worked, chargers: chargers.worked },
      published: index === undefined ? undefined : publishedOf(index, rows, tests, chargers, all, crew, entries),
    };
  } finally {
    await crew.dismiss();
  }
}

/** Runs over a workspace and fetches all results at once: for those that fit into memory. */
export async function run(root: string, effects: RunEffects = {}): Promise<RunOutcome> {
  const { published, worked: _, ...told } = await measureWorkspace(root, effects);
  if (published === undefined) return { ...told, results: undefined };
  const tests = await Promise.all(published.tests.map((test) => test.result()));
  const chargers = await Promise.all(published.chargers.map((charger) => charger.result()));
  const index = { ...published.index, rows: published.rows.map(({ text }) => JSON.parse(text) as ComparisonRow) };
  return { ...told, results: { index, tests, chargers } };
}

/**
 * Measures a share of the tests, and makes their chargers' forecasts, into the entries; publishes nothing. A charger's tests fall into one
 * share, so that its forecasts can be made there.
 *
 * @returns what is amiss with the share's tests, and all that was found on reading: a record that cannot be read belongs to no share
 */
export async function measureShard(
  root: string,
  shard: Shard,
  effects: RunEffects & { readonly entries: Entries },
): Promise<{ readonly problems: readonly Problem[]; readonly tests: number; readonly worked: Worked }> {
  const { entries } = effects;
  const code = codeVersion(figureSources);
  const crew = hireCrew(entries, effects);
  try {
    const { value: workspace, problems: ofReading } = await recallWorkspace(root, entries, code);
    const jobs = testJobs(workspace, ofReading, code).filter(({ basis: { folder } }) =>
      ofShard(shard, folder.record?.value.charger ?? folder.id),
    );
    const tests = await measureTests(jobs, crew, entries, effects.onTest);
    // Words may call figures of a test in another share, so they wait for the build that has all of them.
    const own = chargerJobs({ ...workspace, reviews: new Map() }, tests.published, code).filter(({ id }) => ofShard(shard, id));
    const chargers = await assembleChargers(own, jobsByKey(jobs, own), crew, entries, effects.onCharger);
    return {
      problems: sortProblems([...ofReading, ...tests.problems]),
      tests: jobs.length,
      worked: { tests: tests.worked, chargers: chargers.worked },
    };
  } finally {
    await crew.dismiss();
  }
}
