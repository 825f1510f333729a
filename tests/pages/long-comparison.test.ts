/** A comparison of many chargers in a browser: which rows are laid out, and which wait until they are asked for. */
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import type { Page } from "playwright-core";
import { afterAll, describe, expect, it } from "vitest";
import { publishAssets } from "../../lib/publish/assets.ts";
import { renderComparisonPage } from "../../lib/publish/pages/comparison-page.tsx";
import { openResults, type ResultsFolder } from "../../lib/publish/results-folder.ts";
import { launchBrowser } from "./browser.ts";
import { writeFixture } from "./fixture.ts";
import { serve } from "./serve.ts";

const chargers = 120;
const browser = await launchBrowser();

/** The fixture's comparison with its first charger over and over, each time by another name. */
function manyTimes(results: ResultsFolder): ResultsFolder {
  const [first] = results.index.rows;
  if (first === undefined) throw new Error("the fixture has no row");
  const rows = Array.from({ length: chargers }, (_, place) => {
    const name = `Lantern ${String(place).padStart(3, "0")}`;
    return { ...first, charger: { ...first.charger, id: `lantern-${place}`, name } };
  });
  const { id } = first.charger;
  return { ...results, index: { ...results.index, rows }, charger: () => results.charger(id) };
}

describe.skipIf(browser === undefined)("a comparison of 120 chargers", async () => {
  if (browser === undefined) return;
  const siteDir = mkdtempSync(join(tmpdir(), "long-"));
  writeFixture(siteDir);
  mkdirSync(siteDir, { recursive: true });
  writeFileSync(join(siteDir, "index.html"), renderComparisonPage(manyTimes(openResults(siteDir)), "en"));
  publishAssets(fileURLToPath(new URL("../../_site-config/assets", import.meta.url)), siteDir, ["en"]);
  const server = await serve(siteDir);
  afterAll(async () => {
    await browser.close();
    await server.close();
    rmSync(siteDir, { recursive: true });
  });
  const shown = (page: Page): Promise<number> => page.locator(".comparison tbody tr:visible").count();

  it("shows fifty rows, then fifty more, then all", async () => {
    const page = await browser.newPage();
    await page.goto(server.origin);
    expect(await shown(page)).toBe(50);
    await page.getByRole("button", { name: "Show 50 more" }).click();
    expect(await shown(page)).toBe(100);
    await page.getByRole("button", { name: "Show all 120" }).click();
    expect(await shown(page)).toBe(chargers);
    await page.close();
  });

  it("shows the first fifty of another order, not the rows that stood first", async () => {
    const page = await browser.newPage();
    await page.goto(server.origin);
    const names = page.locator(".comparison tbody tr:visible th a");
    await page.getByRole("button", { name: "Charger", exact: false }).first().click();
    await page.getByRole("button", { name: "Charger", exact: false }).first().click();
    expect(await shown(page)).toBe(50);
    expect(await names.first().textContent()).toBe("Lantern 119");
    await page.close();
  });

  it("holds all rows without scripts, and on paper", async () => {
    const plain = await browser.newPage({ javaScriptEnabled: false });
    await plain.goto(server.origin);
    expect(await shown(plain)).toBe(chargers);
    await plain.close();
    const printed = await browser.newPage();
    await printed.goto(server.origin);
    await printed.emulateMedia({ media: "print" });
    expect(await shown(printed)).toBe(chargers);
    await printed.close();
  });
});
