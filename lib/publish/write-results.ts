/** The first steps of a site: its results as JSON, and the raw files and samples that they rest on. */
import { constants, copyFileSync, mkdirSync } from "node:fs";
import { dirname, join } from "node:path";
import type { InputFile } from "../read/workspace-files.ts";
import type { Published, PublishedTest } from "../run/published.ts";
import { rawAddress } from "./assemble/recording.ts";
import { jsonWithList, toJson } from "./json.ts";
import type { SiteMaker, Step } from "./keep/maker.ts";
import { indexField } from "./keep/watched-results.ts";
import { logSampleFiles } from "./log-samples/write.ts";
import { resultSchemas } from "./schemas.ts";
import { inputFile, wholeCharger, wholeTest } from "./sources.ts";

/** Throws where a raw file is no longer the one that the results were made from. */
export async function writeResults(
  { index, rows, tests, chargers }: Published,
  files: readonly InputFile[],
  maker: SiteMaker,
): Promise<void> {
  const byPath = new Map(files.map((file) => [file.path, file]));
  const copied = new Set<string>();
  for (const test of tests) {
    const paths = await maker.step(`results of test ${test.id}`, (step) => writeTest(test, step));
    for (const path of paths) {
      const file = byPath.get(path);
      if (file === undefined || copied.has(path)) continue;
      copied.add(path);
      await maker.step(`raw file ${path}`, (step) => copyRaw(file, maker, step));
    }
  }
  for (const charger of chargers)
    await maker.step(`results of charger ${charger.id}`, async ({ reads, write }) => {
      reads(wholeCharger(charger.id));
      write(`data/chargers/${charger.id}.json`, toJson(await charger.result()));
    });
  await maker.step("index", ({ reads, write }) => {
    for (const field of Object.keys(index)) reads(indexField(field));
    write(
      "data/index.json",
      jsonWithList(
        index,
        "rows",
        rows.map(({ text }) => text),
      ),
    );
  });
  await maker.step("schemas", ({ write }) => {
    for (const [name, schema] of Object.entries(resultSchemas())) write(`data/schemas/${name}.schema.json`, toJson(schema));
  });
}

/** @returns paths of the raw files that the test rests on, in the workspace */
async function writeTest(test: PublishedTest, { reads, write }: Step): Promise<string[]> {
  reads(wholeTest(test.id));
  const result = await test.result();
  write(`data/tests/${test.id}.json`, toJson(result));
  for (const { recording, log } of await test.samples())
    for (const [path, bytes] of logSampleFiles(test.id, recording, log)) write(path, bytes);
  return result.files.map((file) => file.path);
}

/** Copies a file that published figures rest on, byte for byte; a copy and never another name, so that the raw file stays the reviewer's own. */
function copyRaw(file: InputFile, maker: SiteMaker, { reads, clear, wrote }: Step): void {
  reads(inputFile(file.path));
  const path = rawAddress(file.path);
  const target = join(maker.dir, path);
  mkdirSync(dirname(target), { recursive: true });
  clear(path);
  copyFileSync(file.absolutePath, target, constants.COPYFILE_FICLONE);
  wrote(path);
  if (maker.file(path).sha256 !== file.sha256)
    throw new Error(`${file.path} is not the file that the results were computed from: build again`);
}
