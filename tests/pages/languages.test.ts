/** A site of three languages in a browser. That its links hold is the build's own check. */
import { execFileSync } from "node:child_process";
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import type { Page } from "playwright-core";
import { afterAll, describe, expect, it } from "vitest";
import { launchBrowser } from "./browser.ts";
import { fixture } from "./fixture.ts";
import { serve } from "./serve.ts";

const browser = await launchBrowser();
const axeSource = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const siteDir = mkdtempSync(join(tmpdir(), "languages-"));
execFileSync(process.execPath, ["--import", "tsx", "tests/pages/build-languages.ts", siteDir]);
afterAll(() => rmSync(siteDir, { recursive: true }));

const kinds = [
  "",
  "chargers/lantern-eight/",
  "tests/lantern-first/",
  "find/",
  "compare/",
  "cards/lantern-eight/",
  "quote/lantern-eight/",
  "method/",
  "signs/",
  "cautions/",
  "data/",
  "corrections/",
];

describe("a site of three languages", () => {
  it("has the same pages below each language's folder, and each data file once", () => {
    const pagesIn = (folder: string) =>
      readdirSync(join(siteDir, folder), { recursive: true, encoding: "utf8" })
        .filter((path) => path.endsWith("index.html") && !/^(?:pl|de)\b/.test(path))
        .sort();
    expect(pagesIn("pl")).toEqual(pagesIn(""));
    expect(pagesIn("de")).toEqual(pagesIn(""));
    expect(existsSync(join(siteDir, "pl/data/index.json"))).toBe(false);
    expect(existsSync(join(siteDir, "pl/404.html"))).toBe(false);
  });

  it("indexes each language by itself for the word search", () => {
    const entry = JSON.parse(readFileSync(join(siteDir, "pagefind/pagefind-entry.json"), "utf8")) as { languages: object };
    expect(Object.keys(entry.languages).sort()).toEqual(["de", "en", "pl"]);
  });

  it("gives each script the words of one language only", () => {
    const script = (name: string) => readFileSync(join(siteDir, "assets", name), "utf8");
    expect(script("find.de.js")).toContain("Nicht gefragt");
    expect(script("find.de.js")).not.toMatch(/Poza pytaniem|Not put to the question/);
    expect(script("find.js")).not.toMatch(/Poza pytaniem|Nicht gefragt/);
    expect(gzipSync(script("find.pl.js")).byteLength).toBeLessThanOrEqual(60_000);
    for (const name of ["sort.pl.js", "search.de.js", "compare.de.js"])
      expect(gzipSync(script(name)).byteLength).toBeLessThanOrEqual(3_000);
  });
});

/** What axe objects to, once its source is in the page. */
const violationsOn = (page: Page): Promise<string[]> =>
  page.evaluate(async () => {
    const axe = (globalThis as unknown as { axe: { run(): Promise<{ violations: { id: string; nodes: { html: string }[] }[] }> } }).axe;
    return (await axe.run()).violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`);
  });

/** Texts of several words that a page shows as its own language's: what is marked as another's, code and names of files are left out. */
const textsOn = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const own = document.documentElement.lang;
    const found: string[] = [];
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
      const text = node.nodeValue?.trim() ?? "";
      const isOwn = node.parentElement?.closest("[lang]")?.getAttribute("lang") === own;
      if (
        isOwn &&
        /\p{Ll}{2,} \p{Ll}{2,}/u.test(text) &&
        !/\.csv\b/.test(text) &&
        node.parentElement?.closest("code, script, style") == null
      )
        found.push(text);
    }
    return found;
  });

/**
 * Names of chargers, batteries and tests are the same in every language. Labels of figures stand in headings and choices as well, which cannot
 * mark a language: that each one of the build's is told is seen to in tests/lib/publish/words, and those of this fixture are its own.
 */
const names = [
  ...fixture.chargers.map(({ name }) => name),
  ...fixture.tests.flatMap(({ title, battery, figures }) => [title, battery.name, ...figures.map(({ label }) => label)]),
];
const isName = (text: string): boolean => names.some((name) => text.startsWith(name));

describe.skipIf(browser === undefined)("pages of three languages in a browser", async () => {
  if (browser === undefined) return;
  const server = await serve(siteDir);
  const context = await browser.newContext({ viewport: { width: 320, height: 700 }, bypassCSP: true });
  afterAll(async () => {
    await browser.close();
    await server.close();
  });

  it.each(["pl", "de"].flatMap((language) => kinds.map((path) => `${language}/${path}`)))(
    "/%s: its language, axe, 320 px",
    async (path) => {
      const page = await context.newPage();
      await page.goto(`${server.origin}/${path}`);
      expect(await page.locator("html").getAttribute("lang")).toBe(path.slice(0, 2));
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
      await page.evaluate(axeSource);
      // What scrolls on a phone only, a keyboard must reach there, too.
      if (path.includes("chargers/")) expect(await violationsOn(page)).toEqual([]);
      await page.setViewportSize({ width: 1280, height: 900 });
      expect(await violationsOn(page)).toEqual([]);
      await page.close();
    },
    60_000,
  );

  it.each(kinds)("/%s: nothing that the English page says stands unmarked in another language", async (path) => {
    const page = await context.newPage();
    const textsAt = async (address: string): Promise<string[]> => {
      await page.goto(`${server.origin}/${address}`);
      return textsOn(page);
    };
    const english = new Set(await textsAt(path));
    expect(english.size).toBeGreaterThan(5);
    for (const language of ["pl", "de"])
      expect((await textsAt(`${language}/${path}`)).filter((text) => english.has(text) && !isName(text))).toEqual([]);
    await page.close();
  });

  it("switches to the same page in another language and back", async () => {
    const page = await context.newPage();
    await page.goto(`${server.origin}/chargers/lantern-eight/`);
    await page.getByRole("link", { name: "Deutsch" }).click();
    await page.waitForURL("**/de/chargers/lantern-eight/**");
    await page.getByRole("link", { name: "English" }).click();
    await page.waitForURL(`${server.origin}/chargers/lantern-eight/**`);
    await page.close();
  });
});
