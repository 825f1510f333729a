import { describe, expect, it } from "vitest";
import { topUpWords } from "../../../lib/publish/pages/earliest-top-up.ts";
import { wordsIn } from "../../../lib/publish/words/index.ts";

const words = wordsIn("en").charger.forecast.topUp;

const told = (low: number | null, value: number | null) => topUpWords({ low, value }, words).replaceAll("\u202f", " ");

describe("the time to top up", () => {
  it("is told in days up to two months, then in months of 365.25 / 12 days, rounded down", () => {
    const days = [0.9, 1.9, 45.9, 60.8, 60.9, 100, 730];
    expect(days.map((day) => told(day, day))).toEqual([
      "less than 1 day",
      "1 day",
      "45 days",
      "60 days",
      "2 months",
      "3 months",
      "23 months",
    ]);
  });

  it("names the earliest first, and the middle where it differs", () => {
    expect(told(12.3, 297)).toBe("12 days, more likely 9 months");
  });

  it("goes no further than two years, for a battery that loses next to nothing as for one that loses none", () => {
    expect([told(731, 5000), told(null, null)]).toEqual(["more than 24 months", "more than 24 months"]);
  });
});
