import { beforeAll, describe, expect, it } from "vitest";
import { languages } from "../../../../lib/publish/phrases/languages.ts";
import { phraseBook, translatePhrase } from "../../../../lib/publish/phrases/translate.ts";
import { kindOf, spoken, type Text, unspoken } from "./fields.ts";
import { demoTexts, documentedDoubts, siteTexts } from "./sources.ts";

/** Where a developer whose sentence is missing finds how to add it. */
const help = "add the sentence's pattern to a chapter in lib/publish/phrases/book/ (docs/phrases.md)";

describe("the results' texts in other languages", () => {
  let texts: Text[] = [];

  beforeAll(async () => {
    texts = [...(await demoTexts()), ...siteTexts(), ...documentedDoubts()];
  }, 120_000);

  it.each(spoken)("knows $name", (kind) => {
    const different = [...new Set(texts.filter(({ field }) => kindOf(field) === kind).map(({ text }) => text))];
    const missing = different.filter((text) => languages.some((language) => translatePhrase(text, language) === undefined));
    expect(different.length).toBeGreaterThan(0);
    expect(missing.length / different.length, `${help}:\n${missing.join("\n")}`).toBeLessThanOrEqual(1 - kind.least);
  });

  it("has every field of the results listed as one with generated words or without", () => {
    const unlisted = new Set(
      texts.map(({ field }) => field).filter((field) => kindOf(field) === undefined && !unspoken.some((one) => one.test(field))),
    );
    expect([...unlisted]).toEqual([]);
  });

  it("finds no text to be an instance of two phrases", () => {
    const book = phraseBook();
    const several = [...new Set(texts.filter(({ field }) => kindOf(field) !== undefined).map(({ text }) => text))]
      .map((text) => book.findAll("text", text).map(({ entry }) => entry.phrase.en))
      .filter((entries) => entries.length > 1);
    expect(several).toEqual([]);
  });

  it("keeps every digit of a text, and adds none", () => {
    const digitsIn = (text: string): string => [...text.replace(/\D/g, "")].sort().join("");
    for (const { text } of texts.filter(({ field }) => kindOf(field) !== undefined))
      for (const language of languages) {
        const said = translatePhrase(text, language);
        if (said !== undefined) expect(digitsIn(said), said).toBe(digitsIn(text));
      }
  });
});
