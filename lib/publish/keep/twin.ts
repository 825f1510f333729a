/**
 * The twin of a published site: a second tree of names for the same files, kept beside it. The next build changes the twin where it must
 * and puts it in place of the site; the site that was published becomes the twin. So a build touches only what has changed, and the
 * published site is whole at every moment.
 *
 * A file of the twin may be a file of the site by another name. It is never written through: it is taken away, and a new one made.
 */
import { linkSync, mkdirSync, readdirSync, rmdirSync, rmSync } from "node:fs";
import { dirname, join } from "node:path";
import type { SiteRecord } from "./site-record.ts";
import { fileStamp, folderStamp, folderStamps, foldersOf } from "./stamps.ts";

/**
 * Clears a tree of all that its record does not know, and tells which files are still those that were recorded.
 *
 * @returns paths of the files that can be relied on
 */
export function trustedFiles(dir: string, record: SiteRecord): Set<string> {
  for (const [folder, stamp] of record.folders) if (folderStamp(join(dir, folder)) !== stamp) clearUnknown(dir, folder, record);
  const trusted = new Set<string>();
  for (const [path, { stamp }] of record.files) if (fileStamp(join(dir, path)) === stamp) trusted.add(path);
  return trusted;
}

function clearUnknown(dir: string, folder: string, record: SiteRecord): void {
  let entries: string[];
  try {
    entries = readdirSync(join(dir, folder));
  } catch {
    return;
  }
  for (const name of entries) {
    const path = folder === "" ? name : `${folder}/${name}`;
    if (!record.files.has(path) && !record.folders.has(path)) rmSync(join(dir, path), { recursive: true, force: true });
  }
}

/** Takes files away, and the folders that are empty then. */
export function removeFiles(dir: string, paths: Iterable<string>): void {
  for (const path of paths) {
    rmSync(join(dir, path), { force: true });
    removeEmptyFolders(dir, dirname(path));
  }
}

function removeEmptyFolders(dir: string, folder: string): void {
  for (let at = folder; at !== "."; at = dirname(at)) {
    try {
      rmdirSync(join(dir, at));
    } catch {
      return;
    }
  }
}

/** The folder of a file, as records name it. */
const folderOf = (path: string): string => (path.includes("/") ? dirname(path) : "");

/**
 * Makes a tree the twin of a site that was just published.
 *
 * @param twin    the tree as the build before left it, or an empty folder
 * @param was     what is recorded of that tree
 * @param site    the published site
 * @param record  what is recorded of the site
 * @returns the record of both, with the twin's folders
 * Throws where the file system knows no second names for a file; then there is no twin.
 */
export function makeTwin(twin: string, was: SiteRecord, site: string, record: SiteRecord): SiteRecord {
  const changed = new Set(
    [...was.folders].filter(([folder, stamp]) => folderStamp(join(twin, folder)) !== stamp).map(([folder]) => folder),
  );
  for (const folder of changed) clearUnknown(twin, folder, was);
  removeFiles(
    twin,
    [...was.files].filter(([path, { stamp }]) => record.files.get(path)?.stamp !== stamp).map(([path]) => path),
  );
  const isMissing = (path: string, stamp: string): boolean => changed.has(folderOf(path)) && fileStamp(join(twin, path)) !== stamp;
  const added = [...record.files]
    .filter(([path, { stamp }]) => was.files.get(path)?.stamp !== stamp || isMissing(path, stamp))
    .map(([path]) => path);
  for (const folder of foldersOf(added)) mkdirSync(join(twin, folder), { recursive: true });
  for (const path of added) {
    rmSync(join(twin, path), { force: true });
    linkSync(join(site, path), join(twin, path));
  }
  return { ...record, folders: folderStamps(twin, record.files.keys()), siteFolders: record.folders };
}
