import { execFileSync } from "node:child_process";
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { unzipSync } from "fflate";
import { afterEach, describe, expect, it } from "vitest";
import { parse } from "yaml";
import { figuresCsv } from "../../../../lib/publish/downloads/figures-csv.ts";
import { packagePath } from "../../../../lib/publish/outward/addresses.ts";
import { testArchive } from "../../../../lib/publish/outward/test-package.ts";
import { openResults, type ResultsFolder } from "../../../../lib/publish/results-folder.ts";
import { rawFiles, writeFixture } from "../../../pages/fixture.ts";
import { newBench, publishBench, removeBenches } from "../../../sites/workspace.ts";
import { publishedResults } from "./published.ts";

const folders: string[] = [];
afterEach(() => {
  for (const folder of folders.splice(0)) rmSync(folder, { recursive: true });
  removeBenches();
});
function newFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), "archive-"));
  folders.push(folder);
  return folder;
}

function builtFixture(): { siteDir: string; results: ResultsFolder } {
  const siteDir = newFolder();
  writeFixture(siteDir, publishedResults());
  const results = openResults(siteDir);
  for (const { id } of results.index.tests) writeFileSync(join(siteDir, `data/tests/${id}.figures.csv`), figuresCsv(results.test(id)));
  return { siteDir, results };
}

function unpack(archive: Uint8Array): string {
  const folder = newFolder();
  for (const [name, bytes] of Object.entries(unzipSync(archive))) {
    mkdirSync(dirname(join(folder, name)), { recursive: true });
    writeFileSync(join(folder, name), bytes);
  }
  return folder;
}

describe("the archive of a test", () => {
  const archiveOf = ({ siteDir, results }: ReturnType<typeof builtFixture>) =>
    testArchive(siteDir, results.index, results.test("lantern-first"));

  it("holds results, figures, every raw file byte for byte, and what tells of them", () => {
    const folder = unpack(archiveOf(builtFixture()));
    for (const name of ["results.json", "figures.csv", "test.schema.json", "datapackage.json", "CITATION.cff", "README.md"])
      expect(readFileSync(join(folder, name)).length, name).toBeGreaterThan(0);
    for (const [path, text] of Object.entries(rawFiles).filter(([path]) => path.includes("lantern-first")))
      expect(readFileSync(join(folder, path), "utf8")).toBe(text);
  });

  it("passes sha256sum -c after unpacking, every file but the list itself", () => {
    const folder = unpack(archiveOf(builtFixture()));
    const out = execFileSync("sha256sum", ["-c", "SHA256SUMS"], { cwd: folder, encoding: "utf8" });
    expect(out.trim().split("\n")).toHaveLength(9);
    expect(out).not.toContain("FAILED");
  });

  it("has the same bytes each time, wherever the site is built", () => {
    expect(Buffer.from(archiveOf(builtFixture())).equals(Buffer.from(archiveOf(builtFixture())))).toBe(true);
  });

  it("says in its README that data are invented, what is absent and why, how to check, rebuild and cite, and to take care", () => {
    const readme = readFileSync(join(unpack(archiveOf(builtFixture())), "README.md"), "utf8");
    for (const words of [
      "**Invented data.**",
      "Something not recorded: not recorded",
      "sha256sum -c",
      "--workspace",
      "CC-BY-4.0",
      "hydrogen",
    ])
      expect(readme).toContain(words);
    expect(readme).toContain("Left out: night one.csv, lines 7 to 9");
  });

  it("describes all its files but the descriptors themselves", () => {
    const folder = unpack(archiveOf(builtFixture()));
    const { resources } = JSON.parse(readFileSync(join(folder, "datapackage.json"), "utf8")) as { resources: { path: string }[] };
    expect(resources.map(({ path }) => path).sort()).toEqual(
      ["results.json", "figures.csv", "test.schema.json", ...Object.keys(rawFiles).filter((path) => path.includes("lantern-first"))].sort(),
    );
    expect(parse(readFileSync(join(folder, "CITATION.cff"), "utf8")).type).toBe("dataset");
  });

  it("is refused where a raw file is not the one that was measured", () => {
    const built = builtFixture();
    writeFileSync(join(built.siteDir, "raw/data/tests/lantern-first/readings.csv"), "at,density_1\n2026-03-02 17:30,1.28\n");
    expect(() => archiveOf(built)).toThrow("readings.csv is not the file that the results were computed from");
  });
});

describe("an unpacked archive", () => {
  it("is a workspace that gives the same results again", async () => {
    const bench = newBench();
    await publishBench(bench);
    const [id] = openResults(bench.out).index.tests.map((test) => test.id);
    const workspace = unpack(readFileSync(join(bench.out, packagePath(id ?? ""))));
    const again = { ...bench, workspace, out: join(newFolder(), "site") };
    await publishBench(again);
    const result = (out: string) => readFileSync(join(out, `data/tests/${id}.json`), "utf8");
    expect(result(again.out)).toBe(result(bench.out));
  }, 120_000); // Two whole builds on a busy machine.
});
