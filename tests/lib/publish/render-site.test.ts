import { mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, relative } from "node:path";
import { gunzipSync } from "node:zlib";
import { afterEach, describe, expect, it } from "vitest";
import { siteFolders } from "../../../lib/check/page-address.ts";
import { renderSite } from "../../../lib/publish/render-site.ts";
import type { Results } from "../../../lib/publish/results.ts";
import { fixture, writeFixture } from "../../pages/fixture.ts";

const folders: string[] = [];
function newFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), "site-"));
  folders.push(folder);
  return folder;
}
afterEach(() => {
  for (const folder of folders.splice(0)) rmSync(folder, { recursive: true, force: true });
});

const filesIn = (folder: string) =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)))
    .sort();

/** A build takes two or three seconds; four of them on a busy machine need room. */
const patienceMs = 60_000;

describe("rendering a site", () => {
  it(
    "tells its progress, counts its pages, and keeps to its budgets of bytes",
    async () => {
      const siteDir = newFolder();
      writeFixture(siteDir);
      const progress: [number, number][] = [];
      const { pages } = await renderSite(siteDir, { onPage: (done, total) => progress.push([done, total]) });
      expect(filesIn(siteDir).filter((file) => file.endsWith(".html"))).toHaveLength(pages);
      // A page of the reviewer's own must not be given the name of any of these.
      const folders = readdirSync(siteDir, { withFileTypes: true }).flatMap((entry) => (entry.isDirectory() ? [entry.name] : []));
      const own = fixture.index.pages.map(({ id }) => id);
      expect(siteFolders).toEqual(expect.arrayContaining(folders.filter((name) => !own.includes(name))));
      expect(progress[0]).toEqual([0, pages]);
      expect(progress.at(-1)).toEqual([pages, pages]);
      const size = (name: string) => statSync(join(siteDir, "assets", name)).size;
      expect(size("site.css")).toBeLessThanOrEqual(15_000);
      expect(size("sort.js") + size("search.js")).toBeLessThanOrEqual(15_000);
    },
    patienceMs,
  );

  it(
    "can be run again over its own output",
    async () => {
      const siteDir = newFolder();
      writeFixture(siteDir);
      await renderSite(siteDir);
      const before = filesIn(siteDir).map((file) => readFileSync(join(siteDir, file)).toString("base64"));
      await renderSite(siteDir);
      expect(filesIn(siteDir).map((file) => readFileSync(join(siteDir, file)).toString("base64"))).toEqual(before);
    },
    patienceMs,
  );

  it(
    "lets words be searched, and keeps figures out of the index",
    async () => {
      const siteDir = newFolder();
      writeFixture(siteDir);
      await renderSite(siteDir);
      const fragments = filesIn(siteDir).filter((file) => file.endsWith(".pf_fragment"));
      const indexed = fragments.map((file) => gunzipSync(readFileSync(join(siteDir, file))).toString("utf8")).join();
      expect(readFileSync(join(siteDir, "tests/lantern-first/index.html"), "utf8")).toContain("47.32");
      expect(indexed).toContain("kettle");
      expect(indexed).not.toContain("47.32");
    },
    patienceMs,
  );

  it(
    "lists every broken link at once",
    async () => {
      const siteDir = newFolder();
      const [about] = fixture.index.pages;
      const broken = {
        ...about,
        html: '<p><a href="/no/where/">a</a> <a href="/method/#nothing">b</a></p>',
      } as Results["index"]["pages"][number];
      writeFixture(siteDir, { ...fixture, index: { ...fixture.index, pages: [broken] } });
      await expect(renderSite(siteDir)).rejects.toThrow(/2 broken links:[\s\S]*no\/where[\s\S]*nothing/);
    },
    patienceMs,
  );

  it(
    "renders a site on which nothing is published yet",
    async () => {
      const siteDir = newFolder();
      writeFixture(siteDir, {
        index: { ...fixture.index, rows: [], tests: [], chargers: [], methods: [], pages: [], corrections: [] },
        tests: [],
        chargers: [],
      });
      expect(await renderSite(siteDir)).toEqual({ pages: 10 });
      expect(readFileSync(join(siteDir, "index.html"), "utf8")).toContain("No test has been published yet.");
    },
    patienceMs,
  );

  it("names the file that does not hold results", async () => {
    const siteDir = newFolder();
    writeFixture(siteDir);
    writeFileSync(join(siteDir, "data/index.json"), "{}");
    await expect(renderSite(siteDir)).rejects.toThrow("data/index.json does not hold results of the published format");
  });

  it(
    "never runs a file that lies in the site's folder as a template",
    async () => {
      const siteDir = newFolder();
      writeFixture(siteDir);
      const proof = join(siteDir, "ran.txt");
      const script = `import { writeFileSync } from "node:fs"; writeFileSync(${JSON.stringify(proof)}, ""); export const render = () => "x";`;
      writeFileSync(join(siteDir, "raw/evil.11ty.js"), script);
      writeFileSync(join(siteDir, "raw/raw.11tydata.js"), script);
      await renderSite(siteDir);
      expect(filesIn(siteDir)).not.toContain("ran.txt");
    },
    patienceMs,
  );
});
