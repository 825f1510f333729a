/** Writes a site: results first, then everything made from them; and puts it in place only when it is whole. */
import { mkdirSync, renameSync, rmSync } from "node:fs";
import { mkdir, readdir, rename, rm, stat } from "node:fs/promises";
import path from "node:path";
import { codeVersion, siteSources } from "../cache/code-version.ts";
import { digestOf } from "../cache/digest.ts";
import type { Entries } from "../cache/entries.ts";
import type { InputFile } from "../read/workspace-files.ts";
import { digestsOf, rowText } from "../run/jobs.ts";
import type { Published } from "../run/published.ts";
import { siteMaker } from "./keep/maker.ts";
import { emptyRecord, type SiteRecord } from "./keep/site-record.ts";
import { makeTwin, trustedFiles } from "./keep/twin.ts";
import { type RenderOptions, renderWith, timed } from "./render-site.ts";
import type { Results } from "./results.ts";
import { openPublished } from "./results-folder.ts";
import { digestOfSource } from "./sources.ts";
import { writeResults } from "./write-results.ts";

export type PublishEffects = RenderOptions;

/** A site in the making: a folder beside the one that is published. */
export type Staging = {
  /** Where the new site stands until it is whole. */
  readonly dir: string;
  /** Completes the site from the results and puts it in place. */
  publish(results: Published, files: readonly InputFile[], effects?: PublishEffects): Promise<{ pages: number }>;
  /** Throws the new site away; the last good one stays. Safe to call after publishing. */
  abandon(): Promise<void>;
};

/** Where a site's twin and what is remembered of it are kept. */
export type KeptSite = { readonly entries: Entries; readonly folder: string };

/**
 * Begins a site.
 *
 * Everything is written into a folder beside the published one, checked there, and put in place by renaming: the old site is moved aside,
 * the new one moved in. Where anything fails, the last good site stays as it was. Where the last build left a twin of the site
 * (lib/publish/keep/twin.ts), that is the folder, and only what has changed is made anew; the old site then becomes the twin.
 *
 * @param outDir  the site's folder; its parent must be writable
 * @param kept    where the twin is; without it the site is made anew as a whole
 * @throws where the folder holds something that is no site of ours
 */
export async function beginSite(outDir: string, kept?: KeptSite): Promise<Staging> {
  await refuseForeignFolder(outDir);
  await restoreAfterCrash(outDir);
  const dir = `${outDir}.new-${process.pid}`;
  await rm(dir, { recursive: true, force: true });
  const twin = kept === undefined ? undefined : twinOf(kept, outDir);
  const last = twin === undefined ? undefined : await takeTwin(twin, dir);
  await mkdir(dir, { recursive: true });
  let isPublished = false;
  return {
    dir,
    publish: async (results, files, effects = {}) => {
      const code = codeVersion(siteSources);
      const record = last ?? emptyRecord(code);
      const { onCost } = effects;
      const trusted = await timed("looking at the twin", onCost, () => trustedFiles(dir, record));
      const maker = siteMaker(dir, code, record, trusted, digestOfSource(results, files));
      await timed("results", onCost, () => writeResults(results, files, maker));
      const rendered = await renderWith(maker, openPublished(dir, results), effects);
      const made = maker.finish();
      const old = await swap(dir, outDir);
      isPublished = true;
      await timed("keeping the twin", onCost, async () => {
        if (twin !== undefined) keepTwin(twin, last, old, outDir, made);
        if (old !== undefined) await rm(old, { recursive: true, force: true });
      });
      return rendered;
    },
    abandon: async () => {
      if (isPublished) return;
      // What was changed in it has other stamps than recorded, so it can be the twin again.
      if (twin !== undefined && last !== undefined && !(await exists(twin.dir))) await rename(dir, twin.dir).catch(() => undefined);
      await rm(dir, { recursive: true, force: true });
    },
  };
}

type Twin = { readonly entries: Entries; readonly key: string; readonly dir: string };

function twinOf({ entries, folder }: KeptSite, outDir: string): Twin {
  const key = path.basename(outDir);
  return { entries, key, dir: path.join(folder, "twins", key) };
}

/** Makes the twin the folder of a new site. Another build that comes meanwhile finds none, and makes its site as a whole. */
async function takeTwin({ entries, key, dir }: Twin, newDir: string): Promise<SiteRecord | undefined> {
  const record = entries.get<SiteRecord>("sites", key);
  if (record === undefined) {
    await rm(dir, { recursive: true, force: true });
    return undefined;
  }
  try {
    await rename(dir, newDir);
    return record;
  } catch {
    return undefined;
  }
}

/**
 * Makes the old site the twin of the new one; or a new folder, where it is not known what the old site holds. Where neither can be, there
 * is no twin, and the next build makes its site as a whole.
 *
 * It is made under a name of its own, since another build may be at the same; the first one's twin then stays, and is no less right: what
 * of it is not as recorded is not trusted.
 */
function keepTwin(
  { entries, key, dir }: Twin,
  last: SiteRecord | undefined,
  old: string | undefined,
  site: string,
  made: SiteRecord,
): void {
  const making = `${site}.twin-${process.pid}`;
  try {
    if (last === undefined || old === undefined) mkdirSync(making);
    else renameSync(old, making);
    const was = last === undefined || old === undefined ? emptyRecord(made.code) : { ...last, folders: last.siteFolders };
    const record = makeTwin(making, was, site, made);
    mkdirSync(path.dirname(dir), { recursive: true });
    renameSync(making, dir);
    entries.put("sites", key, record);
  } catch {
    rmSync(making, { recursive: true, force: true });
  }
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
  const rows = index.rows.map((row) => ({ charger: row.charger.id, ...rowText(row) }));
  return {
    index,
    rows,
    tests: tests.map((test) => ({ ...published(test), samples: async () => [] })),
    chargers: chargers.map((charger) => ({ ...published(charger), rows: rows.filter((row) => row.charger === charger.id) })),
  };
}

/** A folder that is published into is replaced as a whole, so it must be new, empty, or a site that was published before. */
async function refuseForeignFolder(outDir: string): Promise<void> {
  const asked = await inodeOf(outDir);
  if (asked === undefined) return;
  const entries = await readdir(outDir).catch(nothingIfGone([]));
  const isSite =
    (await exists(path.join(outDir, "data/index.json"))) && (await exists(path.join(outDir, "data/schemas/index.schema.json")));
  if (entries.length === 0 || isSite) return;
  // Another build put its site there while we looked.
  if ((await inodeOf(outDir)) !== asked) return refuseForeignFolder(outDir);
  throw new Error("the output folder holds other files and would be replaced as a whole; name an empty or new folder with --out");
}

/**
 * Puts the fresh site in place. Of two builds that come to this at once, the site of the later one stands in the end.
 *
 * @returns where the old one was moved aside; undefined where there was none
 */
async function swap(fresh: string, outDir: string): Promise<string | undefined> {
  const old = `${outDir}.old-${process.pid}`;
  await rm(old, { recursive: true, force: true });
  const hadOne = await rename(outDir, old).then(() => true, nothingIfGone(false));
  try {
    await rename(fresh, outDir);
  } catch (error) {
    // Another build put its site there between our two renames.
    if (isCode(error, "ENOTEMPTY", "EEXIST")) return swap(fresh, outDir);
    if (hadOne) await rename(old, outDir);
    throw error;
  }
  return hadOne ? old : undefined;
}

const isCode = (error: unknown, ...codes: string[]): boolean =>
  error instanceof Error && "code" in error && codes.includes(String(error.code));

/** What stands for a file or folder that is not there; any other error is thrown on. */
function nothingIfGone<T>(nothing: T): (error: unknown) => T {
  return (error) => {
    if (isCode(error, "ENOENT")) return nothing;
    throw error;
  };
}

async function inodeOf(file: string): Promise<number | undefined> {
  return (await stat(file).catch(nothingIfGone(undefined)))?.ino;
}

/** A build that was killed between the two renames left the old site aside: it is put back. Half-made folders of dead builds go. */
async function restoreAfterCrash(outDir: string): Promise<void> {
  const parent = path.dirname(outDir);
  await mkdir(parent, { recursive: true });
  const name = path.basename(outDir);
  const isOurs = (entry: string): boolean => entry.startsWith(`${name}.`) && /^(?:old|new|twin)-\d+$/.test(entry.slice(name.length + 1));
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
