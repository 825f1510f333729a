/** Takes away what no build has used in a long time, so that a cache that is kept for years does not grow for years. */
import { existsSync, mkdirSync, readdirSync, renameSync, rmSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { dayMs } from "./entries.ts";

/** A quarter of a year: a bench that rests over a winter finds everything as it left it. Our judgement. */
const unusedDays = 90;
/** Its date says when the folder was last swept. */
const markName = "swept";
/** Twins on their way out. */
const leavingName = "swept-twins";

/**
 * Deletes entries, and halves of entries that killed builds left, whose last use is more than a quarter of a year ago by the date of their
 * file; and the twin of a site that was not built for as long. Looks once a day at most. Never throws: what cannot be deleted stays, and
 * costs room and nothing else.
 *
 * Another build may be at work in the folder. What it was about to read and no longer finds, it makes again, as it does with any entry
 * that is lost.
 *
 * @param folder  where entries and twins lie
 */
export function sweepUnused(folder: string): void {
  const now = Date.now();
  const mark = join(folder, markName);
  try {
    if ((usedMs(mark) ?? 0) > now - dayMs) return;
    writeFileSync(mark, "");
    for (const { kind, name } of namesBelow(folder))
      if ((usedMs(join(folder, kind, name)) ?? now) < now - unusedDays * dayMs) sweepEntry(folder, kind, name);
    rmSync(join(folder, leavingName), { recursive: true, force: true });
  } catch {
    // A disk that takes no changes, or another build that swept first.
  }
}

function namesBelow(folder: string): { kind: string; name: string }[] {
  return readdirSync(folder, { withFileTypes: true })
    .filter((entry) => entry.isDirectory() && entry.name !== "twins" && entry.name !== leavingName)
    .flatMap(({ name: kind }) => readdirSync(join(folder, kind)).map((name) => ({ kind, name })));
}

/** A twin goes before its record, by which alone it is known that it may go. */
function sweepEntry(folder: string, kind: string, name: string): void {
  if (kind === "sites") sendAway(folder, name);
  rmSync(join(folder, kind, name), { force: true });
}

/** Moves a twin out of the way by one renaming, so that a build of that site which begins just now takes all of it or nothing. */
function sendAway(folder: string, name: string): void {
  const twin = join(folder, "twins", name);
  if (!existsSync(twin)) return;
  mkdirSync(join(folder, leavingName), { recursive: true });
  renameSync(twin, join(folder, leavingName, name));
}

function usedMs(file: string): number | undefined {
  return statSync(file, { throwIfNoEntry: false })?.mtimeMs;
}
