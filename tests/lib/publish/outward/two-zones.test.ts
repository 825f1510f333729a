import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { filesBelow } from "../../../sites/workspace.ts";

const folder = mkdtempSync(join(tmpdir(), "zones-"));
afterAll(() => rmSync(folder, { recursive: true }));

/** Two builds of three seconds each, on a busy machine. */
const patienceMs = 60_000;

function buildIn(zone: string): Map<string, Buffer> {
  const siteDir = join(folder, zone.replace("/", "-"));
  execFileSync(process.execPath, ["--import", "tsx", "tests/pages/build-published.ts", siteDir, "invented"], {
    env: { ...process.env, TZ: zone, LANG: "de_DE.UTF-8" },
  });
  return filesBelow(siteDir);
}

describe("a site that states its address and dates", () => {
  it(
    "has archives, pictures, feeds and pages of the same bytes in two time zones, one of them with summer time",
    () => {
      const [one, two] = [buildIn("Asia/Kolkata"), buildIn("America/New_York")];
      for (const path of [
        "data/tests/lantern-first.zip",
        "chargers/lantern-eight/picture.png",
        "feed.xml",
        "sitemap.xml",
        "datapackage.json",
      ])
        expect(one.has(path), path).toBe(true);
      expect([...two.keys()]).toEqual([...one.keys()]);
      expect([...one].filter(([path, bytes]) => !bytes.equals(two.get(path) ?? Buffer.alloc(0))).map(([path]) => path)).toEqual([]);
    },
    patienceMs,
  );
});
