/** Numbers, dates and intervals in each language. */
import { describe, expect, it } from "vitest";
import { formatsIn } from "../../../lib/publish/words/speech-in.ts";

const thin = (text: string): string => text.replaceAll("\u202F", " ");
const current = { unit: "A", value: 5.84, low: 5.72, high: 5.96, absent: null };
const hours = { unit: "h", value: 38, low: 20, high: 70, absent: null };

describe("numbers in a language", () => {
  it("take a decimal comma in Polish and German, and a point in English", () => {
    expect((["en", "pl", "de"] as const).map((language) => thin(formatsIn(language).formatFigure(current)))).toEqual([
      "5.84 ± 0.12 A",
      "5,84 ± 0,12 A",
      "5,84 ± 0,12 A",
    ]);
  });

  it("write uneven intervals in words of the language", () => {
    expect((["en", "pl", "de"] as const).map((language) => thin(formatsIn(language).formatFigure(hours)))).toEqual([
      "38 h (20 to 70)",
      "38 h (20 do 70)",
      "38 h (20 bis 70)",
    ]);
  });

  it("part thousands by a narrow space in every language (SI Brochure, 5.4.4)", () => {
    for (const language of ["en", "pl", "de"] as const) expect(formatsIn(language).formatNumber(12345, 0)).toBe("12\u202F345");
  });

  it("never show money finer than the cent, whatever the decimal mark", () => {
    const price = { unit: "EUR", value: 39, low: 38.9999, high: 39.0001, absent: null };
    expect(thin(formatsIn("de").formatFigure(price))).toBe("39,00 EUR");
  });

  it("write days as the locale does, English as ISO 8601; an instant keeps its zone", () => {
    const days = (["en", "pl", "de"] as const).map((language) => formatsIn(language).formatDay("2026-03-14"));
    expect(days).toEqual(["2026-03-14", "14.03.2026", "14.03.2026"]);
    expect(formatsIn("de").formatInstant("2026-03-14T23:30:00+01:00")).toBe("14.03.2026 23:30 (UTC+01:00)");
  });

  it("leave text that is no day as it is", () => {
    expect(formatsIn("pl").formatDay("spring 2024")).toBe("spring 2024");
  });
});
