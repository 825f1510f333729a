import { publish } from "../publish/publish.ts";
import { run } from "../run.ts";
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
  const reading = showProgress("measuring tests");
  const outcome = await run(workspace, { onTest: (done, total) => reading.update(done, total) });
  reading.stop();
  printProblems(outcome.problems);
  const hasErrors = outcome.problems.some((problem) => problem.level === "error");
  if (outcome.results === undefined) {
    tell(`Nothing was published: ${countProblems(outcome.problems)}. The last good site stays as it was.`);
    return 1;
  }
  const rendering = showProgress("writing pages");
  let pages: number;
  try {
    ({ pages } = await publish(outcome.results, outcome.workspace.files, out, { onPage: (done, total) => rendering.update(done, total) }));
  } catch (error) {
    rendering.stop();
    tell(`The site could not be written: ${error instanceof Error ? error.message : String(error)}`);
    tell("The last good site stays as it was.");
    return 1;
  }
  rendering.stop();
  const seconds = ((performance.now() - started) / 1000).toFixed(1);
  tell(
    `${count(outcome.testsRead, "test")} read, ${count(outcome.rows, "row")}, ${countProblems(outcome.problems)}, ${count(pages, "page")}, ${seconds} s`,
  );
  for (const { what, why } of outcome.results.index.notPublished) tell(`Not published: ${what}, since ${why}.`);
  return hasErrors ? 1 : 0;
}
