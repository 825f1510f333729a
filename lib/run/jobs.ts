/**
 * The two kinds of work that a run is made of: a test is measured, a charger is put together from its tests.
 *
 * A job is plain data and its outcome lies among the entries, so that any thread can do it, and whoever asks again finds it done.
 */
import { digestOf } from "../cache/digest.ts";
import type { Entries } from "../cache/entries.ts";
import { type BenchTest, benchTestOf } from "../judge/forecast/battery-tests.ts";
import type { TestContext } from "../measure/test-context.ts";
import type { Charger } from "../nouns/charger.ts";
import type { Evidence } from "../nouns/evidence.ts";
import type { Problem } from "../nouns/problem.ts";
import { assembleCharger } from "../publish/assemble/charger.ts";
import type { Forecaster } from "../publish/assemble/forecast.ts";
import { assembleRow } from "../publish/assemble/index-results.ts";
import { fillProse } from "../publish/assemble/prose.ts";
import { jsonPiece } from "../publish/json.ts";
import { chargerPath } from "../publish/links.ts";
import type { ChargerResult, ComparisonRow, TestResult } from "../publish/results.ts";
import type { Prose } from "../read/prose.ts";
import type { PlainRecord } from "../read/record.ts";
import { isUnchanged } from "../read/workspace-files.ts";
import type { TestBasis } from "./basis.ts";
import { measureTest, type RecordingSamples } from "./measure-test.ts";

export type TestJob = { readonly kind: "test"; readonly key: string; readonly basis: TestBasis };

/** A published test, and where its results lie among the entries. */
export type TestKey = { readonly id: string; readonly key: string };

/** What a test says of its battery, and its digest, so that the names of all chargers that rest on it need not digest it again. */
export type KeyedBenchTest = { readonly digest: string; readonly test: BenchTest };

export type ChargerJob = {
  readonly kind: "charger";
  readonly key: string;
  readonly id: string;
  readonly record: PlainRecord<Charger>;
  readonly evidence: Evidence;
  /** Its published tests, in order. */
  readonly tests: readonly TestKey[];
  /** The tests from which its tests' batteries are known, its own among them. */
  readonly bench: readonly KeyedBenchTest[];
  readonly prose: Prose | undefined;
  /** The published tests that the reviewer's words call figures of. */
  readonly called: readonly TestKey[];
  /** Ids of all published tests, where the words call one that is not among them; else none. */
  readonly published: readonly string[];
  readonly language: string;
};

export type Job = TestJob | ChargerJob;

/** The digest of each field of a result, by which whoever read a field knows whether it has changed. */
export type FieldDigests = Readonly<Record<string, string>>;

/** What the rest of the run needs to know of a test; its results stay among the entries. */
export type TestHead = {
  readonly problems: readonly Problem[];
  readonly rows: number;
  /** Undefined where it is not published. */
  readonly published: { readonly title: string; readonly digests: FieldDigests; readonly bench: KeyedBenchTest } | undefined;
};

/** A test's row in the comparison, as it stands in the index; rows of a thousand tests are too much to hold as objects, or to write anew. */
export type RowText = { readonly test: string; readonly text: string; readonly digest: string };

export type ChargerHead = {
  readonly problems: readonly Problem[];
  readonly name: string;
  readonly corrections: ChargerResult["corrections"];
  /** Its tests' rows in the comparison. */
  readonly rows: readonly RowText[];
  readonly digests: FieldDigests;
};

/** What lies among the entries beside a test's head. */
export type TestBody = { readonly context: TestContext; readonly result: TestResult };

/** Thrown where results that had been kept cannot be read any more; the test is then measured again. */
export class EntryLost extends Error {
  constructor(readonly key: string) {
    super(`the entry ${key} was lost`);
  }
}

/** A head that is used stands for a site that rests on its body, though the body need not be read. */
export const keptTest = (entries: Entries, key: string): TestHead | undefined => entries.get("tests", key, ["test-results", "samples"]);
export const keptCharger = (entries: Entries, key: string): ChargerHead | undefined => entries.get("chargers", key, ["charger-results"]);

/** A test's results. Throws where the entry was lost. */
export function testBody(entries: Entries, key: string): TestBody {
  const body = entries.get<TestBody>("test-results", key);
  if (body === undefined) throw new EntryLost(key);
  return body;
}

/** The samples of a test's recordings. Throws where the entry was lost. */
export function testSamples(entries: Entries, key: string): readonly RecordingSamples[] {
  const samples = entries.get<readonly RecordingSamples[]>("samples", key);
  if (samples === undefined) throw new EntryLost(key);
  return samples;
}

/** A charger's results. Throws where the entry was lost. */
export function chargerBody(entries: Entries, key: string): ChargerResult {
  const body = entries.get<ChargerResult>("charger-results", key);
  if (body === undefined) throw new EntryLost(key);
  return body;
}

/**
 * Measures a test and keeps what comes of it; the head last, so that where there is a head there is a body.
 *
 * Throws where one of its files was written meanwhile: results must not be named after bytes that they were not made from.
 */
export async function doTest({ key, basis }: TestJob, entries: Entries): Promise<TestHead> {
  const { problems, rows, published } = await measureTest(basis);
  const changed = basis.files.find((file) => !isUnchanged(file));
  if (changed !== undefined) throw new Error(`${changed.path} was written while it was being measured; build again when it is complete`);
  if (published !== undefined) {
    const { context, result, samples } = published;
    entries.put("test-results", key, { context, result } satisfies TestBody);
    entries.put("samples", key, samples);
  }
  const head: TestHead = {
    problems,
    rows,
    published:
      published === undefined
        ? undefined
        : { title: published.result.title, digests: digestsOf(published.result), bench: keyed(benchTestOf(published.context)) },
  };
  entries.put("tests", key, head);
  return head;
}

const keyed = (test: BenchTest): KeyedBenchTest => ({ digest: digestOf(test), test });

/** Puts a charger together from its tests and keeps what comes of it. Throws where a test's results were lost. */
export function doCharger(job: ChargerJob, entries: Entries, forecaster: Forecaster | undefined): ChargerHead {
  const { key, id, record, evidence, bench, prose, published, language } = job;
  const called = job.called.map((test) => testBody(entries, test.key).result);
  const filled = prose === undefined ? undefined : fillProse(prose, id, chargerPath(id), 3, called, language, published);
  const tests = job.tests.map((test) => testBody(entries, test.key));
  const result = assembleCharger({
    id,
    charger: record.value,
    evidence,
    tests,
    prose: filled?.value ?? null,
    bench: bench.map(({ test }) => test),
    forecaster,
  });
  const head: ChargerHead = {
    problems: filled?.problems ?? [],
    name: result.name,
    corrections: result.corrections,
    rows: tests.map((test) => rowText(assembleRow(test.context, test.result, result))),
    digests: digestsOf(result),
  };
  entries.put("charger-results", key, result);
  entries.put("chargers", key, head);
  return head;
}

/** A row as it stands in data/index.json, two levels deep. */
export function rowText(row: ComparisonRow): RowText {
  const text = jsonPiece(row, 2);
  return { test: row.test.id, text, digest: digestOf(text) };
}

/** Names a charger's results: by its record's words (the file may have been written since it was digested), the results of its tests, and what its words say and call. */
export function keyOfCharger(job: Omit<ChargerJob, "key" | "kind">, code: string): string {
  const { id, record, evidence, tests, bench, prose, called, published, language } = job;
  const known = bench.map(({ digest }) => digest);
  return digestOf([code, id, record.text, evidence, tests, known, prose ?? null, called, published, language]);
}

export function digestsOf(result: object): FieldDigests {
  return Object.fromEntries(Object.entries(result).map(([field, value]) => [field, digestOf(value)]));
}
