import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { parse } from "csv-parse/sync";
import { describe, expect, it } from "vitest";
import { writeCsv } from "../../../lib/publish/downloads/csv.ts";
import { comparisonCsv, figureHeadings, figuresCsv } from "../../../lib/publish/downloads/figures-csv.ts";
import { figuresOfTest } from "../../../lib/publish/figure-finder.ts";
import { folderMaker, writeParts } from "../../../lib/publish/render-site.ts";
import type { TestResult } from "../../../lib/publish/results.ts";
import { openResults } from "../../../lib/publish/results-folder.ts";
import { fixture, rawFiles, writeFixture } from "../../pages/fixture.ts";

const firstTest = fixture.tests[0] as TestResult;

describe("CSV", () => {
  it("disarms text that a spreadsheet would run, and leaves numbers alone", () => {
    expect(writeCsv([["=1+1", "+a", "-b", "@c", "\td", "\re", -5.9]])).toBe(`'=1+1,'+a,'-b,'@c,'\td,"'\re",-5.9\n`);
  });

  it("quotes commas, quotes and line breaks, and leaves absence empty", () => {
    expect(writeCsv([['say "a", b', "c\nd", null]])).toBe('"say ""a"", b","c\nd",\n');
  });

  it("refuses what is not a number", () => {
    expect(() => writeCsv([[Number.NaN]])).toThrow("finite");
  });
});

describe("figures of a test", () => {
  const rows = parse(figuresCsv(firstTest), { columns: true }) as Record<string, string>[];

  it("have one row each, with the unit in its own column", () => {
    expect(rows).toHaveLength(figuresOfTest(firstTest).length);
    expect(Object.keys(rows[0] ?? {})).toEqual([...figureHeadings]);
    expect(rows.find((row) => row.id === "charge-recorded" && row.of === "test")).toMatchObject({ value: "61.4", unit: "Ah" });
  });

  it("leave an absent value empty and say why", () => {
    const absent = rows.filter((row) => row.absent !== "");
    expect(absent.length).toBeGreaterThan(5);
    for (const row of absent) expect([row.value, row.absent_why !== ""]).toEqual(["", true]);
  });
});

describe("the comparison as CSV", () => {
  it("has one row for each figure of each row", () => {
    const rows = parse(comparisonCsv(fixture.index), { columns: true }) as unknown[];
    expect(rows).toHaveLength(fixture.index.rows.reduce((sum, row) => sum + row.figures.length, 0));
  });
});

describe("SHA256SUMS", () => {
  it("is accepted by sha256sum -c beside it, and by it alone when every byte is right", async () => {
    const siteDir = mkdtempSync(join(tmpdir(), "sums-"));
    try {
      writeFixture(siteDir);
      await writeParts(folderMaker(siteDir, openResults(siteDir)), openResults(siteDir));
      const out = execFileSync("sha256sum", ["-c", "SHA256SUMS"], { cwd: join(siteDir, "tests/lantern-first"), encoding: "utf8" });
      const published = Object.keys(rawFiles).filter((path) => path.includes("lantern-first"));
      expect(out.trim().split("\n")).toHaveLength(published.length);
      expect(out).not.toContain("FAILED");
    } finally {
      rmSync(siteDir, { recursive: true });
    }
  });
});
