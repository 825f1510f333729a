import { createRequire } from "node:module";
import { Resvg } from "@resvg/resvg-js";
import { describe, expect, it } from "vitest";
import { headlinesOf } from "../../../../lib/publish/outward/headlines.ts";
import { outwardSpeechIn } from "../../../../lib/publish/outward/outward-speech.ts";
import {
  chargerPictureText,
  type PictureText,
  paintPicture,
  pictureSvg,
  sitePictureText,
} from "../../../../lib/publish/outward/picture.ts";
import { first, publishedResults } from "./published.ts";

const { index, chargers, tests } = publishedResults();
const textsOf = (charger: (typeof chargers)[number]): PictureText => {
  const ofCharger = tests.filter((test) => test.charger.id === charger.id);
  return chargerPictureText(index, charger, headlinesOf(charger, ofCharger, outwardSpeechIn("en")), "2026-04-02", true);
};
const lantern = textsOf(first(chargers));
const wide: PictureText = { ...lantern, title: "WWW MMM ".repeat(9).trim(), verdict: "Wammmm wommm ".repeat(20).trim() };

/** Where the ink of a picture's words ends, by the painter's own measure: the grounds and rules are left out. */
function inkOf(text: PictureText): { left: number; right: number; bottom: number } {
  const words = pictureSvg(text).replace(/<(rect|path)[^>]*>/g, "");
  const locate = createRequire(import.meta.url).resolve;
  const fontFiles = ["DejaVuSans.ttf", "DejaVuSans-Bold.ttf"].map((name) => locate(`dejavu-fonts-ttf/ttf/${name}`));
  const box = new Resvg(words, { font: { fontFiles, loadSystemFonts: false, defaultFontFamily: "DejaVu Sans" } }).innerBBox();
  if (box === undefined) throw new Error("expected words in the picture, found none");
  return { left: box.x, right: box.x + box.width, bottom: box.y + box.height };
}

describe("the picture of a shared link", () => {
  it("is a PNG of 1200 by 630 px", () => {
    const png = Buffer.from(paintPicture(lantern));
    // Signature, then the header chunk with width and height (PNG specification, 5.2 and 11.2.2).
    expect(png.subarray(0, 8).toString("hex")).toBe("89504e470d0a1a0a");
    expect([png.readUInt32BE(16), png.readUInt32BE(20)]).toEqual([1200, 630]);
    expect(png.length).toBeLessThan(200_000);
  });

  it("is the same every time, and another for other words", () => {
    expect(Buffer.from(paintPicture(lantern)).equals(Buffer.from(paintPicture(lantern)))).toBe(true);
    expect(Buffer.from(paintPicture(lantern)).equals(Buffer.from(paintPicture({ ...lantern, title: "Other" })))).toBe(false);
  });

  it("keeps all words within its margins, long names and wide letters too", () => {
    for (const text of [...chargers.map(textsOf), sitePictureText(index), wide]) {
      const { left, right, bottom } = inkOf(text);
      expect(left, text.title).toBeGreaterThanOrEqual(60);
      expect(right, text.title).toBeLessThanOrEqual(1140);
      expect(bottom, text.title).toBeLessThanOrEqual(610);
    }
  });

  it("says the verdict, every promise's outcome, the version, and that data are invented", () => {
    const svg = pictureSvg(lantern);
    for (const words of ["Lantern Eight", "Output current: short of the claim", "2026-04-02", "Invented data"])
      expect(svg).toContain(words);
    expect(pictureSvg({ ...lantern, invented: false })).not.toContain("Invented");
  });

  it("never cuts a verdict: one that does not fit is not shown at all", () => {
    const svg = pictureSvg({ ...lantern, verdict: "word ".repeat(400) });
    expect(svg).toContain("too long for a picture");
    expect(svg).not.toContain("word word");
  });
});
