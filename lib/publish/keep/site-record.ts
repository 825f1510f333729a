/**
 * What is remembered of a site that was published, so that the next build makes anew only what has changed.
 *
 * A site is made in steps, and each step notes what it read and which files it wrote. Where all that it read is the same in the next
 * build, by digest, and the code is the same, it would write the same bytes: they are kept.
 */

/** A file as it was written. The stamp (inode, size, time of the last write) tells whether it is still that very file. */
export type KeptFile = { readonly stamp: string; readonly sha256: string; readonly bytes: number };

/** Something that a step can read: a field of the results, a file of the site, a value that another step made. */
export type Source = string;

export type KeptStep = {
  /** What it read, by place in the record's sources: a site has thousands of steps, and they read much the same. */
  readonly reads: Uint32Array;
  readonly files: readonly string[];
  /** What the step gave back; plain data. */
  readonly value: unknown;
};

export type SiteRecord = {
  /** The version of the code that made it. */
  readonly code: string;
  readonly files: ReadonlyMap<string, KeptFile>;
  readonly steps: ReadonlyMap<string, KeptStep>;
  /** All that was read, each once: a source has one digest in a build, whichever step reads it. */
  readonly sources: readonly (readonly [source: Source, digest: string])[];
  /** When each folder of the twin last gained or lost an entry. */
  readonly folders: ReadonlyMap<string, string>;
  /** The same of the site itself. */
  readonly siteFolders: ReadonlyMap<string, string>;
};

export const emptyRecord = (code: string): SiteRecord => ({
  code,
  files: new Map(),
  steps: new Map(),
  sources: [],
  folders: new Map(),
  siteFolders: new Map(),
});
