/** Writes a site: results first, then everything made from them; and puts it in place only when it is whole. */
import { constants } from "node:fs";
import { copyFile, mkdir, readdir, rename, rm, stat, writeFile } from "node:fs/promises";
import path from "node:path";
import { digestOf } from "../cache/digest.ts";
import type { InputFile } from "../read/workspace-files.ts";
import { digestsOf } from "../run/jobs.ts";
import type { Published } from "../run/published.ts";
import { rawAddress } from "./assemble/recording.ts";
import { logSampleFiles } from "./log-samples/write.ts";
import { renderSite } from "./render-site.ts";
import type { Results } from "./results.ts";
import { resultSchemas } from "./schemas.ts";

export type PublishEffects = { onPage?(done: number, total: number): void };

/** A site in the making: a fresh folder beside the one that is published. */
export type Staging = {
  /** Where the new site stands until it is whole. */
  readonly dir: string;
  /** Completes the site from the results and puts it in place. */
  publish(results: Published, files: readonly InputFile[], effects?: PublishEffects): Promise<{ pages: number }>;
  /** Throws the new site away; the last good one stays. Safe to call after publishing. */
  abandon(): Promise<void>;
};

/**
 * Begins a site.
 *
 * Everything is written into a fresh folder beside the published one, checked there, and put in place by renaming: the old site is moved
 * aside, the new one moved in, the old one removed. Where anything fails, the last good site stays as it was.
 *
 * @param outDir  the site's folder; its parent must be writable
 * @throws where the folder holds something that is no site of ours
 */
export async function beginSite(outDir: string): Promise<Staging> {
  await refuseForeignFolder(outDir);
  await restoreAfterCrash(outDir);
  const dir = `${outDir}.new-${process.pid}`;
  await rm(dir, { recursive: true, force: true });
  await mkdir(dir, { recursive: true });
  return {
    dir,
    publish: async (results, files, effects = {}) => {
      await writeResults(results, dir);
      await copyRawFiles(results, files, dir);
      const rendered = await renderSite(dir, effects);
      await swap(dir, outDir);
      return rendered;
    },
    abandon: () => rm(dir, { recursive: true, force: true }),
  };
}

/**
 * Publishes results into a folder, without samples for the log explorer.
 *
 * @throws where a page cannot be rendered, a link is broken, or the folder holds something that is no site of ours
 */
export async function publish(
  results: Results,
  files: readonly InputFile[],
  outDir: string,
  effects: PublishEffects = {},
): Promise<{ pages: number }> {
  const staging = await beginSite(outDir);
  try {
    return await staging.publish(inMemory(results), files, effects);
  } finally {
    await staging.abandon();
  }
}

/** Results that are all in memory, without samples. */
function inMemory({ index, tests, chargers }: Results): Published {
  const published = <T extends { readonly id: string }>(value: T) => ({
    id: value.id,
    key: digestOf(value),
    digests: digestsOf(value),
    result: async () => value,
  });
  return {
    index,
    tests: tests.map((test) => ({ ...published(test), samples: async () => [] })),
    chargers: chargers.map(published),
  };
}

/** Numbers keep twelve digits: more than any figure carries, and the same on every machine. */
function toJson(value: unknown): string {
  const rounded = (_: string, inner: unknown): unknown =>
    typeof inner === "number" && !Number.isInteger(inner) ? Number(inner.toPrecision(12)) : inner;
  return `${JSON.stringify(value, rounded, 1)}\n`;
}

async function writeResults({ index, tests, chargers }: Published, dir: string): Promise<void> {
  for (const folder of ["tests", "chargers", "schemas"]) await mkdir(path.join(dir, "data", folder), { recursive: true });
  await writeFile(path.join(dir, "data/index.json"), toJson(index));
  for (const test of tests) {
    await writeFile(path.join(dir, `data/tests/${test.id}.json`), toJson(await test.result()));
    for (const { recording, log } of await test.samples())
      for (const [file, bytes] of logSampleFiles(test.id, recording, log)) {
        await mkdir(path.dirname(path.join(dir, file)), { recursive: true });
        await writeFile(path.join(dir, file), bytes);
      }
  }
  for (const charger of chargers) await writeFile(path.join(dir, `data/chargers/${charger.id}.json`), toJson(await charger.result()));
  for (const [name, schema] of Object.entries(resultSchemas()))
    await writeFile(path.join(dir, `data/schemas/${name}.schema.json`), toJson(schema));
}

/** Copies the files that published figures rest on, byte for byte. */
async function copyRawFiles({ tests }: Published, files: readonly InputFile[], dir: string): Promise<void> {
  const wanted = new Set<string>();
  for (const test of tests) for (const file of (await test.result()).files) wanted.add(file.path);
  for (const file of files) {
    if (!wanted.has(file.path)) continue;
    const target = path.join(dir, rawAddress(file.path));
    await mkdir(path.dirname(target), { recursive: true });
    await copyFile(file.absolutePath, target, constants.COPYFILE_FICLONE);
  }
}

/** A folder that is published into is replaced as a whole, so it must be new, empty, or a site that was published before. */
async function refuseForeignFolder(outDir: string): Promise<void> {
  if (!(await exists(outDir))) return;
  const entries = await readdir(outDir);
  const isSite =
    (await exists(path.join(outDir, "data/index.json"))) && (await exists(path.join(outDir, "data/schemas/index.schema.json")));
  if (entries.length > 0 && !isSite)
    throw new Error("the output folder holds other files and would be replaced as a whole; name an empty or new folder with --out");
}

async function swap(fresh: string, outDir: string): Promise<void> {
  const old = `${outDir}.old-${process.pid}`;
  await rm(old, { recursive: true, force: true });
  const hadOne = await exists(outDir);
  if (hadOne) await rename(outDir, old);
  try {
    await rename(fresh, outDir);
  } catch (error) {
    if (hadOne) await rename(old, outDir);
    throw error;
  }
  await rm(old, { recursive: true, force: true });
}

/** A build that was killed between the two renames left the old site aside: it is put back. Half-made folders of dead builds go. */
async function restoreAfterCrash(outDir: string): Promise<void> {
  const parent = path.dirname(outDir);
  await mkdir(parent, { recursive: true });
  const name = path.basename(outDir);
  const isOurs = (entry: string): boolean => entry.startsWith(`${name}.`) && /^(?:old|new)-\d+$/.test(entry.slice(name.length + 1));
  const leftovers = (await readdir(parent)).filter(isOurs).sort();
  for (const leftover of leftovers) {
    if (isAlive(Number(leftover.slice(leftover.lastIndexOf("-") + 1)))) continue;
    const full = path.join(parent, leftover);
    if (leftover.startsWith(`${name}.old-`) && !(await exists(outDir))) await rename(full, outDir);
    else await rm(full, { recursive: true, force: true });
  }
}

function isAlive(pid: number): boolean {
  if (pid === process.pid) return false;
  try {
    process.kill(pid, 0);
    return true;
  } catch {
    return false;
  }
}

async function exists(file: string): Promise<boolean> {
  try {
    await stat(file);
    return true;
  } catch {
    return false;
  }
}
