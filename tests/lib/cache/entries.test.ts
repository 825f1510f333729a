import { mkdtempSync, readdirSync, readFileSync, rmSync, statSync, truncateSync, utimesSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { diskEntries } from "../../../lib/cache/entries.ts";

let folder = "";
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "entries-"));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const value = { columns: new Float64Array([1.5, Number.NaN]), unset: undefined, words: "Ω", map: new Map([["a", 1]]) };
const fileOf = (key: string): string => join(folder, "tests", key);

describe("an entry", () => {
  it("comes back as it was put, by another opening of the folder too", () => {
    diskEntries(folder).put("tests", "k", value);
    expect(diskEntries(folder).get("tests", "k")).toEqual(value);
    expect(diskEntries(folder).get("tests", "other")).toBeUndefined();
    expect(diskEntries(folder).get("charger", "k")).toBeUndefined();
    expect(readdirSync(join(folder, "tests"))).toEqual(["k"]);
  });

  it("is not believed with one bit turned, wherever it stands, nor cut short at any length", () => {
    const entries = diskEntries(folder);
    entries.put("tests", "k", value);
    const whole = readFileSync(fileOf("k"));
    for (let at = 0; at < whole.length; at++) {
      const damaged = Buffer.from(whole);
      damaged[at] = (damaged[at] ?? 0) ^ 1;
      writeFileSync(fileOf("k"), damaged);
      expect(entries.get("tests", "k"), `byte ${at}`).toBeUndefined();
    }
    for (let length = whole.length - 1; length >= 0; length--) {
      truncateSync(fileOf("k"), length);
      expect(entries.get("tests", "k"), `length ${length}`).toBeUndefined();
    }
    writeFileSync(fileOf("k"), whole);
    expect(entries.get("tests", "k")).toEqual(value);
  });

  it("is held in memory, and handed over once, where the disk does not take it", () => {
    writeFileSync(join(folder, "tests"), "a file where the folder should be");
    const entries = diskEntries(folder);
    entries.put("tests", "k", value);
    expect(entries.get("tests", "k")).toEqual(value);
    expect(entries.takeUnwritten()).toEqual([{ kind: "tests", key: "k", value }]);
    expect(entries.takeUnwritten()).toEqual([]);
  });

  it("is dated by its last use to the day, and those alongside it with it, though they were not read", () => {
    const entries = diskEntries(folder);
    const kinds = ["tests", "samples", "forecasts"];
    const daysAgo = (days: number): number => Math.round(Date.now() / 1000) - days * 86_400;
    const dateAll = (atS: number): void => {
      for (const kind of kinds) utimesSync(join(folder, kind, "k"), atS, atS);
    };
    const dates = (): number[] => kinds.map((kind) => Math.round(statSync(join(folder, kind, "k")).mtimeMs / 1000));
    for (const kind of kinds) entries.put(kind, "k", value);
    dateAll(daysAgo(60));
    entries.get("tests", "k", ["samples", "not-there"]);
    expect(dates().map((atS) => atS > daysAgo(1))).toEqual([true, true, false]);
    const today = daysAgo(0.5);
    dateAll(today);
    entries.get("tests", "k", ["samples"]);
    expect(dates()).toEqual([today, today, today]);
  });
});
