/** Reads a workspace's records and words, and finds its logs and readings; logs themselves are read test by test. */
import { readFile } from "node:fs/promises";
import type { z } from "zod";
import { type Battery, battery } from "../nouns/battery.ts";
import { type Charger, charger } from "../nouns/charger.ts";
import { type Instrument, instrument } from "../nouns/instrument.ts";
import type { Problem } from "../nouns/problem.ts";
import { type Site, site } from "../nouns/site.ts";
import { type Test, test } from "../nouns/test.ts";
import { type Prose, readProse } from "./prose.ts";
import { type PlacedRecord, type PlainRecord, placeRecord, readRecord } from "./record.ts";
import { type InputFile, isUnchanged, listWorkspace } from "./workspace-files.ts";
import type { WorkspaceMemory } from "./workspace-memory.ts";

export type TestFolder = {
  readonly id: string;
  /** Path from the workspace's root. */
  readonly folder: string;
  readonly recordFile: InputFile;
  readonly record: PlacedRecord<Test> | undefined;
  readonly readingsFile: InputFile | undefined;
  readonly logs: readonly InputFile[];
};

export type Workspace = {
  readonly files: readonly InputFile[];
  readonly site: PlacedRecord<Site> | undefined;
  readonly chargers: ReadonlyMap<string, PlacedRecord<Charger>>;
  readonly batteries: ReadonlyMap<string, PlacedRecord<Battery>>;
  readonly instruments: ReadonlyMap<string, PlacedRecord<Instrument>>;
  readonly tests: readonly TestFolder[];
  /** The reviewer's words on a charger, by charger id. */
  readonly reviews: ReadonlyMap<string, Prose>;
  /** The reviewer's own pages, by page id. */
  readonly pages: ReadonlyMap<string, Prose>;
  /** Record ids that stand in the workspace but could not be read; a reference to them is not a misspelling. */
  readonly broken: ReadonlySet<string>;
};

const recordPath = /^data\/(chargers|batteries|instruments)\/([^/]+)\.ya?ml$/;
const sitePath = /^data\/site\.ya?ml$/;
const testPath = /^data\/tests\/([^/]+)\/test\.ya?ml$/;
const contentPath = /^content\/(reviews\/)?([^/]+)\.md$/;
const idPattern = /^[a-z0-9]+(?:-[a-z0-9]+)*$/;

/**
 * Reads a workspace.
 *
 * @param root  the folder that holds data/ and content/
 * @param memory  what an earlier run found out of files that have not changed since
 * @returns all that could be read, and a problem for all that could not. Nothing is written.
 */
export async function readWorkspace(root: string, memory?: WorkspaceMemory): Promise<{ value: Workspace; problems: Problem[] }> {
  const { files, problems } = await listWorkspace(root, memory);
  const broken = new Set<string>();
  const load = async <S extends z.ZodType>(file: InputFile, schema: S, key: string): Promise<PlacedRecord<z.output<S>> | undefined> => {
    // A record at the same path was held against the same schema, by the same code.
    const known = memory?.recordOf(file.path, file.sha256);
    if (known !== undefined) return placeRecord(known as PlainRecord<z.output<S>>);
    const text = await readUtf8(file, problems);
    const read = text === undefined ? undefined : readRecord(text, file.path, schema);
    problems.push(...(read?.problems ?? []));
    if (read?.value === undefined) broken.add(key);
    // A file written since it was digested has other words than its digest names, and would lend them to the old ones for ever.
    else if (memory !== undefined && isUnchanged(file))
      memory.noteRecord(file.path, file.sha256, { value: read.value.value, file: file.path, text: read.value.text });
    return read?.value;
  };

  const chargers = new Map<string, PlacedRecord<Charger>>();
  const batteries = new Map<string, PlacedRecord<Battery>>();
  const instruments = new Map<string, PlacedRecord<Instrument>>();
  const tests: TestFolder[] = [];
  const reviews = new Map<string, Prose>();
  const pages = new Map<string, Prose>();
  let siteRecord: PlacedRecord<Site> | undefined;
  const byTest = filesByTest(files);

  for (const file of files) {
    const [, kind, id = ""] = recordPath.exec(file.path) ?? [];
    const testId = testPath.exec(file.path)?.[1];
    const content = contentPath.exec(file.path);
    const name = testId ?? (kind === undefined ? content?.[2] : id);
    if (name !== undefined && !idPattern.test(name)) {
      problems.push(badName(file, name));
      continue;
    }
    if (kind === "chargers") put(chargers, id, await load(file, charger, `charger ${id}`));
    else if (kind === "batteries") put(batteries, id, await load(file, battery, `battery ${id}`));
    else if (kind === "instruments") put(instruments, id, await load(file, instrument, `instrument ${id}`));
    else if (testId !== undefined) tests.push(await readTestFolder(byTest.get(testId) ?? [], file, testId, load, problems));
    else if (sitePath.test(file.path)) siteRecord = await load(file, site, "site");
    else if (content !== null) {
      const text = await readUtf8(file, problems);
      const read = text === undefined ? undefined : readProse(text, file.path);
      problems.push(...(read?.problems ?? []));
      put(content[1] === undefined ? pages : reviews, content[2] ?? "", read?.value);
    } else problems.push(...strayFile(file, byTest));
  }
  problems.push(...recordsWritten(files, /^(data\/(?:site|(?:chargers|batteries|instruments)\/[^/]+|tests\/[^/]+\/test))\.ya?ml$/));
  if (siteRecord === undefined && !broken.has("site"))
    problems.push({
      id: "site-missing",
      level: "error",
      place: { file: "data/site.yaml" },
      found: "no such file",
      expected: "the site's own record, with at least a title",
      mend: 'make data/site.yaml with the line "title: …"; --workspace DIR names another folder',
    });
  return { value: { files, site: siteRecord, chargers, batteries, instruments, tests, reviews, pages, broken }, problems };
}

function put<T>(map: Map<string, T>, id: string, value: T | undefined): void {
  if (value !== undefined) map.set(id, value);
}

async function readUtf8(file: InputFile, problems: Problem[]): Promise<string | undefined> {
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(await readFile(file.absolutePath));
  } catch {
    problems.push({
      id: "record-encoding",
      level: "error",
      place: { file: file.path },
      found: "bytes that are not UTF-8",
      expected: "text saved as UTF-8",
      mend: "save the file again as UTF-8",
    });
    return undefined;
  }
}

type Load = <S extends z.ZodType>(file: InputFile, schema: S, key: string) => Promise<PlacedRecord<z.output<S>> | undefined>;

async function readTestFolder(
  inside: readonly InputFile[],
  recordFile: InputFile,
  id: string,
  load: Load,
  problems: Problem[],
): Promise<TestFolder> {
  const folder = `data/tests/${id}`;
  const readings = inside.filter((file) => /^readings\.(csv|xlsx)$/.test(file.path.slice(folder.length + 1)));
  const record = await load(recordFile, test, `test ${id}`);
  if (readings.length > 1)
    problems.push({
      id: "readings-twice",
      level: "error",
      place: { file: readings[1]?.path ?? folder },
      found: readings.map((file) => `"${file.path.slice(folder.length + 1)}"`).join(" and "),
      expected: "the readings once",
      mend: "keep the one that holds the visits and move the other out of the workspace",
      test: id,
    });
  return {
    id,
    folder,
    recordFile,
    record,
    readingsFile: readings[0],
    logs: inside.filter((file) => file.path.startsWith(`${folder}/logs/`)),
  };
}

/** The files below each folder of data/tests, by the folder's name. */
function filesByTest(files: readonly InputFile[]): ReadonlyMap<string, InputFile[]> {
  const byTest = new Map<string, InputFile[]>();
  for (const file of files) {
    const id = /^data\/tests\/([^/]+)\//.exec(file.path)?.[1];
    if (id === undefined) continue;
    const known = byTest.get(id);
    if (known === undefined) byTest.set(id, [file]);
    else known.push(file);
  }
  return byTest;
}

function badName(file: InputFile, name: string): Problem {
  return {
    id: "file-name",
    level: "error",
    place: { file: file.path },
    found: `the name "${name}"`,
    expected: "lower-case letters, digits and single hyphens: the name becomes part of an address that never changes",
    mend: `rename it, such as ${
      name
        .toLowerCase()
        .replace(/[^a-z0-9]+/g, "-")
        .replace(/^-+|-+$/g, "") || "test-one"
    }`,
  };
}

/** A record that is there both as .yaml and as .yml: the second would hide the first. */
function recordsWritten(files: readonly InputFile[], pattern: RegExp): Problem[] {
  const seen = new Map<string, string>();
  const problems: Problem[] = [];
  for (const file of files) {
    const name = pattern.exec(file.path)?.[1];
    if (name === undefined) continue;
    const earlier = seen.get(name);
    if (earlier === undefined) seen.set(name, file.path);
    else
      problems.push({
        id: "record-twice",
        level: "error",
        place: { file: file.path },
        found: `the same record in "${earlier}"`,
        expected: "each record once",
        mend: "keep one of the two and move the other out of the workspace",
      });
  }
  return problems;
}

/** The test to which a log, a photo or readings belong, by id. */
function testOfFile(file: InputFile): string | undefined {
  return /^data\/tests\/([^/]+)\/(?:logs\/|photos\/|readings\.(?:csv|xlsx)$)/.exec(file.path)?.[1];
}

/** A file that nothing reads: told where it looks like something meant to be read. */
function strayFile(file: InputFile, byTest: ReadonlyMap<string, readonly InputFile[]>): Problem[] {
  const id = testOfFile(file);
  if (id !== undefined) {
    const ofTest = byTest.get(id) ?? [];
    const hasRecord = ofTest.some((other) => testPath.test(other.path));
    // Told once a test, not once a file.
    if (hasRecord || ofTest.find((other) => testOfFile(other) === id) !== file) return [];
    return [
      {
        id: "test-record-missing",
        level: "error",
        place: { file: file.path },
        found: "a file of a test that has no record",
        expected: `the record data/tests/${id}/test.yaml`,
        mend: "make test.yaml, which names the charger, its mode, the battery, the instruments and the connections",
        test: id,
      },
    ];
  }
  return [
    {
      id: "file-unused",
      level: "doubt",
      place: { file: file.path },
      found: "a file that nothing reads",
      expected:
        "records in data/chargers, data/batteries, data/instruments and data/tests/<test>; words in content/*.md and content/reviews/*.md",
      mend: "move it to where it belongs, or out of the workspace",
    },
  ];
}
