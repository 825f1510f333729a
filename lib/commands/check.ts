import { run } from "../run.ts";
import { count, countProblems, printProblems, showProgress, tell } from "./terminal.ts";

/** Checks a workspace and prints its problems; nothing is written. @returns 1 where there are errors, else 0 */
export async function check({ workspace }: { workspace: string }): Promise<number> {
  const started = performance.now();
  const progress = showProgress("checking tests");
  const outcome = await run(workspace, {
    onTest: (done, total) => progress.update(done, total),
    // No problem can come of a forecast, and they are most of the work.
    forecast: () => ({ reference: null, readyBy: [], season: [], ownBatteries: [] }),
  });
  progress.stop();
  printProblems(outcome.problems);
  tell(
    `${count(outcome.testsRead, "test")} read, ${count(outcome.rows, "row")}, ${countProblems(outcome.problems)}, ${((performance.now() - started) / 1000).toFixed(1)} s`,
  );
  return outcome.problems.some((problem) => problem.level === "error") ? 1 : 0;
}
