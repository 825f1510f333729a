import { describe, expect, it } from "vitest";
import { sentence } from "../../../lib/publish/pages/sentence.ts";

describe("a clause as a sentence", () => {
  it.each([
    ["the current is held", "The current is held."],
    ["no, it is not", "No, it is not."],
    ["Already one.", "Already one."],
    ["is it?", "Is it?"],
    ["ends in a quotation (“so.”)", "Ends in a quotation (“so.”)."],
    ["", ""],
  ])("%s", (clause, expected) => {
    expect(sentence(clause)).toBe(expected);
  });

  it.each(["run-1.csv breaks off", "8.14 A was held", "mA were read as A", "run_2 breaks off"])(
    "keeps the letters of a first word that is a name or a unit: %s",
    (clause) => {
      expect(sentence(clause)).toBe(`${clause}.`);
    },
  );
});
