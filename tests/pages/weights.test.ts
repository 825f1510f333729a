/** How heavy the demo's pages are. Speed is measured apart, by `npm run lighthouse`: it hangs on the machine, and weight does not. */
import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { pageKindsOf } from "../lighthouse/page-kinds.ts";
import { weigh } from "../lighthouse/weigh.ts";

const siteDir = mkdtempSync(join(tmpdir(), "weights-"));
execFileSync(process.execPath, ["lib/start.js", "build", "--out", siteDir], { stdio: "pipe" });
afterAll(() => rmSync(siteDir, { recursive: true }));

const kinds = Object.entries(pageKindsOf(siteDir));
const pageOf = (address: string) => new URL(address, "http://site/").pathname;
const htmlOf = (address: string) => readFileSync(join(siteDir, pageOf(address), "index.html"), "utf8");

/** The page with the styles, icons and scripts that its HTML names. */
function weightOf(address: string) {
  const named = [...htmlOf(address).matchAll(/<(?:link rel="(?:stylesheet|icon)" href|script defer src)="([^"]+)"/g)];
  expect(named.length).toBeGreaterThanOrEqual(2);
  return weigh(siteDir, [pageOf(address), ...named.map(([, path = ""]) => new URL(path, `http://site${pageOf(address)}`).pathname)]);
}

describe("the weight of a page, after gzip", () => {
  it("is 70 kB at most of HTML, CSS and SVG for the heaviest charger", () => {
    const { html, css, svg } = weightOf(pageKindsOf(siteDir).charger);
    expect(html + css + svg).toBeLessThanOrEqual(70_000);
    // A page that lost its drawings or its styles would be light, too.
    for (const bytes of [html, css, svg]) expect(bytes).toBeGreaterThan(2_000);
  });

  // The log explorer is fetched only when it is asked for. What side by side and find take has limits in their own tests.
  it.each(kinds.filter(([kind]) => kind !== "find" && kind !== "side by side"))("%s: 4 kB of script at most", (_, address) => {
    expect(weightOf(address).script).toBeLessThanOrEqual(4_000);
  });

  it.each(kinds)("%s: no fonts, no pictures, nothing but page, styles and scripts", (_, address) => {
    const { font, other } = weightOf(address);
    expect(font + other).toBe(0);
    expect(htmlOf(address)).not.toMatch(/<img[^>]*\bsrc="(?:https?:)?\/\//);
  });

  it("needs no script for a charger's page: nothing waits for one but the search", () => {
    const waiting = [...htmlOf(pageKindsOf(siteDir).charger).matchAll(/<(\w+)(?=[^>]*\shidden[\s>])[^>]*>/g)].map(([, name]) => name);
    expect(waiting).toEqual(["search", "ol"]);
  });
});
