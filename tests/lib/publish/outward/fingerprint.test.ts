import { execFileSync } from "node:child_process";
import { appendFileSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { chargerSumsPath } from "../../../../lib/publish/outward/addresses.ts";
import { chargerSums, fingerprintOf, sha256 } from "../../../../lib/publish/outward/fingerprint.ts";
import type { Fingerprints } from "../../../../lib/publish/outward/index.ts";
import { folderMaker, writeParts } from "../../../../lib/publish/render-site.ts";
import { openResults } from "../../../../lib/publish/results-folder.ts";
import { writeFixture } from "../../../pages/fixture.ts";
import { publishedResults } from "./published.ts";

let siteDir: string;
let fingerprints: Fingerprints;
beforeEach(async () => {
  siteDir = mkdtempSync(join(tmpdir(), "sums-"));
  writeFixture(siteDir, publishedResults());
  fingerprints = await writeParts(folderMaker(siteDir, openResults(siteDir)), openResults(siteDir));
});
afterEach(() => rmSync(siteDir, { recursive: true }));

describe("SHA-256", () => {
  it("is that of FIPS 180-2, appendix B.1, for “abc”", () => {
    expect(sha256("abc")).toBe("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
  });
});

describe("the digests of a charger's result", () => {
  it("are accepted by sha256sum -c from their own folder, and name results and raw files", () => {
    const list = join(siteDir, chargerSumsPath("lantern-eight"));
    const out = execFileSync("sha256sum", ["-c", "SHA256SUMS"], { cwd: join(list, ".."), encoding: "utf8" });
    expect(out.trim().split("\n")).toHaveLength(6);
    expect(out).not.toContain("FAILED");
    expect(out).toContain("data/chargers/lantern-eight.json");
    expect(out).toContain("night one.csv");
  });

  it("give another fingerprint when one byte of the results changes, and the same when none does", () => {
    const results = openResults(siteDir);
    const before = fingerprintOf(chargerSums(siteDir, results, "lantern-eight"));
    writeFileSync(join(siteDir, "unrelated.txt"), "x");
    expect(fingerprintOf(chargerSums(siteDir, results, "lantern-eight"))).toBe(before);
    appendFileSync(join(siteDir, "data/tests/lantern-first.json"), " ");
    expect(fingerprintOf(chargerSums(siteDir, results, "lantern-eight"))).not.toBe(before);
  });

  it("give each charger a fingerprint of twelve hexadecimal digits", () => {
    expect(Object.keys(fingerprints)).toEqual(["lantern-eight", "pebble-trickle"]);
    for (const fingerprint of Object.values(fingerprints)) expect(fingerprint).toMatch(/^[0-9a-f]{12}$/);
  });
});
