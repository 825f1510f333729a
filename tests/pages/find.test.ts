/** The page that finds a charger, in a browser: its form, its answers, and what is left of it without scripts. */
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { gzipSync } from "node:zlib";
import type { Browser, Page } from "playwright-core";
import { afterAll, describe, expect, it } from "vitest";
import { interfaceLanguages } from "../../lib/nouns/site.ts";
import { publishAssets } from "../../lib/publish/assets.ts";
import { answerOf } from "../../lib/publish/find/answer.ts";
import { askedAndApart } from "../../lib/publish/find/asked-and-apart.ts";
import { type FindData, findDataOf, findDataPath } from "../../lib/publish/find/find-data.ts";
import { defaultQuestion, type Question } from "../../lib/publish/find/question.ts";
import { percentShown } from "../../lib/publish/find/shown.ts";
import { isComplaint, startOfCharge } from "../../lib/publish/find/start-of-charge.ts";
import { renderFindPage } from "../../lib/publish/pages/find-page.tsx";
import type { ResultsFolder } from "../../lib/publish/results-folder.ts";
import { wordsIn } from "../../lib/publish/words/index.ts";
import { formatsIn } from "../../lib/publish/words/speech-in.ts";
import { englishFind as english } from "../lib/publish/english-find.ts";
import { findResults } from "../lib/publish/find-chargers.ts";
import { launchBrowser } from "./browser.ts";
import { serve } from "./serve.ts";

const browser = await launchBrowser();
const axeSource = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const found = findResults();
const results: ResultsFolder = { ...found, index: { ...found.index, site: { ...found.index.site, languages: [...interfaceLanguages] } } };
const data = findDataOf(results);

/** A site in a sub-folder of a server, with this page alone: its links lead to pages that other tests look at. */
const serverDir = mkdtempSync(join(tmpdir(), "find-"));
const siteDir = join(serverDir, "sub-folder");
const write = (path: string, text: string) => {
  mkdirSync(dirname(join(siteDir, path)), { recursive: true });
  writeFileSync(join(siteDir, path), text);
};
publishAssets("_site-config/assets", siteDir, interfaceLanguages);
write("data/find.json", `${JSON.stringify(findDataOf(results))}\n`);
for (const language of ["pl", "de"] as const) write(`data/find.${language}.json`, "{}");
for (const language of interfaceLanguages)
  write(`${language === "en" ? "" : `${language}/`}find/index.html`, renderFindPage(results, language));
afterAll(() => rmSync(serverDir, { recursive: true }));

describe("the script", () => {
  const script = readFileSync(join(siteDir, "assets/find.js"));
  it("is small: at most 60 kB compressed", () => {
    expect(gzipSync(script).byteLength).toBeLessThanOrEqual(60_000);
  });
  it("runs no text as code", () => {
    expect(script.toString()).not.toMatch(/\beval\s*\(|new Function\b/);
  });
});

describe.skipIf(browser === undefined)("finding a charger in a browser", async () => {
  if (browser === undefined) return;
  const server = await serve(serverDir);
  afterAll(async () => {
    await browser.close();
    await server.close();
  });
  const open = (query = "", options?: Parameters<Browser["newContext"]>[0]) =>
    visit(browser, `${server.origin}/sub-folder/find/${query}`, server.origin, options);

  it("says which chargers make it, with the digits of the same code run here, and asks nobody else", async () => {
    const { page, complaints, close } = await open("?ah=120&flat=flat&by=24h");
    await worked(page);
    const question: Question = { ...defaultQuestion, ratedAh: 120, flat: "flat", by: "24h" };
    const start = startOfCharge(question, english);
    if (isComplaint(start)) throw new Error(start.words);
    for (const mode of askedAndApart(question, data.modes, english).asked) {
      const { verdict, probability } = answerOf({ question, start, hoursLeft: 24 }, mode);
      const row = page.locator(".find-answers tr", { hasText: mode.name });
      expect(await row.locator(".mark").textContent()).toBe(`${verdict} ${percentShown(probability, english.formats)}`);
      expect(await row.locator("th a").getAttribute("href")).toBe(`../chargers/${mode.charger.id}/index.html`);
      expect(await row.locator(".evidence a").count()).toBeGreaterThan(1);
      if (mode.leftOnWarning !== null)
        expect(await row.locator(".words p").first().textContent()).toBe(`${english.words.leftOn} ${mode.leftOnWarning}`);
    }
    expect(data.modes.filter(({ leftOnWarning }) => leftOnWarning !== null).map(({ charger }) => charger.id)).toContain("lantern-eight");
    expect(await page.locator(".find-answers caption").textContent()).toMatch(/projected/);
    expect(complaints).toEqual([]);
    await close();
  });

  it.each(["pl", "de"] as const)(
    "answers in %s with the same digits, and in its own words",
    async (language) => {
      const speech = { formats: formatsIn(language), words: wordsIn(language).find };
      const address = `${server.origin}/sub-folder/${language}/find/?ah=120&flat=flat&by=24h`;
      const { page, complaints, close } = await visit(browser, address, server.origin);
      const question: Question = { ...defaultQuestion, ratedAh: 120, flat: "flat", by: "24h" };
      const start = startOfCharge(question, speech);
      if (isComplaint(start)) throw new Error(start.words);
      const { asked } = askedAndApart(question, data.modes, speech);
      await page.getByText(speech.words.status.done(asked.length)).waitFor({ timeout: 60_000 });
      for (const mode of asked) {
        const { verdict, probability } = answerOf({ question, start, hoursLeft: 24 }, mode);
        const row = page.locator(".find-answers tr", { hasText: mode.name });
        expect(await row.locator(".mark").textContent()).toBe(
          `${speech.words.verdicts[verdict]} ${percentShown(probability, speech.formats)}`,
        );
        expect(await row.locator("th a").getAttribute("href")).toBe(`../chargers/${mode.charger.id}/index.html`);
      }
      expect(complaints).toEqual([]);
      await close();
    },
    120_000,
  );

  it("sets others apart with their reasons, and groups those that cannot be told apart", async () => {
    const { page, close } = await open("?by=48h");
    await worked(page);
    const apart = await page.locator("[data-find-results] h3 + ul li").allTextContents();
    expect(apart).toHaveLength(data.modes.length - 2);
    expect(apart.every((words) => words.includes(": "))).toBe(true);
    expect(await page.locator(".find-answers .group th").allTextContents()).toEqual([expect.stringMatching(/^All alike: 2 /)]);
    await close();
  });

  it("warns before any result where the battery may be frozen, and advises no charger", async () => {
    const { page, close } = await open("?flat=density&density=1.13&air=-9&by=24h");
    await worked(page);
    const texts = await page.locator("[data-find-results] > *").allTextContents();
    expect(texts.findIndex((text) => text.includes("It may be frozen"))).toBe(1);
    expect(texts.findIndex((text) => text.includes("not advised"))).toBeGreaterThan(1);
    expect(await page.locator(".find-answers .group th").allTextContents()).toEqual(["Not advised on this battery as it is"]);
    await close();
  });

  it("keeps the question in the address, and Back brings the earlier one with its answers", async () => {
    const { page, close } = await open();
    await worked(page);
    expect(new URL(page.url()).search).toBe("");
    await page.getByLabel("Capacity, Ah").fill("44");
    await page.getByLabel("Capacity, Ah").press("Enter");
    await page.locator("caption", { hasText: "44 Ah" }).waitFor();
    await page.getByLabel("Ready by").selectOption("24h");
    await page.locator("caption", { hasText: "24\u202Fh from now" }).waitFor();
    expect(new URL(page.url()).search).toBe("?ah=44&by=24h");
    await page.goBack();
    await page.goBack();
    await page.locator("caption", { hasText: "68 Ah" }).waitFor();
    expect(await page.getByLabel("Capacity, Ah").inputValue()).toBe("68");
    await close();
  });

  it("asks for a reading only where one was chosen, by keyboard too, and names what is wrong with it", async () => {
    const { page, close } = await open();
    await worked(page);
    expect(await page.getByLabel("Rest voltage, V").isVisible()).toBe(false);
    await page.getByLabel("How flat", { exact: true }).focus();
    await page.keyboard.press("End");
    await page.keyboard.press("ArrowUp");
    await page.getByLabel("Rest voltage, V").waitFor();
    await page.getByLabel("Rest voltage, V").fill("8");
    await page.keyboard.press("Enter");
    await page.locator("[data-find-status]", { hasText: "No resting acid" }).waitFor();
    expect(await page.locator("[aria-invalid]").getAttribute("name")).toBe("volts");
    expect(await page.locator("[data-find-results]").textContent()).toBe("");
    await page.getByLabel("Rest voltage, V").fill("12.2");
    await page.keyboard.press("Enter");
    await worked(page);
    expect(await page.locator("[aria-invalid]").count()).toBe(0);
    await page.getByRole("button", { name: "Start again" }).click();
    await page.locator("caption", { hasText: "50 ± 6 %" }).waitFor();
    expect(new URL(page.url()).search).toBe("");
    await close();
  });

  it.each(["light", "dark"] as const)("axe finds nothing to object to with answers on show, %s", async (colorScheme) => {
    const { page, close } = await open("?flat=density&density=1.13&air=-15&kwh=0.3", { colorScheme });
    await worked(page);
    await page.evaluate(axeSource);
    const violations = await page.evaluate(`axe.run(document, { runOnly: ["wcag2a", "wcag2aa", "wcag21aa", "wcag22aa", "best-practice"] })
      .then(({ violations }) => violations.map((v) => v.id + ": " + v.nodes.slice(0, 3).map((n) => n.html + " " + n.failureSummary).join(" | ")))`);
    expect(violations).toEqual([]);
    await close();
  });

  it("is never wider than a window of 320 px", async () => {
    const { page, close } = await open("?flat=rest-voltage&volts=12.1&by=at&at=2026-03-15T18:00", {
      viewport: { width: 320, height: 700 },
    });
    await page.locator("[data-find-status]", { hasText: "." }).waitFor();
    expect(await page.evaluate(() => document.scrollingElement?.scrollWidth)).toBe(320);
    await page.getByLabel("Ready by").selectOption("48h");
    await worked(page);
    expect(await page.evaluate(() => document.scrollingElement?.scrollWidth)).toBe(320);
    await close();
  });

  it("answers a thousand chargers from the most promising on, while the page stays quick to the touch", async () => {
    const [pattern] = askedAndApart(defaultQuestion, data.modes, english).asked;
    if (pattern === undefined) throw new Error("the fixture has no charger for the default question");
    const many: FindData = {
      ...data,
      modes: Array.from({ length: 1000 }, (_, k) => ({
        ...pattern,
        name: `Charger ${k}`,
        charger: { id: `charger-${k}`, name: `Charger ${k}` },
        // The last of the list gives most.
        behaviour: scaled(pattern.behaviour, 0.2 + (0.8 * k) / 999),
      })),
    };
    const context = await browser.newContext();
    const page = await context.newPage();
    await page.route(`**/${findDataPath}`, (route) => route.fulfill({ json: many }));
    await page.goto(`${server.origin}/sub-folder/find/?by=12h`);
    await page.locator(".find-answers tbody th[scope=row]").nth(4).waitFor();
    const worstGapMs = await page.evaluate(
      () =>
        new Promise<number>((resolve) => {
          const began = performance.now();
          let [last, worst] = [began, 0];
          const beat = (): void => {
            const now = performance.now();
            worst = Math.max(worst, now - last);
            last = now;
            if (now - began > 1500) resolve(worst);
            else setTimeout(beat, 5);
          };
          beat();
        }),
    );
    // A forecast is tens of milliseconds and a thousand of them half a minute; half a second leaves room for a busy machine.
    expect(worstGapMs).toBeLessThan(500);
    const status = await page.locator("[data-find-status]").textContent();
    expect(status).toMatch(/of 1000 chargers worked out, most promising first/);
    const first = await page.locator(".find-answers tbody tr th[scope=row]").allTextContents();
    const done = first.length;
    // Those that were worked out are the strongest of all.
    expect(Math.min(...first.map((name) => Number(name.replace("Charger ", ""))))).toBeGreaterThanOrEqual(1000 - done);
    // A long group is folded, with the count of what is behind.
    const more = page.getByRole("button", { name: /^Show the \d+ others of this group$/ }).first();
    await more.waitFor();
    expect(await page.locator(".find-answers tbody").first().locator("tr:visible:not(.group)").count()).toBe(21);
    await page.getByLabel("Capacity, Ah").fill("44");
    await page.getByLabel("Capacity, Ah").press("Enter");
    await page.locator("caption", { hasText: "44 Ah" }).waitFor();
    await more.waitFor();
    await more.click();
    expect(await more.count()).toBe(0);
    await context.close();
  });

  it("without scripts shows the table of usual batteries, no dead form, and says why", async () => {
    const { page, close } = await open("", { javaScriptEnabled: false });
    expect(await page.locator("form.find").isVisible()).toBe(false);
    expect(await page.locator("noscript").textContent()).toMatch(/form for your own battery needs scripts/);
    expect(await page.locator("table.ready-by tbody tr").count()).toBe(20);
    expect(await page.locator("table.ready-by a", { hasText: "Lantern Two" }).first().isVisible()).toBe(true);
    await close();
  });

  it("opened from a folder says why it cannot read its data", async () => {
    const context = await browser.newContext();
    const page = await context.newPage();
    await page.goto(`file://${siteDir}/find/index.html`);
    await page.locator("[data-find-status]", { hasText: "Opened straight from a folder" }).waitFor();
    expect(await page.locator("table.ready-by").isVisible()).toBe(true);
    await context.close();
  });
});

/** A behaviour with all its currents made smaller. */
function scaled<T extends { readonly steps: readonly object[] }>(behaviour: T, by: number): T {
  const times = (range: unknown): unknown => {
    const { low, high } = range as { low: number; high: number };
    return { low: low * by, high: high * by };
  };
  return { ...behaviour, steps: behaviour.steps.map((step) => ("limitA" in step ? { ...step, limitA: times(step.limitA) } : step)) };
}

const worked = (page: Page) => page.locator("[data-find-status]", { hasText: /chargers worked out\.$/ }).waitFor();

async function visit(browser: Browser, address: string, origin: string, options?: Parameters<Browser["newContext"]>[0]) {
  const context = await browser.newContext(options);
  const page = await context.newPage();
  const complaints: string[] = [];
  page.on("console", (message) => message.type() === "error" && complaints.push(message.text()));
  page.on("pageerror", (error) => complaints.push(error.message));
  page.on("request", (request) => !request.url().startsWith(`${origin}/`) && complaints.push(`foreign request: ${request.url()}`));
  await page.goto(address);
  return { page, complaints, close: () => context.close() };
}
