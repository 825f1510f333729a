/** What the file system says of files and folders, short enough to be asked of ten thousands of them. */
import { lstatSync } from "node:fs";
import { dirname, join } from "node:path";

/**
 * Inode, size and time of the last write, in nanoseconds; undefined where there is no such file. Two names of one file have one stamp, and a
 * file that was written through either has another.
 */
export function fileStamp(path: string): string | undefined {
  const status = lstatSync(path, { bigint: true, throwIfNoEntry: false });
  return status?.isFile() ? `${status.ino} ${status.size} ${status.mtimeNs}` : undefined;
}

/** When a folder last gained or lost an entry; undefined where there is no such folder. */
export function folderStamp(path: string): string | undefined {
  const status = lstatSync(path, { bigint: true, throwIfNoEntry: false });
  return status?.isDirectory() ? `${status.ino} ${status.mtimeNs}` : undefined;
}

/** The folders that hold files, from the site's root down, each once; "" is the root. */
export function foldersOf(files: Iterable<string>): Set<string> {
  const folders = new Set<string>([""]);
  for (const file of files)
    for (let folder = dirname(file); folder !== "." && !folders.has(folder); folder = dirname(folder)) folders.add(folder);
  return folders;
}

/** The stamps of the folders that hold files. */
export function folderStamps(dir: string, files: Iterable<string>): Map<string, string> {
  return new Map(
    [...foldersOf(files)].flatMap((folder) => {
      const stamp = folderStamp(join(dir, folder));
      return stamp === undefined ? [] : [[folder, stamp] as const];
    }),
  );
}
