import { XMLParser, XMLValidator } from "fast-xml-parser";
import { describe, expect, it } from "vitest";
import { quotableCharger } from "../../../../lib/publish/outward/quotable.ts";
import { frameCode, htmlBlock, type Quotable, quotationLine } from "../../../../lib/publish/outward/quotation.ts";
import { folderOf, publishedResults } from "./published.ts";

const quotable = (changes?: Parameters<typeof publishedResults>[0], id = "lantern-eight"): Quotable =>
  quotableCharger(folderOf(publishedResults(changes)), { [id]: "0123456789ab" }, id, "en");
const headlines = ({ headlines: { promises, way } }: Quotable) => [...promises, ...way];
const text = (value: string | null): string => {
  if (value === null) throw new Error("expected code, found none");
  return value;
};

describe("a line to quote", () => {
  const lantern = quotable({ invented: false });
  const line = quotationLine(headlines(lantern)[0] as (typeof lantern.headlines.promises)[number], lantern);

  it("has value, unit, interval, claim, outcome, condition, date, method version, id and address", () => {
    expect(line).toBe(
      "Lantern Eight. Output current: 5.92 ± 0.13\u202FA, claimed 8\u202FA (label): short of the claim (mode “CAR 12V”, on Bench flooded 60 Ah, 60\u202FAh, flooded calcium). The Slipway Bench, result of 2026-04-02, method 1, figure recording/night one.csv#sustained-current: https://bench.example/chargers/tests/lantern-first/#figure-recording-night-one.csv-sustained-current",
    );
  });

  it("says first that data are invented", () => {
    const invented = quotable({ invented: true });
    for (const headline of headlines(invented)) expect(quotationLine(headline, invented)).toMatch(/^\[Invented data\]/);
  });

  it("tells an absence with its reason, and never as zero", () => {
    const pebble = quotable({}, "pebble-trickle");
    const hours = headlines(pebble).find(({ id }) => id === "hours-to-target");
    expect(quotationLine(hours as (typeof pebble.headlines.way)[number], pebble)).toContain(
      "Hours to full: not applicable, the battery is sealed, so there is no density to reach",
    );
  });

  it("goes without address where the site states none", () => {
    const homeless = quotable({ baseUrl: null });
    for (const headline of headlines(homeless)) expect(quotationLine(headline, homeless)).not.toContain("http");
  });
});

describe("the block for other pages", () => {
  const block = text(htmlBlock(quotable()));

  it("is well-formed, and has neither script nor style nor anything to load", () => {
    expect(XMLValidator.validate(block)).toBe(true);
    expect(block).not.toMatch(/<(script|style|img|iframe|link)|\sstyle=|\son\w+=|src=/i);
  });

  it("has the verdict, all six figures, the version, and the way to newer ones", () => {
    const parsed = new XMLParser({ ignoreAttributes: false }).parse(block);
    expect(parsed.figure.blockquote.ul.li).toHaveLength(6);
    expect(block).toContain("three quarters of the current");
    expect(block).toContain("result of 2026-04-02, method 1, fingerprint 0123456789ab");
    expect(parsed.figure.figcaption.a["@_href"]).toBe("https://bench.example/chargers/results/lantern-eight/#v-2026-04-02");
  });

  it("shows words that look like markup as words", () => {
    expect(text(htmlBlock(quotable({}, "pebble-trickle")))).toContain("MOTO &lt;6/12 V&gt; &amp; more");
  });

  it("says that data are invented, and that the publisher sells", () => {
    expect(block).toContain("Invented data");
    expect(block).not.toContain("sells");
    expect(text(htmlBlock(quotable({ invented: false })))).not.toContain("Invented data");
    expect(text(htmlBlock(quotable({ sells: true })))).toContain("sells chargers or batteries");
  });

  it("is not offered where the site states no address, and nor is the frame", () => {
    expect(htmlBlock(quotable({ baseUrl: null }))).toBeNull();
    expect(frameCode(quotable({ baseUrl: null }))).toBeNull();
  });
});

describe("the frame", () => {
  it("shows the embed of the charger, lets nothing run, and has a title", () => {
    const code = text(frameCode(quotable()));
    const { iframe } = new XMLParser({ ignoreAttributes: false, allowBooleanAttributes: true }).parse(code);
    expect(iframe["@_src"]).toBe("https://bench.example/chargers/embed/lantern-eight/");
    expect(iframe["@_title"]).toContain("Lantern Eight");
    expect(iframe["@_sandbox"]).not.toContain("allow-scripts");
  });
});
