import { execFileSync, spawn } from "node:child_process";
import {
  appendFileSync,
  chmodSync,
  cpSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  rmSync,
  statSync,
  symlinkSync,
  truncateSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout as sleep } from "node:timers/promises";
import { fileURLToPath, pathToFileURL } from "node:url";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { writeLarge } from "../../large/write-large.ts";
import { filesBelow } from "../../sites/workspace.ts";

const repository = fileURLToPath(new URL("../../../", import.meta.url));
let root = "";
let workspace = "";
let out = "";

beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), "build-"));
  workspace = join(root, "workspace");
  out = join(root, "site");
  writeLarge(workspace, { chargers: 3, tests: 5 });
});
afterEach(() => rmSync(root, { recursive: true, force: true }));

type Ended = { status: number | null; told: string };

/** The build command in a process of its own, which can be killed and given a failing disk. */
function start(args: readonly string[] = [], options: readonly string[] = []) {
  const child = spawn(
    process.execPath,
    ["--import", "tsx", ...options, join(repository, "lib/cli.ts"), "build", "--workspace", workspace, "--out", out, ...args],
    { cwd: repository, stdio: ["ignore", "pipe", "pipe"] },
  );
  let told = "";
  child.stdout.on("data", (text) => {
    told += text;
  });
  child.stderr.on("data", (text) => {
    told += text;
  });
  const ended = new Promise<Ended>((resolve) => child.on("close", (status) => resolve({ status, told })));
  return { child, ended };
}
const built = (args: readonly string[] = [], options: readonly string[] = []): Promise<Ended> => start(args, options).ended;

const differing = (a: Map<string, Buffer>, b: Map<string, Buffer>): string[] =>
  [...new Set([...a.keys(), ...b.keys()])].filter((path) => !a.get(path)?.equals(b.get(path) ?? Buffer.from("none")));

/** A module that is loaded before the build and breaks something in it. */
function saboteur(code: string): string[] {
  const file = join(root, "saboteur.mjs");
  writeFileSync(file, code);
  return ["--import", pathToFileURL(file).href];
}

/** Every write fails once so many have succeeded, as on a disk that has filled up. */
const fullAfter = (writes: number): string[] =>
  saboteur(`import fs from "node:fs";
import { syncBuiltinESMExports } from "node:module";
let left = ${writes};
for (const name of ["writeFileSync", "copyFileSync"]) {
  const real = fs[name];
  fs[name] = (...rest) => {
    if (String(rest[name === "copyFileSync" ? 1 : 0]).includes(${JSON.stringify("site")}) && left-- <= 0)
      throw Object.assign(new Error("ENOSPC: no space left on device, write"), { code: "ENOSPC" });
    return real(...rest);
  };
}
syncBuiltinESMExports();
`);

describe("a build that is killed", { timeout: 300_000 }, () => {
  it("at any moment, leaves a whole site, the old or the new one, and the next build is right", async () => {
    expect((await built()).status).toBe(0);
    const old = filesBelow(out);
    appendFileSync(join(workspace, "content/reviews/birch-brook-1.md"), "More words.\n");
    cpSync(root, `${root}-whole`, { recursive: true });
    let fresh = new Map<string, Buffer>();
    try {
      workspace = join(`${root}-whole`, "workspace");
      out = join(`${root}-whole`, "site");
      expect((await built()).status).toBe(0);
      fresh = filesBelow(out);
    } finally {
      rmSync(`${root}-whole`, { recursive: true, force: true });
      workspace = join(root, "workspace");
      out = join(root, "site");
    }
    expect(differing(fresh, old)).not.toEqual([]);
    for (const afterMs of [300, 900, 1300, 1700, 2100, 2600]) {
      const { child, ended } = start();
      await sleep(afterMs);
      child.kill("SIGKILL");
      await ended;
      const site = filesBelow(out);
      // Between the two renames of the swap there is none; the next build puts the old one back.
      if (site.size > 0) expect(Math.min(differing(site, old).length, differing(site, fresh).length), `after ${afterMs} ms`).toBe(0);
    }
    expect((await built()).status).toBe(0);
    expect(differing(filesBelow(out), fresh)).toEqual([]);
    expect(readdirSync(root).sort()).toEqual([".ampwitness", "site", "workspace"]);
  });
});

describe("a disk that is full", { timeout: 300_000 }, () => {
  it("at any write, leaves the last good site, says what to do, and the next build is right", async () => {
    expect((await built()).status).toBe(0);
    const good = filesBelow(out);
    writeFileSync(join(workspace, "content/about.md"), "---\ntitle: About\n---\nWords.\n");
    for (const writes of [0, 1, 5, 40]) {
      const { status, told } = await built([], fullAfter(writes));
      expect(status, told).toBe(1);
      expect(told).toContain("The disk is full. Make room, and build again");
      expect(told).toContain("The last good site stays as it was.");
      expect(differing(filesBelow(out), good), `after ${writes} writes`).toEqual([]);
    }
    expect((await built()).status).toBe(0);
    expect([...filesBelow(out).keys()]).toContain("about/index.html");
    expect(readdirSync(root).filter((name) => name.startsWith("site"))).toEqual(["site"]);
  });
});

describe("a worker that dies", { timeout: 120_000 }, () => {
  it("is told with what it was at, and nothing is published", async () => {
    const dying = saboteur(`import { isMainThread } from "node:worker_threads";
if (!isMainThread) setTimeout(() => process.exit(7), 200);
`);
    process.env.NODE_OPTIONS = `${dying.join("=")}`;
    try {
      const { status, told } = await built(["--threads", "2"]);
      expect(status).toBe(1);
      expect(told).toMatch(/test [a-z]+-brook-1-\d could not be worked out: /);
      expect(told).toContain("The last good site stays as it was.");
    } finally {
      delete process.env.NODE_OPTIONS;
    }
    expect(readdirSync(root).filter((name) => name.startsWith("site"))).toEqual([]);
  });
});

describe("files that are not as they should be", { timeout: 120_000 }, () => {
  it("keep their own test off the site, with what to do; the others are published, and raw files are as they were", async () => {
    const log = (test: string): string => join(workspace, `data/tests/${test}/logs/day-1.csv`);
    rmSync(log("alder-brook-1-1"));
    symlinkSync("/etc/hostname", log("alder-brook-1-1"));
    truncateSync(log("birch-brook-1-1"), 0);
    writeFileSync(log("clover-brook-1-1"), Buffer.alloc(3_000_000, 0xff));
    chmodSync(log("alder-brook-1-2"), 0o444);
    const before = filesBelow(join(workspace, "data"));
    const times = [...before.keys()].map((path) => statSync(join(workspace, "data", path)).mtimeMs);
    const { status, told } = await built();
    expect(status).toBe(1);
    expect(told).toContain("link-in-workspace");
    expect(told).toContain("copy the file here in place of the link");
    for (const test of ["alder-brook-1-1", "birch-brook-1-1", "clover-brook-1-1"]) expect(told).toContain(`Not published: test ${test}`);
    expect(readdirSync(join(out, "tests")).sort()).toEqual(["alder-brook-1-2", "birch-brook-1-2"]);
    expect(differing(filesBelow(join(workspace, "data")), before)).toEqual([]);
    expect([...before.keys()].map((path) => statSync(join(workspace, "data", path)).mtimeMs)).toEqual(times);
  });
});

describe("the command line of a build", { timeout: 60_000 }, () => {
  it.each([
    ["--shard", "9/8", "expected a share such as 3/8"],
    ["--shard", "0/8", "expected a share such as 3/8"],
    ["--threads", "none", "expected a number from 1 to 99"],
  ])("%s %s is refused, with what was expected", async (option, value, told) => {
    const ended = await built([option, value]);
    expect(ended.status).toBe(1);
    expect(ended.told).toContain(told);
    expect(readdirSync(root)).toEqual(["workspace"]);
  });

  it("--shard measures into the cache and publishes nothing; caches that are put together leave nothing to measure", async () => {
    for (const share of ["1/2", "2/2"]) {
      out = join(root, share.replace("/", "-"), "site");
      mkdirSync(join(out, ".."));
      const { status, told } = await built(["--shard", share]);
      expect(status).toBe(0);
      expect(told).toContain("Nothing was published");
      execFileSync("cp", ["-R", join(out, "../.ampwitness"), root]);
    }
    out = join(root, "site");
    const { told } = await built();
    expect(told).toMatch(/^measuring tests: 5 of 5$/m);
    expect(told).not.toMatch(/^measuring tests: [1-4] of 5$/m);
  });
});
