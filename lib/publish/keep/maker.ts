/** Makes a site step by step, and keeps from the last build what the same steps would make again. */
import { createHash } from "node:crypto";
import { mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import type { KeptFile, KeptStep, SiteRecord, Source } from "./site-record.ts";
import { fileStamp, folderStamps } from "./stamps.ts";
import { removeFiles } from "./twin.ts";

/** A file of the site, by its bytes. */
export const fileOf = (path: string): Source => `file/${path}`;
/** What a step gave back. */
export const valueMadeBy = (step: string): Source => `value/${step}`;

const valueDigest = (value: unknown): string =>
  createHash("sha256")
    .update(JSON.stringify(value ?? null))
    .digest("hex");

/** A step that is being made. */
export type Step = {
  /** Notes that the step read something; what it read decides whether it is kept next time. */
  reads(source: Source): void;
  /** Writes a file of the site. */
  write(path: string, content: string | Uint8Array): void;
  /** Takes away what stands where somebody else will write a file for the step: it may be a file of the published site by another name. */
  clear(path: string): void;
  /** Notes a file that somebody else wrote for the step. */
  wrote(path: string): void;
  end(value?: unknown): void;
};

export type SiteMaker = {
  readonly dir: string;
  /** What a step gives back: what it gave last time where that is kept, otherwise what `make` gives. */
  step<T>(name: string, make: (step: Step) => T | Promise<T>): Promise<T>;
  /** What a step gave back last time, where it is kept; its files then stay. */
  keep(name: string): { readonly value: unknown } | undefined;
  /** Begins a step that is not kept. Its old files are taken away. */
  begin(name: string): Step;
  /** A file of the site as it stands in this build. Throws where it has not been made. */
  file(path: string): KeptFile;
  /** All files that stand so far. */
  files(): ReadonlyMap<string, KeptFile>;
  /** Takes away what was not made again, and gives what is to be remembered. */
  finish(): SiteRecord;
};

/**
 * @param dir      the folder that the site is made in
 * @param code     the version of the code
 * @param last     what is remembered of this folder; without files where it is new
 * @param trusted  its files that are still those that were recorded
 * @param digest   the digest of a source in this build; undefined where there is no such source
 */
export function siteMaker(
  dir: string,
  code: string,
  last: SiteRecord,
  trusted: ReadonlySet<string>,
  digest: (source: Source) => string | undefined,
): SiteMaker {
  const files = new Map<string, KeptFile>();
  const steps = new Map<string, KeptStep>();
  const valueDigests = new Map<string, string>();
  const sources: (readonly [Source, string])[] = [];
  const places = new Map<Source, number>();
  const folders = new Set<string>();
  const file = (path: string): KeptFile => {
    const known = files.get(path);
    if (known === undefined) throw new Error(`${path} was to be read before it was made`);
    return known;
  };
  const digestOf = (source: Source): string | undefined => {
    if (source.startsWith("file/")) return files.get(source.slice(5))?.sha256;
    if (source.startsWith("value/")) return digestOfValue(source.slice(6));
    return digest(source);
  };
  const digestOfValue = (step: string): string | undefined => {
    const made = steps.get(step);
    if (made === undefined) return undefined;
    const known = valueDigests.get(step) ?? valueDigest(made.value);
    valueDigests.set(step, known);
    return known;
  };
  /** The place of a source among those of this build. */
  const placeOf = (source: Source, digest: string): number => {
    const place = places.get(source) ?? sources.push([source, digest]) - 1;
    places.set(source, place);
    return place;
  };
  const isSame = (place: number): boolean => {
    const [source, was] = last.sources[place] ?? [];
    return source !== undefined && digestOf(source) === was;
  };

  function keep(name: string): { value: unknown } | undefined {
    const known = last.code === code ? last.steps.get(name) : undefined;
    if (known === undefined) return undefined;
    if (!known.files.every((path) => trusted.has(path) && !files.has(path))) return undefined;
    if (!known.reads.every(isSame)) return undefined;
    for (const path of known.files) files.set(path, last.files.get(path) as KeptFile);
    const reads = known.reads.map((place) => placeOf(...(last.sources[place] as readonly [Source, string])));
    steps.set(name, { ...known, reads });
    return known;
  }

  const clear = (path: string): void => {
    if (files.has(path)) throw new Error(`${path} was to be written twice`);
    rmSync(join(dir, path), { force: true });
  };

  function begin(name: string): Step {
    const reads = new Set<Source>();
    const readPlaces: number[] = [];
    const written: string[] = [];
    for (const path of last.steps.get(name)?.files ?? []) if (!files.has(path)) rmSync(join(dir, path), { force: true });
    const wrote = (path: string, content: string | Uint8Array = readFileSync(join(dir, path))): void => {
      const stamp = fileStamp(join(dir, path));
      if (stamp === undefined) throw new Error(`${path} was not written`);
      const sha256 = createHash("sha256").update(content).digest("hex");
      files.set(path, { stamp, sha256, bytes: typeof content === "string" ? Buffer.byteLength(content) : content.byteLength });
      written.push(path);
    };
    return {
      reads(source) {
        if (reads.has(source)) return;
        const now = digestOf(source);
        if (now === undefined) throw new Error(`${name} read ${source}, of which nothing is known`);
        reads.add(source);
        readPlaces.push(placeOf(source, now));
      },
      write(path, content) {
        const target = join(dir, path);
        const folder = dirname(target);
        if (!folders.has(folder)) mkdirSync(folder, { recursive: true });
        folders.add(folder);
        clear(path);
        writeFileSync(target, content);
        wrote(path, content);
      },
      clear,
      wrote: (path) => wrote(path),
      end: (value) => void steps.set(name, { reads: Uint32Array.from(readPlaces), files: written, value }),
    };
  }

  return {
    dir,
    async step<T>(name: string, make: (step: Step) => T | Promise<T>): Promise<T> {
      const kept = keep(name);
      if (kept !== undefined) return kept.value as T;
      const step = begin(name);
      const value = await make(step);
      step.end(value);
      return value;
    },
    keep,
    begin,
    file,
    files: () => files,
    finish() {
      removeFiles(
        dir,
        [...last.files.keys()].filter((path) => !files.has(path)),
      );
      return { code, files, steps, sources, folders: folderStamps(dir, files.keys()), siteFolders: new Map() };
    },
  };
}
