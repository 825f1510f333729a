/** The built fixture in a browser: what a reader, a keyboard and a screen reader meet. */
import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, statSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { launchBrowser } from "./browser.ts";
import { fixture } from "./fixture.ts";
import { type Server, serve } from "./serve.ts";

const browser = await launchBrowser();
const axeSource = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

const pageKinds = {
  comparison: "/",
  charger: "/chargers/lantern-eight/",
  "charger with little known": "/chargers/pebble-trickle/",
  test: "/tests/lantern-first/",
  "test of a sealed battery": "/tests/pebble-agm/",
  method: "/method/",
  "method entry": "/method/charge-recorded/",
  "method entry of two kinds": "/method/float-window/",
  find: "/find/",
  "side by side": "/compare/",
  "side by side of two": "/compare/?charger=lantern-eight&charger=lantern-two",
  card: "/cards/lantern-eight/",
  embed: "/embed/lantern-eight/",
  signs: "/signs/",
  "how to quote": "/quote/",
  "how to quote a charger": "/quote/lantern-eight/",
  "versions of a result": "/results/lantern-eight/",
  cautions: "/cautions/",
  corrections: "/corrections/",
  data: "/data/",
  "the reviewer's own": "/about/",
  "not found": "/404.html",
};
const kinds = Object.entries(pageKinds);

type Visit = { readonly page: Page; readonly complaints: string[]; close(): Promise<void> };

describe.skipIf(browser === undefined)("pages in a browser", async () => {
  if (browser === undefined) return;
  const siteDir = mkdtempSync(join(tmpdir(), "pages-"));
  execFileSync(process.execPath, ["--import", "tsx", "tests/pages/build-fixture.ts", siteDir]);
  const server: Server = await serve(siteDir);
  afterAll(async () => {
    await browser.close();
    await server.close();
    rmSync(siteDir, { recursive: true });
  });
  const open = (path: string, options?: Parameters<Browser["newContext"]>[0]) => visit(browser, server.origin, path, options);

  describe.each(kinds)("%s", (_, path) => {
    let visited: Visit;
    beforeAll(async () => {
      visited = await open(path);
      await visited.page.evaluate(axeSource);
    });
    afterAll(() => visited.close());

    it("has no console error and asks nobody else", () => {
      expect(visited.complaints).toEqual([]);
    });

    it("has one h1, and headings that never skip a level", async () => {
      const levels = await visited.page.locator("h1,h2,h3,h4,h5,h6").evaluateAll((all) => all.map((heading) => Number(heading.tagName[1])));
      expect(levels.filter((level) => level === 1)).toHaveLength(1);
      expect(levels[0]).toBe(1);
      levels.forEach((level, index) => {
        expect(level - (levels[index - 1] ?? 0)).toBeLessThanOrEqual(1);
      });
    });

    it("has a caption on every table, a scope on every heading cell, every id once", async () => {
      const { page } = visited;
      expect(await page.locator("table:not(:has(caption))").count()).toBe(0);
      expect(await page.locator("th:not([scope])").count()).toBe(0);
      const ids = await page.locator("[id]").evaluateAll((all) => all.map((element) => element.id));
      expect(ids.filter((id, index) => ids.indexOf(id) !== index)).toEqual([]);
    });

    it.each(["light", "dark"] as const)("gives axe nothing to object to, %s", async (colorScheme) => {
      await visited.page.emulateMedia({ colorScheme });
      expect(await axeViolations(visited.page)).toEqual([]);
    });

    it("gives axe nothing to object to in forced colours", async () => {
      await visited.page.emulateMedia({ forcedColors: "active" });
      expect(await axeViolations(visited.page)).toEqual([]);
      await visited.page.emulateMedia({ forcedColors: "none" });
    });

    it("is no wider than a window of 320 px", async () => {
      await visited.page.setViewportSize({ width: 320, height: 700 });
      // Curves drawn by a script follow a moment after the window.
      await expect.poll(() => visited.page.evaluate(() => document.scrollingElement?.scrollWidth)).toBe(320);
    });
  });

  it.each(kinds)("%s gives axe nothing to object to with scripts off, light and dark", async (_, path) => {
    const { page, close } = await open("/404.html");
    const devTools = await page.context().newCDPSession(page);
    await devTools.send("Emulation.setScriptExecutionDisabled", { value: true });
    await page.goto(server.origin + path);
    // axe is a script itself; those of the page stay unrun, since they were passed over as it was read.
    await devTools.send("Emulation.setScriptExecutionDisabled", { value: false });
    expect(await page.locator(".search").isVisible()).toBe(false);
    await page.evaluate(axeSource);
    for (const colorScheme of ["light", "dark"] as const) {
      await page.emulateMedia({ colorScheme });
      expect(await axeViolations(page)).toEqual([]);
    }
    await close();
  });

  it.each(kinds)("%s opens from a folder: its styles are there, and every link within the site is a file", async (_, path) => {
    const { page, complaints, close } = await visit(browser, `file://${siteDir}`, path.replace(/\/(?=\?|$)/, "/index.html"));
    expect(await page.evaluate(() => getComputedStyle(document.body).fontFamily)).toContain("system-ui");
    const targets = await page.locator("a[href]").evaluateAll((all) => all.map((link) => (link as HTMLAnchorElement).href));
    const missing = [...new Set(targets)].filter((target) => target.startsWith("file:") && !isFile(new URL(target)));
    // 404.html is served at any address, so its links start at the server's root.
    expect(path === "/404.html" ? [] : missing).toEqual([]);
    // From a folder a page may read no other file: the two that would say so in words, which their own tests look at.
    expect(complaints.filter((complaint) => !/^Fetch API cannot load|\/data\//.test(complaint))).toEqual([]);
    await close();
  });

  it.each([
    ["/", 390],
    ["/", 1280],
    ["/find/", 390],
    ["/compare/?charger=lantern-eight&charger=lantern-two", 390],
    ["/tests/lantern-first/", 390],
  ] as const)("nothing jumps while %s loads, %i px wide", async (path, width) => {
    const { page, close } = await open(path, { viewport: { width, height: 844 } });
    await page.waitForLoadState("networkidle");
    // 0.1 is what the Core Web Vitals call good (from memory); a tenth of it leaves room for a letter's width.
    expect(await page.evaluate(layoutShift)).toBeLessThan(0.01);
    await close();
  });

  it.each(["/", "/tests/lantern-first/", "/find/", "/compare/?charger=lantern-eight&charger=lantern-two"])(
    "%s is walked through by Tab, each stop in sight and outlined",
    async (path) => {
      const { page, close } = await open(path);
      await page.waitForLoadState("networkidle");
      const expected = await page.evaluate(tabStops);
      const reached = new Set<string>();
      for (let press = 0; press < expected + 5; press++) {
        await page.keyboard.press("Tab");
        const stop = await settledStop(page);
        if (stop === undefined) break;
        expect(stop.inSight, stop.name).toBe(true);
        expect(stop.outlined, stop.name).toBe(true);
        reached.add(stop.name);
      }
      expect(reached.size).toBe(expected);
      await close();
    },
  );

  it("leads to a row far down a page by its address, on a phone as well", async () => {
    const { page: whole, close: closeWhole } = await open("/tests/lantern-first/");
    const last = await whole.locator("tr[id]").last().getAttribute("id");
    await closeWhole();
    const { page, close } = await open(`/tests/lantern-first/#${last}`, { viewport: { width: 390, height: 844 } });
    await page.waitForLoadState("networkidle");
    const top = await page.locator("tr:target").evaluate((row) => row.getBoundingClientRect().top);
    expect(top).toBeGreaterThanOrEqual(0);
    expect(top).toBeLessThan(844);
    await close();
  });

  it.each([
    [390, 844],
    [1280, 900],
  ])("shows the first charger's verdict on the first screen of %d by %d, its choices folded away", async (width, height) => {
    const { page, close } = await open("/", { viewport: { width, height } });
    const verdict = await page.locator(".comparison .seen .mark").first().boundingBox();
    expect((verdict?.y ?? height) + (verdict?.height ?? 0)).toBeLessThan(height);
    expect(await page.getByRole("checkbox", { name: /AGM/ }).isVisible()).toBe(false);
    await page.getByText("Narrow and sort").click();
    await page.getByRole("checkbox", { name: /AGM/ }).check();
    expect(await page.locator("[data-shown]").textContent()).toBe("1 of 3 chargers");
    await close();
  });

  it("sorts on a phone by a list, both ways, and keeps the order in the address", async () => {
    const { page, close } = await open("/", { viewport: { width: 390, height: 844 } });
    await page.getByText("Narrow and sort").click();
    await page.getByLabel("Sort by").selectOption({ label: "Price" });
    expect(await columnOf(page, "Price")).toEqual(["19.5", "49.9", ""]);
    await page.getByRole("button", { name: "Turn the order" }).click();
    expect(await columnOf(page, "Price")).toEqual(["49.9", "19.5", ""]);
    expect(new URL(page.url()).search).toBe("?sort=price-down");
    await page.reload();
    expect(await page.getByLabel("Sort by").inputValue()).toBe("price");
    await close();
  });

  it("copies the address of the view", async () => {
    const { page, close } = await open("/?kind=agm", { permissions: ["clipboard-read", "clipboard-write"] });
    await page.getByText("Narrow and sort").click();
    await page.getByRole("button", { name: "Copy link to this view" }).click();
    await page.getByRole("button", { name: "Copied" }).waitFor();
    expect(await page.evaluate(() => navigator.clipboard.readText())).toBe(page.url());
    await close();
  });

  it.each(["/", "/chargers/lantern-eight/", "/tests/lantern-first/"])(
    "%s fits paper: a browser shrinks all that is too wide",
    async (path) => {
      // A4 less its margins of 14 mm, at 96 px an inch.
      const { page, close } = await open(path, { viewport: { width: 688, height: 1000 } });
      await page.emulateMedia({ media: "print" });
      expect(await page.evaluate(() => document.scrollingElement?.scrollWidth)).toBe(688);
      await close();
    },
  );

  it("prints what is folded away, and leaves out what only a screen can do", async () => {
    const { page, close } = await open("/chargers/lantern-eight/");
    await page.emulateMedia({ media: "print" });
    expect(
      await page.locator(".search, .contents, .top nav").evaluateAll((all) => all.map((part) => getComputedStyle(part).display)),
    ).toEqual(Array(3).fill("none"));
    const folded = page.locator(".findings details ul").first();
    expect((await folded.boundingBox())?.height).toBeGreaterThan(0);
    await close();
  });

  it("shows the whole comparison, and no dead controls, with scripts off", async () => {
    const { page, close } = await open("/", { javaScriptEnabled: false });
    expect(await page.locator(".comparison tbody tr").count()).toBe(fixture.index.chargers.length);
    expect(await page.locator(".comparison details a").count()).toBe(fixture.index.rows.length - fixture.index.chargers.length);
    expect(await page.locator(".facets").isVisible()).toBe(false);
    expect(await page.locator(".comparison tbody td").first().isVisible()).toBe(true);
    expect(await page.locator("th button").count()).toBe(0);
    expect(await page.locator(".search").isVisible()).toBe(false);
    await close();
  });

  it("shows density, witnesses and the profile of voltage and current with scripts off", async () => {
    const { page, close } = await open("/tests/lantern-first/", { javaScriptEnabled: false });
    expect(await page.locator('[role="img"] .drawing svg').count()).toBe(3);
    await close();
  });

  it("sorts by click, absent values last both ways, and says so", async () => {
    const { page, close } = await open("/");
    const heading = page.locator("th", { hasText: "Hours to target" });
    await heading.locator("button").click();
    expect(await heading.getAttribute("aria-sort")).toBe("ascending");
    expect(await columnOf(page, "Hours to target")).toEqual(["61", "70", ""]);
    await heading.locator("button").click();
    expect(await heading.getAttribute("aria-sort")).toBe("descending");
    expect(await columnOf(page, "Hours to target")).toEqual(["70", "61", ""]);
    expect(await page.locator('[role="status"]', { hasText: "Sorted by" }).textContent()).toBe(
      "Sorted by Hours to target, descending. 1 row cannot be told apart from the row above.",
    );
    expect(await page.locator("td.tie").count()).toBe(1);
    await close();
  });

  it("sorts by keyboard, one column at a time", async () => {
    const { page, close } = await open("/");
    await page.locator("th", { hasText: "Hours to target" }).locator("button").click();
    await page.locator("th", { hasText: "Price" }).locator("button").focus();
    await page.keyboard.press("Enter");
    expect(await columnOf(page, "Price")).toEqual(["19.5", "49.9", ""]);
    expect(await page.locator("th[aria-sort]").count()).toBe(1);
    await close();
  });

  it("narrows the table by facets, counts what is left, and keeps the choice in the address", async () => {
    const { page, close } = await open("/");
    const visible = () => page.locator(".comparison tbody tr:visible .charger-name").allTextContents();
    await page.getByText("Narrow and sort").click();
    await page.getByRole("checkbox", { name: /AGM/ }).check();
    expect(await visible()).toEqual([expect.stringMatching(/^Pebble Trickle/)]);
    expect(await page.locator("[data-shown]").textContent()).toBe("1 of 3 chargers");
    expect(new URL(page.url()).search).toBe("?kind=agm");
    // What the choice leaves nothing of is not offered.
    expect(await page.getByRole("checkbox", { name: /brought a battery back/ }).isDisabled()).toBe(true);
    await page.goBack();
    expect(await visible()).toHaveLength(3);
    await close();
  });

  it("restores facets, columns and order from an address, and shows all again by one button", async () => {
    const { page, close } = await open("/?kind=flooded&without=price&sort=hours-to-target-down");
    expect(await page.locator(".comparison tbody tr:visible .charger-name").allTextContents()).toEqual(["Lantern Two", "Lantern Eight"]);
    expect(await page.locator("th", { hasText: "Price" }).isVisible()).toBe(false);
    await page.getByText("Narrow and sort").click();
    await page.getByRole("button", { name: "Show all" }).click();
    await page.locator("[data-shown]", { hasText: "3 of 3 chargers" }).waitFor();
    expect(await page.locator("th", { hasText: "Price" }).isVisible()).toBe(true);
    await close();
  });

  it("unfolds a charger's other tests under its name", async () => {
    const { page, close } = await open("/");
    await page.getByText("1 more test").click();
    expect(await page.locator(".others li").first().isVisible()).toBe(true);
    await close();
  });

  it("keeps the results of the newest words where an older search is answered later", async () => {
    const { page, close } = await open("/");
    const script = `
      const hit = (title) => ({ url: "/", meta: { title } });
      export const options = async () => {};
      export const mergeIndex = async () => {};
      export const debouncedSearch = async (words) => ({
        results: [{ data: () => (words === "older" ? new Promise((answer) => (globalThis.answerOlder = () => answer(hit(words)))) : hit(words)) }],
      });`;
    await page.route("**/pagefind/pagefind.js", (route) => route.fulfill({ contentType: "text/javascript", body: script }));
    const titles = () => page.locator("[data-search-results] a").allTextContents();
    await page.locator("#search-words").fill("older");
    await page.waitForFunction(() => "answerOlder" in globalThis);
    await page.locator("#search-words").fill("newer");
    await page.locator("[data-search-results] a").waitFor();
    await page.evaluate("new Promise((done) => { answerOlder(); setTimeout(done); })");
    expect(await titles()).toEqual(["newer"]);
    await page.evaluate("delete globalThis.answerOlder");
    await page.locator("#search-words").fill("older");
    await page.waitForFunction(() => "answerOlder" in globalThis);
    await page.locator("#search-words").fill("");
    await page.evaluate("new Promise((done) => { answerOlder(); setTimeout(done); })");
    expect(await titles()).toEqual([]);
    await close();
  });

  it("finds a reviewer's word, and leads to its page from any depth", async () => {
    const { page, complaints, close } = await open("/tests/lantern-first/");
    await page.locator("#search-words").fill("kettle");
    const first = page.locator("[data-search-results] a").first();
    await first.waitFor();
    await first.click();
    expect(await page.locator("main").textContent()).toContain("kettle");
    await page.locator("#search-words").fill("zeppelin");
    await page.locator("[data-search-status]", { hasText: "Nothing found" }).waitFor({ timeout: 5000 });
    expect(complaints).toEqual([]);
    await close();
  });

  it("closes the list of results by Escape", async () => {
    const { page, close } = await open("/");
    await page.locator("#search-words").fill("kettle");
    await page.locator("[data-search-results] a").first().waitFor();
    await page.keyboard.press("Escape");
    expect(await page.locator("[data-search-results]").isVisible()).toBe(false);
    await close();
  });

  it("works in a sub-folder of a server", async () => {
    const parent = await serve(join(siteDir, ".."));
    const { page, complaints, close } = await visit(browser, parent.origin, `/${siteDir.split("/").at(-1)}/chargers/lantern-eight/`);
    await page.getByRole("link", { name: "Method", exact: true }).click();
    expect(await page.locator("h1").textContent()).toBe("Method");
    await page.locator("#search-words").fill("kettle");
    await page.locator("[data-search-results] a").first().click();
    expect(await page.locator("main").textContent()).toContain("kettle");
    expect(complaints).toEqual([]);
    await close();
    await parent.close();
  });

  it("opens straight from a folder, styles and sorting included", async () => {
    const context = await browser.newContext();
    const page = await context.newPage();
    await page.goto(`file://${siteDir}/index.html`);
    expect(await page.locator("th button").count()).toBeGreaterThan(3);
    await page.getByRole("link", { name: "Lantern Eight" }).first().click();
    expect(await page.locator("h1").textContent()).toBe("Lantern Eight");
    await context.close();
  });

  it("moves focus past the header by the first Tab", async () => {
    const { page, close } = await open("/");
    await page.keyboard.press("Tab");
    await page.keyboard.press("Enter");
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("content");
    await close();
  });
});

async function visit(browser: Browser, origin: string, path: string, options?: Parameters<Browser["newContext"]>[0]): Promise<Visit> {
  const context = await browser.newContext(options);
  const page = await context.newPage();
  const complaints: string[] = [];
  page.on("console", (message) => message.type() === "error" && complaints.push(message.text()));
  page.on("pageerror", (error) => complaints.push(error.message));
  page.on("requestfailed", (request) => complaints.push(`not found: ${request.url()}`));
  page.on("request", (request) => !request.url().startsWith(`${origin}/`) && complaints.push(`foreign request: ${request.url()}`));
  await page.goto(origin + path);
  return { page, complaints, close: () => context.close() };
}

async function axeViolations(page: Page): Promise<string[]> {
  return page.evaluate(`axe.run(document, { runOnly: ["wcag2a", "wcag2aa", "wcag21aa", "wcag22aa", "best-practice"] })
    .then(({ violations }) => violations.map((v) => v.id + ": " + v.nodes.slice(0, 3).map((n) => n.html + " " + n.failureSummary).join(" | ")))`);
}

const isFile = (address: URL): boolean => statSync(fileURLToPath(address), { throwIfNoEntry: false })?.isFile() === true;

/** How far things have jumped since the page began to load: the sum of its layout shifts. */
const layoutShift = `new Promise((resolve) => {
  let sum = 0;
  new PerformanceObserver((list) => {
    for (const shift of list.getEntries()) sum += shift.hadRecentInput ? 0 : shift.value;
  }).observe({ type: "layout-shift", buffered: true });
  setTimeout(() => resolve(sum), 200);
})` as const;

/** How many places Tab stops at: radio buttons of one group count once, what is folded away or hidden does not count. */
function tabStops(): number {
  const all = [...document.querySelectorAll<HTMLElement>("a[href], button, input, select, textarea, summary, [tabindex='0']")];
  const shown = all.filter((one) => one.checkVisibility({ visibilityProperty: true }) && !one.matches(":disabled"));
  const groups = new Set(shown.map((one, index) => (one instanceof HTMLInputElement && one.type === "radio" ? one.name : index)));
  return groups.size;
}

/** The stop once the page has come to rest: parts that were never drawn are laid out on the way, which takes some frames. */
async function settledStop(page: Page): Promise<ReturnType<typeof focusedStop>> {
  let stop = await page.evaluate(focusedStop);
  for (let frame = 0; stop?.inSight === false && frame < 20; frame++) {
    await page.waitForTimeout(50);
    stop = await page.evaluate(focusedStop);
  }
  return stop;
}

/** The focused element, named by its place among all; undefined once Tab has left the page. */
function focusedStop(): { name: string; inSight: boolean; outlined: boolean } | undefined {
  const stop = document.activeElement;
  if (stop === null || stop === document.body) return undefined;
  const { top, bottom } = stop.getBoundingClientRect();
  const place = [...document.querySelectorAll("*")].indexOf(stop);
  return {
    name: `${place} ${stop.tagName} ${stop.textContent?.slice(0, 40)}`,
    inSight: bottom > 0 && top < innerHeight,
    outlined: getComputedStyle(stop).outlineStyle !== "none",
  };
}

/** The sorting values of a column, row by row. */
async function columnOf(page: Page, name: string): Promise<(string | undefined)[]> {
  const column = await page
    .locator("th", { hasText: name })
    .first()
    .evaluate((cell) => (cell as HTMLTableCellElement).cellIndex);
  return page
    .locator(".comparison tbody tr")
    .evaluateAll((rows, index) => rows.map((row) => (row as HTMLTableRowElement).cells[index]?.dataset.value), column);
}
