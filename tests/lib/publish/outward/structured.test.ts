import { describe, expect, it } from "vitest";
import { withPageHead } from "../../../../lib/publish/outward/page-head.ts";
import { structuredDataOf } from "../../../../lib/publish/outward/structured/index.ts";
import { jsonLdBlock } from "../../../../lib/publish/outward/structured/json-ld.ts";
import type { Results } from "../../../../lib/publish/results.ts";
import { first, folderOf, publishedResults } from "./published.ts";

type Plain = Record<string, unknown> & { "@type": string };
const told = (results: Results, path: string): Plain[] => JSON.parse(JSON.stringify(structuredDataOf(folderOf(results), path)));
const real = publishedResults({ invented: false });
const invented = publishedResults();

describe("a charger of real data", () => {
  const product = first(told(real, "chargers/lantern-eight/"));
  const review = product.review as Plain & Record<"positiveNotes" | "negativeNotes", { itemListElement: { name: string }[] }>;

  it("is a product with a review: who judged, when, and the verdict of the page", () => {
    expect(product["@type"]).toBe("Product");
    expect(product.name).toBe("Lantern Eight");
    expect(review).toMatchObject({
      author: { name: "Slipway & Sons <bench>" },
      datePublished: "2026-03-10",
      dateModified: "2026-04-02",
      reviewBody: first(real.chargers).verdict.sentence,
    });
  });

  it("has no stars: no rating of any kind is made up", () => {
    expect(JSON.stringify(product)).not.toMatch(/rating/i);
  });

  it("has notes for and against in the very sentences of its findings", () => {
    const sentences = first(real.chargers).findings.map(({ sentence }) => sentence);
    const notes = [...review.positiveNotes.itemListElement, ...review.negativeNotes.itemListElement].map(({ name }) => name);
    expect(notes).toHaveLength(3);
    for (const note of notes) expect(sentences).toContain(note);
  });

  it("has no notes where the publisher sells or does not say", () => {
    for (const sells of [true, null])
      expect(JSON.stringify(told(publishedResults({ invented: false, sells }), "chargers/lantern-eight/"))).not.toContain("Notes");
  });

  it("is not told where nobody is named who judged, or the result is withdrawn or in doubt", () => {
    const nobody: Results = { ...real, index: { ...real.index, site: { ...real.index.site, operator: [] } } };
    expect(told(nobody, "chargers/lantern-eight/")).toEqual([]);
    for (const kind of ["withdrawal", "concern"]) {
      const corrections = [{ on: "2026-05-01", kind, what: "", why: "", noticedBy: null, changesVerdict: false }];
      const shaken: Results = { ...real, chargers: real.chargers.map((charger) => ({ ...charger, corrections })) };
      expect(told(shaken, "chargers/lantern-eight/"), kind).toEqual([]);
    }
  });
});

describe("a charger of invented data", () => {
  it("is never described as a product or a review", () => {
    expect(told(invented, "chargers/lantern-eight/")).toEqual([]);
    const oneInvented: Results = { ...real, chargers: real.chargers.map((charger) => ({ ...charger, invented: true })) };
    expect(told(oneInvented, "chargers/lantern-eight/")).toEqual([]);
  });
});

describe("a test", () => {
  const dataset = first(told(real, "tests/lantern-first/"));
  const variables = dataset.variableMeasured as Record<string, unknown>[];

  it("is a data set with its files, licence and dates", () => {
    expect(dataset).toMatchObject({ "@type": "Dataset", datePublished: "2026-03-10", dateModified: "2026-04-02" });
    expect(dataset.license).toBe("https://creativecommons.org/licenses/by/4.0/");
    expect((dataset.distribution as { contentUrl: string }[]).map(({ contentUrl }) => contentUrl.split("/").at(-1))).toEqual([
      "lantern-first.json",
      "lantern-first.figures.csv",
      "lantern-first.zip",
    ]);
    expect((dataset.description as string).length).toBeGreaterThanOrEqual(50);
  });

  it("has every figure of the whole test, with the numbers of the results, unit codes, and the page of the method", () => {
    expect(variables).toHaveLength(first(real.tests).figures.length);
    expect(variables.find(({ propertyID }) => propertyID === "test#charge-recorded")).toMatchObject({
      value: 61.4,
      minValue: 61.4 - 0.71,
      maxValue: 61.4 + 0.71,
      unitText: "Ah",
      unitCode: "AMH",
      measurementTechnique: "https://bench.example/chargers/method/charge-recorded/",
    });
  });

  it("shows an absent figure without value and with its reason", () => {
    const absent = variables.filter(({ description }) => String(description).startsWith("not reached"));
    expect(absent).toHaveLength(1);
    expect(absent[0]).not.toHaveProperty("value");
  });

  it("says in name, description and keywords that data are invented", () => {
    const { name, description, keywords } = first(told(invented, "tests/lantern-first/"));
    expect([name, description, keywords]).toEqual([
      expect.stringMatching(/^Invented data: /),
      expect.stringMatching(/^Invented demonstration data/),
      ["invented data"],
    ]);
    expect(JSON.stringify(dataset)).not.toMatch(/invented (data|demonstration)/i);
  });
});

describe("the page of data", () => {
  it("is a catalogue that names every test's data set", () => {
    const catalogue = first(told(real, "data/"));
    expect(catalogue["@type"]).toBe("DataCatalog");
    expect((catalogue.dataset as { "@id": string }[]).map((dataset) => dataset["@id"])).toEqual(
      ["tests/lantern-first/", "tests/pebble-agm/"].map((path) => first(told(real, path))["@id"]),
    );
  });
});

describe("other pages, and a site without address", () => {
  it("describe nothing", () => {
    for (const path of ["", "method/", "cards/lantern-eight/", "404.html"]) expect(told(real, path), path).toEqual([]);
    expect(told(publishedResults({ baseUrl: null }), "tests/lantern-first/")).toEqual([]);
  });
});

describe("the block in a page", () => {
  it("cannot be closed by a record's words", () => {
    const block = jsonLdBlock([{ "@type": "Product", name: "</script><script>alert(1)</script><!--" }]);
    expect(block.match(/<\/?script/g)).toHaveLength(2);
    expect(block).not.toContain("<!--");
    expect(JSON.parse(block.replace(/^<script[^>]*>|<\/script>$/g, ""))["@graph"][0].name).toContain("</script>");
  });

  it("stands in the head, with the feeds; pages that need neither stay as they are", () => {
    const html = "<html><head><title>x</title></head><body></body></html>";
    const folder = folderOf(real);
    expect(withPageHead(html, folder, "tests/lantern-first/")).toMatch(/<script type="application\/ld\+json">.*<\/script><\/head>/);
    expect(withPageHead(html, folder, "chargers/lantern-eight/")).toContain(
      'href="https://bench.example/chargers/chargers/lantern-eight/feed.xml"',
    );
    expect(withPageHead(html, folder, "")).toContain('href="https://bench.example/chargers/feed.xml"');
    expect(withPageHead(html, folder, "method/")).toBe(html);
    expect(() => withPageHead("no head", folder, "data/")).toThrow("has no head");
  });

  it("announces no feed that is not there", () => {
    const html = "<head></head>";
    expect(withPageHead(html, folderOf(invented), "results/pebble-trickle/")).toBe(html);
  });
});
