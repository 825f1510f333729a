/** Who does the jobs of a run: this thread, or as many threads as the machine has processors. The outcome is the same. */
import { createRequire } from "node:module";
import { availableParallelism } from "node:os";
import { fileURLToPath, pathToFileURL } from "node:url";
import { Piscina } from "piscina";
import type { Entries, Entry } from "../cache/entries.ts";
import { rememberForecasts } from "../cache/forecasts.ts";
import { startable } from "../packed.ts";
import type { Forecaster } from "../publish/assemble/forecast.ts";
import { type ChargerHead, type ChargerJob, doCharger, doTest, EntryLost, type Job, type TestHead, type TestJob } from "./jobs.ts";

/** Threads take a second to start and some 200 MiB each; fewer jobs than this are done here. */
const fewJobs = 4;
const mostThreads = 8;

export type Crew = {
  /** Says how many jobs are about to come. */
  expect(jobs: number): void;
  test(job: TestJob): Promise<TestHead>;
  /** Fails with EntryLost where a test's results can no longer be read. */
  charger(job: ChargerJob): Promise<ChargerHead>;
  /** Puts a charger together in this thread. */
  chargerHere(job: ChargerJob): ChargerHead;
  dismiss(): Promise<void>;
};

/** What a worker gives back. */
export type Done =
  | {
      readonly head: TestHead | ChargerHead;
      /** Entries that could not be written to disk, and so have to be carried over. */
      readonly unwritten: readonly Entry[];
    }
  | { readonly lost: string };

/**
 * Hires a crew. Threads are started once so many jobs are expected that they are worth it, and only where entries lie on disk.
 *
 * @param threads   how many to start, however few jobs or processors there are, but none without a job
 * @param forecast  makes forecasts in place of the entries' own forecaster, which only this thread can
 */
export function hireCrew(entries: Entries, { threads, forecast }: { threads?: number; forecast?: Forecaster }): Crew {
  const { folder } = entries;
  let own = forecast;
  const chargerHere = (job: ChargerJob): ChargerHead => {
    own ??= rememberForecasts(entries);
    return doCharger(job, entries, own);
  };
  let pool: ReturnType<typeof startThreads> | undefined;
  const most = threads ?? Math.min(availableParallelism(), mostThreads);
  const least = threads === undefined ? fewJobs : 2;
  return {
    expect(jobs) {
      if (folder !== undefined && forecast === undefined && most > 1 && jobs >= least) pool ??= startThreads(entries, folder, jobs, most);
    },
    test: (job) => pool?.test(job) ?? doTest(job, entries),
    charger: async (job) => pool?.charger(job) ?? chargerHere(job),
    chargerHere,
    dismiss: async () => pool?.dismiss(),
  };
}

/**
 * Does jobs in threads, which find and leave what they need among the entries on disk. As many are started as there are jobs, up to the
 * most; and more, up to the most, when a job finds none free, since tests may be fewer than the chargers that come after them.
 *
 * A thread that dies fails the job it was at, with the name of what was being measured; nothing is published then.
 */
function startThreads(entries: Entries, folder: string, jobs: number, most: number) {
  const { path, isPacked } = startable("lib/run/worker.ts", fileURLToPath(new URL("../../", import.meta.url)));
  const pool = new Piscina({
    filename: pathToFileURL(path).href,
    // A worker learns to read TypeScript as this process did, whatever folder that was started in.
    execArgv: isPacked ? [] : ["--import", pathToFileURL(createRequire(import.meta.url).resolve("tsx")).href],
    // Of these one that dies before it is ready is replaced; a job that waited for it would else wait for ever.
    minThreads: Math.min(jobs, most),
    maxThreads: most,
    idleTimeout: Number.POSITIVE_INFINITY,
    workerData: folder,
  });
  const work = async <Head>(job: Job, subject: string): Promise<Head> => {
    let done: Done;
    try {
      done = await pool.run(job);
    } catch (cause) {
      throw new Error(`${subject} could not be worked out: ${cause instanceof Error ? cause.message : String(cause)}`, { cause });
    }
    if ("lost" in done) throw new EntryLost(done.lost);
    for (const { kind, key, value } of done.unwritten) entries.put(kind, key, value);
    return done.head as Head;
  };
  return {
    test: (job: TestJob) => work<TestHead>(job, `test ${job.basis.folder.id}`),
    charger: (job: ChargerJob) => work<ChargerHead>(job, `charger ${job.id}`),
    dismiss: () => pool.destroy(),
  };
}
