/** The page side by side in a browser, on the fixture with forecasts added. */
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import type { Browser, Page } from "playwright-core";
import { afterAll, describe, expect, it } from "vitest";
import { interfaceLanguages } from "../../lib/nouns/site.ts";
import { renderSite } from "../../lib/publish/render-site.ts";
import type { ChargerResult, ModeForecastResult, Results } from "../../lib/publish/results.ts";
import { launchBrowser } from "./browser.ts";
import { absentFigure, figureOf, fixture, writeFixture } from "./fixture.ts";
import { serve } from "./serve.ts";

/** Hours to 95 % in twenty draws, the first of which never ends. */
const drawsFrom = (hours: number): (number | null)[] => [null, ...Array.from({ length: 19 }, (_, draw) => hours + draw)];

function forecastFrom(hours: number): ModeForecastResult {
  const of = "mode/car";
  const figure = { of, unit: "h", basis: "projected" } as const;
  return {
    behaviour: {},
    told: ["It gives 5.9 A until 14.4 V."],
    unknowns: ["how warm it may get was not seen"],
    nominalVoltageV: 12,
    claimedAh: null,
    reference: {
      words: "an invented battery of 60 Ah",
      figures: [
        figureOf(
          { ...figure, id: "reference-hours-80", label: "Hours to 80 %", low: hours - 1, high: hours + 1, doubts: ["few draws"] },
          hours,
        ),
        figureOf({ ...figure, id: "reference-hours-95", label: "Hours to 95 %", low: hours, high: null }, hours + 9),
        absentFigure({ ...figure, id: "reference-hours-full", label: "Hours to full" }, "not reached", "not within 72 h"),
      ],
      drawsH: drawsFrom(hours),
      drawsKWh: drawsFrom(hours).map((drawH) => (drawH ?? 0) / 10),
      pricePerKWh: { amount: 0.3, currency: "EUR" },
    },
    ownBatteries: [],
    readyBy: [],
    season: [
      {
        place: "cellar",
        temperatureC: 15,
        mainsKWh: { value: 2, low: 1, high: 3 },
        waterG: { value: 2, low: 1, high: 3 },
        restartsPerDay: { value: 0, low: 0, high: 0 },
        topUpDays: { value: 5000, low: 3000, high: 9000 },
        heldV: { low: 13.5, high: 13.7 },
        windowV: { low: 13.3, high: 13.8 },
        inWindow: "inside",
      },
    ],
  };
}

const withForecast = (charger: ChargerResult, hours: number): ChargerResult => ({
  ...charger,
  modes: charger.modes.map((mode) => (mode.id === "car" ? { ...mode, forecast: forecastFrom(hours) } : mode)),
});

const [lantern, lanternTwo, pebble] = fixture.chargers as [ChargerResult, ChargerResult, ChargerResult];
const results: Results = {
  ...fixture,
  index: { ...fixture.index, site: { ...fixture.index.site, languages: [...interfaceLanguages] } },
  tests: fixture.tests.map((test) => ({ ...test, facts: [...test.facts, { label: "Battery discharged", value: "an evening of lamps" }] })),
  chargers: [withForecast(lantern, 10), { ...withForecast(lanternTwo, 12), notSeen: [] }, pebble],
};

const three = "/compare/index.html?charger=lantern-eight&charger=lantern-two&charger=pebble-trickle";
/** One sentence of each kind, and numbers with their comma. */
const inLanguages = {
  de: {
    status: `A Lantern Eight, B Lantern Two und C ${pebble.name} nebeneinander.`,
    headings: [
      "Woran jedes geprüft wurde",
      "Wie sie laden",
      "Wer zuerst fertig ist",
      "Was sich lohnt",
      "Werte",
      "Zusagen",
      "Eine Saison lang angeschlossen",
      "Was nicht zu sehen war",
    ],
    texts: [
      "A Lantern Eight ist in 19,5 von 20 Ziehungen vor B Lantern Two fertig",
      `C ${pebble.name} ist nicht vergleichbar: keine Aufzeichnung zeigt, was die Betriebsart tut`,
      "A und B: nicht zu unterscheiden",
      "nach Ziehungen: wer zuerst fertig ist",
      "kosten beim Kauf gleich viel",
      "5,92 ± 0,13\u202FA",
      "8\u202FA, „8 A DC“",
      "bleibt darunter",
      "nicht zugesagt",
      "1 Zweifel",
      "hochgerechnet",
      "Keller, 15 °C",
      "im Fenster der Erhaltungsladung",
      "hardware shop, am 20.02.2026",
      "Stunden ab der ersten Zeile der Aufzeichnung",
      "erfundene Daten",
    ],
    gone: "Hier ist kein Ladegerät als „gone“ veröffentlicht.",
  },
  pl: {
    status: `Obok siebie: A Lantern Eight, B Lantern Two i C ${pebble.name}.`,
    headings: [
      "Na czym każdy zbadano",
      "Jak ładują",
      "Kto kończy pierwszy",
      "Który się opłaca",
      "Wielkości",
      "Deklaracje",
      "Pozostawiony podłączony na sezon",
      "Czego nie widziano",
    ],
    texts: [
      "A Lantern Eight kończy przed B Lantern Two w 19,5 z 20 losowań",
      `C ${pebble.name}: nieporównywalny, bo żaden zapis nie pokazuje, co robi ten tryb`,
      "A i B: nie da się odróżnić",
      "5,92 ± 0,13\u202FA",
      "8\u202FA, „8 A DC”",
      "1 wątpliwość",
      "prognoza",
      "Piwnica, 15 °C",
      "w zakresie ładowania konserwującego",
      "hardware shop, 20.02.2026",
      "dane zmyślone",
    ],
    gone: "Nie opublikowano tu prostownika „gone”.",
  },
} as const;

const axeSource = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const browser = await launchBrowser();

describe.skipIf(browser === undefined)("chargers side by side", async () => {
  if (browser === undefined) return;
  const siteDir = mkdtempSync(join(tmpdir(), "side-"));
  writeFixture(siteDir, results);
  await renderSite(siteDir);
  const server = await serve(siteDir);
  afterAll(async () => {
    await browser.close();
    await server.close();
    rmSync(siteDir, { recursive: true });
  });
  const open = (path: string, options?: Parameters<Browser["newContext"]>[0]) => visit(browser, server.origin + path, options);

  it("is small: 15 kB compressed at most, and nothing evaluated", () => {
    const script = readFileSync(join(siteDir, "assets/side-by-side.js"));
    expect(gzipSync(script).byteLength).toBeLessThanOrEqual(15_000);
    expect(script.toString()).not.toMatch(/\beval\(|new Function\(/);
  });

  it("is one script for all languages, which with the page's others stays within 15 kB, too", () => {
    expect(readdirSync(join(siteDir, "assets")).filter((name) => name.startsWith("side-by-side") && name.endsWith(".js"))).toEqual([
      "side-by-side.js",
    ]);
    for (const folder of ["", "pl/", "de/"]) {
      const html = readFileSync(join(siteDir, folder, "compare/index.html"), "utf8");
      const scripts = [...html.matchAll(/<script[^>]* src="(?:\.\.\/)+([^"]+)"/g)].map(([, path = ""]) => path);
      expect(scripts).toContain("assets/side-by-side.js");
      const bytes = scripts.map((path) => gzipSync(readFileSync(join(siteDir, path))).byteLength);
      expect(bytes.reduce((sum, size) => sum + size)).toBeLessThanOrEqual(15_000);
    }
  });

  it("is reached from the comparison by two to four boxes, kept in the address", async () => {
    const { page, close } = await open("/");
    await page.getByRole("checkbox", { name: "compare Lantern Eight with others" }).check();
    expect(await page.locator(".chosen").textContent()).toContain("choose another");
    await page.getByRole("checkbox", { name: "compare Lantern Two with others" }).check();
    expect(new URL(page.url()).searchParams.getAll("charger")).toEqual(["lantern-eight", "lantern-two"]);
    await page.reload();
    await page.getByRole("link", { name: "Compare the chosen 2 side by side" }).click();
    await page.getByText("A Lantern Eight and B Lantern Two, side by side.").waitFor();
    await close();
  });

  it("says who is done first by the draws, and who cannot be compared", async () => {
    const { page, complaints, close } = await open(three);
    const section = page.locator("h2", { hasText: "Who is done first" }).locator("xpath=following-sibling::ul[1]");
    await section.waitFor();
    // Nineteen draws won and one in which neither ends: 19.5 of 20 is more than 95 %.
    expect(await section.locator("li").allTextContents()).toEqual([
      "≠ A Lantern Eight is done before B Lantern Two in 19.5 of 20 draws",
      `∦ C ${pebble.name} is not comparable because no recording shows what the mode does`,
    ]);
    expect(complaints).toEqual([]);
    await close();
  });

  it("says that what pays off is projected, as it says of who is done first", async () => {
    const { page, close } = await open(three);
    for (const heading of ["Who is done first", "Which pays off"]) {
      const told = page.locator("h2", { hasText: heading }).locator("xpath=following-sibling::*[1]");
      expect(await told.textContent()).toBe("Projected for an invented battery of 60 Ah, until it holds 95 % of what it can.");
    }
    await close();
  });

  it("does not say of a mode that nobody tested that nothing of it is missing", async () => {
    const { page, close } = await open("/compare/index.html?charger=lantern-eight&charger=lantern-two.cold");
    const unseen = page.locator("h2", { hasText: "What was not seen" }).locator("xpath=following-sibling::details");
    await unseen.first().waitFor();
    expect(await unseen.nth(1).locator("summary").textContent()).toBe("B Lantern Two: not put to the test");
    await close();
  });

  it("marks nothing as English on an English page", async () => {
    const { page, close } = await open(three);
    await page.getByText("an evening of lamps").first().waitFor();
    expect(await page.locator("[data-side-by-side] [lang]").count()).toBe(0);
    await close();
  });

  it("aligns figures by id, marks what differs, and does not compare other batteries", async () => {
    const { page, close } = await open(three);
    await page.locator("h2", { hasText: "Figures" }).waitFor();
    const told = (label: string) =>
      page
        .locator("tr", { has: page.locator("th", { hasText: label }) })
        .last()
        .locator("td")
        .last()
        .textContent();
    expect(await told("Hours to 80 %")).toBe("≈ A and B: cannot be told apartC has no value");
    expect(await told("Hours to 95 %")).toBe("by draws: who is done first");
    expect(await told("Hours to target")).toContain("≈ A and B: cannot be told apart");
    expect(await told("Price")).toContain("= A and B: the same");
    await close();
  });

  it("leads from every figure to its place on another page", async () => {
    const { page, close } = await open(three);
    await page.locator("h2", { hasText: "Claims" }).waitFor();
    const targets = await page
      .locator("[data-side-by-side] a")
      .evaluateAll((all) => [...new Set(all.map((link) => (link as HTMLAnchorElement).href))]);
    expect(targets.length).toBeGreaterThan(10);
    for (const target of targets) {
      const { pathname, hash } = new URL(target);
      // Within the page itself the script has put the places that it links.
      if (pathname === "/compare/index.html") {
        expect(await page.locator(hash).count(), target).toBe(1);
        continue;
      }
      const file = join(siteDir, decodeURIComponent(pathname));
      expect(existsSync(file), target).toBe(true);
      if (hash !== "") expect(readFileSync(file, "utf8"), target).toContain(`id="${decodeURIComponent(hash.slice(1))}"`);
    }
    await close();
  });

  it("draws over hours or over capacity, and keeps the choice in the address", async () => {
    const { page, close } = await open(three);
    const line = page.locator("svg[role=img] path.side-a").first();
    const overHours = await line.getAttribute("d");
    await page.getByRole("radio", { name: /share/ }).check();
    await page.getByText("% of the rated capacity put in").waitFor();
    expect(await line.getAttribute("d")).not.toBe(overHours);
    expect(new URL(page.url()).searchParams.get("over")).toBe("share");
    await close();
  });

  it("adds and removes by keyboard, without losing the place, and Back undoes it", async () => {
    const { page, close } = await open("/compare/?charger=lantern-eight");
    await page.getByText("Choose one more charger at least.").waitFor();
    await page.getByLabel("Add a charger").selectOption("pebble-trickle");
    await page.getByLabel("Add a charger").press("Tab");
    await page.keyboard.press("Enter");
    await page.getByText(`A Lantern Eight and B ${pebble.name}, side by side.`).waitFor();
    await page.getByRole("button", { name: "Remove Lantern Eight" }).press("Enter");
    await page.getByText("Choose one more charger at least.").waitFor();
    expect(new URL(page.url()).search).toBe("?charger=pebble-trickle");
    expect(await page.evaluate(() => document.activeElement?.tagName)).not.toBe("BODY");
    await page.goBack();
    await page.getByText(`A Lantern Eight and B ${pebble.name}, side by side.`).waitFor();
    await close();
  });

  it("lets a mode and test be chosen, and keeps it in the address", async () => {
    const { page, close } = await open(three);
    await page
      .getByLabel("Mode and test")
      .first()
      .selectOption({ label: `SNOW, on ${fixture.tests[0]?.battery.name}` });
    await page.waitForURL(/lantern-eight\.cold\.lantern-first/);
    await page.reload();
    await page.locator("td", { hasText: /^SNOW$/ }).waitFor();
    await close();
  });

  it("says so where an address names a charger that is not published", async () => {
    const { page, complaints, close } = await open("/compare/?charger=gone&charger=lantern-eight&charger=..%2F..%2Fsecret");
    const alerts = page.getByRole("alert");
    await alerts.first().waitFor();
    expect(await alerts.allTextContents()).toContain("No charger is published here as “gone”.");
    expect(complaints).toEqual([]);
    await close();
  });

  it("says in words why nothing comes from a folder without a server", async () => {
    const { page, close } = await visit(browser, `file://${siteDir}/compare/index.html?charger=lantern-eight`);
    expect(await page.locator("[data-side-by-side]").textContent()).toContain("opened straight from a folder");
    await close();
  });

  it("explains itself and links every charger with scripts off", async () => {
    const { page, close } = await open(three, { javaScriptEnabled: false });
    expect(await page.locator("[data-side-by-side]").isVisible()).toBe(false);
    expect(await page.locator("main li a").allTextContents()).toEqual(results.chargers.map(({ name }) => name));
    expect(await page.locator("main").textContent()).toContain("needs scripts");
    await close();
    const first = await open("/", { javaScriptEnabled: false });
    expect(await first.page.locator(".choose").first().isVisible()).toBe(false);
    await first.close();
  });

  it("works in a sub-folder of a server", async () => {
    const parent = await serve(join(siteDir, ".."));
    const { page, complaints, close } = await visit(browser, `${parent.origin}/${siteDir.split("/").at(-1)}${three}`);
    await page.getByText(`A Lantern Eight, B Lantern Two and C ${pebble.name}, side by side.`).waitFor();
    expect(complaints).toEqual([]);
    await close();
    await parent.close();
  });

  it.each([320, 1280])("is no wider than a window of %i px", async (width) => {
    const { page, close } = await open(three, { viewport: { width, height: 700 } });
    await page.locator("h2", { hasText: "What was not seen" }).waitFor();
    expect(await page.evaluate(() => document.scrollingElement?.scrollWidth)).toBeLessThanOrEqual(width);
    await close();
  });

  describe.each(["pl", "de"] as const)("in %s", (language) => {
    const told = inLanguages[language];

    it("says every kind of statement in the page's language, and writes its numbers so", async () => {
      const { page, complaints, close } = await open(`/${language}${three}`);
      await page.getByText(told.status).waitFor();
      const place = page.locator("[data-side-by-side]");
      expect(await place.locator("h2").allTextContents()).toEqual(told.headings);
      const text = (await place.textContent()) ?? "";
      for (const sentence of told.texts) expect(text).toContain(sentence);
      // No place in a message is left open, and no number has a decimal point but in the maker's and the reviewer's own words.
      expect(text).not.toMatch(/\{\w+\}/);
      expect(text).not.toMatch(/\d\.\d+\u202F(?:A|V|h|Ah|kWh)\b/);
      expect(complaints).toEqual([]);
      await close();
    });

    it("marks as English what nobody has translated, and nothing else", async () => {
      const { page, close } = await open(`/${language}${three}`);
      await page.getByText(told.status).waitFor();
      const english = await page.locator("[data-side-by-side] [lang=en]").allTextContents();
      // The reviewer's own words, and a sentence that no build makes.
      for (const words of ["an evening of lamps", "Few draws."]) expect(english).toContain(words);
      const said = ["reached", "short of", "not put to the test", "no recording shows what the mode does", "Price"];
      for (const words of said) expect(english).not.toContain(words);
      await close();
    });

    it("leads to pages of its language, and says so where an address names nobody", async () => {
      const { page, close } = await open(`/${language}/compare/?charger=gone&charger=lantern-eight`);
      await page.getByText(told.gone).waitFor();
      const link = page.locator(".side-chooser legend a");
      expect(await link.evaluate((one) => (one as HTMLAnchorElement).pathname)).toBe(`/${language}/chargers/lantern-eight/index.html`);
      await close();
    });

    it.each([320, 1280])("gives axe nothing to object to in a window of %i px, and is no wider", async (width) => {
      const { page, close } = await open(`/${language}${three}`, { viewport: { width, height: 700 } });
      await page.getByText(told.status).waitFor();
      expect(await page.evaluate(() => document.scrollingElement?.scrollWidth)).toBeLessThanOrEqual(width);
      expect(await violationsOn(page)).toEqual([]);
      await close();
    });
  });

  it.each(["light", "dark"] as const)("gives axe nothing to object to, %s", async (colorScheme) => {
    const { page, close } = await open(three, { colorScheme });
    await page.locator("h2", { hasText: "What was not seen" }).waitFor();
    expect(await page.locator("table:not(:has(caption)), th:not([scope])").count()).toBe(0);
    expect(await violationsOn(page)).toEqual([]);
    await close();
  });
});

async function violationsOn(page: Page): Promise<unknown> {
  await page.evaluate(axeSource);
  return page.evaluate(`axe.run(document, { runOnly: ["wcag2a", "wcag2aa", "wcag21aa", "wcag22aa", "best-practice"] })
    .then(({ violations }) => violations.map((v) => v.id + ": " + v.nodes.slice(0, 3).map((n) => n.html + " " + n.failureSummary).join(" | ")))`);
}

type Visit = { readonly page: Page; readonly complaints: string[]; close(): Promise<void> };

async function visit(browser: Browser, address: string, options?: Parameters<Browser["newContext"]>[0]): Promise<Visit> {
  const context = await browser.newContext(options);
  const page = await context.newPage();
  const complaints: string[] = [];
  page.on("console", (message) => message.type() === "error" && complaints.push(message.text()));
  page.on("pageerror", (error) => complaints.push(error.message));
  page.on(
    "request",
    (request) => !request.url().startsWith(new URL("/", address).href) && complaints.push(`foreign request: ${request.url()}`),
  );
  await page.goto(address);
  return { page, complaints, close: () => context.close() };
}
