import { XMLParser, XMLValidator } from "fast-xml-parser";
import { describe, expect, it } from "vitest";
import { robots, sitemap } from "../../../../lib/publish/outward/sitemap.ts";
import { baseUrl, folderOf, publishedResults } from "./published.ts";

const pages = [
  "index.html",
  "tests/lantern-first/index.html",
  "tests/pebble-agm/index.html",
  "chargers/lantern-eight/index.html",
  "method/index.html",
];

function urls(xml: string | undefined): Record<string, string | undefined> {
  if (xml === undefined) throw new Error("expected a sitemap, found none");
  expect(XMLValidator.validate(xml)).toBe(true);
  const { url } = new XMLParser({ isArray: (name) => name === "url" }).parse(xml).urlset as { url: { loc: string; lastmod?: string }[] };
  return Object.fromEntries(url.map(({ loc, lastmod }) => [loc.replace(baseUrl, ""), lastmod]));
}

describe("the sitemap", () => {
  it("names every page by its whole address without index.html, and dates those that the records date", () => {
    expect(urls(sitemap(folderOf(publishedResults()), pages))).toEqual({
      "": "2026-04-02",
      "chargers/lantern-eight/": "2026-04-02",
      "method/": undefined,
      "tests/lantern-first/": "2026-04-02",
      "tests/pebble-agm/": undefined,
    });
  });

  it("is not written without an address, and refuses more pages than its format holds", () => {
    expect(sitemap(folderOf(publishedResults({ baseUrl: null })), pages)).toBeUndefined();
    expect(() => sitemap(folderOf(publishedResults()), Array(50_001).fill("x.html"))).toThrow("50000");
  });
});

describe("robots.txt", () => {
  it("allows all and names the sitemap by its whole address", () => {
    expect(robots("https://bench.example")).toBe("User-agent: *\nAllow: /\n\nSitemap: https://bench.example/sitemap.xml\n");
  });

  it("says where it belongs when the site stands in a sub-folder", () => {
    expect(robots(baseUrl)).toContain("# Crawlers read this file at the root of a host only");
  });

  it("is not written without an address", () => {
    expect(robots(null)).toBeUndefined();
  });
});
