/** The whole small workspaces beside this file: how one is run, and what of its results is kept to compare with. */
import { readdirSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { formatProblem } from "../../lib/nouns/problem.ts";
import { run } from "../../lib/run.ts";
import { noForecast } from "../no-forecast.ts";

const here = new URL("./", import.meta.url);

/** Names of the cases: every folder beside this file. */
export const caseNames: readonly string[] = readdirSync(here, { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map((entry) => entry.name)
  .sort();

/** Path of a file of a case; of its workspace where no file is named. */
export const pathIn = (name: string, file = "in"): string => fileURLToPath(new URL(`./${name}/${file}`, here));

/**
 * Runs a case's workspace.
 *
 * @returns its results and problems as text. The texts of the methods and rules are left out, since they are the same for every
 *   workspace; numbers keep nine digits, more than any figure carries and fewer than machines differ in.
 */
export async function runCase(name: string): Promise<{ results: string; problems: string }> {
  const outcome = await run(pathIn(name), { forecast: noForecast });
  const { index, tests, chargers } = outcome.results ?? {};
  const kept = { index: index === undefined ? undefined : { ...index, methods: [], rules: [] }, tests, chargers };
  const rounded = (_: string, value: unknown): unknown =>
    typeof value === "number" && !Number.isInteger(value) ? Number(value.toPrecision(9)) : value;
  return {
    results: `${JSON.stringify(kept, rounded, 1)}\n`,
    problems: outcome.problems.map((problem) => `${formatProblem(problem)}\n`).join(""),
  };
}
