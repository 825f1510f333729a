import { describe, expect, it } from "vitest";
import { figureFinder } from "../../../lib/publish/figure-finder.ts";
import { renderChargerPage } from "../../../lib/publish/pages/charger-page.tsx";
import { figureColumns } from "../../../lib/publish/pages/comparison/groups.ts";
import { renderComparisonPage } from "../../../lib/publish/pages/comparison-page.tsx";
import { renderCorrectionsPage } from "../../../lib/publish/pages/corrections-page.tsx";
import { renderNotFoundPage } from "../../../lib/publish/pages/not-found-page.tsx";
import { renderProsePage } from "../../../lib/publish/pages/prose-page.tsx";
import { renderTestPage } from "../../../lib/publish/pages/test-page.tsx";
import type { ChargerResult, ProseResult, SiteIndex, TestResult } from "../../../lib/publish/results.ts";
import type { ResultsFolder } from "../../../lib/publish/results-folder.ts";
import { figureOf, fixture } from "../../pages/fixture.ts";

const found = <T,>(value: T | undefined): T => {
  if (value === undefined) throw new Error("the fixture lacks what this test asks for");
  return value;
};
const folder = (index: SiteIndex = fixture.index): ResultsFolder => ({
  index,
  test: (id) => found(fixture.tests.find((test) => test.id === id)),
  charger: (id) => found(fixture.chargers.find((charger) => charger.id === id)),
  rowsOf: (id) => index.rows.filter((row) => row.charger.id === id),
  testsOf: (id) => index.rows.filter((row) => row.charger.id === id).map((row) => row.test.id),
});
const honest: SiteIndex = { ...fixture.index, site: { ...fixture.index.site, invented: false, sells: false } };
const noCharts = { density: undefined, witnesses: undefined, profiles: new Map() };

describe("banners and marks", () => {
  it("say on the page, in the title and at each table that data are invented", () => {
    const html = renderComparisonPage(folder(), "en");
    expect(html).toContain("(invented data)</title>");
    expect(html).toContain("banner-invented");
    expect(html.split('class="invented"').length - 1).toBe(html.split("<caption>").length - 1);
  });

  it("say that the publisher sells", () => {
    expect(renderComparisonPage(folder(), "en")).toContain("banner-sells");
  });

  it("are absent from a site of real data by somebody who does not sell", () => {
    expect(renderComparisonPage(folder(honest), "en")).not.toContain("banner");
  });

  it("mark a single invented test on a site of real data", () => {
    expect(renderTestPage(folder(honest), fixture.tests[0] as TestResult, noCharts, "en")).toContain("banner-invented");
  });
});

describe("a charger that nobody tested", () => {
  it("is not said to lack nothing", () => {
    const [tested] = fixture.chargers;
    const untested: ChargerResult = { ...(tested as ChargerResult), tests: [], notSeen: [] };
    const html = renderChargerPage(folder(), untested, new Map(), "en");
    expect(html).not.toContain("Nothing is missing");
    expect(html).toMatch(/id="not-seen">[^<]*<\/h2><p>It has not been tested yet\.<\/p>/);
  });
});

describe("words that look like markup", () => {
  it("are shown as words", () => {
    const html = renderComparisonPage(folder(), "en");
    expect(html).toContain("MOTO &lt;6/12 V> &amp; more");
    expect(html).not.toContain("MOTO <6/12");
  });

  it("cannot add an attribute", () => {
    const index = { ...honest, site: { ...honest.site, tagline: '"><script src="//example.org/x.js"></script>' } };
    expect(renderComparisonPage(folder(index), "en")).not.toContain("<script src=");
  });
});

describe("prose", () => {
  const page = (html: string): string => renderProsePage(honest, { ...(honest.pages[0] as ProseResult), html }, "en");

  it("has its links within the site made relative, with or without the leading slash", () => {
    expect(page('<a href="/method/#rules-in-force">m</a>')).toContain('href="../method/index.html#rules-in-force"');
    expect(page('<a href="tests/lantern-first/">t</a>')).toContain('href="../tests/lantern-first/index.html"');
  });

  it("keeps links that lead elsewhere or stay on the page", () => {
    expect(page('<a href="https://example.org/">e</a><a href="#a">a</a>')).toContain(
      '<a href="https://example.org/">e</a><a href="#a">a</a>',
    );
  });
});

describe("pages at odd places", () => {
  it("links 404.html from the server's root where the site knows its address", () => {
    const index = { ...honest, site: { ...honest.site, baseUrl: "https://example.org/bench" } };
    expect(renderNotFoundPage(index)).toContain('href="/bench/assets/site.css"');
    expect(renderNotFoundPage(honest)).toContain('href="assets/site.css"');
  });

  it("says so where nothing was corrected and no policy is stated", () => {
    const html = renderCorrectionsPage({ ...honest, corrections: [], site: { ...honest.site, correctionsPolicy: null } }, "en");
    expect(html).toContain("Nothing has been corrected so far.");
    expect(html).toContain("states no policy");
  });
});

describe("columns of the comparison", () => {
  it("come from the rows, the buyer's first, each once", () => {
    const rows = fixture.index.rows.map((row, index) => ({
      ...row,
      figures: [figureOf({ id: "odd", label: "Odd", unit: "" }, index), ...row.figures],
    }));
    expect(figureColumns(rows).map((column) => column.id)).toEqual([
      "hours-to-target",
      "connections-to-target",
      "cost-per-result",
      "price",
      "odd",
    ]);
  });
});

describe("the way to a figure", () => {
  const find = figureFinder(fixture.tests, fixture.chargers[0] as ChargerResult);

  it("leads to the page and the row that show it", () => {
    expect(find("recording/night one.csv#sustained-current")).toBe("tests/lantern-first/#figure-recording-night-one.csv-sustained-current");
    expect(find("charger#price")).toBe("chargers/lantern-eight/#figure-charger-price");
    expect(find("pebble-agm/recording/run.csv#gap-time")).toBe("tests/pebble-agm/#figure-recording-run.csv-gap-time");
  });

  it("is undefined where no page shows it", () => {
    expect(find("test#no-such-figure")).toBeUndefined();
  });
});
