/**
 * Entries that outlive a build: each is named by a digest of all it was made from, so it is never stale, and carries a digest of its own
 * bytes, so a damaged one is never believed. The folder may be deleted at any time.
 */
import { createHash } from "node:crypto";
import { mkdirSync, readFileSync, renameSync, rmSync, statSync, utimesSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { deserialize, serialize } from "node:v8";
import { threadId } from "node:worker_threads";

export type Entry = { readonly kind: string; readonly key: string; readonly value: unknown };

export type Entries = {
  /**
   * What was kept under this key; undefined where nothing was, or where it can no longer be read as it was written.
   *
   * @param alongside  other kinds, of which the entries under the same key count as used with this one
   */
  get<T>(kind: string, key: string, alongside?: readonly string[]): T | undefined;
  /** Keeps a value that structured cloning can carry. A full or read-only disk is no error: the value is then held in memory. */
  put(kind: string, key: string, value: unknown): void;
  /** Where entries lie, for another thread to open; undefined for those in memory. */
  readonly folder: string | undefined;
  /** Gives away what the disk would not take. */
  takeUnwritten(): readonly Entry[];
};

const digestBytes = 32;
export const dayMs = 86_400_000;

/** Entries that live as long as the process. */
export function memoryEntries(): Entries {
  const held = new Map<string, unknown>();
  return {
    get: <T>(kind: string, key: string) => held.get(`${kind}/${key}`) as T | undefined,
    put: (kind, key, value) => void held.set(`${kind}/${key}`, value),
    folder: undefined,
    takeUnwritten: () => [],
  };
}

/**
 * Entries in a folder, which is made where it is missing.
 *
 * Each is written under a name of its own and moved into place, so that two builds at once, or one that is killed, never leave half an entry.
 */
export function diskEntries(folder: string): Entries {
  const unwritten = new Map<string, Entry>();
  const made = new Set<string>();
  let written = 0;
  const fileOf = (kind: string, key: string): string => join(folder, kind, key);
  return {
    get<T>(kind: string, key: string, alongside: readonly string[] = []): T | undefined {
      const held = unwritten.get(fileOf(kind, key));
      if (held !== undefined) return held.value as T;
      return readEntry<T>(
        fileOf(kind, key),
        alongside.map((other) => fileOf(other, key)),
      );
    },
    put(kind, key, value) {
      const file = fileOf(kind, key);
      const aside = `${file}.${process.pid}-${threadId}-${written++}`;
      try {
        if (!made.has(kind)) mkdirSync(join(folder, kind), { recursive: true });
        made.add(kind);
        writeFileSync(aside, sealed(serialize(value)));
        renameSync(aside, file);
      } catch {
        discard(aside);
        unwritten.set(file, { kind, key, value });
      }
    },
    folder,
    takeUnwritten() {
      const taken = [...unwritten.values()];
      unwritten.clear();
      return taken;
    },
  };
}

function sealed(bytes: Buffer): Buffer {
  return Buffer.concat([createHash("sha256").update(bytes).digest(), bytes]);
}

/** Half an entry on a full disk would keep it full. */
function discard(file: string): void {
  try {
    rmSync(file, { force: true });
  } catch {
    // It was never made.
  }
}

function readEntry<T>(file: string, alongside: readonly string[]): T | undefined {
  try {
    const whole = readFileSync(file);
    const bytes = whole.subarray(digestBytes);
    if (!createHash("sha256").update(bytes).digest().equals(whole.subarray(0, digestBytes))) return undefined;
    touchDaily(file, alongside);
    return deserialize(bytes) as T;
  } catch {
    return undefined;
  }
}

/** The time of an entry's file is when it was last of use, to the day; that of the others is never before it. */
function touchDaily(file: string, alongside: readonly string[]): void {
  const now = Date.now();
  if (now - statSync(file).mtimeMs <= dayMs) return;
  for (const used of [...alongside, file]) touch(used, now / 1000);
}

/** An entry that cannot be touched is swept one day, and made again when it is asked for. */
function touch(file: string, atS: number): void {
  try {
    utimesSync(file, atS, atS);
  } catch {
    // A disk that takes no changes, or an entry that is not there.
  }
}
