import type { Connection } from "../nouns/test.ts";

/** One entry under `recordings:` of a connection, whether it is written as a file's name or with more beside it. */
export type RecordingEntry = {
  /** From the test's folder, with forward slashes. */
  readonly file: string;
  /** A second file, where voltage and current were logged apart, and how far its clock runs ahead of the first's, s. */
  readonly with: string | undefined;
  readonly withClockAheadS: number;
  readonly recorder: string | undefined;
  readonly startedAt: string | undefined;
  readonly badRows: readonly { readonly from: number; readonly to: number }[];
  /** Which recording of the file, counted from 1. */
  readonly part: number | undefined;
};

/** The entry with every field in its place; the record's schema has seen to it that each is of its kind. */
export function entryOf(entry: Connection["recordings"][number]): RecordingEntry {
  const listed = typeof entry === "string" ? { file: entry } : entry;
  return {
    file: listed.file,
    with: textOf("with" in listed ? listed.with : undefined),
    withClockAheadS: numberOf("withClockAheadS" in listed ? listed.withClockAheadS : undefined) ?? 0,
    recorder: "recorder" in listed ? listed.recorder : undefined,
    startedAt: "startedAt" in listed ? listed.startedAt : undefined,
    badRows: ("badRows" in listed ? listed.badRows : undefined) ?? [],
    part: numberOf("part" in listed ? listed.part : undefined),
  };
}

const textOf = (value: unknown): string | undefined => (typeof value === "string" ? value : undefined);
const numberOf = (value: unknown): number | undefined => (typeof value === "number" ? value : undefined);

/**
 * The name of a recording in addresses: the file's name; below folders of its own, their names before it; a number behind it where the
 * file holds several. Parts are joined by "~", which needs no escape in an address and which no slash of another address can be taken for.
 */
export function recordingId({ file, part }: Pick<RecordingEntry, "file" | "part">): string {
  const name = file.replace(/^logs\//, "").replaceAll("/", "~");
  return part === undefined ? name : `${name}~${part}`;
}
