import path from "node:path";
import { writeLogSamples } from "../publish/log-samples/write.ts";
import { beginSite, type Staging } from "../publish/publish.ts";
import { type RunOutcome, run } from "../run.ts";
import { rememberForecasts } from "./forecast-cache.ts";
import { count, countProblems, printProblems, showProgress, tell } from "./terminal.ts";

/**
 * Builds a site.
 *
 * Tests without errors are published; those with errors are left out and named. Where nothing can be published, the last good site
 * stays.
 * @returns the exit status: 0 where all was published, 1 where anything was not
 */
export async function build({ workspace, out }: { workspace: string; out: string }): Promise<number> {
  const started = performance.now();
  let staging: Staging;
  try {
    staging = await beginSite(out);
  } catch (error) {
    return tellUnwritable(error);
  }
  const reading = showProgress("measuring tests");
  const rendering = showProgress("writing pages");
  let outcome: RunOutcome;
  let pages: number;
  try {
    outcome = await run(workspace, {
      onTest: (done, total) => reading.update(done, total),
      forecast: rememberForecasts(path.join(path.dirname(path.resolve(out)), ".ampwitness")),
      onRecording: (testId, recording, zone) => writeLogSamples(staging.dir, testId, recording, zone),
    });
    reading.stop();
    printProblems(outcome.problems);
    if (outcome.results === undefined) {
      tell(`Nothing was published: ${countProblems(outcome.problems)}. The last good site stays as it was.`);
      return 1;
    }
    ({ pages } = await staging.publish(outcome.results, outcome.workspace.files, {
      onPage: (done, total) => rendering.update(done, total),
    }));
  } catch (error) {
    return tellUnwritable(error);
  } finally {
    reading.stop();
    rendering.stop();
    await staging.abandon();
  }
  const seconds = ((performance.now() - started) / 1000).toFixed(1);
  tell(
    `${count(outcome.testsRead, "test")} read, ${count(outcome.rows, "row")}, ${countProblems(outcome.problems)}, ${count(pages, "page")}, ${seconds} s`,
  );
  for (const { what, why } of outcome.results.index.notPublished) tell(`Not published: ${what}, since ${why}.`);
  return outcome.problems.some((problem) => problem.level === "error") ? 1 : 0;
}

function tellUnwritable(error: unknown): 1 {
  tell(`The site could not be written: ${error instanceof Error ? error.message : String(error)}`);
  tell("The last good site stays as it was.");
  return 1;
}
