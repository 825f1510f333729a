/** The steps from rows to samples, each by itself. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { formatProblem } from "../../../../lib/nouns/problem.ts";
import { findPlaces, placeOfField, splitAtPlaces } from "../../../../lib/read/dialect/fields.ts";
import { doubtfulComma } from "../../../../lib/read/dialect/layout.ts";
import { spreadCoarseStamps } from "../../../../lib/read/log/coarse-stamps.ts";
import { placeTimes } from "../../../../lib/read/log/instants.ts";
import { joinLogs } from "../../../../lib/read/log/join-logs.ts";
import { isAlternating, valuesAt } from "../../../../lib/read/log/pair-columns.ts";
import { findParts } from "../../../../lib/read/log/parts.ts";
import { isNines, missingMarks } from "../../../../lib/read/missing.ts";
import { parseQuantity, unitOfHeading } from "../../../../lib/read/units.ts";
import { joined, sampled } from "../../check/small-logs.ts";

const seed = 20_260_314;
const floats = (...values: number[]): Float64Array => Float64Array.from(values);

describe("coarse stamps", () => {
  /** Rows every `apartS` from `startS`, stamped down to `stepS`. */
  const stamped = (rows: number, apartS: number, stepS: number, startS: number): { stamps: Float64Array; trueS: Float64Array } => {
    const trueS = Float64Array.from({ length: rows }, (_, row) => startS + row * apartS);
    return { stamps: trueS.map((timeS) => Math.floor(timeS / stepS) * stepS), trueS };
  };

  it("come out where the rows were written, for every even pace and every start (rows at whole shares of the step)", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 2, max: 12 }),
        fc.constantFrom(1, 60),
        fc.integer({ min: 0, max: 11 }),
        fc.integer({ min: 5, max: 30 }),
        (perStep, stepS, begins, steps) => {
          const apartS = stepS / perStep;
          const { stamps, trueS } = stamped(perStep * steps, apartS, stepS, (begins % perStep) * apartS + 1e-9);
          const spread = spreadCoarseStamps(stamps);
          expect(spread?.rowsPerStamp).toBe(perStep);
          // A millisecond: the stamps say no more, and sums of shares are not exact.
          for (const [row, timeS] of trueS.entries()) expect(spread?.timesS[row]).toBeCloseTo(timeS, 3);
        },
      ),
      { seed, numRuns: 200 },
    );
  });

  it.each([
    ["no stamp is shared", floats(0, 10, 20, 30, 40)],
    ["one stamp comes twice", floats(0, 10, 20, 20, 30, 40, 50)],
    ["stamps are shared at random", floats(0, 0, 0, 0, 60, 120, 120, 180, 180, 180, 180, 180, 240)],
    ["the clock steps back among them", floats(0, 0, 60, 60, 30, 30, 90, 90, 20, 20)],
    ["there are too few", floats(0, 0, 60, 60)],
  ])("are left as they are where %s", (_, stamps) => expect(spreadCoarseStamps(stamps)).toBeUndefined());

  it("keep a gap a gap", () => {
    const stamps = floats(...[0, 60, 120, 180, 240, 300, 360, 420, 480, 540, 600, 4200].flatMap((stamp) => [stamp, stamp]));
    const spread = spreadCoarseStamps(stamps);
    expect(spread?.timesS.slice(-4)).toEqual(floats(600, 630, 4200, 4230));
  });
});

describe("recordings in one file", () => {
  const rows = (timesS: Float64Array, marks: { at: number; line: number; label: string }[] = []) => ({
    timesS,
    marks,
    lines: Uint32Array.from(timesS, (_, row) => row + 2),
    isRising: timesS.every((timeS, row) => row === 0 || timeS > (timesS[row - 1] as number)),
  });
  it.each([
    ["a clock that starts again", floats(0, 10, 20, 30, 0, 10, 20), true, [0, 4]],
    ["a clock that starts again within its first step", floats(5, 15, 25, 35, 12, 22), true, [0, 4]],
    ["three of them", floats(0, 10, 20, 0, 10, 20, 0, 10, 20), true, [0, 3, 6]],
    ["a clock on the wall that was set back", floats(0, 10, 20, 30, 0, 10, 20), false, [0]],
    ["a step back that is no start", floats(0, 10, 20, 300, 310, 290, 300), true, [0]],
  ])("are told by %s", (_, timesS, counts, starts) => expect(findParts(rows(timesS), counts).map(({ from }) => from)).toEqual(starts));

  it("together hold every sample", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 50 }), { minLength: 1, maxLength: 60 }), (times) => {
        const parts = findParts(rows(floats(...times)), true);
        expect(parts.map(({ from, to }) => to - from).reduce((sum, size) => sum + size, 0)).toBe(times.length);
        expect(parts.every(({ from }, index) => from === (parts[index - 1]?.to ?? 0))).toBe(true);
      }),
      { seed },
    );
  });
});

describe("values of one series at the moments of another", () => {
  const line = { timesS: floats(0, 10, 20, 30), values: floats(1, 2, 3, 4) };
  it("stand on a straight line between the neighbours, and on them at their own moments", () =>
    expect(valuesAt(line, floats(0, 5, 10, 29)).values).toEqual(floats(1, 1.5, 2, 3.9)));

  it("are none outside the series, and none further than one and a half intervals apart", () => {
    expect(valuesAt(line, floats(-1, 31)).values).toEqual(floats(Number.NaN, Number.NaN));
    const withGap = { timesS: floats(0, 10, 20, 40, 50), values: floats(1, 2, 3, 5, 6) };
    expect(valuesAt(withGap, floats(30, 45)).values).toEqual(floats(Number.NaN, 5.5));
  });

  it("never lie beyond the values between which they stand", () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: -100, max: 100, noNaN: true }), { minLength: 2, maxLength: 30 }),
        fc.double({ min: 0, max: 29, noNaN: true }),
        (values, atS) => {
          const series = { timesS: Float64Array.from(values, (_, row) => row), values: floats(...values) };
          const value = valuesAt(series, floats(atS)).values[0] ?? Number.NaN;
          if (Number.isNaN(value)) return;
          const pair = [values[Math.floor(atS)] ?? 0, values[Math.ceil(atS)] ?? 0];
          expect(value).toBeGreaterThanOrEqual(Math.min(...pair) - 1e-9);
          expect(value).toBeLessThanOrEqual(Math.max(...pair) + 1e-9);
        },
      ),
      { seed },
    );
  });

  const none = Number.NaN;
  it.each([
    ["by turns", floats(1, none, 2, none, 3, none), floats(none, 1, none, 2, none, 3), true],
    ["with one row in six that lacks the current", floats(1, 2, 3, 4, 5, 6), floats(1, none, 3, 4, 5, 6), false],
    ["of voltage alone", floats(1, 2, 3, 4), floats(none, none, none, none), false],
  ])("rows %s alternate: %#", (_, voltagesV, currentsA, expected) => expect(isAlternating(voltagesV, currentsA)).toBe(expected));
});

describe("two files side by side", () => {
  const none = { hasCurrent: false, currentsA: new Float64Array(121).fill(Number.NaN) };
  const noVoltage = { hasVoltage: false, voltagesV: new Float64Array(121).fill(Number.NaN) };

  it("take the second's values at the first's rows, by both clocks", () => {
    const start = Date.parse("2026-02-03T14:00:30Z");
    const { value, problems } = joinLogs(joined("v.csv", none), joined("i.csv", { ...noVoltage, startMs: start }), 0);
    expect(problems).toEqual([]);
    // Half a minute late: each current of the first stands between two of the second; its first row has none before it.
    expect(value?.samples.currentsA[0]).toBeNaN();
    expect(value?.samples.currentsA[9]).toBeCloseTo((4 + 3.99) / 2, 9);
    expect(value?.samples).toMatchObject({ hasVoltage: true, hasCurrent: true });
    expect(value?.readAs.at(-1)?.value).toContain("whose first row stands 30 s after the first file's; between its rows");
  });

  it("set a clock back by what is stated", () => {
    const start = Date.parse("2026-02-03T14:00:30Z");
    const { value } = joinLogs(joined("v.csv", none), joined("i.csv", { ...noVoltage, startMs: start }), 30);
    expect(value?.samples.currentsA[0]).toBe(4);
    expect(value?.readAs.at(-1)?.value).toContain("first row stands 0 s after the first file's, its clock set back by 30 s as stated");
  });

  it("say so where one clock only counts", () => {
    const { value } = joinLogs(joined("v.csv", none), joined("i.csv", { ...noVoltage, startMs: undefined }), 0);
    expect(value?.readAs.at(-1)?.value).toContain("both taken to begin together");
  });

  it("are refused where they do not overlap", () => {
    const { value, problems } = joinLogs(
      joined("v.csv", none),
      joined("i.csv", { ...noVoltage, startMs: Date.parse("2026-02-04T14:00:00Z") }),
      0,
    );
    expect(value).toBeUndefined();
    expect(problems.map(formatProblem)).toEqual([
      "i.csv: error log-with: expected rows that overlap with its 7200 s, found rows from 86400 s to 93600 s on the clock of v.csv\n  mend: check both clocks; say how far the second runs ahead: withClockAheadS: …",
    ]);
  });
});

describe("times of day without a date", () => {
  it.each([
    ["just before on", "2026-03-14T08:00:00Z", [28_700, 28_800], "2026-03-14T07:58:20Z"],
    ["over midnight", "2026-03-14T23:50:00Z", [86_390, 5], "2026-03-14T23:59:50Z"],
    ["just after midnight, on noted before", "2026-03-14T23:58:00Z", [60, 120], "2026-03-15T00:01:00Z"],
  ])("take the day nearest to the connection's on: %s", (_, on, timesS, first) => {
    const placed = placeTimes(floats(...timesS), { kind: "time-of-day" }, "UTC", Date.parse(on));
    expect(new Date((placed.timesS[0] ?? 0) * 1000).toISOString()).toBe(first.replace("Z", ".000Z"));
    expect((placed.timesS[1] ?? 0) - (placed.timesS[0] ?? 0)).toBeGreaterThan(0);
  });

  it("only count where nobody knows the day", () =>
    expect(placeTimes(floats(10, 20), { kind: "time-of-day" }, "UTC", undefined)).toMatchObject({ isPlaced: false }));
  // A reader's own check that samples of the small log are what the joins above take them for.
  it("stand beside samples of one row a minute", () => expect(sampled().elapsedS.slice(0, 2)).toEqual(floats(0, 60)));
});

describe("columns by place", () => {
  const lines = [
    "2026-03-14 08:00:00    12.10     4.02",
    "2026-03-14 08:00:10   112.84          ",
    "2026-03-14 08:00:20    13.26    -3.99",
  ];
  it("are told from blanks that stand one below the other; a date and its time are one column", () =>
    expect(findPlaces(lines)).toEqual([0, 20, 29]));
  it("leave a field empty where nothing stands", () =>
    expect(splitAtPlaces(lines[1] ?? "", [0, 20, 29])).toEqual(["2026-03-14 08:00:10", "112.84", ""]));
  it("do not cut a value that stands across a start", () =>
    expect(splitAtPlaces("2026-03-14 08:00:00 12345678.901 4", [0, 20, 29])).toEqual(["2026-03-14 08:00:00", "12345678.901 4"]));
  it("know the character of each field", () =>
    expect([0, 1, 2].map((field) => placeOfField(lines[0] ?? "", { by: "place", starts: [0, 20, 29] }, field))).toEqual([1, 24, 34]));
  it("know the character of each field between blanks", () =>
    expect([0, 1, 2].map((field) => placeOfField("a  bb   c", { by: "mark", mark: " " }, field))).toEqual([1, 4, 9]));
});

describe("commas that may be either mark", () => {
  it.each([
    [["12,840", "13,261"], "12,840"],
    [["12,840", "0,998"], undefined],
    [["12,84", "13,261"], undefined],
    [["1284", "1300"], undefined],
    [["1,284E1"], undefined],
    [["1.284,5", "12,840"], undefined],
  ])("%j: %s", (texts, doubtful) => expect(doubtfulComma(texts)).toBe(doubtful));
});

describe("quantities", () => {
  it.each([
    ["12.84V", 12.84, "V"],
    ["12.84 V", 12.84, "V"],
    ["812mA", 812, "mA"],
    ["+3.2E1mV", 32, "mV"],
    ["18.5 °C", 18.5, "°C"],
    ["10 s", 10, "s"],
    ["12.84", 12.84, undefined],
  ])("%s", (text, value, symbol) => {
    const quantity = parseQuantity(text, ".");
    expect([quantity.value, quantity.unit?.symbol]).toEqual([value, symbol]);
  });
  it.each(["12.84X", "V", "12.84 V V", "12.84Vx", "", "1e5V2"])("%j is none", (text) => expect(parseQuantity(text, ".").value).toBeNaN());

  it.each([
    ["Voltage [V]", "V", true],
    ["U/mV", "mV", true],
    ["Current (mA)", "mA", true],
    ["time in s", "s", false],
    ["v_batt", undefined, undefined],
    ["temp_C", "°C", false],
    ["Channel A", "A", false],
    ["Volts", "V", true],
    ["status", undefined, undefined],
  ])("the heading %s has %s", (heading, symbol, isSure) => {
    const found = unitOfHeading(heading);
    expect([found?.unit.symbol, found?.isSure]).toEqual([symbol, isSure]);
  });
});

describe("marks for no value", () => {
  const marks = missingMarks(["-999", "lost", "77,7"], ",");
  it.each(["", "OL", "---", "NaN", "lost"])("%j is one", (text) => expect(marks.isMissing(text)).toBe(true));
  // SCPI-1999 7.2.1.4 (from memory): 9.9E37 for infinity, 9.91E37 for not a number.
  it.each([9.9e37, -9.9e37, 9.91e37, -999, 77.7])("%d is one", (value) => expect(marks.isMissingNumber(value)).toBe(true));
  it.each([0, 12.84, -1])("%d is none", (value) => expect(marks.isMissingNumber(value)).toBe(false));
  it("nines are none in mV and mA, where they can be values", () =>
    expect([isNines(-999, "V"), isNines(-999, "mA"), isNines(-998, "V")]).toEqual([true, false, false]));
});
