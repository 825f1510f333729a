import { describe, expect, it } from "vitest";
import { openBook } from "../../../../lib/publish/phrases/book.ts";
import { chapters } from "../../../../lib/publish/phrases/chapters.ts";
import { formOrder, languages } from "../../../../lib/publish/phrases/languages.ts";
import { sayPhrase } from "../../../../lib/publish/phrases/say.ts";
import { phraseBook } from "../../../../lib/publish/phrases/translate.ts";
import { exampleOf } from "./examples.ts";

const book = phraseBook();
const all = [...book.groups].flatMap(([group, entries]) => entries.map((entry) => ({ group, entry })));

/** Words that the languages share; norms, kinds and file names are told by their letters. */
const shared = new Set(["warm", "Thermometer", "docs/projection.md.", "docs/reconciliation.md."]);
const isWords = (text: string): boolean => /\p{Ll}{3,}/u.test(text.replace(/\{[^{}]*\}/g, "")) && !shared.has(text);

describe("the phrase book", () => {
  it("names no place in a wording that the English does not have, and leaves none out", () => {
    for (const { entry } of all) {
      const places = entry.parts.flatMap((part) => (typeof part === "string" ? [] : [part.name]));
      expect(new Set(places).size, entry.phrase.en).toBe(places.length);
      for (const language of languages) {
        const named = entry.wordings[language].flatMap((part) => (typeof part === "string" ? [] : [part]));
        const set = named.filter(({ forms }) => forms === null).map(({ name }) => name);
        expect([...set].sort(), `${language}: ${entry.phrase.en}`).toEqual([...places].sort());
        expect(places, `${language}: ${entry.phrase.en}`).toEqual(expect.arrayContaining(named.map(({ name }) => name)));
      }
    }
  });

  it("lists as many forms of a word as a language has for whole numbers, or all", () => {
    for (const { entry } of all)
      for (const language of languages)
        for (const part of entry.wordings[language])
          if (typeof part !== "string" && part.forms !== null) {
            const most = formOrder[language].length;
            expect([language === "pl" ? most - 1 : most, most], entry.phrase[language]).toContain(part.forms.length);
          }
  });

  it("ends a wording as the English ends, so that sentences join", () => {
    const endOf = (text: string): string => /[.?!:]?$/.exec(text)?.[0] ?? "";
    for (const { entry } of all)
      for (const language of languages) expect(endOf(entry.phrase[language]), entry.phrase[language]).toBe(endOf(entry.phrase.en));
  });

  it("says nothing in English", () => {
    const english = all.flatMap(({ entry: { phrase } }) =>
      languages.filter((language) => phrase[language] === phrase.en && isWords(phrase.en)).map(() => phrase.en),
    );
    expect(english).toEqual([]);
  });

  it("finds the example of every entry as an instance of that entry, and of no other in its group", () => {
    for (const { group, entry } of all) {
      const example = exampleOf(book, entry);
      expect(
        book.findAll(group, example).map((found) => found.entry.phrase.en),
        example,
      ).toEqual([entry.phrase.en]);
    }
  });

  it("says the example of every entry in every language, with every place filled and no digit lost", () => {
    const digitsIn = (text: string): string => [...text.replace(/\D/g, "")].sort().join("");
    for (const { group, entry } of all)
      for (const language of languages) {
        const example = exampleOf(book, entry);
        const found = book.find(group, example);
        const said = found === undefined ? "" : sayPhrase(found, language);
        expect(said).not.toMatch(/\{\S|\|/);
        expect(digitsIn(said), said).toBe(digitsIn(example));
      }
  });

  it("uses every group", () => {
    const used = new Set(
      all.flatMap(({ entry }) => entry.parts.flatMap((part) => (typeof part !== "string" && "group" in part ? [part.group] : []))),
    );
    expect([...book.groups.keys()].filter((group) => group !== "text" && !used.has(group))).toEqual([]);
  });

  it("has each chapter's groups", () => {
    expect(new Set(chapters.flatMap((chapter) => Object.keys(chapter)))).toEqual(new Set(book.groups.keys()));
  });
});

describe("opening a book", () => {
  const one = (en: string, pl = "x") => [{ text: [{ en, pl, de: "x" }] }];

  it("refuses a pattern that cannot be read", () => {
    expect(() => openBook(one("a {b c}"))).toThrow("a place that cannot be read");
    expect(() => openBook(one("a {b"))).toThrow("a brace that opens or closes nothing");
    expect(() => openBook(one("{a}{b} c"))).toThrow("two places without words between");
    expect(() => openBook(one("{a:cause+with} c"))).toThrow('not joined by "with"');
    expect(() => openBook(one("{a:cause} c"))).toThrow('no group is called "cause"');
    expect(() => openBook(one("{a:text}"))).toThrow("a phrase in place of itself");
  });
});
