import { XMLParser, XMLValidator } from "fast-xml-parser";
import { describe, expect, it } from "vitest";
import { chargerFeed, siteFeed } from "../../../../lib/publish/outward/feed.ts";
import type { Results } from "../../../../lib/publish/results.ts";
import { folderOf, publishedResults } from "./published.ts";

type Link = { readonly "@_rel": string; readonly "@_href": string };
type Entry = {
  readonly id: string;
  readonly title: string;
  readonly updated: string;
  readonly link: Link;
  readonly content: { "#text": string };
};
type Feed = {
  readonly id: string;
  readonly title: string;
  readonly updated: string;
  readonly author: { name: string };
  readonly link: Link[];
  readonly entry: Entry[];
};

function read(xml: string | undefined): Feed {
  if (xml === undefined) throw new Error("expected a feed, found none");
  expect(XMLValidator.validate(xml)).toBe(true);
  return new XMLParser({ ignoreAttributes: false, isArray: (name) => name === "entry" || name === "link" }).parse(xml).feed;
}

const withoutDates = (results: Results): Results => ({
  ...results,
  tests: results.tests.map((test) => ({ ...test, facts: [], revisions: [] })),
  chargers: results.chargers.map((charger) => ({ ...charger, corrections: [] })),
});

describe("the feed of the site", () => {
  const feed = read(siteFeed(folderOf(publishedResults())));

  it("has what RFC 4287 asks of a feed and of each entry", () => {
    expect(feed.id).toBe("https://bench.example/chargers/feed.xml");
    expect(feed.title).not.toBe("");
    expect(feed.author.name).toBe("Slipway & Sons <bench>");
    expect(feed.link.map((link) => link["@_rel"])).toEqual(["self", "alternate"]);
    for (const entry of feed.entry) {
      expect(entry.id).toMatch(/^tag:bench\.example,\d{4}-\d{2}-\d{2}:/);
      expect(entry.title).not.toBe("");
      expect(entry.updated).toMatch(/^\d{4}-\d{2}-\d{2}T00:00:00Z$/);
    }
    expect(new Set(feed.entry.map(({ id }) => id)).size).toBe(feed.entry.length);
  });

  it("tells of publication, revision and correction, the newest first, dated by the records", () => {
    expect(feed.entry.map(({ updated }) => updated.slice(0, 10))).toEqual(["2026-04-02", "2026-04-02", "2026-03-10"]);
    expect(feed.updated).toBe("2026-04-02T00:00:00Z");
  });

  it("links by whole addresses", () => {
    expect(JSON.stringify(feed).match(/"@_href":"[^"]*"/g)).toHaveLength(5);
    expect(JSON.stringify(feed)).not.toMatch(/"@_href":"(?!https:\/\/bench\.example\/chargers\/)/);
  });

  it("says in every title that data are invented, and in none where they are not", () => {
    for (const title of [feed.title, ...feed.entry.map((entry) => entry.title)]) expect(title).toContain("Invented data");
    expect(siteFeed(folderOf(publishedResults({ invented: false })))).not.toContain("Invented data");
  });

  it("says of a correction whether the verdict changed", () => {
    expect(feed.entry.map(({ content }) => content["#text"]).join()).toContain("The verdict stands.");
  });
});

describe("a feed that cannot be", () => {
  it("is not written: Atom asks for an address and a date, and the day of the build is neither", () => {
    expect(siteFeed(folderOf(publishedResults({ baseUrl: null })))).toBeUndefined();
    expect(siteFeed(folderOf(withoutDates(publishedResults())))).toBeUndefined();
    expect(chargerFeed(folderOf(publishedResults()), "pebble-trickle")).toBeUndefined();
  });
});

describe("the feed of a charger", () => {
  it("has its own events and address only", () => {
    const feed = read(chargerFeed(folderOf(publishedResults()), "lantern-eight"));
    expect(feed.id).toBe("https://bench.example/chargers/chargers/lantern-eight/feed.xml");
    expect(feed.entry).toHaveLength(3);
  });
});
