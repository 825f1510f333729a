/** The tests of a run: what each rests on, and having those measured that are not known. */
import type { Entries } from "../cache/entries.ts";
import type { Problem } from "../nouns/problem.ts";
import type { Workspace } from "../read/workspace.ts";
import { basisOf, fileFinder, keyOfBasis } from "./basis.ts";
import type { Crew } from "./crew.ts";
import { type FieldDigests, type KeyedBenchTest, keptTest, type TestHead, type TestJob } from "./jobs.ts";

/** A test that can be published, by what the rest of the run needs to know of it. */
export type ReadyTest = {
  readonly id: string;
  readonly key: string;
  readonly charger: string;
  readonly title: string;
  readonly digests: FieldDigests;
  readonly bench: KeyedBenchTest;
};

export type MeasuredTests = {
  /** In the order of the workspace, however many threads there were. */
  readonly published: readonly ReadyTest[];
  readonly problems: readonly Problem[];
  readonly rows: number;
  /** Ids of those that were measured in this run. */
  readonly worked: readonly string[];
};

/** One job a test, in the order of the workspace. */
export function testJobs(workspace: Workspace, problems: readonly Problem[], code: string): TestJob[] {
  const finder = fileFinder(workspace.files);
  const told = new Map<string, Problem[]>();
  for (const problem of problems) if (problem.test !== undefined) told.set(problem.test, [...(told.get(problem.test) ?? []), problem]);
  return workspace.tests.map((folder) => {
    const basis = basisOf(workspace, folder, finder, told.get(folder.id) ?? []);
    return { kind: "test", key: keyOfBasis(basis, code), basis };
  });
}

/** Looks each test up and has the others measured. */
export async function measureTests(
  jobs: readonly TestJob[],
  crew: Crew,
  entries: Entries,
  onTest?: (done: number, total: number, id: string) => void,
): Promise<MeasuredTests> {
  const heads = jobs.map((job) => keptTest(entries, job.key));
  const missing = jobs.map((job, place) => ({ job, place })).filter(({ place }) => heads[place] === undefined);
  let done = jobs.length - missing.length;
  onTest?.(done, jobs.length, "");
  crew.expect(missing.length);
  await Promise.all(
    missing.map(async ({ job, place }) => {
      heads[place] = await crew.test(job);
      done += 1;
      onTest?.(done, jobs.length, job.basis.folder.id);
    }),
  );
  const known = heads.filter((head) => head !== undefined);
  return {
    published: jobs.flatMap((job, place) => readyTest(job, heads[place])),
    problems: known.flatMap((head) => head.problems),
    rows: known.reduce((sum, head) => sum + head.rows, 0),
    worked: missing.map(({ job }) => job.basis.folder.id),
  };
}

function readyTest({ key, basis }: TestJob, head: TestHead | undefined): ReadyTest[] {
  const { id, record } = basis.folder;
  if (head?.published === undefined || record === undefined) return [];
  return [{ id, key, charger: record.value.charger, ...head.published }];
}
