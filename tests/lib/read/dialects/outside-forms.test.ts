/** Forms of text that others have set down, against our reading of them. */
import { describe, expect, it } from "vitest";
import { parseInstantMs, parseTimeOfDayS, parseWallClockMs } from "../../../../lib/read/clock.ts";
import { parseRows } from "../../../../lib/read/log/rows.ts";
import { parseNumber } from "../../../../lib/read/numbers.ts";

async function* inPieces(text: string, size: number): AsyncGenerator<string> {
  for (let at = 0; at < text.length; at += size) yield text.slice(at, at + size);
}

/** Rows of a text, with the lines on which each begins and ends; handed over in pieces of three characters, so that every cut is met. */
async function rowsOf(text: string): Promise<{ fields: string[]; lines: [number, number] }[]> {
  const rows: { fields: string[]; lines: [number, number] }[] = [];
  await parseRows(inPieces(text, 3), { by: "mark", mark: "," }, 0, (fields, first, last) =>
    rows.push({ fields: [...fields], lines: [first, last] }),
  );
  return rows;
}
const fieldsOf = async (text: string): Promise<string[][]> => (await rowsOf(text)).map(({ fields }) => fields);

// RFC 4180, section 2, its seven rules; the examples there are letters like these.
describe("RFC 4180", () => {
  it.each([
    [
      "1: each record on a line of its own",
      "aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n",
      [
        ["aaa", "bbb", "ccc"],
        ["zzz", "yyy", "xxx"],
      ],
    ],
    [
      "2: the last record may lack its line break",
      "aaa,bbb,ccc\r\nzzz,yyy,xxx",
      [
        ["aaa", "bbb", "ccc"],
        ["zzz", "yyy", "xxx"],
      ],
    ],
    ["4: blanks belong to a field", "aaa, bbb ,ccc\r\n", [["aaa", " bbb ", "ccc"]]],
    [
      "5: fields may stand in quotation marks",
      '"aaa","bbb","ccc"\r\nzzz,yyy,xxx',
      [
        ["aaa", "bbb", "ccc"],
        ["zzz", "yyy", "xxx"],
      ],
    ],
    [
      "6: line breaks and commas inside quotation marks",
      '"aaa","b\r\nbb","c,cc"\r\nzzz,yyy,xxx',
      [
        ["aaa", "b\r\nbb", "c,cc"],
        ["zzz", "yyy", "xxx"],
      ],
    ],
    ["7: a quotation mark inside is doubled", '"aaa","b""bb","ccc"', [["aaa", 'b"bb', "ccc"]]],
  ])("rule %s", async (_, text, fields) => expect(await fieldsOf(text)).toEqual(fields));
});

// The cases of the public test set csv-spectrum (npm), by their names; the texts are written here anew, from memory of what each is about.
describe("cases of csv-spectrum", () => {
  it.each([
    [
      "comma_in_quotes",
      'first,last,address\nAnn,Lee,"1 Quay, Weir"\n',
      [
        ["first", "last", "address"],
        ["Ann", "Lee", "1 Quay, Weir"],
      ],
    ],
    [
      "empty",
      'a,b,c\n1,"",""\n2,3,4\n',
      [
        ["a", "b", "c"],
        ["1", "", ""],
        ["2", "3", "4"],
      ],
    ],
    [
      "empty_crlf",
      'a,b,c\r\n1,"",""\r\n2,3,4\r\n',
      [
        ["a", "b", "c"],
        ["1", "", ""],
        ["2", "3", "4"],
      ],
    ],
    [
      "escaped_quotes",
      'a,b\n1,"ha ""ha"" ha"\n3,4\n',
      [
        ["a", "b"],
        ["1", 'ha "ha" ha'],
        ["3", "4"],
      ],
    ],
    [
      "json",
      'key,val\n1,"{""type"": ""Point"", ""at"": [1, 0.5]}"\n',
      [
        ["key", "val"],
        ["1", '{"type": "Point", "at": [1, 0.5]}'],
      ],
    ],
    [
      "newlines",
      'a,b,c\n1,2,3\n"Once upon\na time",5,6\n7,8,9\n',
      [
        ["a", "b", "c"],
        ["1", "2", "3"],
        ["Once upon\na time", "5", "6"],
        ["7", "8", "9"],
      ],
    ],
    [
      "newlines_crlf",
      'a,b,c\r\n1,2,3\r\n"Once upon\r\na time",5,6\r\n',
      [
        ["a", "b", "c"],
        ["1", "2", "3"],
        ["Once upon\r\na time", "5", "6"],
      ],
    ],
    [
      "quotes_and_newlines",
      'a,b\n1,"ha\n""ha""\nha"\n3,4\n',
      [
        ["a", "b"],
        ["1", 'ha\n"ha"\nha'],
        ["3", "4"],
      ],
    ],
    [
      "simple",
      "a,b,c\n1,2,3\n",
      [
        ["a", "b", "c"],
        ["1", "2", "3"],
      ],
    ],
    [
      "simple_crlf",
      "a,b,c\r\n1,2,3\r\n",
      [
        ["a", "b", "c"],
        ["1", "2", "3"],
      ],
    ],
    [
      "utf8",
      "a,b,c\n1,2,3\n4,5,ʤ\n",
      [
        ["a", "b", "c"],
        ["1", "2", "3"],
        ["4", "5", "ʤ"],
      ],
    ],
    [
      "location_coordinates",
      'id,place\n1,"46.05, 14.50"\n',
      [
        ["id", "place"],
        ["1", "46.05, 14.50"],
      ],
    ],
  ])("%s", async (_, text, fields) => expect(await fieldsOf(text)).toEqual(fields));

  it.each(["\n", "\r\n", "\r"])("keep the lines of the file where a field has %j in it", async (end) => {
    const rows = await rowsOf(`a,b${end}1,"x${end}${end}y"${end}2,z${end}`);
    expect(rows.map(({ lines }) => lines)).toEqual([
      [1, 1],
      [2, 4],
      [5, 5],
    ]);
  });
});

// W3C Model for Tabular Data and Metadata on the Web, section 6.4.4: the date and time formats that every reader of it must know (from memory).
// Names of the fields are those of Unicode UTS #35, part 4, section 8.
describe("date and time formats of W3C's tabular data", () => {
  const day = Date.UTC(2026, 2, 4);
  it.each([
    ["yyyy-MM-dd", "2026-03-04", "year-month-day"],
    ["dd-MM-yyyy", "04-03-2026", "day-month-year"],
    ["d-M-yyyy", "4-3-2026", "day-month-year"],
    ["MM-dd-yyyy", "03-04-2026", "month-day-year"],
    ["M-d-yyyy", "3-4-2026", "month-day-year"],
    ["dd/MM/yyyy", "04/03/2026", "day-month-year"],
    ["d/M/yyyy", "4/3/2026", "day-month-year"],
    ["MM/dd/yyyy", "03/04/2026", "month-day-year"],
    ["M/d/yyyy", "3/4/2026", "month-day-year"],
    ["dd.MM.yyyy", "04.03.2026", "day-month-year"],
    ["d.M.yyyy", "4.3.2026", "day-month-year"],
    ["MM.dd.yyyy", "03.04.2026", "month-day-year"],
    ["M.d.yyyy", "3.4.2026", "month-day-year"],
    ["d MMM yyyy", "4 Mar 2026", "day-month-year"],
    ["MMMM d, yyyy", "March 4, 2026", "month-day-year"],
    ["EEE, d MMM yyyy", "Wed, 4 Mar 2026", "day-month-year"],
  ] as const)("%s", (_, text, order) => expect(parseWallClockMs(text, order)).toBe(day));

  const moment = Date.UTC(2026, 2, 4, 15, 2, 37);
  it.each([
    ["yyyy-MM-ddTHH:mm:ss", "2026-03-04T15:02:37", moment],
    ["yyyy-MM-ddTHH:mm:ss.SSS", "2026-03-04T15:02:37.143", moment + 143],
    ["yyyy-MM-ddTHH:mm", "2026-03-04T15:02", moment - 37_000],
    ["yyyy-MM-dd h:mm:ss a", "2026-03-04 3:02:37 PM", moment],
    ["yyyyMMddHHmmss", "20260304150237", moment],
  ])("%s", (_, text, ms) => expect(parseWallClockMs(text, "year-month-day")).toBe(ms));

  it.each([
    ["X", "2026-03-04T15:02:37-08", moment + 8 * 3_600_000],
    ["X", "2026-03-04T15:02:37+0530", moment - 5.5 * 3_600_000],
    ["X", "2026-03-04T15:02:37Z", moment],
    ["XX", "2026-03-04T15:02:37-0800", moment + 8 * 3_600_000],
    ["XXX", "2026-03-04T15:02:37-08:00", moment + 8 * 3_600_000],
    ["xxx", "2026-03-04T15:02:37+00:00", moment],
    ["a blank and XXX", "2026-03-04 15:02:37 -08:00", moment + 8 * 3_600_000],
  ])("a zone as %s: %s", (_, text, ms) => expect(parseInstantMs(text)).toBe(ms));

  it.each([
    ["HH:mm:ss", "15:02:37", 54_157],
    ["HH:mm:ss.S", "15:02:37.1", 54_157.1],
    ["HH:mm", "15:02", 54_120],
    ["h:mm a", "3:02 PM", 54_120],
    ["h:mm:ss a at noon", "12:00:00 PM", 43_200],
    ["h:mm:ss a at midnight", "12:00:00 AM", 0],
  ])("%s", (_, text, seconds) => expect(parseTimeOfDayS(text)).toBeCloseTo(seconds, 9));
});

// UTS #35, part 3, section 3: the pattern #,##0.### and the marks of CLDR's languages (en, de, fr, de-CH), from memory.
describe("number patterns of UTS #35", () => {
  it.each([
    ["en", "1,234.567", ".", ","],
    ["de", "1.234,567", ",", "."],
    ["fr", "1\u202f234,567", ",", "blank"],
    ["de-CH", "1\u2019234.567", ".", "'"],
    ["none", "1234.567", ".", undefined],
    ["scientific, 0.###E0", "1.234567E3", ".", undefined],
  ] as const)("%s", (_, text, decimal, thousands) => expect(parseNumber(text, decimal, thousands)).toBe(1234.567));

  it.each([
    ["a group of two", "12,34.5"],
    ["a first group of four", "1234,567.8"],
    ["a last group of four", "1,2345"],
    ["a mark at the end", "1,234,"],
    ["a mark behind the decimal mark", "1.234,567"],
    ["two marks together", "1,,234"],
  ])("is none: %s", (_, text) => expect(parseNumber(text, ".", ",")).toBeNaN());
});
