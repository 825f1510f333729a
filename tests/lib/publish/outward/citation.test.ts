import Ajv from "ajv";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { bibtex, type Citable, citationFile, plainCitation, publisherOf } from "../../../../lib/publish/outward/citation.ts";
import { publishedResults } from "./published.ts";

const { index } = publishedResults({ invented: false });
const citable: Citable = {
  key: "charger-lantern",
  title: "Lantern & Eight: 100 % of {claims}",
  site: index,
  version: "2026-04-02",
  fingerprint: "0123456789ab",
  address: "https://bench.example/results/lantern/#v-2026-04-02",
  invented: false,
};
const undatedInvented: Citable = { ...citable, version: "undated", fingerprint: null, address: null, invented: true };

describe("the publisher", () => {
  it("is the one of the site's record, and the site's title where none is named", () => {
    expect(publisherOf(index)).toBe("Slipway & Sons <bench>");
    expect(publisherOf({ ...index, site: { ...index.site, operator: [] } })).toBe(index.site.title);
  });
});

describe("a citation in plain text", () => {
  it("has publisher, day, title, method version, fingerprint and address", () => {
    expect(plainCitation(citable)).toBe(
      "Slipway & Sons <bench> (2026-04-02): Lantern & Eight: 100 % of {claims}. The Slipway Bench, method version 1, fingerprint 0123456789ab. https://bench.example/results/lantern/#v-2026-04-02",
    );
  });

  it("says that no date is stated, and that data are invented", () => {
    expect(plainCitation(undatedInvented)).toContain("(date not stated)");
    expect(plainCitation(undatedInvented)).toContain("Invented data.");
  });
});

describe("a BibTeX entry", () => {
  it("spells out the characters that BibTeX and LaTeX give a meaning, and balances its braces", () => {
    const entry = bibtex(citable);
    expect(entry).toContain("title = {Lantern \\& Eight: 100 \\% of \\{claims\\}}");
    const unescaped = entry.replace(/\\[{}]/g, "");
    expect(unescaped.split("{").length).toBe(unescaped.split("}").length);
  });

  it("leaves the address as it is", () => {
    expect(bibtex(citable)).toContain("url = {https://bench.example/results/lantern/#v-2026-04-02}");
  });

  it("has no year where no date is stated", () => {
    expect(bibtex(undatedInvented)).not.toMatch(/year|date =/);
  });
});

/** What version 1.2.0 of the Citation File Format asks of the keys that we write (its guide, from memory). */
const citationFormat = {
  type: "object",
  required: ["cff-version", "message", "title", "authors"],
  additionalProperties: false,
  properties: {
    "cff-version": { const: "1.2.0" },
    message: { type: "string", minLength: 1 },
    type: { enum: ["dataset", "software"] },
    title: { type: "string", minLength: 1 },
    authors: {
      type: "array",
      minItems: 1,
      items: { type: "object", required: ["name"], properties: { name: { type: "string", minLength: 1 } }, additionalProperties: false },
    },
    version: { type: "string", minLength: 1 },
    "date-released": { type: "string", pattern: "^\\d{4}-\\d{2}-\\d{2}$" },
    url: { type: "string", pattern: "^https?://" },
    license: { type: "string", pattern: "^[A-Za-z0-9.+-]+$" },
  },
};

describe("CITATION.cff", () => {
  const problems = (text: string) => {
    const validate = new Ajv().compile(citationFormat);
    return validate(parse(text)) ? [] : validate.errors;
  };

  it("fits its format, with and without date, address and licence", () => {
    expect(problems(citationFile(citable))).toEqual([]);
    expect(problems(citationFile(undatedInvented))).toEqual([]);
    const unlicensed = { ...citable, site: { ...index, site: { ...index.site, licence: "ask us first" } } };
    expect(problems(citationFile(unlicensed))).toEqual([]);
    expect(parse(citationFile(unlicensed))).not.toHaveProperty("license");
  });

  it("says in its title that data are invented", () => {
    expect(parse(citationFile(undatedInvented)).title).toContain("(invented data)");
  });
});
