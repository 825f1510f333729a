import { existsSync, mkdirSync, mkdtempSync, readdirSync, rmSync, statSync, utimesSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { diskEntries } from "../../../lib/cache/entries.ts";
import { sweepUnused } from "../../../lib/cache/sweep.ts";

let folder = "";
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "sweep-"));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const put = (kind: string, key: string, daysAgo: number): void => {
  diskEntries(folder).put(kind, key, key);
  date(join(folder, kind, key), daysAgo);
};
const date = (file: string, daysAgo: number): void => {
  const atS = Date.now() / 1000 - daysAgo * 86_400;
  utimesSync(file, atS, atS);
};
const keys = (kind: string): string[] => readdirSync(join(folder, kind)).sort();

describe("a sweep", () => {
  it("takes what was not used for a quarter of a year, of every kind, and leaves what was", () => {
    for (const kind of ["tests", "samples"]) {
      put(kind, "winter", 89);
      put(kind, "older", 91);
    }
    put("tests", "asked-for", 91);
    expect(diskEntries(folder).get("tests", "asked-for")).toBe("asked-for");
    writeFileSync(join(folder, "samples/half.1234-0-7"), "what a killed build left");
    date(join(folder, "samples/half.1234-0-7"), 91);
    sweepUnused(folder);
    expect(keys("tests")).toEqual(["asked-for", "winter"]);
    expect(keys("samples")).toEqual(["winter"]);
  });

  it("takes the twin of a site that was not built for so long, and no other twin", () => {
    for (const [site, daysAgo] of [
      ["summer", 91],
      ["winter", 89],
    ] as const) {
      put("sites", site, daysAgo);
      mkdirSync(join(folder, "twins", site, "tests"), { recursive: true });
      writeFileSync(join(folder, "twins", site, "tests/index.html"), "a page");
      date(join(folder, "twins", site), 91);
    }
    put("sites", "without-twin", 91);
    sweepUnused(folder);
    expect(keys("sites")).toEqual(["winter"]);
    expect(keys("twins")).toEqual(["winter"]);
    expect(existsSync(join(folder, "twins/winter/tests/index.html"))).toBe(true);
    expect(keys(".")).toEqual(["sites", "swept", "twins"]);
  });

  it("is made once a day", () => {
    put("tests", "first", 91);
    sweepUnused(folder);
    put("tests", "second", 91);
    sweepUnused(folder);
    expect(keys("tests")).toEqual(["second"]);
    date(join(folder, "swept"), 1.1);
    sweepUnused(folder);
    expect(keys("tests")).toEqual([]);
    expect(Date.now() - statSync(join(folder, "swept")).mtimeMs).toBeLessThan(86_400_000);
  });

  it("fails nothing where there is no folder, or a file in its place", () => {
    sweepUnused(join(folder, "nowhere"));
    writeFileSync(join(folder, "file"), "a file");
    sweepUnused(join(folder, "file"));
    expect(keys(".")).toEqual(["file"]);
  });
});
