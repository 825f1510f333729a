/** The version of our own code, as a digest of its sources: it changes by itself when a line does. */
import { createHash } from "node:crypto";
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

const project = fileURLToPath(new URL("../../", import.meta.url));

/** All that decides what is read, measured, judged and put into results. A test follows the imports and names what is missing here. */
export const figureSources = [
  "lib/check",
  "lib/electrochem",
  "lib/judge",
  "lib/measure",
  "lib/nouns",
  "lib/project",
  "lib/read",
  "lib/reconcile",
  "lib/signal",
  "lib/units",
  "lib/publish/assemble",
  "lib/publish/log-samples",
  "lib/publish/json.ts",
  "lib/publish/links.ts",
  "lib/publish/results.ts",
  "lib/publish/version.ts",
  "lib/run/basis.ts",
  "lib/run/jobs.ts",
  "lib/run/measure-test.ts",
  "lib/cache/digest.ts",
  "lib/cache/entries.ts",
  "package-lock.json",
];

/** The figures' sources, and all that draws and publishes. */
export const siteSources = ["lib", "_site-config", "package-lock.json"];

/**
 * Digest of files and of all files below folders, by path and content, and of the version of Node, which decides how entries are written.
 *
 * @param sources  paths from the project's root
 */
export function codeVersion(sources: readonly string[]): string {
  const hash = createHash("sha256").update(process.version);
  for (const file of sources.flatMap(filesOf)) hash.update(`\n${file}\n`).update(readFileSync(join(project, file)));
  return hash.digest("hex");
}

function filesOf(source: string): string[] {
  if (/\.[a-z]+$/.test(source)) return [source];
  return readdirSync(join(project, source), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name).slice(project.length).replaceAll("\\", "/"))
    .sort();
}
