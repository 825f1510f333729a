import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { reasonsAgainst } from "../../../../lib/project/battery-classes.ts";
import { openBook } from "../../../../lib/publish/phrases/book.ts";
import { type Language, languages } from "../../../../lib/publish/phrases/languages.ts";
import { sayPhrase } from "../../../../lib/publish/phrases/say.ts";
import { translatePhrase } from "../../../../lib/publish/phrases/translate.ts";

describe("a phrase found and said", () => {
  const book = openBook([
    {
      text: [
        { en: "{n} visits were made", pl: "{n} {n|wizyta|wizyty|wizyt|wizyty}", de: "{n} {n|Termin|Termine}" },
        { en: "held at {v:range} V", pl: "przy napięciu {v} V", de: "bei {v} V" },
        { en: "cost {sum:quantity} in all", pl: "kosztowało {sum}", de: "kostete {sum}" },
        { en: "lasts {time:duration}", pl: "trwa {time}", de: "dauert {time}" },
        { en: "read at visits {visits:numbers}", pl: "wizyty {visits}", de: "Termine {visits}" },
        { en: 'the log "{file:name}" of {day:date}', pl: "zapis „{file}” z {day}", de: "Aufzeichnung „{file}“ vom {day}" },
        { en: "seen: {kinds:kind+and}", pl: "widać: {kinds}", de: "zu sehen: {kinds}" },
      ],
      kind: [
        { en: "rest", pl: "spoczynek", de: "Ruhe" },
        { en: "rest and sleep", pl: "sen", de: "Schlaf" },
        { en: "pulses", pl: "impulsy", de: "Pulse" },
      ],
    },
  ]);
  const say = (text: string, language: Language): string | undefined => {
    const found = book.find("text", text);
    return found === undefined ? undefined : sayPhrase(found, language);
  };

  it("takes the form of a word that goes with the number (CLDR's plural rules: 1, 2 to 4, 5 and more, 22, decimals)", () => {
    expect(["1", "2", "5", "12", "22", "0.5"].map((n) => say(`${n} visits were made`, "pl"))).toEqual([
      "1 wizyta",
      "2 wizyty",
      "5 wizyt",
      "12 wizyt",
      "22 wizyty",
      "0,5 wizyty",
    ]);
    expect(["1", "2"].map((n) => say(`${n} visits were made`, "de"))).toEqual(["1 Termin", "2 Termine"]);
  });

  it("writes numbers as the language does: decimal comma, a real minus, groups as they are, ranges in words", () => {
    expect(say("held at -0.24 to 13.80 V", "pl")).toBe("przy napięciu od −0,24 do 13,80 V");
    expect(say("held at -0.24 to 13.80 V", "de")).toBe("bei −0,24 bis 13,80 V");
    expect(say("held at 12\u202F000 V", "de")).toBe("bei 12\u202F000 V");
    expect(say("cost 24.5 EUR or more in all", "de")).toBe("kostete 24,5 EUR oder mehr");
    expect(say("cost 22 Ah (16 to more) in all", "pl")).toBe("kosztowało 22 Ah (od 16 do więcej)");
    expect(say("lasts 6 h 30 min", "de")).toBe("dauert 6 h 30 min");
  });

  it("writes days in the order of the language, leaves names as they are, and takes a no-break space for a plain one", () => {
    expect(say('the log "run 1.2 to 3.csv" of 2026-04-29', "de")).toBe("Aufzeichnung „run 1.2 to 3.csv“ vom 29.04.2026");
    expect(say("read at visits 1, 2 and 4", "de")).toBe("Termine 1, 2 und 4");
    expect(say("held at 13.80\u202FV", "de")).toBe("bei 13,80 V");
  });

  it("takes lists apart, even where the joint stands inside an item", () => {
    expect(say("seen: rest and pulses", "de")).toBe("zu sehen: Ruhe und Pulse");
    expect(say("seen: rest and sleep and pulses", "pl")).toBe("widać: sen oraz impulsy");
    expect(say("seen: rest and noise", "pl")).toBeUndefined();
  });

  it("takes the whole of a text or nothing", () => {
    expect(say("2 visits were made today", "pl")).toBeUndefined();
    expect(say("on 2 visits were made", "pl")).toBeUndefined();
    expect(say("two visits were made", "pl")).toBeUndefined();
  });
});

describe("translating a text of the results", () => {
  it("translates a sentence with its numbers", () => {
    const text = "Whether charge went in unrecorded cannot be told: up to 16 Ah would go unnoticed.";
    expect(translatePhrase(text, "pl")).toBe(
      "Nie da się rozstrzygnąć, czy wpłynął niezapisany ładunek: do 16 Ah pozostałoby niezauważone.",
    );
    expect(translatePhrase(text, "de")).toBe("Ob unaufgezeichnet Ladung floss, lässt sich nicht sagen: Bis zu 16 Ah blieben unbemerkt.");
  });

  it("translates several sentences one after the other, and nothing where one of them is unknown", () => {
    const first = "The separate measurements agree as well as they can.";
    expect(translatePhrase(`${first} What would settle it: density after the acid was mixed.`, "de")).toBe(
      "Die einzelnen Messungen stimmen so gut überein, wie es möglich ist. Was es klären würde: Säuredichte nach dem Durchmischen der Säure.",
    );
    expect(translatePhrase(`${first} The moon is full.`, "de")).toBeUndefined();
  });

  it("keeps the capital and the full stop that a page gave a clause", () => {
    expect(translatePhrase("density was never read", "pl")).toBe("gęstości nigdy nie odczytano");
    expect(translatePhrase("Density was never read.", "pl")).toBe("Gęstości nigdy nie odczytano.");
    expect(translatePhrase("Density was never read", "de")).toBe("Die Dichte wurde nie abgelesen");
  });

  it("knows every reason against a charge, which the demo's forecasts do not all give", () => {
    const frozenAndFlat = reasonsAgainst("gel", 44, 0.05, 1.05, { low: 20, high: 20 }, -20, 2.6);
    expect(frozenAndFlat).toHaveLength(4);
    for (const reason of frozenAndFlat)
      expect(
        languages.map((language) => translatePhrase(reason, language)),
        reason,
      ).not.toContain(undefined);
  });

  it("knows nothing of words that people wrote", () => {
    expect(translatePhrase("Cable knocked loose at the recorder in the third hour", "de")).toBeUndefined();
    expect(translatePhrase("", "pl")).toBeUndefined();
  });

  it("never throws, whatever the text, and leaves prose alone", () => {
    const pieces = fc.constantFrom("no density was read", "; ", ". ", ": ", " and ", "12.5 V", '"', "{", "visit 3", "A", " ", "not known");
    const run = fc.property(
      fc.oneof(
        fc.string(),
        fc.array(pieces, { maxLength: 12 }).map((some) => some.join("")),
      ),
      (text) => ["string", "undefined"].includes(typeof translatePhrase(text, "pl")),
    );
    fc.assert(run, { seed: 7, numRuns: 500 });
    expect(translatePhrase("No density was read. ".repeat(200), "de")).toBeUndefined();
  });

  it("is as careful as the English: a recording that ended is no charger that finished, a projection stays one", () => {
    const ending = "the recorder; the charger had not ended by then";
    expect(translatePhrase(ending, "pl")).toBe("rejestrator; prostownik jeszcze wtedy nie skończył");
    expect(translatePhrase(ending, "de")).toBe("der Rekorder; das Ladegerät hatte da noch nicht aufgehört");
    expect(
      translatePhrase("The battery did not come back to 1.265 kg/l in this test; as it goes it would take 47 to 141 h connected.", "de"),
    ).toMatch(/würde es 47 bis 141 h am Ladegerät dauern \(Hochrechnung\)/);
  });
});
