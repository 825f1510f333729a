/** What leaves the site, in a browser: the card on paper and on a telephone, the embed in a frame, data blocks under the page's policy. */
import { execFileSync } from "node:child_process";
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser, Page } from "playwright-core";
import { afterAll, describe, expect, it } from "vitest";
import { baseUrl, publishedResults } from "../lib/publish/outward/published.ts";
import { launchBrowser } from "./browser.ts";
import { serve } from "./serve.ts";

const browser = await launchBrowser();
const axeSource = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const chargers = publishedResults().chargers.map(({ id }) => id);
const bare = chargers.flatMap((id) => [`/cards/${id}/`, `/embed/${id}/`]);
const framed = ["/quote/", ...chargers.flatMap((id) => [`/quote/${id}/`, `/results/${id}/`])];

/** Points to millimetres: 72 points are one inch. */
const millimetres = (points: number) => (points / 72) * 25.4;

describe.skipIf(browser === undefined)("what leaves the site", async () => {
  if (browser === undefined) return;
  const siteDir = mkdtempSync(join(tmpdir(), "outward-"));
  const [inventedDir, realDir] = [join(siteDir, "invented"), join(siteDir, "real")];
  for (const [dir, kind] of [
    [inventedDir, "invented"],
    [realDir, "real"],
  ] as const)
    execFileSync(process.execPath, ["--import", "tsx", "tests/pages/build-published.ts", dir, kind]);
  const servers = { invented: await serve(inventedDir), real: await serve(realDir) };
  afterAll(async () => {
    await browser.close();
    await servers.invented.close();
    await servers.real.close();
    rmSync(siteDir, { recursive: true });
  });

  async function open(path: string, options: Parameters<Browser["newContext"]>[0] = {}, kind: keyof typeof servers = "invented") {
    const { origin } = servers[kind];
    const context = await browser?.newContext(options);
    if (context === undefined) throw new Error("the browser is gone");
    const page = await context.newPage();
    const complaints: string[] = [];
    page.on("console", (message) => message.type() === "error" && complaints.push(message.text()));
    page.on("pageerror", (error) => complaints.push(error.message));
    page.on("request", (request) => !request.url().startsWith(`${origin}/`) && complaints.push(`foreign request: ${request.url()}`));
    await page.goto(origin + path);
    return { page, complaints, close: () => context.close() };
  }

  it.each([...bare, ...framed])("%s: no console error, no foreign request, nothing wider than 320 px", async (path) => {
    const { page, complaints, close } = await open(path, { viewport: { width: 320, height: 700 } });
    expect(await page.evaluate(() => document.scrollingElement?.scrollWidth)).toBe(320);
    expect(complaints).toEqual([]);
    await close();
  });

  describe.each(["light", "dark"] as const)("%s", (colorScheme) => {
    it.each([...bare, ...framed])("%s: axe finds nothing to object to", async (path) => {
      const { page, close } = await open(path, { colorScheme });
      expect(await axe(page)).toEqual([]);
      await close();
    });
  });

  it.each(chargers)("the card of %s is one sheet of A6", async (id) => {
    const { page, close } = await open(`/cards/${id}/`);
    const pdf = (await page.pdf({ preferCSSPageSize: true })).toString("latin1");
    expect(pdf.match(/\/Type\s*\/Page\b/g)).toHaveLength(1);
    const [, width, height] = /\/MediaBox\s*\[0 0 ([\d.]+) ([\d.]+)\]/.exec(pdf) ?? [];
    // Chromium rounds a page to whole CSS pixels, 0.26 mm.
    expect(Math.abs(millimetres(Number(width)) - 105)).toBeLessThan(0.3);
    expect(Math.abs(millimetres(Number(height)) - 148)).toBeLessThan(0.3);
    await close();
  });

  it("the card is read on a telephone of 390 px without scrolling to the side, its code wide enough to be scanned", async () => {
    const { page, close } = await open("/cards/lantern-eight/", { viewport: { width: 390, height: 844 } });
    expect(await page.evaluate(() => document.scrollingElement?.scrollWidth)).toBe(390);
    const size = await page
      .locator(".headlines dd")
      .first()
      .evaluate((cell) => Number.parseFloat(getComputedStyle(cell).fontSize));
    expect(size).toBeGreaterThanOrEqual(16);
    const code = await page.locator(".qr").boundingBox();
    // 22 mm at 96 px an inch.
    expect(code?.width).toBeGreaterThanOrEqual(83);
    await close();
  });

  it("in print nothing of the card is smaller than six points", async () => {
    const { page, close } = await open("/cards/pebble-trickle/");
    await page.emulateMedia({ media: "print" });
    const sizesPx = await page
      .locator("main *")
      .evaluateAll((all) =>
        all.filter((element) => element.textContent?.trim()).map((element) => Number.parseFloat(getComputedStyle(element).fontSize)),
      );
    // 6 pt are 8 px.
    expect(Math.min(...sizesPx)).toBeGreaterThanOrEqual(8);
    await close();
  });

  it("the embed says everything with scripts off, and in a frame that lets nothing run", async () => {
    const { page, complaints, close } = await open("/embed/lantern-eight/", { javaScriptEnabled: false });
    const words = await page.locator("main").textContent();
    for (const word of ["Invented data", "three quarters", "5.92", "short of the claim", "not measured", "2026-04-02"])
      expect(words).toContain(word);
    expect(complaints).toEqual([]);
    await close();
  });

  it("the embed keeps its styles in the frame that the site's code makes", async () => {
    const host = join(inventedDir, "host.html");
    writeFileSync(host, `<!doctype html><title>host</title>${frameOf(inventedDir).replaceAll(baseUrl, "/")}`);
    const { page, complaints, close } = await open("/host.html");
    const frame = page.frameLocator("iframe");
    await frame.locator("main").waitFor();
    expect(await frame.locator("body").evaluate((body) => getComputedStyle(body).margin)).toBe("0px");
    expect(complaints).toEqual([]);
    await close();
    rmSync(host);
  });

  it.each(bare)("%s: every mark has its shape", async (path) => {
    const { page, close } = await open(path);
    const boxes = await page.locator("main svg use").evaluateAll((uses) =>
      uses.map((use) => {
        const { width, height } = (use as SVGUseElement).getBBox();
        return width > 0 && height > 0;
      }),
    );
    expect(boxes.length).toBeGreaterThan(0);
    expect(boxes).not.toContain(false);
    await close();
  });

  it("a link from a quotation leads to the place of its version", async () => {
    const { page, close } = await open("/results/lantern-eight/#v-2026-03-10");
    expect(await page.locator("tr:target").textContent()).toContain("A newer result exists");
    await close();
  });

  it.each([
    ["real", "/chargers/lantern-eight/", "Product"],
    ["real", "/tests/lantern-first/", "Dataset"],
    ["invented", "/tests/lantern-first/", "Dataset"],
    ["invented", "/data/", "DataCatalog"],
  ] as const)("on a %s site %s carries a block of data that the policy lets pass", async (kind, path, type) => {
    const { page, complaints, close } = await open(path, {}, kind);
    const blocks = await page.locator('script[type="application/ld+json"]').allTextContents();
    expect(blocks.map((block) => JSON.parse(block)["@graph"].map((thing: { "@type": string }) => thing["@type"]))).toEqual([[type]]);
    expect(complaints).toEqual([]);
    await close();
  });

  it("every note of a review stands on the page in the same words", async () => {
    const { page, close } = await open("/chargers/lantern-eight/", {}, "real");
    const block = (await page.locator('script[type="application/ld+json"]').textContent()) ?? "";
    const [{ review }] = JSON.parse(block)["@graph"];
    const words = (await page.locator("main").textContent()) ?? "";
    const notes = [...review.positiveNotes.itemListElement, ...review.negativeNotes.itemListElement].map(({ name }) => name);
    for (const note of [review.reviewBody, ...notes]) expect(words).toContain(note);
    await close();
  });

  it("every whole address that a page, a feed or the sitemap names within the site is a file", () => {
    const files = ["feed.xml", "sitemap.xml", "robots.txt", "chargers/lantern-eight/feed.xml", ...pagesIn(inventedDir)];
    const named = files.flatMap(
      (file) => readFileSync(join(inventedDir, file), "utf8").match(/https:\/\/bench\.example\/chargers\/[^"<\s#&\\}]*/g) ?? [],
    );
    const targets = [...new Set(named.map((address) => decodeURI(address.slice(baseUrl.length))))];
    expect(targets.length).toBeGreaterThan(30);
    expect(
      targets.filter((target) => !isFile(join(inventedDir, target.endsWith("/") || target === "" ? `${target}index.html` : target))),
    ).toEqual([]);
  });

  it("the sitemap names every page but those that ask not to be found", () => {
    const listed = readFileSync(join(inventedDir, "sitemap.xml"), "utf8").match(/<loc>/g)?.length;
    const hidden = pagesIn(inventedDir).filter((page) => /^(cards|embed)\/|^404\.html$/.test(page)).length;
    expect(listed).toBe(pagesIn(inventedDir).length - hidden);
  });
});

const pagesIn = (dir: string) => readdirSync(dir, { recursive: true, encoding: "utf8" }).filter((name) => name.endsWith(".html"));
const isFile = (path: string) => existsSync(path) && statSync(path).isFile();

/** The code of the frame as a reader would copy it from the page. */
function frameOf(dir: string): string {
  const [code] = /&lt;iframe[\s\S]*?&lt;\/iframe>/.exec(readFileSync(join(dir, "quote/lantern-eight/index.html"), "utf8")) ?? [];
  if (code === undefined) throw new Error("expected the code of a frame, found none");
  return code.replaceAll("&lt;", "<").replaceAll("&quot;", '"').replaceAll("&amp;", "&");
}

const axe = async (page: Page): Promise<string[]> => {
  await page.evaluate(axeSource);
  return page.evaluate(`axe.run(document, { runOnly: ["wcag2a", "wcag2aa", "wcag21aa", "wcag22aa", "best-practice"] })
    .then(({ violations }) => violations.map((v) => v.id + ": " + v.nodes.slice(0, 3).map((n) => n.html + " " + n.failureSummary).join(" | ")))`);
};
