/** What an earlier look at a workspace found out, so that a file that has not changed is neither digested nor parsed again. */
import type { PlainRecord } from "./record.ts";

export type WorkspaceMemory = {
  /** The digest of a file that still has this stamp. */
  digestOf(path: string, stamp: string): string | undefined;
  /** @param writtenMs  when the file was last written, ms since 1970 */
  noteDigest(path: string, stamp: string, sha256: string, writtenMs: number): void;
  /** A record that was read without a problem from these very bytes at this path. */
  recordOf(path: string, sha256: string): PlainRecord<unknown> | undefined;
  noteRecord(path: string, sha256: string, record: PlainRecord<unknown>): void;
};

/** As it is kept from one run to the next. */
export type RememberedWorkspace = {
  readonly digests: ReadonlyMap<string, { readonly stamp: string; readonly sha256: string }>;
  readonly records: ReadonlyMap<string, { readonly sha256: string; readonly record: PlainRecord<unknown> }>;
};

/** A file written less than this before it was looked at may be written again within one tick of the file system's clock, ms. */
const clockTickMs = 2000;

/**
 * A memory that begins with what was remembered; `kept()` gives what should be remembered next: what this run asked for, and no more.
 *
 * @param startedMs  when the run began, ms since 1970: a file written just before may yet change without its stamp telling
 */
export function workspaceMemory(
  remembered: RememberedWorkspace | undefined,
  startedMs: number,
): WorkspaceMemory & { kept(): RememberedWorkspace } {
  const digests = new Map<string, { stamp: string; sha256: string }>();
  const records = new Map<string, { sha256: string; record: PlainRecord<unknown> }>();
  return {
    digestOf(path, stamp) {
      const known = remembered?.digests.get(path);
      return known?.stamp === stamp ? known.sha256 : undefined;
    },
    noteDigest(path, stamp, sha256, writtenMs) {
      if (writtenMs < startedMs - clockTickMs) digests.set(path, { stamp, sha256 });
    },
    recordOf(path, sha256) {
      const known = remembered?.records.get(path);
      if (known?.sha256 !== sha256) return undefined;
      records.set(path, known);
      return known.record;
    },
    noteRecord: (path, sha256, record) => void records.set(path, { sha256, record }),
    kept: () => ({ digests, records }),
  };
}
