/** The tables of words. That no message is missing or left over is the type checker's; here is what it cannot see. */
import { describe, expect, it } from "vitest";
import { resolveRules } from "../../../../lib/nouns/rules.ts";
import { site } from "../../../../lib/nouns/site.ts";
import { stageKinds } from "../../../../lib/nouns/stage.ts";
import { type Against, againstWords, batteryClasses, flatnesses } from "../../../../lib/project/index.ts";
import { roleLabels } from "../../../../lib/publish/assemble/facts.ts";
import { assembleMethods } from "../../../../lib/publish/assemble/methods.ts";
import * as german from "../../../../lib/publish/words/de/scripts.ts";
import * as english from "../../../../lib/publish/words/en/scripts.ts";
import { type Forms, fill, fillCounted } from "../../../../lib/publish/words/fill.ts";
import { wordsIn } from "../../../../lib/publish/words/index.ts";
import * as polish from "../../../../lib/publish/words/pl/scripts.ts";
import { polishForm } from "../../../../lib/publish/words/plural.ts";
import { formatsIn, sayIn } from "../../../../lib/publish/words/speech-in.ts";
import { causeWords } from "../../../../lib/reconcile/explanations.ts";

type Message = { readonly path: string; readonly text: string };

/** A message about a count: a text for each form. How many forms there are is the language's own matter. */
const isForms = (table: object): table is Forms => "other" in table && typeof table.other === "string";

/** Every message that is plain text, with the way to it. Messages with values are functions, and are tried on pages. */
function textsOf(table: unknown, path = ""): Message[] {
  if (typeof table === "string") return [{ path, text: table }];
  if (table !== null && typeof table === "object" && isForms(table)) return [{ path, text: Object.values(table).join(" | ") }];
  if (table === null || typeof table !== "object") return [];
  return Object.entries(table).flatMap(([name, inner]) => textsOf(inner, path === "" ? name : `${path}.${name}`));
}

const tables = {
  en: { ...wordsIn("en"), scripts: { ...english } },
  pl: { ...wordsIn("pl"), scripts: { ...polish } },
  de: { ...wordsIn("de"), scripts: { ...german } },
};

/** The same in every language, and meant so: symbols, names of kinds, and words that happen to be spelt alike. */
const meantAlike = {
  pl: /^(EFB|AGM|6 V|12 V|24 V|60 to 100|Test|test|Float|diesel)$/,
  de: /^(EFB|AGM|Gel|gel|6 V|12 V|24 V|Test|test|Name|Thermometer|gut)$/,
};

describe.each(["pl", "de"] as const)("the words in %s", (language) => {
  const messages = new Map(textsOf(tables[language]).map(({ path, text }) => [path, text]));

  it("have the very same messages, lists of steps included", () => {
    expect([...messages.keys()].sort()).toEqual(
      textsOf(tables.en)
        .map(({ path }) => path)
        .sort(),
    );
  });

  it("leave nothing in English, but what is meant to be alike", () => {
    const left = textsOf(tables.en).filter(({ path, text }) => messages.get(path) === text && /\p{L}{2}/u.test(text));
    expect(left.filter(({ text }) => !meantAlike[language].test(text))).toEqual([]);
  });

  it("write their own quotation marks and decimal commas", () => {
    for (const [path, text] of messages) {
      expect(text, path).not.toMatch(/“[^”]*”(?!.*„)/);
      expect(text.replace(/\b[\d.]+:\d{4}, \d\.\d\.\d|IEC \S+|DIN \S+/g, ""), path).not.toMatch(/\d\.\d/);
    }
  });
});

describe("messages with named places", () => {
  /** Every text of the table, each form of a counted message by itself. */
  const textsOfSide = (table: unknown, path = ""): Message[] =>
    typeof table === "string"
      ? [{ path, text: table }]
      : Object.entries(table as object).flatMap(([name, inner]) => textsOfSide(inner, `${path}.${name}`));
  const placesOf = (text: string): string[] => [...new Set(text.match(/\{\w+\}/g) ?? [])].sort();

  it.each(["pl", "de"] as const)("have the very same places in %s", (language) => {
    const english = new Map(textsOfSide(wordsIn("en").sideBySide).map(({ path, text }) => [path, placesOf(text)]));
    // A form that English lacks has the places of the form for any other count.
    for (const { path, text } of textsOfSide(wordsIn(language).sideBySide))
      expect(placesOf(text), path).toEqual(english.get(path) ?? english.get(path.replace(/\.\w+$/, ".other")));
  });

  it.each(["en", "pl", "de"] as const)("have every form that counts take in %s", (language) => {
    const { pluralCategories } = new Intl.PluralRules(language).resolvedOptions();
    const { things, doubts, differ, charges } = wordsIn(language).sideBySide;
    for (const forms of [things, doubts, differ, charges]) expect(Object.keys(forms).sort()).toEqual([...pluralCategories].sort());
  });

  it("take their values, and show a place that has none", () => {
    expect(fill("{a} and {b}, {a}", { a: "one", b: "{a}" })).toBe("one and {a}, one");
    expect(fill("{gone}", {})).toBe("{gone}");
  });

  it("take the form of their count", () => {
    const forms = { one: "{count} test", few: "{count} testy", many: "{count} testów", other: "{count} testu" };
    expect([1, 2, 5, 22, 1.5].map((count) => fillCounted(forms, count, "pl"))).toEqual([
      "1 test",
      "2 testy",
      "5 testów",
      "22 testy",
      "1.5 testu",
    ]);
    expect(fillCounted({ other: "{count} Zweifel" }, 1, "de")).toBe("1 Zweifel");
  });
});

describe("labels of the results", () => {
  const labels = [
    ...assembleMethods(resolveRules(site.parse({ title: "Bench" }))).map(({ label }) => label),
    ...Object.values(roleLabels),
    ...Object.values(causeWords).map(({ label }) => label),
    ...batteryClasses.flatMap(({ label, capacityAh }) => [label, `${label}, ${capacityAh.low} to ${capacityAh.high} Ah`]),
    ...flatnesses.map(({ label }) => label),
  ];

  it.each(["pl", "de"] as const)("are all told in %s", (language) => {
    expect(labels.filter((label) => sayIn(language, label) === undefined)).toEqual([]);
  });

  it("of two parts are told part by part", () => {
    expect(sayIn("de", "Voltage held at float: spread from test to test")).toBe("Gehaltene Erhaltungsspannung: Streuung von Test zu Test");
  });

  it("of stages are those of the nouns", () => {
    expect(wordsIn("en").marks.stages).toEqual(Object.fromEntries(Object.entries(stageKinds).map(([kind, { label }]) => [kind, label])));
  });
});

describe("one thing by itself", () => {
  it("is told in the singular", () => {
    const { find } = wordsIn("en");
    expect(english.search.found(1)).toBe("1 page found.");
    expect([find.status.working(1), find.status.done(1)]).toEqual(["Working out 1 charger…", "1 of 1 charger worked out."]);
    expect([find.answer.others(1), find.answer.others(2)]).toEqual(["Show the other one of this group", "Show the 2 others of this group"]);
    expect(wordsIn("de").find.status.working(1)).toBe("1 Ladegerät wird berechnet…");
    expect(wordsIn("de").findPage.more(1)).toBe("; und 1 weiteres");
    expect(german.compare.showMore(1)).toBe("1 weiteres zeigen");
  });
});

describe("counted nouns in Polish", () => {
  it("take the form of their number", () => {
    const forms = [1, 2, 4, 5, 12, 22, 25, 101].map((count) => polishForm(count, "test", "testy", "testów"));
    expect(forms).toEqual(["test", "testy", "testy", "testów", "testów", "testy", "testów", "testów"]);
  });
});

describe("what speaks against a charge", () => {
  const reasons: readonly Against[] = [
    { id: "frozen" },
    { id: "sealed-flat" },
    { id: "sealed-voltage", peakV: 15.84, limitV: 14.8 },
    { id: "current", currentA: 12345.67, mostA: 2.25, share: 0.25 },
  ];

  it.each(["en", "pl", "de"] as const)("is the same on the page that finds a charger and on a charger's own: %s", (language) => {
    const { against } = wordsIn(language).find;
    for (const reason of reasons) expect(against(reason, formatsIn(language)), reason.id).toBe(sayIn(language, againstWords(reason)));
  });
});
