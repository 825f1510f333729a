import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { parseNumber } from "../../../lib/read/numbers.ts";

/** Written, so that a failure comes back the same the next time. */
const seed = 20_260_314;

const finite = fc.double({ noNaN: true, noDefaultInfinity: true });

describe("numbers", () => {
  it("reads every finite number back that is written with a decimal point", () => {
    fc.assert(
      // -0 is written "0".
      fc.property(finite, (value) => {
        expect(parseNumber(String(value), ".")).toBe(value + 0);
      }),
      { seed, numRuns: 2000 },
    );
  });

  it("reads every finite number back that is written with a decimal comma", () => {
    fc.assert(
      fc.property(finite, (value) => {
        expect(parseNumber(String(value).replace(".", ","), ",")).toBe(value + 0);
      }),
      { seed, numRuns: 2000 },
    );
  });

  it("never reads a number that holds the other mark, so that 1,234 is not taken for 1.234 nor for 1234", () => {
    fc.assert(
      fc.property(fc.integer(), fc.integer({ min: 0 }), (whole, fraction) => {
        expect(parseNumber(`${whole},${fraction}`, ".")).toBeNaN();
        expect(parseNumber(`${whole}.${fraction}`, ",")).toBeNaN();
      }),
      { seed },
    );
  });

  it.each([
    ["blanks around", "  12.5\t", 12.5],
    ["no-break spaces around", "\u00A012.5\u202F", 12.5],
    ["a plus", "+12.5", 12.5],
    ["the minus of typesetters", "\u221212.5", -12.5],
    ["an exponent", "1.25e+1", 12.5],
    ["nothing before the mark", ".5", 0.5],
    ["nothing behind the mark", "12.", 12],
    ["zeroes in front", "0012.50", 12.5],
  ])("takes %s", (_, text, value) => expect(parseNumber(text, ".")).toBe(value));

  it.each([
    ["an empty text", ""],
    ["blanks alone", "   "],
    ["a mark alone", "."],
    ["a sign alone", "-"],
    ["letters behind", "12.5V"],
    ["letter O for zero", "12.O"],
    ["a thousands mark", "1,234.5"],
    ["a blank inside", "1 234"],
    ["two marks", "1.2.3"],
    ["a half-written exponent", "12e"],
    ["infinity", "Infinity"],
    ["hexadecimal", "0x1F"],
    ["two signs", "+-1"],
  ])("is not a number: %s", (_, text) => expect(parseNumber(text, ".")).toBeNaN());
});
