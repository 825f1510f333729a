import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { citableSite } from "../../../../lib/publish/outward/index.ts";
import { quotableCharger } from "../../../../lib/publish/outward/quotable.ts";
import { headlineWords } from "../../../../lib/publish/outward/quotation.ts";
import { renderCardPage } from "../../../../lib/publish/pages/card-page.tsx";
import { renderEmbedPage } from "../../../../lib/publish/pages/embed-page.tsx";
import { renderChargerQuotePage, renderQuotePage } from "../../../../lib/publish/pages/quote-page.tsx";
import { renderVersionsPage } from "../../../../lib/publish/pages/versions-page.tsx";
import type { Results } from "../../../../lib/publish/results.ts";
import { folderOf, publishedResults } from "./published.ts";

type Changes = Parameters<typeof publishedResults>[0];
const ids = publishedResults().chargers.map(({ id }) => id);
const quotableOf = (results: Results, id = "lantern-eight") => quotableCharger(folderOf(results), { [id]: "0123456789ab" }, id, "en");
const quotable = (changes?: Changes, id?: string) => quotableOf(publishedResults(changes), id);
const card = (changes?: Changes, id?: string) => renderCardPage(quotable(changes, id), "en");
const embed = (changes?: Changes, id?: string) => renderEmbedPage(quotable(changes, id), "en");
const quote = (changes?: Changes, id?: string) => renderChargerQuotePage(quotable(changes, id), "en");

const withCorrection = (kind: string, changesVerdict: boolean): Results => {
  const results = publishedResults();
  const correction = { on: "2026-05-01", kind, what: "Now it fails", why: "a slip", noticedBy: null, changesVerdict };
  return { ...results, chargers: results.chargers.map((charger) => ({ ...charger, corrections: [...charger.corrections, correction] })) };
};

describe("card and embed", () => {
  const both = [
    ["card", card],
    ["embed", embed],
  ] as const;

  it.each(both)("%s: six figures, each with a value or the kind of its absence", (_, render) => {
    for (const id of ids) {
      const rows = render({}, id).match(/<dd>.*?<\/dd>/gs) ?? [];
      expect(rows).toHaveLength(6);
      for (const row of rows) expect(row).toMatch(/class="value"|class="absent"|class="small"/);
    }
  });

  it.each(both)("%s: version, day, method and fingerprint", (_, render) => {
    expect(render()).toContain("Result of 2026-04-02 · method 1 · fingerprint <code>0123456789ab</code>");
  });

  it.each(both)("%s: says that data are invented where they are, and only there", (_, render) => {
    expect(render()).toContain("<strong>Invented data</strong>");
    expect(render({ invented: false })).not.toMatch(/invented data/i);
  });

  it.each(both)("%s: says that the publisher sells", (_, render) => {
    expect(render({ sells: true })).toContain("The publisher sells chargers or batteries.");
    expect(render({ sells: false })).not.toContain("sells");
  });

  it.each(both)("%s: has no script, no inline style, and a policy that allows none", (_, render) => {
    const html = render();
    expect(html).not.toMatch(/<script|<style|\sstyle=|\son[a-z]+=/);
    expect(html).toContain("default-src 'none'; style-src 'self'; img-src 'self'");
  });

  it("tell before the verdict that a result was withdrawn or its verdict changed", () => {
    for (const render of [renderCardPage, renderEmbedPage]) {
      const withdrawn = render(quotableOf(withCorrection("withdrawal", false)), "en");
      const [head = "", body = ""] = withdrawn.split("<body");
      expect(head).not.toContain("Withdrawn");
      expect(body.indexOf("Withdrawn on 2026-05-01")).toBeGreaterThan(0);
      expect(body.indexOf("Withdrawn on 2026-05-01")).toBeLessThan(body.indexOf("three quarters of the current"));
      expect(render(quotableOf(withCorrection("correction", true)), "en")).toContain("Verdict changed on 2026-05-01: Now it fails");
      expect(render(quotableOf(withCorrection("correction", false)), "en")).not.toContain("2026-05-01: Now it fails");
    }
  });

  it("keep to their budget: an embed with its styles is 30 kB at most", () => {
    const styles = readFileSync(new URL("../../../../_site-config/assets/card.css", import.meta.url)).length;
    for (const id of ids) expect(Buffer.byteLength(embed({}, id)) + styles).toBeLessThanOrEqual(30_000);
  });
});

describe("the card", () => {
  it("prints a QR code and the address that people type", () => {
    expect(card()).toContain('aria-label="QR code of https://bench.example/chargers/chargers/lantern-eight/"');
    expect(card().replace(/<[^>]+>/g, "")).toContain("bench.example/chargers/chargers/lantern-eight/");
  });

  it("prints no code where the site states no address, and says so", () => {
    const html = card({ baseUrl: null });
    expect(html).not.toContain('<svg class="qr"');
    expect(html).toContain("This site does not state its address");
  });

  it("warns of hydrogen, acid and frozen batteries", () => {
    expect(card()).toMatch(/hydrogen.*acid burns.*frozen/s);
  });
});

describe("the embed", () => {
  it("opens its links beside the page that it stands in", () => {
    for (const link of embed().match(/<a [^>]*>/g) ?? []) expect(link).toMatch(/target="_blank" rel="noopener"/);
    expect(embed().match(/<a /g)).toHaveLength(2);
  });
});

describe("how to quote a charger", () => {
  it("has every figure and outcome of the verdict, the open ones too", () => {
    const { headlines, speech } = quotable({}, "pebble-trickle");
    for (const headline of [...headlines.promises, ...headlines.way])
      expect(quote({}, "pebble-trickle").replaceAll("&lt;", "<").replaceAll("&amp;", "&").replaceAll("&quot;", '"')).toContain(
        headlineWords(headline, speech),
      );
  });

  it("offers code for other pages as text, never as markup of its own", () => {
    expect(quote()).toContain("&lt;iframe src=&quot;https://bench.example/chargers/embed/lantern-eight/&quot;");
    expect(quote()).not.toContain("<iframe");
  });

  it("offers none where the site states no address, and says why", () => {
    expect(quote({ baseUrl: null })).not.toContain("iframe");
    expect(quote({ baseUrl: null })).toContain("there is no code that would work elsewhere");
  });
});

describe("how to quote the site", () => {
  const page = (results: Results, hasFeed = true) => renderQuotePage(results.index, citableSite(folderOf(results)), hasFeed, "en");

  it("states the rules, and that invented data are no results", () => {
    const html = page(publishedResults());
    for (const words of ["No verdict is cropped", "only within one method version", "is no endorsement", "never as results of a product"])
      expect(html).toContain(words);
    expect(page(publishedResults({ invented: false }))).not.toContain("never as results of a product");
  });

  it("leads to each charger's figures, card and versions", () => {
    for (const id of ids)
      for (const path of ["quote", "cards", "results"]) expect(page(publishedResults())).toContain(`../${path}/${id}/index.html`);
  });

  it("leads to the feed where there is one, and says why there is none", () => {
    expect(page(publishedResults())).toContain("../feed.xml");
    expect(page(publishedResults(), false)).toContain("There is no feed");
    expect(page(publishedResults(), false)).not.toContain("feed.xml");
  });
});

describe("the versions of a result", () => {
  const versions = (results: Results, id = "lantern-eight") => renderVersionsPage(folderOf(results), quotableOf(results, id), "en");

  it("have a place each, the newest first, and say whether they still hold", () => {
    const html = versions(publishedResults());
    expect(html.match(/id="v-[^"]*"/g)).toEqual(['id="v-2026-04-02"', 'id="v-2026-03-10"', 'id="v-undated"']);
    expect(html).toContain("This is the newest.");
    expect(html).toContain("A newer result exists: 2 changes since. No change to the verdict was noted.");
  });

  it("say that a later correction turned the verdict", () => {
    expect(versions(withCorrection("correction", true)).match(/<strong>The verdict changed\.<\/strong>/g)).toHaveLength(2);
  });

  it("keep a place for a copy that names no date, dated or not", () => {
    const html = versions(publishedResults(), "pebble-trickle");
    expect(html.match(/id="v-undated"/g)).toHaveLength(1);
    expect(html).toContain("The records state no date for this result");
  });

  it("lead to the list of digests that the fingerprint is of", () => {
    expect(versions(publishedResults())).toContain('href="../../results/lantern-eight/SHA256SUMS"');
  });
});
