import { createHash } from "node:crypto";
import { type BigIntStats, createReadStream, lstatSync, readFileSync } from "node:fs";
import { lstat, readdir, readFile, realpath } from "node:fs/promises";
import path from "node:path";
import type { Problem } from "../nouns/problem.ts";
import type { WorkspaceMemory } from "./workspace-memory.ts";

/** One input file: where it is, how big, and the digest of its bytes. */
export type InputFile = {
  /** From the workspace's root, with forward slashes. */
  readonly path: string;
  /** On this machine; never published. */
  readonly absolutePath: string;
  readonly bytes: number;
  readonly sha256: string;
  /** What the file system says of the file as it was digested; another stamp means that it may have been written since. */
  readonly stamp: string;
};

/** A file up to this size is digested in one go; a larger one is streamed. */
const smallBytes = 1 << 20;

const ignored = new Set([".DS_Store", "Thumbs.db", "desktop.ini"]);

/** Notes for people, which may stand anywhere. */
const forPeople = /^(?:readme|licen[cs]e)\b/i;

/**
 * Lists and digests every file below `data/` and `content/` of a workspace, sorted by path.
 *
 * Files are opened for reading only. A link that leads out of the workspace, and a file that cannot be read, are problems;
 * hidden files are passed over.
 *
 * @param memory  digests known from an earlier look; a file is digested again where its stamp is another
 */
export async function listWorkspace(root: string, memory?: WorkspaceMemory): Promise<{ files: InputFile[]; problems: Problem[] }> {
  const files: InputFile[] = [];
  const problems: Problem[] = [];
  // A workspace that is not there has no site record either, and that is the problem told.
  const realRoot = await realpath(root).catch(() => root);

  async function visit(relative: string): Promise<void> {
    let entries: string[];
    try {
      entries = await readdir(path.join(realRoot, relative));
    } catch (error) {
      problems.push(unreadable(relative, error));
      return;
    }
    for (const name of entries.sort()) {
      if (name.startsWith(".") || ignored.has(name) || forPeople.test(name)) continue;
      const child = `${relative}/${name}`;
      const absolutePath = path.join(realRoot, child);
      const status = lstatSync(absolutePath, { bigint: true });
      if (status.isSymbolicLink()) {
        problems.push({
          id: "link-in-workspace",
          level: "error",
          place: { file: child },
          found: "a symbolic link",
          expected: "a file or folder that stands in the workspace itself",
          mend: "copy the file here in place of the link, so that the published evidence is the file you mean",
        });
      } else if (status.isDirectory()) await visit(child);
      else if (status.isFile()) {
        try {
          const stamp = stampOf(status);
          const sha256 = memory?.digestOf(child, stamp) ?? (await sha256OfFile(absolutePath, Number(status.size)));
          memory?.noteDigest(child, stamp, sha256, Number(status.mtimeNs / 1_000_000n));
          files.push({ path: child, absolutePath, bytes: Number(status.size), sha256, stamp });
        } catch (error) {
          problems.push(unreadable(child, error));
        }
      }
    }
  }

  for (const top of ["content", "data"]) {
    if (await isFolder(path.join(realRoot, top))) await visit(top);
  }
  return { files, problems };
}

/** The file's whole text, which must be UTF-8 (a byte order mark is taken off). Undefined where it is not. */
export async function readText(file: InputFile): Promise<string | undefined> {
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(await readFile(file.absolutePath));
  } catch {
    return undefined;
  }
}

/**
 * The file's inode, size, and the times of its last write and last change of status, in nanoseconds. No program can set the last of them,
 * so a file that was written has another stamp even where its size and date were put back.
 */
export function stampOf({ ino, size, mtimeNs, ctimeNs }: Pick<BigIntStats, "ino" | "size" | "mtimeNs" | "ctimeNs">): string {
  return `${ino} ${size} ${mtimeNs} ${ctimeNs}`;
}

/** Whether a file is still the one that was listed. */
export function isUnchanged(file: InputFile): boolean {
  try {
    return stampOf(lstatSync(file.absolutePath, { bigint: true })) === file.stamp;
  } catch {
    return false;
  }
}

/** Digest of a file's bytes; a large file is streamed. */
export async function sha256OfFile(absolutePath: string, bytes = Number.POSITIVE_INFINITY): Promise<string> {
  if (bytes <= smallBytes) return createHash("sha256").update(readFileSync(absolutePath)).digest("hex");
  return new Promise((resolve, reject) => {
    const hash = createHash("sha256");
    createReadStream(absolutePath, { flags: "r" })
      .on("data", (chunk) => hash.update(chunk))
      .on("error", reject)
      .on("end", () => resolve(hash.digest("hex")));
  });
}

async function isFolder(absolutePath: string): Promise<boolean> {
  try {
    return (await lstat(absolutePath)).isDirectory();
  } catch {
    return false;
  }
}

function unreadable(file: string, error: unknown): Problem {
  return {
    id: "file-unreadable",
    level: "error",
    place: { file },
    found: error instanceof Error && "code" in error ? String(error.code) : "an unknown fault",
    expected: "a file that can be read",
    mend: "check that the file is there and that you may read it",
  };
}
