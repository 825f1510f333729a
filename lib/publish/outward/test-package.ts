/**
 * A test as one archive: results, figures, raw files, records, and how to check, rebuild and cite them. Unpacked it is a workspace, so that
 * whoever doubts a figure can make it again.
 */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { type Zippable, zipSync } from "fflate";
import { writeSums } from "../downloads/sha256-sums.ts";
import { testPath } from "../links.ts";
import type { SiteIndex, TestResult } from "../results.ts";
import { resultSchemas } from "../schemas.ts";
import { wholeAddress } from "./addresses.ts";
import { type Citable, citationFile } from "./citation.ts";
import { type DescribedFile, dataPackage, figureFields, readingAdvice } from "./data-package.ts";
import { sha256 } from "./fingerprint.ts";
import { eventsOfTest, versionOf } from "./history.ts";
import { readMe } from "./read-me.ts";

/**
 * The archive's bytes, which depend on the files alone: names sorted, one fixed time, one fixed level of compression.
 * Throws where a raw file is missing, or is not the one that was measured.
 */
export function testArchive(siteDir: string, index: SiteIndex, test: TestResult): Uint8Array {
  const files = [...packageFiles(siteDir, index, test)].sort(([a], [b]) => (a < b ? -1 : 1));
  return zipSync(Object.fromEntries(files) satisfies Zippable, { level: 6, mtime: fixedTime });
}

/** An archive notes local time, so the time is told in the machine's own zone: the bytes are then the same in every zone. Noon exists on every day. */
const fixedTime = new Date(1980, 0, 1, 12);

const text = (words: string): Uint8Array => new TextEncoder().encode(words);

/** The same for every test, and slow enough to be made once only. */
const testSchema = text(`${JSON.stringify(resultSchemas().test, null, 1)}\n`);

/** The files of the archive by name. */
export function packageFiles(siteDir: string, index: SiteIndex, test: TestResult): Map<string, Uint8Array> {
  const published = (path: string) => readFileSync(join(siteDir, path));
  const citable = citableTest(index, test);
  const files = new Map<string, Uint8Array>([
    ["results.json", published(`data/tests/${test.id}.json`)],
    ["figures.csv", published(`data/tests/${test.id}.figures.csv`)],
    ["test.schema.json", testSchema],
    ...test.files.map((file): [string, Uint8Array] => [file.path, rawBytes(siteDir, file)]),
  ]);
  files.set("datapackage.json", text(describePackage(index, test, citable, files)));
  files.set("CITATION.cff", text(citationFile(citable)));
  files.set("README.md", text(readMe(test, citable)));
  files.set("SHA256SUMS", text(writeSums(new Map([...files].map(([name, bytes]) => [name, sha256(bytes)])))));
  return files;
}

function rawBytes(siteDir: string, file: TestResult["files"][number]): Uint8Array {
  const bytes = readFileSync(join(siteDir, file.download));
  if (sha256(bytes) !== file.sha256) throw new Error(`${file.download} is not the file that the results were computed from`);
  return bytes;
}

function citableTest(index: SiteIndex, test: TestResult): Citable {
  return {
    key: `test-${test.id}`,
    title: test.title,
    site: index,
    version: versionOf(eventsOfTest(test)),
    fingerprint: null,
    address: index.site.baseUrl === null ? null : wholeAddress(index.site.baseUrl, testPath(test.id)),
    invented: index.site.invented || test.invented,
  };
}

/** Titles of the files that we make; raw files bring their own. */
const titles: Readonly<Record<string, string>> = {
  "results.json": "All results of the test",
  "figures.csv": "All figures of the test",
  "test.schema.json": "Form of results.json, as JSON Schema",
};

function describePackage(index: SiteIndex, test: TestResult, citable: Citable, files: ReadonlyMap<string, Uint8Array>): string {
  const described = [...files].map(([path, bytes]): DescribedFile => {
    const recording = test.recordings.find(({ file }) => file === path);
    const advice = recording === undefined ? undefined : readingAdvice(recording);
    return {
      path,
      title: titles[path] ?? test.files.find((file) => file.path === path)?.what ?? path,
      bytes: bytes.byteLength,
      sha256: sha256(bytes),
      ...(advice === undefined ? {} : { description: advice }),
      ...(path === "figures.csv" ? { fields: figureFields } : {}),
    };
  });
  return dataPackage({
    index,
    name: test.id,
    title: citable.title,
    description: `Raw recordings, readings, records and results of one test, by method version ${test.methodVersion}.`,
    version: citable.version,
    homepage: citable.address,
    invented: citable.invented,
    files: described,
  });
}
