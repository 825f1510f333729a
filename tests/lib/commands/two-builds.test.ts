import { spawn } from "node:child_process";
import { appendFileSync, mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { afterAll, beforeAll, describe, expect, it, vi } from "vitest";
import { build } from "../../../lib/commands/build.ts";
import { writeLarge } from "../../large/write-large.ts";
import { filesBelow } from "../../sites/workspace.ts";

const repository = fileURLToPath(new URL("../../../", import.meta.url));
let root = "";
let workspace = "";

/** One bench for all: each test leaves what was kept for the next. */
beforeAll(() => {
  vi.spyOn(process.stderr, "write").mockImplementation(() => true);
  vi.spyOn(process.stdout, "write").mockImplementation(() => true);
  root = mkdtempSync(join(tmpdir(), "two-builds-"));
  workspace = join(root, "workspace");
  writeLarge(workspace, { chargers: 1, tests: 2 });
  mkdirSync(join(root, "bench"));
  mkdirSync(join(root, "met"));
});
afterAll(() => {
  vi.restoreAllMocks();
  rmSync(root, { recursive: true, force: true });
});

const place = (out: string): string => join(root, "bench", out);

/**
 * A build in a process of its own, which waits for the other one before it moves the old site aside, and again before it puts its own in
 * place: the moments at which two builds can be in each other's way.
 */
function started(out: string): Promise<{ status: number | null; told: string }> {
  const meeting = join(root, "meeting.mjs");
  writeFileSync(
    meeting,
    `import fs from "node:fs/promises";
import { readdirSync, writeFileSync } from "node:fs";
import { syncBuiltinESMExports } from "node:module";
import { setTimeout as sleep } from "node:timers/promises";
const met = ${JSON.stringify(join(root, "met"))};
const site = /bench.site[^./]*$/;
const done = new Set();
const { rename } = fs;
fs.rename = async (from, to) => {
  const step = site.test(from) ? "aside" : site.test(to) ? "in place" : undefined;
  if (step !== undefined && !done.has(step)) {
    done.add(step);
    writeFileSync(\`\${met}/\${step} \${process.pid}\`, "");
    // The other may have ended for some fault of its own, which the test then tells.
    for (let tries = 0; tries < 400 && readdirSync(met).filter((name) => name.startsWith(step)).length < 2; tries++) await sleep(50);
  }
  return rename(from, to);
};
syncBuiltinESMExports();
`,
  );
  const child = spawn(
    process.execPath,
    [
      ...["--import", pathToFileURL(meeting).href, join(repository, "lib/start.js"), "build"],
      ...["--workspace", workspace, "--out", place(out)],
    ],
    { cwd: repository, stdio: ["ignore", "pipe", "pipe"] },
  );
  let told = "";
  const note = (text: unknown): void => {
    told += String(text);
  };
  child.stdout.on("data", note);
  child.stderr.on("data", note);
  return new Promise((resolve) => child.on("close", (status) => resolve({ status, told })));
}

async function bothAtOnce(one: string, other: string): Promise<void> {
  for (const name of readdirSync(join(root, "met"))) rmSync(join(root, "met", name));
  for (const { status, told } of await Promise.all([started(one), started(other)])) expect(status, told).toBe(0);
}

/** Paths of the files in which a site differs from one that was made alone, with a cache of its own. */
async function differing(out: string): Promise<string[]> {
  const alone = join(root, "alone/site");
  mkdirSync(join(root, "alone"), { recursive: true });
  expect(await build({ workspace, out: alone })).toBe(0);
  const [a, b] = [filesBelow(place(out)), filesBelow(alone)];
  expect(b.size).toBeGreaterThan(100);
  return [...new Set([...a.keys(), ...b.keys()])].filter((path) => !a.get(path)?.equals(b.get(path) ?? Buffer.from("none")));
}

describe("two builds at once", { timeout: 180_000 }, () => {
  it("into two folders, with one cache between them and nothing known before: each makes the site that it would alone", async () => {
    await bothAtOnce("site-one", "site-two");
    expect(await differing("site-one")).toEqual([]);
    expect(await differing("site-two")).toEqual([]);
  });

  it("into one new folder: the later one's site stands, whole, and nothing is left beside it", async () => {
    await bothAtOnce("site", "site");
    expect(await differing("site")).toEqual([]);
    expect(readdirSync(join(root, "bench")).sort()).toEqual([".ampwitness", "site", "site-one", "site-two"]);
  });

  it("into one folder that held a site, of which there is one twin: the same, and the next build is right too", async () => {
    expect(await build({ workspace, out: place("site") })).toBe(0);
    appendFileSync(join(workspace, "content/reviews/alder-brook-1.md"), "More words.\n");
    await bothAtOnce("site", "site");
    expect(await differing("site")).toEqual([]);
    expect(readdirSync(join(root, "bench")).sort()).toEqual([".ampwitness", "site", "site-one", "site-two"]);
    appendFileSync(join(workspace, "content/reviews/alder-brook-1.md"), "More words.\n");
    expect(await build({ workspace, out: place("site") })).toBe(0);
    expect(await differing("site")).toEqual([]);
  });
});
