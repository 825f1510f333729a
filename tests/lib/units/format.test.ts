import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  decimalsFor,
  formatAround,
  formatBytes,
  formatDuration,
  formatFigure,
  formatInstant,
  formatInterval,
  formatNumber,
  formatProbability,
  formatQuantity,
  formatStated,
  type Showable,
} from "../../../lib/units/format.ts";

const thin = "\u202F";
const figure = (value: number | null, low: number | null, high: number | null, unit = "A"): Showable => ({
  value,
  low,
  high,
  unit,
  absent: null,
});
const around = (value: number, halfWidth: number, unit = "A") => figure(value, value - halfWidth, value + halfWidth, unit);

describe("a number", () => {
  it("has a real minus sign, but zero has none", () => {
    expect(formatNumber(-5.84, 1)).toBe("\u22125.8");
    expect(formatNumber(-0.001, 1)).toBe("0.0");
  });

  it("is grouped in threes from five digits on, fractions are not", () => {
    expect(formatNumber(1234.5, 1)).toBe("1234.5");
    expect(formatNumber(1234567.25, 2)).toBe(`1${thin}234${thin}567.25`);
  });

  it("is rounded to tens and hundreds by negative decimals", () => {
    expect(formatNumber(4567, -2)).toBe("4600");
  });

  it("says so when it is none", () => {
    expect(formatNumber(Number.NaN, 2)).toBe("not a number");
    expect(formatNumber(Number.POSITIVE_INFINITY, 2)).toBe("not a number");
  });
});

describe("a figure", () => {
  it("shows two digits of its half-width, and the value to the same place (JCGM 100, 7.2.6)", () => {
    expect(formatFigure(around(5.8372, 0.12))).toBe(`5.84 ± 0.12${thin}A`);
    expect(formatFigure(around(100.02147, 0.00079, "g"))).toBe(`100.02147 ± 0.00079${thin}g`);
    expect(formatFigure(around(45_678, 1234, "Wh"))).toBe(`45${thin}700 ± 1200${thin}Wh`);
  });

  it("takes the place after rounding the half-width: 0.0996 is 0.10", () => {
    expect(formatFigure(around(1.2345, 0.0996))).toBe(`1.23 ± 0.10${thin}A`);
    expect(decimalsFor(0.0996)).toBe(2);
    expect(decimalsFor(9.96)).toBe(0);
  });

  it("writes both ends where the interval is not even", () => {
    expect(formatFigure(figure(61, 38, 88, "h"))).toBe(`61${thin}h (38 to 88)`);
  });

  it("writes the value alone where no interval is defended", () => {
    expect(formatFigure(figure(5.83721, null, null))).toBe(`5.837${thin}A`);
    expect(formatFigure(figure(2, 2, 2, ""))).toBe("2");
  });

  it("says on which side an interval is open", () => {
    expect(formatFigure(figure(40, 24, null, "h"))).toBe(`40${thin}h (24 or more)`);
    expect(formatFigure(figure(40, null, 48, "h"))).toBe(`40${thin}h (48 or less)`);
  });

  it("gives a value with one end the digits that the way between them allows", () => {
    expect(formatFigure(figure(14.1401526, 8.2345678, null, "h"))).toBe(`14.1${thin}h (8.2 or more)`);
    expect(formatFigure(figure(0.70359, 0.41234, null, "EUR"))).toBe(`0.70${thin}EUR (0.41 or more)`);
    expect(formatFigure(figure(523.4, 210.9, null, "h"))).toBe(`520${thin}h (210 or more)`);
    expect(formatFigure(figure(14.14015, 14.14015, null, "h"))).toBe(`14.14${thin}h`);
  });

  it("is its kind of absence in words, never a zero", () => {
    expect(formatFigure({ ...figure(null, null, null), absent: { kind: "not reached", why: "the test goes on" } })).toBe("not reached");
  });

  it("shows money to the cent, and finer only where the whole amount is finer", () => {
    expect(formatFigure(figure(49.9, null, null, "EUR"))).toBe(`49.90${thin}EUR`);
    expect(formatFigure(around(0.42, 0.002, "EUR"))).toBe(`0.42${thin}EUR`);
    expect(formatFigure(figure(1.1, 0.92004, 1.31, "EUR"))).toBe(`1.10${thin}EUR (0.92 to 1.31)`);
    expect(formatFigure(figure(0.019, 0.0152, 0.0241, "EUR"))).toBe(`0.0190${thin}EUR (0.0152 to 0.0241)`);
  });

  it("never moves a value by more than half a unit of the last digit shown", () => {
    fc.assert(
      fc.property(fc.double({ min: -1e6, max: 1e6, noNaN: true }), fc.double({ min: 1e-6, max: 1e5, noNaN: true }), (value, halfWidth) => {
        const decimals = decimalsFor(halfWidth);
        const shown = Number(formatNumber(value, decimals).replaceAll(thin, "").replace("\u2212", "-"));
        // 1e-9 of the value is room for the double's own rounding.
        return Math.abs(shown - value) <= 0.5 * 10 ** -decimals + Math.abs(value) * 1e-9;
      }),
      { seed: 20_261_125 },
    );
  });
});

describe("other quantities", () => {
  it("intervals say when they have no ends", () => {
    expect(formatInterval(null, null, "V")).toBe("no interval");
    expect(formatInterval(7.2, 8.8, "A")).toBe(`7.20 to 8.80${thin}A`);
    expect(formatInterval(null, 13.872, "V")).toBe(`13.87${thin}V or less`);
  });

  it("a stated value keeps every printed digit", () => {
    expect(formatStated(13.875, "V")).toBe(`13.875${thin}V`);
  });

  it("a missing quantity reads as not recorded", () => {
    expect(formatQuantity(null, "V", 2)).toBe("not recorded");
    expect(formatQuantity(0, "V", 2)).toBe(`0.00${thin}V`);
  });

  it("instants keep the zone they were noted in", () => {
    expect(formatInstant("2026-03-14T09:30:00+01:00")).toBe("2026-03-14 09:30 (UTC+01:00)");
    expect(formatInstant("2026-03-14T09:30:15.5Z")).toBe("2026-03-14 09:30 (UTC)");
    expect(formatInstant("2026-03-14T09:30:00-05:00")).toBe("2026-03-14 09:30 (UTC\u221205:00)");
    expect(formatInstant(null)).toBe("not known");
  });

  it("durations use the two units that suit them, and carry over", () => {
    expect(formatDuration(0.7)).toBe(`42${thin}min`);
    expect(formatDuration(6.5)).toBe(`6${thin}h 30${thin}min`);
    expect(formatDuration(5.9999)).toBe(`6${thin}h`);
    expect(formatDuration(102)).toBe(`4${thin}d 6${thin}h`);
    expect(formatDuration(Number.NaN)).toBe("not known");
  });

  it("probabilities are never certain", () => {
    expect(formatProbability(1)).toBe(`more than 99${thin}%`);
    expect(formatProbability(0)).toBe(`less than 1${thin}%`);
    expect(formatProbability(0.42)).toBe(`42${thin}%`);
    expect(formatProbability(0.985, 0.02)).toBe(`more than 98${thin}%`);
  });

  it("a value between its ends never shows a minus nought, nor an end that is not known", () => {
    expect(formatAround({ value: -0.01, low: -1.26, high: 3 }, "Ah", 1)).toBe(`0.0${thin}Ah (\u22121.3 to 3.0)`);
    expect(formatAround({ value: 2, low: 1, high: null }, "", 0)).toBe("2 (1 to more)");
    expect(formatAround({ value: null, low: null, high: null }, "g", 0)).toBe("not known");
  });

  it("bytes count in thousands", () => {
    expect(formatBytes(999)).toBe(`999${thin}B`);
    expect(formatBytes(12_345)).toBe(`12.3${thin}kB`);
    expect(formatBytes(2_500_000)).toBe(`2.5${thin}MB`);
  });
});
