/** Throw-away copies of a small workspace, and what can be asked of a built site. */
import { cpSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, realpathSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join, relative } from "node:path";
import { build } from "../../lib/commands/build.ts";
import { publish } from "../../lib/publish/publish.ts";
import { run } from "../../lib/run.ts";
import { noForecast } from "../no-forecast.ts";
import { pathIn } from "./cases.ts";

export type Bench = {
  /** The folder that holds both; whatever else appears in it was written outside the site. */
  readonly root: string;
  readonly workspace: string;
  readonly out: string;
};

const roots: string[] = [];

/** Files to add or replace, by path in the workspace; they may depend on where the bench stands. */
export type Files = Readonly<Record<string, string>> | ((root: string) => Readonly<Record<string, string>>);

/** A copy of the smallest workspace with files added or replaced, and a place to publish to. */
export function newBench(files: Files = {}): Bench {
  const root = realpathSync(mkdtempSync(join(tmpdir(), "bench-")));
  roots.push(root);
  const workspace = join(root, "workspace");
  cpSync(pathIn("minimal"), workspace, { recursive: true });
  for (const [path, text] of Object.entries(typeof files === "function" ? files(root) : files)) {
    mkdirSync(dirname(join(workspace, path)), { recursive: true });
    writeFileSync(join(workspace, path), text);
  }
  return { root, workspace, out: join(root, "site") };
}

export function removeBenches(): void {
  for (const root of roots.splice(0)) rmSync(root, { recursive: true, force: true });
}

/** Runs all stages, as the build command does, and gives back the problems' ids. */
export async function publishBench({ workspace, out }: Bench): Promise<string[]> {
  const outcome = await run(workspace, { forecast: noForecast });
  if (outcome.results === undefined) throw new Error("nothing can be published");
  await publish(outcome.results, outcome.workspace.files, out);
  return outcome.problems.map((problem) => problem.id);
}

/** The build command itself; gives its exit status. */
export function buildBench({ workspace, out }: Bench): Promise<number> {
  return build({ workspace, out });
}

/** Every file below a folder, sorted, with its bytes. */
export function filesBelow(folder: string): Map<string, Buffer> {
  return new Map(
    readdirSync(folder, { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map((entry) => join(entry.parentPath, entry.name))
      .sort()
      .map((path) => [relative(folder, path).replaceAll("\\", "/"), readFileSync(path)]),
  );
}
