import path from "node:path";
import { diskEntries } from "../cache/entries.ts";
import { sweepUnused } from "../cache/sweep.ts";
import { beginSite, type Staging } from "../publish/publish.ts";
import { parseShard, type Shard } from "../run/shard.ts";
import { type Measured, measureShard, measureWorkspace } from "../run.ts";
import { count, countProblems, printProblems, showProgress, tell } from "./terminal.ts";

/** As they stand on the command line. */
export type BuildOptions = {
  readonly workspace: string;
  readonly out: string;
  readonly threads?: string | undefined;
  readonly shard?: string | undefined;
  /** Whether to tell at the end what time and memory went where. */
  readonly costs?: boolean | undefined;
};

/**
 * Builds a site, or measures a share of one.
 *
 * Tests without errors are published; those with errors are left out and named. Where nothing can be published, the last good site
 * stays.
 * @returns the exit status: 0 where all was published, 1 where anything was not
 */
export async function build({ workspace, out, threads, shard, costs = false }: BuildOptions): Promise<number> {
  if (threads !== undefined && !/^[1-9]\d?$/.test(threads)) return tellUse(`--threads: expected a number from 1 to 99, found "${threads}"`);
  const share = shard === undefined ? undefined : parseShard(shard);
  if (shard !== undefined && share === undefined)
    return tellUse(`--shard: expected a share such as 3/8 (the third of eight), found "${shard}"`);
  const most = threads === undefined ? {} : { threads: Number(threads) };
  return share === undefined ? buildSite(workspace, out, most, costs) : buildShare(workspace, out, share, most);
}

function tellUse(text: string): 1 {
  tell(text);
  return 1;
}

/** Measures a share of the tests into the cache, for a build that has the caches of all shares. */
async function buildShare(workspace: string, out: string, shard: Shard, most: { threads?: number }): Promise<number> {
  const started = performance.now();
  const reading = showProgress("measuring tests");
  const assembling = showProgress("forecasting chargers");
  const entries = diskEntries(cacheFolder(out));
  try {
    const { problems, tests, worked } = await measureShard(workspace, shard, {
      ...most,
      entries,
      onTest: (done, total) => reading.update(done, total),
      onCharger: (done, total) => assembling.update(done, total),
    });
    printProblems(problems);
    const unwritten = entries.takeUnwritten().length;
    if (unwritten > 0) {
      tell(
        `${count(unwritten, "result")} could not be written to ${path.basename(cacheFolder(out))}: is the disk full, or may it not be written to?`,
      );
      return 1;
    }
    const share = `share ${shard.number} of ${shard.of}`;
    tell(`${count(tests, "test")} in ${share}, ${worked.tests.length} measured, ${countProblems(problems)}, ${secondsSince(started)} s`);
    tell("Nothing was published: a build that has the caches of all shares does.");
    return problems.some((problem) => problem.level === "error") ? 1 : 0;
  } catch (error) {
    tell(`The share could not be measured: ${error instanceof Error ? error.message : String(error)}`);
    return 1;
  } finally {
    reading.stop();
    assembling.stop();
  }
}

const secondsSince = (started: number): string => ((performance.now() - started) / 1000).toFixed(1);

async function buildSite(workspace: string, out: string, most: { threads?: number }, costs: boolean): Promise<number> {
  const started = performance.now();
  const spent: string[] = [];
  const onCost = (what: string, seconds: number): void => void spent.push(`${what} ${seconds.toFixed(2)} s`);
  const entries = diskEntries(cacheFolder(out));
  let staging: Staging;
  try {
    staging = await beginSite(out, { entries, folder: cacheFolder(out) });
  } catch (error) {
    return tellUnwritable(error);
  }
  const reading = showProgress("measuring tests");
  const rendering = showProgress("writing pages");
  const assembling = showProgress("putting chargers together");
  let outcome: Measured;
  let pages: number;
  try {
    outcome = await measureWorkspace(workspace, {
      ...most,
      onTest: (done, total) => reading.update(done, total),
      onCharger: (done, total) => assembling.update(done, total),
      entries,
    });
    onCost("reading and measuring", (performance.now() - started) / 1000);
    reading.stop();
    assembling.stop();
    printProblems(outcome.problems);
    if (outcome.published === undefined) {
      tell(`Nothing was published: ${countProblems(outcome.problems)}. The last good site stays as it was.`);
      return 1;
    }
    ({ pages } = await staging.publish(outcome.published, outcome.workspace.files, {
      onPage: (done, total) => rendering.update(done, total),
      onCost,
    }));
    sweepUnused(cacheFolder(out));
  } catch (error) {
    return tellUnwritable(error);
  } finally {
    reading.stop();
    assembling.stop();
    rendering.stop();
    await staging.abandon();
  }
  tell(
    `${count(outcome.testsRead, "test")} read, ${count(outcome.rows, "row")}, ${countProblems(outcome.problems)}, ${count(pages, "page")}, ${secondsSince(started)} s`,
  );
  if (costs) {
    tell(`time: ${spent.join(", ")}`);
    tell(`peak memory: ${Math.round(process.resourceUsage().maxRSS / 1024)} MiB`);
  }
  for (const { what, why } of outcome.published.index.notPublished) tell(`Not published: ${what}, since ${why}.`);
  return outcome.problems.some((problem) => problem.level === "error") ? 1 : 0;
}

/** Where builds keep what they worked out: beside the site, so that it is never published. */
export function cacheFolder(out: string): string {
  return path.join(path.dirname(path.resolve(out)), ".ampwitness");
}

function tellUnwritable(error: unknown): 1 {
  tell(`The site could not be written: ${error instanceof Error ? error.message : String(error)}`);
  const advice = codesOf(error).map((code) => adviceByCode[code]);
  for (const one of advice) if (one !== undefined) tell(one);
  tell("The last good site stays as it was.");
  return 1;
}

/** The system's codes for an error and those that it wraps; the page renderer calls a wrapped one its original. */
function codesOf(error: unknown): string[] {
  if (!(error instanceof Error)) return [];
  const { code, cause, originalError } = error as Error & { readonly code?: unknown; readonly originalError?: unknown };
  return [...(typeof code === "string" ? [code] : []), ...codesOf(cause ?? originalError)];
}

/** What to do about faults of the disk, by the code that the system gives them. */
const adviceByCode: Readonly<Record<string, string>> = {
  ENOSPC:
    "The disk is full. Make room, and build again; the folder .ampwitness beside the site may be deleted, at the cost of a slow build.",
  EDQUOT: "Your share of the disk is used up. Make room, and build again.",
  EROFS: "The disk takes no changes. Name another place with --out.",
  EACCES: "You may not write there. Name another place with --out, or ask for the right.",
  EPERM: "You may not write there. Name another place with --out, or ask for the right.",
};
