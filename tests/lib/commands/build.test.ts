import { spawn } from "node:child_process";
import fs, {
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
import { syncBuiltinESMExports } from "node:module";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { afterAll, afterEach, beforeAll, describe, expect, it, vi } from "vitest";
import { type BuildOptions, build } from "../../../lib/commands/build.ts";
import { writeLarge } from "../../large/write-large.ts";
import { filesBelow } from "../../sites/workspace.ts";

const repository = fileURLToPath(new URL("../../../", import.meta.url));
let root = "";
let workspace = "";
let out = "";

/** One bench for all: each test leaves a site that is right, and the next goes on from there. */
beforeAll(async () => {
  root = mkdtempSync(join(tmpdir(), "build-"));
  workspace = join(root, "workspace");
  out = join(root, "site");
  writeLarge(workspace, { chargers: 2, tests: 4 });
  expect((await builtHere()).status).toBe(0);
}, 120_000);
afterAll(() => rmSync(root, { recursive: true, force: true }));
afterEach(() => vi.restoreAllMocks());

type Ended = { status: number | null; told: string };

/** The build command in a process of its own; a module is loaded into it, and into its threads, that breaks something in it. */
async function built(args: readonly string[], saboteur = ""): Promise<Ended> {
  const file = join(root, "saboteur.mjs");
  writeFileSync(file, saboteur);
  const child = spawn(process.execPath, [join(repository, "lib/start.js"), "build", "--workspace", workspace, "--out", out, ...args], {
    cwd: repository,
    stdio: ["ignore", "pipe", "pipe"],
    env: { ...process.env, NODE_OPTIONS: `--import=${pathToFileURL(file).href}` },
  });
  let told = "";
  const note = (text: unknown): void => {
    told += String(text);
  };
  child.stdout.on("data", note);
  child.stderr.on("data", note);
  const status = await new Promise<number | null>((resolve) => child.on("close", resolve));
  rmSync(file);
  return { status, told };
}

/** The same in this process, which has loaded all there is to load. */
async function builtHere(options: Partial<BuildOptions> = {}): Promise<Ended> {
  let told = "";
  const note = (text: unknown): boolean => {
    told += String(text);
    return true;
  };
  vi.spyOn(process.stdout, "write").mockImplementation(note);
  vi.spyOn(process.stderr, "write").mockImplementation(note);
  const status = await build({ workspace, out, ...options });
  vi.restoreAllMocks();
  return { status, told };
}

const differing = (a: Map<string, Buffer>, b: Map<string, Buffer>): string[] =>
  [...new Set([...a.keys(), ...b.keys()])].filter((path) => !a.get(path)?.equals(b.get(path) ?? Buffer.from("none")));

/** The site as it is made where only forecasts are known. */
async function madeAlone(): Promise<Map<string, Buffer>> {
  const alone = mkdtempSync(join(tmpdir(), "build-alone-"));
  try {
    cpSync(join(root, ".ampwitness/forecasts"), join(alone, ".ampwitness/forecasts"), { recursive: true });
    expect((await builtHere({ out: join(alone, "site") })).status).toBe(0);
    return filesBelow(join(alone, "site"));
  } finally {
    rmSync(alone, { recursive: true, force: true });
  }
}

/** Kills the process at the n-th call of one of some functions of node:fs in which a path fits a pattern. */
const killedAt = (names: readonly string[], path: string, call: number): string => `import fs from "node:fs";
import { syncBuiltinESMExports } from "node:module";
let left = ${call};
for (const module of [fs, fs.promises])
  for (const name of ${JSON.stringify(names)}) {
    const real = module[name];
    if (real === undefined) continue;
    module[name] = (...rest) => {
      if (rest.slice(0, 2).some((one) => typeof one === "string" && new RegExp(${JSON.stringify(path)}).test(one)) && --left === 0)
        process.kill(process.pid, "SIGKILL");
      return real(...rest);
    };
  }
syncBuiltinESMExports();
`;

describe("a build that is killed", { timeout: 300_000 }, () => {
  const writes = ["writeFileSync", "copyFileSync"];
  const isOld = ["old"];
  const isNew = ["new"];

  it("at any moment, leaves a whole site, the old or the new one, and the next build is right", async () => {
    const old = filesBelow(out);
    appendFileSync(join(workspace, "content/reviews/birch-brook-1.md"), "More words.\n");
    const fresh = await madeAlone();
    expect(differing(fresh, old)).not.toEqual([]);
    const stands = (): string[] => {
      const site = filesBelow(out);
      return [...(differing(site, old).length === 0 ? ["old"] : []), ...(differing(site, fresh).length === 0 ? ["new"] : [])];
    };
    for (const [moment, saboteur, left] of [
      ["in the middle of its writes", killedAt(writes, "site\\.new-", 6), isOld],
      // Between the two renames there is none; the next build puts the old one back.
      ["before it puts the new one in place", killedAt(["rename"], "/site$", 3), undefined],
      ["before it makes the old one the twin", killedAt(["renameSync"], "site\\.twin-", 1), isNew],
      ["while it makes a new twin", killedAt(["linkSync"], "site\\.twin-", 20), isNew],
      ["before it notes what the twin is", killedAt(["renameSync"], "/\\.ampwitness/sites/", 1), isNew],
    ] as const) {
      expect((await built([], saboteur)).status, moment).toBeNull();
      if (left === undefined) expect(readdirSync(root), moment).not.toContain("site");
      else expect(stands(), moment).toEqual(left);
    }
    expect((await builtHere()).status).toBe(0);
    expect(stands()).toEqual(["new"]);
    expect(readdirSync(root).sort()).toEqual([".ampwitness", "site", "workspace"]);
  });
});

/** Has every write fail once so many have succeeded, as on a disk that has filled up. @returns what makes room again */
function fillDisk(writes: number): () => void {
  let left = writes;
  const real = { writeFileSync: fs.writeFileSync, copyFileSync: fs.copyFileSync };
  const write = (path: unknown): void => {
    if (String(path).includes("site") && left-- <= 0)
      throw Object.assign(new Error("ENOSPC: no space left on device, write"), { code: "ENOSPC" });
  };
  fs.writeFileSync = (...rest) => {
    write(rest[0]);
    real.writeFileSync(...rest);
  };
  fs.copyFileSync = (...rest) => {
    write(rest[1]);
    real.copyFileSync(...rest);
  };
  syncBuiltinESMExports();
  return () => {
    Object.assign(fs, real);
    syncBuiltinESMExports();
  };
}

describe("a disk that is full", { timeout: 300_000 }, () => {
  it("at any write, leaves the last good site, says what to do, and the next build is right", async () => {
    const good = filesBelow(out);
    writeFileSync(join(workspace, "content/about.md"), "---\ntitle: About\n---\nWords.\n");
    for (const writes of [0, 1, 5, 40]) {
      const makeRoom = fillDisk(writes);
      const { status, told } = await builtHere().finally(makeRoom);
      expect(status, told).toBe(1);
      expect(told).toContain("The disk is full. Make room, and build again");
      expect(told).toContain("The last good site stays as it was.");
      expect(differing(filesBelow(out), good), `after ${writes} writes`).toEqual([]);
    }
    expect((await builtHere()).status).toBe(0);
    expect([...filesBelow(out).keys()]).toContain("about/index.html");
    expect(readdirSync(root).filter((name) => name.startsWith("site"))).toEqual(["site"]);
  });
});

describe("a worker that dies", { timeout: 120_000 }, () => {
  it("is told with what it was at, and nothing is published", async () => {
    const good = filesBelow(out);
    appendFileSync(join(workspace, "data/instruments/recorder.yaml"), "notes: every test rests on it\n");
    const dying = `import { isMainThread } from "node:worker_threads";
if (!isMainThread) setTimeout(() => process.exit(7), 200);
`;
    const { status, told } = await built(["--threads", "2"], dying);
    expect(status).toBe(1);
    expect(told).toMatch(/test [a-z]+-brook-1-\d could not be worked out: /);
    expect(told).toContain("The last good site stays as it was.");
    expect(differing(filesBelow(out), good)).toEqual([]);
    expect(readdirSync(root).filter((name) => name.startsWith("site"))).toEqual(["site"]);
  });
});

describe("the command line of a build", { timeout: 120_000 }, () => {
  it.each([
    ["--shard", { shard: "9/8" }, "expected a share such as 3/8"],
    ["--shard", { shard: "0/8" }, "expected a share such as 3/8"],
    ["--threads", { threads: "none" }, "expected a number from 1 to 99"],
  ])("%s is refused for %o, with what was expected", async (option, options, expected) => {
    const nowhere = join(root, "nowhere/site");
    const { status, told } = await builtHere({ ...options, out: nowhere });
    expect(status).toBe(1);
    expect(told).toContain(`${option}: ${expected}`);
    expect(readdirSync(root)).not.toContain("nowhere");
  });

  it("--shard measures into the cache and publishes nothing; caches that are put together leave nothing to measure", async () => {
    const site = out;
    const [one, other, together] = ["one", "other", "together"].map((name) => join(root, name));
    if (one === undefined || other === undefined || together === undefined) throw new Error("three names give three paths");
    try {
      for (const folder of [one, other, together]) mkdirSync(folder);
      for (const folder of [one, other])
        cpSync(join(root, ".ampwitness/forecasts"), join(folder, ".ampwitness/forecasts"), { recursive: true });
      out = join(one, "site");
      const ofOne = await built(["--shard", "1/2"]);
      const ofOther = await builtHere({ out: join(other, "site"), shard: "2/2" });
      for (const [{ status, told }, folder] of [
        [ofOne, one],
        [ofOther, other],
      ] as const) {
        expect(status, told).toBe(0);
        expect(told).toContain("Nothing was published");
        expect(readdirSync(folder)).toEqual([".ampwitness"]);
        cpSync(join(folder, ".ampwitness"), join(together, ".ampwitness"), { recursive: true });
      }
      const { told } = await builtHere({ out: join(together, "site") });
      expect(told).toMatch(/^measuring tests: 4 of 4$/m);
      expect(told).not.toMatch(/^measuring tests: [1-3] of 4$/m);
    } finally {
      out = site;
      for (const folder of [one, other, together]) rmSync(folder, { recursive: true, force: true });
    }
  });
});

/** The last, since it leaves tests that cannot be published. */
describe("files that are not as they should be", { timeout: 120_000 }, () => {
  it("keep their own test off the site, with what to do; the others are published, and raw files are as they were", async () => {
    const log = (test: string): string => join(workspace, `data/tests/${test}/logs/day-1.csv`);
    rmSync(log("alder-brook-1-1"));
    symlinkSync("/etc/hostname", log("alder-brook-1-1"));
    truncateSync(log("birch-brook-1-1"), 0);
    writeFileSync(log("alder-brook-1-2"), Buffer.alloc(3_000_000, 0xff));
    chmodSync(log("birch-brook-1-2"), 0o444);
    const before = filesBelow(join(workspace, "data"));
    const times = [...before.keys()].map((path) => statSync(join(workspace, "data", path)).mtimeMs);
    const { status, told } = await builtHere();
    expect(status).toBe(1);
    expect(told).toContain("link-in-workspace");
    expect(told).toContain("copy the file here in place of the link");
    for (const test of ["alder-brook-1-1", "alder-brook-1-2", "birch-brook-1-1"]) expect(told).toContain(`Not published: test ${test}`);
    expect(readdirSync(join(out, "tests")).sort()).toEqual(["birch-brook-1-2"]);
    expect(differing(filesBelow(join(workspace, "data")), before)).toEqual([]);
    expect([...before.keys()].map((path) => statSync(join(workspace, "data", path)).mtimeMs)).toEqual(times);
  });
});
