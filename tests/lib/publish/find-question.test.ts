import fc from "fast-check";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { complaintOfDeadline, deadlineOf, hoursUntil } from "../../../lib/publish/find/deadline.ts";
import {
  complaintOf,
  conditionChoices,
  deadlineChoices,
  defaultQuestion,
  flatChoices,
  kindChoices,
  type Question,
  readQuestion,
  voltagesV,
  writeQuestion,
} from "../../../lib/publish/find/question.ts";
import { englishFind as english } from "./english-find.ts";

const read = (address: string): Question => {
  const query = new URLSearchParams(address);
  return readQuestion((field) => query.get(field));
};

describe("a question in an address", () => {
  it("comes back as it went, whatever was asked", () => {
    const ids = (choices: readonly { readonly id: string }[]) => fc.constantFrom(...choices.map(({ id }) => id));
    const anyQuestion = fc.record({
      voltageV: fc.constantFrom(...voltagesV),
      ratedAh: fc.integer({ min: 1, max: 400 }),
      kind: fc.constantFrom(...kindChoices.map(({ id }) => id)),
      condition: fc.constantFrom(...conditionChoices.map(({ id }) => id)),
      flat: ids(flatChoices),
      restV: fc.double({ min: 5, max: 26, noNaN: true }),
      densityAt25C: fc.double({ min: 1, max: 1.35, noNaN: true }),
      airC: fc.integer({ min: -30, max: 50 }),
      by: ids(deadlineChoices),
      at: fc.constant("2026-03-15T18:00"),
      pricePerKWh: fc.double({ min: 0, max: 2, noNaN: true }),
    });
    fc.assert(
      fc.property(anyQuestion, (question) => {
        // A reading that the choice made does not use is not carried along.
        const kept = {
          ...question,
          restV: question.flat === "rest-voltage" ? question.restV : Number.NaN,
          densityAt25C: question.flat === "density" ? question.densityAt25C : Number.NaN,
          at: question.by === "at" ? question.at : "",
        };
        expect(read(writeQuestion(question).toString())).toEqual(kept);
      }),
    );
  });

  it("leaves out what is as in the default, and reads an empty address as the default", () => {
    expect(writeQuestion(defaultQuestion).toString()).toBe("");
    expect(writeQuestion({ ...defaultQuestion, ratedAh: 44, by: "24h" }).toString()).toBe("ah=44&by=24h");
    expect(read("")).toEqual(defaultQuestion);
  });

  it("falls back to the default for a choice that it does not know, takes a decimal comma, and keeps a number that is none as such", () => {
    expect(read("kind=lithium&v=48&by=soon&flat=")).toEqual(defaultQuestion);
    expect(read("volts=12,34&flat=rest-voltage").restV).toBe(12.34);
    expect(read("ah=many").ratedAh).toBeNaN();
  });

  it("names the field that cannot be answered, and none of a sound question", () => {
    expect(complaintOf(defaultQuestion, english)).toBeUndefined();
    expect(complaintOf({ ...defaultQuestion, ratedAh: Number.NaN }, english)?.field).toBe("ah");
    expect(complaintOf({ ...defaultQuestion, ratedAh: 0 }, english)?.field).toBe("ah");
    expect(complaintOf({ ...defaultQuestion, airC: 60 }, english)?.field).toBe("air");
    expect(complaintOf({ ...defaultQuestion, pricePerKWh: -1 }, english)?.field).toBe("kwh");
  });
});

describe("a deadline", () => {
  const zoneBefore = process.env.TZ;
  beforeAll(() => {
    process.env.TZ = "Europe/Berlin";
  });
  afterAll(() => {
    if (zoneBefore === undefined) delete process.env.TZ;
    else process.env.TZ = zoneBefore;
  });

  /** A Friday. */
  const friday = () => new Date("2026-03-13T20:30:15");
  const hoursTo = (by: string, now: Date, at = ""): number | undefined => {
    const deadline = deadlineOf({ by, at }, now);
    return deadline === undefined ? undefined : hoursUntil(deadline, now);
  };

  it("is counted on the reader's clock, to the minute", () => {
    expect(hoursTo("tomorrow-morning", friday())).toBeCloseTo(11.5, 10);
    expect(hoursTo("tomorrow-evening", friday())).toBeCloseTo(21.5, 10);
    expect(hoursTo("sunday-evening", friday())).toBeCloseTo(45.5, 10);
    expect(hoursTo("24h", friday())).toBe(24);
    expect(hoursTo("at", new Date("2026-03-13T20:30:00"), "2026-03-14T00:45")).toBe(4.25);
  });

  it("is today's Sunday evening until 18:00 and next week's after", () => {
    expect(hoursTo("sunday-evening", new Date("2026-03-15T10:00:00"))).toBe(8);
    expect(hoursTo("sunday-evening", new Date("2026-03-15T18:00:00"))).toBe(7 * 24);
  });

  it("is an hour nearer over the night in which summer time begins (29 March 2026 in Berlin)", () => {
    expect(hoursTo("tomorrow-morning", new Date("2026-03-28T20:00:00"))).toBe(11);
  });

  it("is refused where it is no date, has passed, or is more than two weeks away", () => {
    expect(hoursTo("at", friday(), "some day")).toBeUndefined();
    expect(complaintOfDeadline(undefined, english)).toMatch(/^State the date/);
    expect(complaintOfDeadline(0, english)).toBe("That time has passed.");
    expect(complaintOfDeadline(400, english)).toMatch(/two weeks/);
    expect(complaintOfDeadline(11.5, english)).toBeUndefined();
  });
});
