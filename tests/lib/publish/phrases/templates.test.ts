import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { joints } from "../../../../lib/publish/phrases/pattern.ts";
import { phraseBook } from "../../../../lib/publish/phrases/translate.ts";
import { wordsIn } from "./template-words.ts";

const lib = fileURLToPath(new URL("../../../../lib/", import.meta.url));

/** Where sentences of the results are composed. */
const folders = ["judge", "measure", "reconcile", "project", "publish/assemble"];

/** Files whose words are methods' explanations or messages for whoever writes a page; neither is in the phrase book. */
const left = new Set([
  "publish/assemble/methods.ts",
  "publish/assemble/prose.ts",
  "measure/figures/float-voltage.ts",
  "measure/figures/limit-voltage.ts",
]);

/** What opens an explanation of a method, which stays English, or a message about our own mistake. */
const unspoken = /\b(explain|source|formula|checkedBy|throw new Error)\b/;

/** Words by which the code tells cases apart; a page never shows them as they are. */
const ids = new Set(["not shown", "likely between", "not advised", "will not"]);

const files = folders.flatMap((folder) =>
  readdirSync(`${lib}${folder}`, { recursive: true, encoding: "utf8" })
    .map((name) => `${folder}/${name.replaceAll("\\", "/")}`)
    .filter((name) => name.endsWith(".ts") && !left.has(name))
    .sort(),
);

/** Stands for a place of a pattern and for a number, which a template may have in its words and a pattern as a place. */
const gap = "\u0000";

/** English of the whole book with its places as gaps, in which a run of words must stand. */
const book = [
  ...[...phraseBook().groups.values()].flatMap((entries) => entries.map(({ phrase }) => plain(phrase.en))),
  ...Object.values(joints).map(({ en }) => en),
]
  .join("\n")
  .toLowerCase();

/** The line that opens what stands on a line: a property's name may stand above the strings that it holds. */
function opening(lines: readonly string[], line: number): string {
  let at = line - 1;
  while (/^\s*["'`]/.test(lines[at] ?? "")) at--;
  return lines[at] ?? "";
}

function plain(text: string): string {
  return text.replace(/\\u202f|[\u00A0\u202F]/gi, " ").replace(/\{[^{}]*\}|\d+(\.\d+)?/g, gap);
}

describe("the templates that sentences are composed of", () => {
  it("are found one by one, those inside of a value as well, and no comment or pattern among them", () => {
    const source = [
      'const a = /"no"/; // "not this"',
      "say(`it held $",
      "{b ? `for $",
      '{n} days` : "a while"}, {then} off`, "a \\"b\\" c");',
    ].join("");
    const found = wordsIn(source.replace('not this"', 'not this"\n'));
    expect(found.map(({ text }) => text).sort()).toEqual([" days", ", {then} off", 'a "b" c', "a while", "for ", "it held "]);
    expect(new Set(found.map(({ line }) => line))).toEqual(new Set([2]));
  });

  it.each(files)("%s says nothing that the phrase book lacks", (file) => {
    const source = readFileSync(`${lib}${file}`, "utf8");
    const lines = source.split("\n");
    const lacking = wordsIn(source)
      .filter(({ line }) => !unspoken.test(opening(lines, line)))
      .map(({ line, text }) => ({ line, text: plain(text).replace(/^\s*([VA]\b)?[\s;:,.]*|[\s;:,.]+$/g, "") }))
      .filter(({ text }) => (text.match(/[a-z]{2,}/g) ?? []).length > 1 && / /.test(text) && !ids.has(text))
      .filter(({ text }) => !book.includes(text.toLowerCase()));
    expect(lacking, "add the sentence's pattern to a chapter in lib/publish/phrases/book/ (docs/phrases.md)").toEqual([]);
  });
});
