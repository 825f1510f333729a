/**
 * The basis of a test: everything that its results rest on, and nothing else, as plain data.
 *
 * A test is measured from its basis alone, wherever that is done; so the digest of the basis names the results, and cannot miss anything.
 */
import { digestOf } from "../cache/digest.ts";
import type { Battery } from "../nouns/battery.ts";
import type { Charger } from "../nouns/charger.ts";
import type { Instrument } from "../nouns/instrument.ts";
import type { Problem } from "../nouns/problem.ts";
import type { Site } from "../nouns/site.ts";
import type { Test } from "../nouns/test.ts";
import { type PlacedRecord, type PlainRecord, placeRecord } from "../read/record.ts";
import { entryOf } from "../read/recording-entry.ts";
import type { TestFolder, Workspace } from "../read/workspace.ts";
import type { InputFile } from "../read/workspace-files.ts";

type Records<T> = readonly (readonly [id: string, record: PlainRecord<T>])[];

export type TestBasis = {
  readonly folder: Omit<TestFolder, "record"> & { readonly record: PlainRecord<Test> | undefined };
  readonly site: PlainRecord<Site> | undefined;
  readonly chargers: Records<Charger>;
  readonly batteries: Records<Battery>;
  readonly instruments: Records<Instrument>;
  readonly broken: readonly string[];
  /** The test's own files but for photos, and those of the records above. */
  readonly files: readonly InputFile[];
  /** What was found amiss with this test when the workspace was read. */
  readonly problems: readonly Problem[];
};

/** Finds files by path, and the files below each test's folder. */
export type FileFinder = {
  at(path: string): InputFile | undefined;
  ofTest(folder: string): readonly InputFile[];
  /** Puts files into the order of the workspace. */
  inOrder(files: readonly InputFile[]): InputFile[];
};

export function fileFinder(files: readonly InputFile[]): FileFinder {
  const byPath = new Map(files.map((file) => [file.path, file]));
  const places = new Map(files.map((file, place) => [file.path, place]));
  const placeOf = (file: InputFile): number => places.get(file.path) ?? files.length;
  const byTest = new Map<string, InputFile[]>();
  for (const file of files) {
    const folder = /^data\/tests\/[^/]+(?=\/)/.exec(file.path)?.[0];
    if (folder === undefined || file.path.startsWith(`${folder}/photos/`)) continue;
    const known = byTest.get(folder);
    if (known === undefined) byTest.set(folder, [file]);
    else known.push(file);
  }
  return {
    at: (path) => byPath.get(path),
    ofTest: (folder) => byTest.get(folder) ?? [],
    inOrder: (some) => [...some].sort((a, b) => placeOf(a) - placeOf(b)),
  };
}

/**
 * The basis of a test.
 *
 * Where its record names a record that is not there, the names of all records belong to it: the message offers the nearest of them.
 *
 * @param problems  all that were found when the workspace was read
 */
export function basisOf(workspace: Workspace, folder: TestFolder, finder: FileFinder, problems: readonly Problem[]): TestBasis {
  const test = folder.record?.value;
  const instrumentIds = [...Object.values(test?.instruments ?? {}), ...recordersOf(test)];
  const isWhole =
    test !== undefined &&
    workspace.chargers.has(test.charger) &&
    workspace.batteries.has(test.battery) &&
    instrumentIds.every((id) => id === undefined || workspace.instruments.has(id));
  const pick = <T>(records: ReadonlyMap<string, PlacedRecord<T>>, ids: readonly (string | undefined)[]): Records<T> =>
    [...records].filter(([id]) => !isWhole || ids.includes(id)).map(([id, record]) => [id, plain(record)]);
  const chargers = pick(workspace.chargers, [test?.charger]);
  const batteries = pick(workspace.batteries, [test?.battery]);
  const instruments = pick(workspace.instruments, instrumentIds);
  const site = workspace.site === undefined ? undefined : plain(workspace.site);
  const recordFiles = [site, ...[...chargers, ...batteries, ...instruments].map(([, record]) => record)].flatMap((record) => {
    const file = record === undefined ? undefined : finder.at(record.file);
    return file === undefined ? [] : [file];
  });
  return {
    folder: { ...folder, record: folder.record === undefined ? undefined : plain(folder.record) },
    site,
    chargers,
    batteries,
    instruments,
    broken: isWhole ? [] : [...workspace.broken],
    files: finder.inOrder([...recordFiles, ...finder.ofTest(folder.folder)]),
    problems,
  };
}

/** Recorders that single recordings name. */
function recordersOf(test: Test | undefined): (string | undefined)[] {
  return test?.connections.flatMap((connection) => connection.recordings.map((entry) => entryOf(entry).recorder)) ?? [];
}

const plain = <T>({ value, file, text }: PlacedRecord<T>): PlainRecord<T> => ({ value, file, text });

/** Names the results of a basis: by the bytes of its files, by what was found amiss, and by the code. */
export function keyOfBasis({ folder, broken, files, problems }: TestBasis, code: string): string {
  return digestOf([code, folder.id, broken, files.map(({ path, sha256, bytes }) => [path, sha256, bytes]), problems]);
}

/** The basis as a workspace of one test, for the checks. */
export function workspaceOf(basis: TestBasis): { workspace: Workspace; folder: TestFolder } {
  const { record } = basis.folder;
  const placed = <T>(records: Records<T>): Map<string, PlacedRecord<T>> => new Map(records.map(([id, one]) => [id, placeRecord(one)]));
  const folder: TestFolder = { ...basis.folder, record: record === undefined ? undefined : placeRecord(record) };
  return {
    workspace: {
      files: basis.files,
      site: basis.site === undefined ? undefined : placeRecord(basis.site),
      chargers: placed(basis.chargers),
      batteries: placed(basis.batteries),
      instruments: placed(basis.instruments),
      tests: [folder],
      reviews: new Map(),
      pages: new Map(),
      broken: new Set(basis.broken),
    },
    folder,
  };
}
