import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { formatProblem } from "../../../lib/nouns/problem.ts";
import { parseReadings, parseSheetReadings } from "../../../lib/read/readings.ts";

const read = (...lines: string[]) => parseReadings(lines.join("\n"), "readings.csv", "Europe/Warsaw");
const messages = (...lines: string[]): string[] => read(...lines).problems.map(formatProblem);
const utc = (text: string): number => Date.parse(`${text}Z`);

describe("readings as text", () => {
  it("reads commas with decimal points, each value with its text and place", () => {
    const { value, problems } = read(
      "at,density_1,rest_V,mixed,charger,note",
      "2026-02-03 13:30,1.160,12.11,yes,disconnected,cold morning",
    );
    expect(problems).toEqual([]);
    expect(value).toEqual([
      {
        number: 1,
        line: 2,
        atMs: utc("2026-02-03T12:30:00"),
        atText: "2026-02-03 13:30",
        values: {
          density_1: { value: 1.16, text: "1.160", line: 2, column: 18 },
          rest_V: { value: 12.11, text: "12.11", line: 2, column: 24 },
        },
        mixed: true,
        charger: "disconnected",
        note: "cold morning",
      },
    ]);
  });

  it.each([
    ["semicolons and decimal commas", "at;density_1;clamp_A\n2026-02-03 13:30;1,160;-0,05"],
    ["semicolons and decimal points", "at;density_1;clamp_A\n2026-02-03 13:30;1.160;-0.05"],
    ["tabs and decimal commas", "at\tdensity_1\tclamp_A\n2026-02-03 13:30\t1,160\t-0,05"],
    ["quoted fields", 'at,density_1,clamp_A\n"2026-02-03 13:30","1.160","-0.05"'],
    ["Windows line ends and a byte order mark", "\uFEFFat;density_1;clamp_A\r\n2026-02-03 13:30;1,160;-0,05\r\n"],
    ["blank lines", "\nat,density_1,clamp_A\n\n2026-02-03 13:30,1.160,-0.05\n\n"],
    ["another order of columns, and empty ones", "clamp_A,,density_1,at\n-0.05,,1.160,2026-02-03T13:30"],
  ])("reads %s", (_, text) => {
    const { value, problems } = parseReadings(text, "readings.csv", "Europe/Warsaw");
    expect(problems).toEqual([]);
    expect(value[0]?.values.density_1?.value).toBe(1.16);
    expect(value[0]?.values.clamp_A?.value).toBe(-0.05);
    expect(value[0]?.atMs).toBe(utc("2026-02-03T12:30:00"));
  });

  it("leaves an empty field out: not read is not zero", () => {
    expect(read("at,density_1,rest_V", "2026-02-03 13:30,,12.11").value[0]?.values).toEqual({
      rest_V: { value: 12.11, text: "12.11", line: 2, column: 19 },
    });
  });

  it("puts visits in order of time and numbers them so, and keeps the lines of the file", () => {
    const { value } = read("at,rest_V", "2026-02-04 09:00,12.7", "2026-02-03 13:30,12.1");
    expect(value.map(({ number, line }) => [number, line])).toEqual([
      [1, 3],
      [2, 2],
    ]);
  });

  it("takes a time with its offset as it stands, whatever the bench's zone", () => {
    expect(read("at,rest_V", "2026-02-03T13:30:00+05:00,12.1").value[0]?.atMs).toBe(utc("2026-02-03T08:30:00"));
  });

  it("keeps a note over two lines together, and counts lines through it", () => {
    const { value, problems } = read("at,note,rest_V", '2026-02-03 13:30,"two', 'lines",12.1', "2026-02-04 13:30,one,x");
    expect(value[0]?.note).toBe("two\nlines");
    expect(problems.map(({ place }) => place)).toEqual([{ file: "readings.csv", line: 4, column: 22 }]);
  });

  it.each([
    ["yes", true],
    ["Y", true],
    ["1", true],
    ["no", false],
    ["FALSE", false],
  ])("reads mixed %s", (text, mixed) => expect(read("at,mixed", `2026-02-03 13:30,${text}`).value[0]?.mixed).toBe(mixed));

  it.each([
    [
      "a heading with a slip, in capitals too",
      ["at,Rest_v", "2026-02-03 13:30,12.1"],
      'readings.csv:1:4: error readings-column: expected one of at, mixed, charger, note, density_1, acid_C, battery_C, air_C, rest_h, rest_V, terminal_V, clamp_A, cranking_A, mains_kWh, weight_kg, topped_up_g (density_1 to density_12), found the column "Rest_v"\n  mend: did you mean "rest_V"?',
    ],
    [
      "a heading that is like none",
      ["at,weather", "2026-02-03 13:30,rain"],
      'readings.csv:1:4: error readings-column: expected one of at, mixed, charger, note, density_1, acid_C, battery_C, air_C, rest_h, rest_V, terminal_V, clamp_A, cranking_A, mains_kWh, weight_kg, topped_up_g (density_1 to density_12), found the column "weather"\n  mend: rename the column, or move its words into note',
    ],
    [
      "a heading twice",
      ["at,rest_V,rest_V", "2026-02-03 13:30,12.1,12.2"],
      'readings.csv:1:11: error readings-column: expected each column once, found a second column "rest_V"\n  mend: take one of them out',
    ],
    [
      "no column of times",
      ["rest_V,note", "12.1,cold"],
      'readings.csv:1:1: error readings-column: expected a column "at" with date and time of each visit, found no column at\n  mend: add it, such as 2026-03-14 09:30',
    ],
    [
      "a row without a time",
      ["at,rest_V", ",12.1"],
      "readings.csv:2:1: error readings-time: expected the date and time of the visit, found no date and time\n  mend: fill in the column at",
    ],
    [
      "a day-first date",
      ["at,rest_V", "03.02.2026 13:30,12.1"],
      'readings.csv:2:1: error readings-time: expected a date and time such as 2026-03-14 09:30, or with its offset, found "03.02.2026 13:30"\n  mend: write the year in four digits, then month and day, then the time of day',
    ],
    [
      "a year in two digits, which would have three meanings",
      ["at,rest_V", "03-02-26 13:30,12.1"],
      'readings.csv:2:1: error readings-time: expected a date and time such as 2026-03-14 09:30, or with its offset, found "03-02-26 13:30"\n  mend: write the year in four digits, then month and day, then the time of day',
    ],
    [
      "a date without a time of day",
      ["at,rest_V", "2026-02-03,12.1"],
      'readings.csv:2:1: error readings-time: expected a date and time such as 2026-03-14 09:30, or with its offset, found "2026-02-03"\n  mend: write the year in four digits, then month and day, then the time of day',
    ],
    [
      "a number with words",
      ["at,rest_V", "2026-02-03 13:30,12.1 V"],
      'readings.csv:2:18: error readings-number: expected rest_V as a number with "." as decimal mark, found "12.1 V"\n  mend: leave the field empty where nothing was read, and move words into note',
    ],
    [
      "the other decimal mark",
      ["at;rest_V;acid_C", "2026-02-03 13:30;12,1;18.5"],
      'readings.csv:2:23: error readings-number: expected acid_C as a number with "," as decimal mark, found "18.5"\n  mend: write it as the other rows do: 18,5',
    ],
    [
      "a density in kilograms a cubic metre",
      ["at,density_1", "2026-02-03 13:30,1265"],
      'readings.csv:2:18: error readings-range: expected density_1 between 1 and 1.4 kg/l, found "1265"\n  mend: write it in kg/l: 1.265',
    ],
    [
      "a value out of range",
      ["at,acid_C", "2026-02-03 13:30,181"],
      'readings.csv:2:18: error readings-range: expected acid_C between -40 and 70 °C, found "181"\n  mend: check the reading and its unit',
    ],
    [
      "an unknown word for the charger",
      ["at,charger", "2026-02-03 13:30,on"],
      'readings.csv:2:18: error readings-word: expected "connected", "disconnected" or nothing, found "on"\n  mend: say how the charger was found on arrival',
    ],
    [
      "an unknown word for mixed",
      ["at,mixed", "2026-02-03 13:30,a bit"],
      'readings.csv:2:18: error readings-word: expected "yes", "no" or nothing, found "a bit"\n  mend: say whether the acid was mixed before it was read',
    ],
    [
      "a note with a comma outside quotation marks",
      ["at,note", "2026-02-03 13:30,flat, and cold"],
      "readings.csv:2:23: error readings-row: expected 2 fields, as many as the headings, found 3 fields\n  mend: put text that holds the separator into quotation marks; with a decimal comma, part the fields by semicolons",
    ],
    [
      "a quotation mark that is not closed",
      ["at,note", '2026-02-03 13:30,"flat'],
      "readings.csv:2:1: error readings-quotes: expected quotation marks in pairs around a field, found a quotation mark that is not closed\n  mend: close the quotation mark, or take it out",
    ],
  ])("tells %s", (_, lines, message) => expect(messages(...lines)).toEqual([message]));

  it("takes surplus fields that are empty: spreadsheets write them", () => {
    expect(messages("at,rest_V", "2026-02-03 13:30,12.1,,")).toEqual([]);
  });

  it("tells every faulty field of a row, and keeps the row's good ones", () => {
    const { value, problems } = read("at,rest_V,acid_C,density_1", "2026-02-03 13:30,x,y,1.16");
    expect(problems).toHaveLength(2);
    expect(Object.keys(value[0]?.values ?? {})).toEqual(["density_1"]);
  });
});

describe("readings in a spreadsheet", () => {
  const file = fileURLToPath(new URL("fixtures/visits.xlsx", import.meta.url));

  it("reads dates, numbers and words as the visitor sees them", async () => {
    const { value, problems } = await parseSheetReadings(file, "readings.xlsx", "Europe/Warsaw");
    expect(problems).toEqual([]);
    expect(value.map(({ atText, line }) => [atText, line])).toEqual([
      ["2026-02-03 13:30:00", 2],
      ["2026-02-04 09:20:00", 3],
      ["2026-02-05 08:00+01:00", 5],
    ]);
    expect(value.map(({ atMs }) => atMs)).toEqual([utc("2026-02-03T12:30:00"), utc("2026-02-04T08:20:00"), utc("2026-02-05T07:00:00")]);
    expect(value.map(({ values }) => [values.density_1?.value, values.rest_V?.value])).toEqual([
      [1.16, 12.11],
      [1.24, 12.7],
      [undefined, 12.72],
    ]);
    expect(value[1]).toMatchObject({ mixed: true, note: "plugs off, acid stirred" });
  });

  it("throws on bytes that are no workbook, for the caller to tell", async () => {
    await expect(parseSheetReadings(fileURLToPath(import.meta.url), "readings.xlsx", "UTC")).rejects.toThrow();
  });
});
