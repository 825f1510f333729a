import {
  appendFileSync,
  cpSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  truncateSync,
  utimesSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it, vi } from "vitest";
import { build } from "../../../lib/commands/build.ts";
import { writeLarge } from "../../large/write-large.ts";
import { filesBelow } from "../../sites/workspace.ts";

/** One bench for all: each test leaves a site that is right, and the next goes on from there. */
let root = "";
let workspace = "";
let out = "";
let plain = "";

beforeAll(async () => {
  vi.spyOn(process.stderr, "write").mockImplementation(() => true);
  vi.spyOn(process.stdout, "write").mockImplementation(() => true);
  root = mkdtempSync(join(tmpdir(), "kept-site-"));
  workspace = join(root, "workspace");
  out = join(root, "site");
  plain = join(root, "plain/site");
  writeLarge(workspace, { chargers: 3, tests: 4 });
  await build({ workspace, out });
}, 180_000);
afterAll(() => {
  vi.restoreAllMocks();
  rmSync(root, { recursive: true, force: true });
});

const twin = (): string => join(root, ".ampwitness/twins/site");
const inWorkspace = (path: string): string => join(workspace, path);
const differing = (a: Map<string, Buffer>, b: Map<string, Buffer>): string[] =>
  [...new Set([...a.keys(), ...b.keys()])].filter((path) => !a.get(path)?.equals(b.get(path) ?? Buffer.from("none")));

let anew: { readonly workspace: Map<string, Buffer>; readonly site: Map<string, Buffer> } | undefined;

/** The site as a build makes it that keeps nothing of an earlier site; of the same workspace it is made once. */
async function asMadeAnew(): Promise<Map<string, Buffer>> {
  const read = filesBelow(workspace);
  if (anew !== undefined && differing(anew.workspace, read).length === 0) return anew.site;
  rmSync(join(root, "plain"), { recursive: true, force: true });
  mkdirSync(join(root, "plain"));
  for (const kind of ["tests", "test-results", "samples", "chargers", "charger-results", "forecasts"])
    cpSync(join(root, ".ampwitness", kind), join(root, "plain/.ampwitness", kind), { recursive: true });
  await build({ workspace, out: plain });
  anew = { workspace: read, site: filesBelow(plain) };
  return anew.site;
}

/** Builds, and holds the site against one made anew. @returns the files that were written, and not kept */
async function rebuilt(): Promise<string[]> {
  const before = new Map([...filesBelow(out).keys()].map((path) => [path, statSync(join(out, path)).ino]));
  expect(await build({ workspace, out })).toBe(0);
  expect(differing(filesBelow(out), await asMadeAnew())).toEqual([]);
  expect(differing(filesBelow(out), filesBelow(twin()))).toEqual([]);
  return [...filesBelow(out).keys()].filter((path) => statSync(join(out, path)).ino !== before.get(path));
}

describe("a site that is built again", { timeout: 180_000 }, () => {
  it("keeps every file where nothing changed", async () => {
    expect(await rebuilt()).toEqual([]);
  });

  it("keeps what it rests on among the entries though nobody built it for long, and no more than that", async () => {
    const entries = join(root, ".ampwitness");
    writeFileSync(join(entries, "test-results/unused"), "of a test that is no more");
    const kinds = ["tests", "test-results", "samples", "chargers", "charger-results", "workspaces", "sites"];
    const names = (): string[] => kinds.flatMap((kind) => readdirSync(join(entries, kind)).map((name) => `${kind}/${name}`));
    const before = names();
    for (const name of [...before, "swept"]) utimesSync(join(entries, name), 1e9, 1e9);
    expect(await rebuilt()).toEqual([]);
    expect(names()).toEqual(before.filter((name) => name !== "test-results/unused"));
  });

  it("makes anew what a review stands on, and no test's page", async () => {
    appendFileSync(inWorkspace("content/reviews/birch-brook-1.md"), "More words.\n");
    const made = await rebuilt();
    expect(made).toContain("chargers/birch-brook-1/index.html");
    expect(made).toContain("cards/birch-brook-1/index.html");
    expect(made.filter((path) => path.startsWith("tests/") || /alder|clover/.test(path))).toEqual([]);
    // What gathers all tests would have to read them all.
    for (const path of ["index.html", "sitemap.xml", "feed.xml", "data/find.json"]) expect(made).not.toContain(path);
  });

  it("draws after a longer log the pages of its charger, of that charger's tests, and those that compare, and no others", async () => {
    appendFileSync(inWorkspace("data/tests/alder-brook-1-1/logs/day-1.csv"), "99999,12.9,0.1\n");
    const drawn = (await rebuilt()).filter((path) => path.endsWith(".html"));
    for (const page of ["chargers/alder-brook-1", "tests/alder-brook-1-1"]) expect(drawn).toContain(`${page}/index.html`);
    expect(drawn.filter((path) => !path.includes("alder-brook-1"))).toEqual(["find/index.html", "index.html"]);
  });

  it.each<[string, () => void]>([
    ["another price", () => edit("data/chargers/clover-brook-1.yaml", /amount: [\d.]+/, "amount: 1.50")],
    ["a correction", () => appendFileSync(inWorkspace("data/chargers/clover-brook-1.yaml"), correction)],
    ["a page of the site's own", () => writeFileSync(inWorkspace("content/about.md"), "---\ntitle: About\n---\nWords.\n")],
    ["no address of the site", () => edit("data/site.yaml", /baseUrl: .*\n/, "")],
    ["a test that goes", () => rmSync(inWorkspace("data/tests/alder-brook-1-2"), { recursive: true })],
    ["a page that goes", () => rmSync(inWorkspace("content/about.md"))],
    ["a charger of another name", () => edit("data/chargers/birch-brook-1.yaml", "name: Birch Brook 1", "name: Zelkova 9")],
  ])("is as one made anew after %s", async (_, change) => {
    change();
    expect((await rebuilt()).length).toBeGreaterThan(0);
  });

  it("is mended where somebody wrote into it, cut a file short with its date put back, took files away, or left their own", async () => {
    appendFileSync(join(out, "index.html"), "scribbled");
    const page = join(out, "tests/birch-brook-1-1/index.html");
    const { atime, mtime } = statSync(page);
    truncateSync(page, 100);
    utimesSync(page, atime, mtime);
    writeFileSync(join(out, "data/mine.txt"), "mine");
    mkdirSync(join(out, "mine"));
    rmSync(join(out, "data/find.json"));
    rmSync(join(out, "tests/clover-brook-1-1"), { recursive: true });
    await rebuilt();
    // What was left in the old site must not come back when that is the folder of the next.
    await rebuilt();
    expect(readdirSync(out)).not.toContain("mine");
  });

  it("is made as a whole where the twin is gone, or what was remembered is damaged", async () => {
    rmSync(twin(), { recursive: true });
    await rebuilt();
    for (const name of readdirSync(join(root, ".ampwitness/sites"))) truncateSync(join(root, ".ampwitness/sites", name), 1000);
    await rebuilt();
    for (const kind of readdirSync(join(root, ".ampwitness")))
      if (kind !== "forecasts") rmSync(join(root, ".ampwitness", kind), { recursive: true });
    await rebuilt();
    expect(await rebuilt()).toEqual([]);
  });

  it("is right after a build that failed half-way, which leaves the last good one byte for byte", async () => {
    const good = filesBelow(out);
    writeFileSync(inWorkspace("content/wrong.md"), "---\ntitle: Wrong\n---\nSee [nothing](no-such-page/).\n");
    edit("data/site.yaml", "A thousand chargers", "A handful of chargers");
    expect(await build({ workspace, out })).toBe(1);
    expect(differing(filesBelow(out), good)).toEqual([]);
    rmSync(inWorkspace("content/wrong.md"));
    // The other title is on every page.
    expect(await rebuilt()).toContain("tests/birch-brook-1-1/index.html");
  });

  it("never shares a raw file with the workspace: what is written into the one does not reach the other", async () => {
    const raw = "data/tests/birch-brook-1-1/logs/day-1.csv";
    const before = readFileSync(inWorkspace(raw));
    appendFileSync(join(out, "raw", raw), "scribbled");
    expect(readFileSync(inWorkspace(raw)).equals(before)).toBe(true);
    await rebuilt();
  });

  it("can be moved away, and comes back", async () => {
    renameSync(out, join(root, "elsewhere"));
    expect(await build({ workspace, out })).toBe(0);
    expect(differing(filesBelow(out), await asMadeAnew())).toEqual([]);
  });
});

const correction = `corrections:
  - { on: 2026-07-01, kind: correction, what: Price mended, why: Misread, changesVerdict: false }
`;

function edit(path: string, from: string | RegExp, to: string): void {
  const text = readFileSync(inWorkspace(path), "utf8");
  const changed = text.replace(from, to);
  if (changed === text) throw new Error(`${path} holds no ${from}`);
  writeFileSync(inWorkspace(path), changed);
}
