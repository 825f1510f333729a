import { describe, expect, it } from "vitest";
import type { Dialect } from "../../../lib/nouns/instrument.ts";
import { formatProblem } from "../../../lib/nouns/problem.ts";
import { resolveDialect, splitFields } from "../../../lib/read/dialect.ts";

const place = { file: "data/instruments/newt.yaml", line: 7, column: 3 };
const resolve = (head: readonly string[], declared?: Dialect) => resolveDialect(head, "utf-8", declared, "log.csv", place);
const messages = (head: readonly string[], declared?: Dialect): string[] => resolve(head, declared).problems.map(formatProblem);
const note = "\n  note: data/instruments/newt.yaml:7 describes this recorder\n  mend: ";

describe("fields of a line", () => {
  it.each([
    ["a,b,c", ",", ["a", "b", "c"]],
    ['"a,b",c', ",", ["a,b", "c"]],
    ['"say ""b""";c', ";", ['say "b"', "c"]],
    ["", ";", [""]],
    [";;", ";", ["", "", ""]],
    ['lone " mark;c', ";", ["lone  mark;c"]],
  ])("%j by %j", (line, delimiter, fields) => expect(splitFields(line, delimiter)).toEqual(fields));
});

describe("delimiter and decimal mark", () => {
  it.each([
    [";", ".", ["0;12.5;4.0", "1;12.6;4.1"]],
    [";", ",", ["0;12,5;4,0", "1;12,6;4,1"]],
    ["\t", ",", ["0\t12,5\t4,0", "1\t12,6\t4,1"]],
    [",", ".", ["0,12.5,4.0", "1,12.6,4.1"]],
    [",", ",", ['"0","12,5","4,0"', '"1","12,6","4,1"']],
    ["|", ".", ["0|12.5|4.0", "1|12.6|4.1"]],
    [" ", ".", ["0 12.5 4.0", "1 12.6 4.1"]],
    [";", ".", ["3.2.26 10:00;12.5;4.0", "3.2.26 10:01;12.6;4.1"]],
  ])("are told: %j with %j", (delimiter, decimalMark, rows) => {
    const { value } = resolve(rows, { time: { unit: "s" }, voltage: { number: 2 }, current: { number: 3 } });
    expect(value).toMatchObject({ splitter: { by: "mark", mark: delimiter }, form: { decimalMark }, linesBeforeData: 0 });
  });

  it("are told by the rows, not by a preamble with more separators", () => {
    const head = ["model;a;b;c;d;e", "made;1;2;3;4;5", "time (s),voltage (V),current (A)", "0,12.5,4.0", "1,12.6,4.1", "2,12.7,4.2"];
    expect(resolve(head).value).toMatchObject({ splitter: { by: "mark", mark: "," }, linesBeforeData: 3 });
  });

  it("are taken as declared", () => {
    const declared = { delimiter: ";", decimalMark: ",", time: { unit: "s" }, voltage: { number: 2 }, current: { number: 3 } } as const;
    expect(resolve(["0;12;4", "1;13;4"], declared).value).toMatchObject({
      splitter: { by: "mark", mark: ";" },
      form: { decimalMark: "," },
    });
    expect(messages(["0,12.5,4.0"], declared)).toEqual([
      `log.csv:1:1: error log-dialect: expected rows of numbers, as the record says: delimiter semicolon, decimalMark comma, found "0,12.5,4.0"${note}take these lines out of the recorder's record: without them the file reads with comma and decimal point`,
    ]);
  });
});

describe("columns", () => {
  const rows = ["0;12,5;4,0;21", "1;12,6;4,1;21"];
  it.each([
    ["English", "time;voltage;current;temperature"],
    ["German", "Zeit;Spannung;Strom;Temperatur"],
    ["Polish", "Czas;Napięcie;Prąd;Temperatura"],
    ["French", "Temps;Tension;Courant;Température"],
    ["letters", "t;U;I;Temp"],
    ["names with a unit behind an underscore", "time_s;v_batt;i_batt;temp_C"],
  ])("are found by their headings: %s", (_, headings) => {
    expect(resolve([headings, ...rows], { time: { unit: "s" } }).value).toMatchObject({
      timeField: 0,
      voltage: { field: 1 },
      current: { field: 2 },
      temperature: { field: 3 },
    });
  });

  it.each([
    ["square brackets", "t [min];U [mV];I [mA];Temp [°F]"],
    ["round brackets", "time (min);voltage (mV);current (mA);temperature (°F)"],
    ["a slash", "t/min;U/mV;I/mA;Temp/°F"],
    ["a blank", "time min;U mV;I mA;Temp degF"],
  ])("have their unit in the heading: %s", (_, headings) => {
    expect(resolve([headings, ...rows]).value).toMatchObject({
      time: { kind: "elapsed", unitS: 60 },
      voltage: { divisor: 1000 },
      current: { divisor: 1000 },
      temperature: { unit: "°F" },
    });
  });

  it("have their unit in a row of its own", () => {
    expect(resolve(["time;voltage;current;temp", "h;mV;A;K", ...rows]).value).toMatchObject({
      linesBeforeData: 2,
      time: { unitS: 3600 },
      voltage: { divisor: 1000 },
      current: { divisor: 1 },
      temperature: { unit: "K" },
    });
  });

  it("have the unit that the record declares, against the heading", () => {
    expect(resolve(["t (s);U (V);I (A);x", ...rows], { current: { name: "I (A)", unit: "mA" } }).value?.current).toEqual({
      field: 2,
      divisor: 1000,
    });
  });

  it("are taken by declared name or number", () => {
    const declared: Dialect = { time: { number: 1, unit: "s" }, voltage: { name: "B" }, current: { number: 3 } };
    expect(resolve(["A;B;C;D", ...rows], declared).value).toMatchObject({ timeField: 0, voltage: { field: 1 }, current: { field: 2 } });
  });

  it("are told where a declared name is misspelt, with the nearest heading", () => {
    expect(messages(["t/s;Kanal A;Kanal B;x", ...rows], { voltage: { name: "Kanal  A" }, current: { name: "Kanal B" } })).toEqual([
      `log.csv:1:1: error log-dialect: expected a column named "Kanal  A" for voltage, found the headings "t/s", "Kanal A", "Kanal B", "x"${note}did you mean "Kanal A"?`,
    ]);
  });

  it("are told where a declared name is none, or the file has no headings", () => {
    expect(messages(["t/s;Kanal A;Kanal B;x", ...rows], { voltage: { name: "battery" }, current: { name: "Kanal B" } })).toEqual([
      `log.csv:1:1: error log-dialect: expected a column named "battery" for voltage, found the headings "t/s", "Kanal A", "Kanal B", "x"${note}correct dialect: voltage: name: in the recorder's record`,
    ]);
    expect(messages(rows, { time: { unit: "s" }, voltage: { name: "battery" }, current: { number: 3 } })).toEqual([
      `log.csv:1:1: error log-dialect: expected a column named "battery" for voltage, found no headings${note}correct dialect: voltage: name: in the recorder's record`,
    ]);
  });

  it("are told where a declared number is past the last", () => {
    expect(messages(rows, { time: { unit: "s" }, voltage: { number: 7 }, current: { number: 3 } })).toEqual([
      `log.csv:1:1: error log-dialect: expected a column number 7 for voltage, found 4 columns${note}correct dialect: voltage: number: in the recorder's record`,
    ]);
  });

  it("are told where the date's declared name is none", () => {
    expect(messages(["Tag;Uhrzeit;U;I", "03.02.26;14:05;12,5;4,0"], { time: { name: "Uhrzeit", dateName: "Datum" } })).toEqual([
      `log.csv:1:1: error log-dialect: expected a column named "Datum" for the date, found the headings "Tag", "Uhrzeit", "U", "I"${note}correct dialect: time: dateName: in the recorder's record`,
    ]);
  });

  it("are asked for where there is no column of times", () => {
    expect(messages(["n;U;I", "0;12,5;4,0"])).toEqual([
      `log.csv:1:1: error log-dialect: expected a column of times, found the headings "n", "U", "I"${note}name it in the recorder's record: dialect: time: { name: … } or { number: … }`,
    ]);
  });

  it("are not asked for where what is left unread is energy, charge, power or a count", () => {
    const { value, problems } = resolve(["t (s);I;Ah;Wh;power;n", "0;4;0;0;50;1", "1;4;0;0;50;2"]);
    expect(problems).toEqual([]);
    expect(value?.voltage).toBeUndefined();
  });

  it("tell that no recorder is named, where none is", () => {
    const { problems } = resolveDialect(["0;12;4"], "utf-8", undefined, "log.csv", undefined);
    expect(problems[0]?.notes).toEqual([
      "test.yaml names no recorder for this log: instruments: recorder: with a record in data/instruments",
    ]);
  });
});

describe("times", () => {
  const timeOf = (texts: readonly string[], time?: Dialect["time"], heading = "time") =>
    resolve([`${heading};U;I`, ...texts.map((text) => `${text};12,5;4,0`)], time === undefined ? undefined : { time });

  it.each([
    ["seconds, by the unit behind them", ["0 s", "10 s"], { kind: "elapsed", unitS: 1 }],
    ["minutes that do not start at 0", ["500 min", "510 min"], { kind: "elapsed", unitS: 60 }],
    ["h:mm:ss from the start", ["0:00:00", "0:00:10"], { kind: "clock", short: "h:mm" }],
    ["h:mm:ss that starts within the first minute", ["0:00:10", "0:00:20"], { kind: "clock", short: "h:mm" }],
    ["days and h:mm:ss", ["0d 00:00:00", "1d 00:00:10"], { kind: "clock", short: "h:mm" }],
    ["minutes and seconds with a fraction", ["00:00.0", "00:10.5"], { kind: "clock", short: "h:mm" }],
    ["a month in letters", ["3 Feb 2026 09:00", "3 Feb 2026 09:01"], { kind: "local", order: "day-month-year" }],
    ["no marks at all", ["20260203090000", "20260203090100"], { kind: "local", order: "year-month-day" }],
    ["days of a spreadsheet", ["46056,375", "46056,3751157"], { kind: "serial" }],
    ["seconds since 1970", ["1773478800", "1773478810"], { kind: "unix", unitS: 1 }],
    ["milliseconds since 1970", ["1773478800000", "1773478810000"], { kind: "unix", unitS: 1e-3 }],
    ["ISO with an offset", ["2026-03-14T09:00:00+01:00", "2026-03-14T09:00:10+01:00"], { kind: "iso", order: "year-month-day" }],
    ["year first", ["2026-03-14 09:00:00", "2026-03-14 09:00:10"], { kind: "local", order: "year-month-day" }],
    ["dots: day first", ["03.02.2026 09:00", "03.02.2026 09:01"], { kind: "local", order: "day-month-year" }],
    ["slashes, a day above 12 first", ["13/02/2026 09:00", "13/02/2026 09:01"], { kind: "local", order: "day-month-year" }],
    ["slashes, a day above 12 second", ["02/13/2026 09:00", "02/13/2026 09:01"], { kind: "local", order: "month-day-year" }],
    ["slashes, told by a later row", ["02/12/2026 23:59", "02/13/2026 00:00"], { kind: "local", order: "month-day-year" }],
  ])("are told: %s", (_, texts, time) => expect(timeOf(texts).value?.time).toEqual(time));

  it.each([
    ["elapsed, whatever it starts at", ["5:00:00", "5:00:10"], { kind: "elapsed" }, { kind: "clock", short: "h:mm" }],
    ["elapsed seconds, where the record only says that they count", ["0", "10"], { kind: "elapsed" }, { kind: "elapsed", unitS: 1 }],
    ["minutes and seconds", ["0:00", "0:10"], { clock: "mm:ss" }, { kind: "clock", short: "mm:ss" }],
    ["days of a spreadsheet", ["46056", "46057"], { kind: "serial" }, { kind: "serial" }],
    ["a time of day", ["14:05:00"], { kind: "time-of-day" }, { kind: "time-of-day" }],
    ["elapsed milliseconds", ["0", "1000"], { kind: "elapsed", unit: "ms" }, { kind: "elapsed", unitS: 1e-3 }],
    ["month first", ["02/03/2026 09:00", "02/03/2026 09:01"], { order: "month-day-year" }, { kind: "local", order: "month-day-year" }],
    ["a year of two digits first", ["26-02-03 09:00"], { order: "year-month-day" }, { kind: "local", order: "year-month-day" }],
  ] as const)("are taken as declared: %s", (_, texts, declared, time) => expect(timeOf(texts, declared).value?.time).toEqual(time));

  it.each([
    [
      "numbers under a heading without a unit",
      ["0", "10"],
      "to know what the times count: 10 s, 10 min or 10 h from the start",
      '"10" without a unit',
    ],
    [
      "numbers that may be days of a spreadsheet",
      ["46056", "46066"],
      "to know what the times count: 46056 s, 46056 min or 46056 h from the start, or days of a spreadsheet, 3 February 2026",
      '"46056" without a unit',
    ],
    [
      "slashes, day and month below 13",
      ["02/03/2026 09:00"],
      "to know whether the day or the month comes first: 2 March 2026 or 3 February 2026",
      '"02/03/2026 09:00"',
    ],
    [
      "a year in two figures between hyphens",
      ["05-02-03 09:00"],
      "to know which of year, month and day comes first: 3 February 2005 or 5 February 2003 or 2 May 2003",
      '"05-02-03 09:00"',
    ],
    ["two parts that count", ["0:00", "0:10"], "to know whether the two parts are hours and minutes, or minutes and seconds", '"0:10"'],
    ["h:mm:ss from some hour", ["14:05:00"], "to know whether h:mm:ss counts from the start or is the time of day", '"14:05:00"'],
    ["dates alone", ["03.02.2026"], "a time of day with the date", '"03.02.2026"'],
  ])("are asked for: %s", (_, texts, expected, found) => {
    const { value, problems } = timeOf(texts);
    expect(value).toBeUndefined();
    expect(problems.map((problem) => [problem.id, problem.expected, problem.found, problem.place.line])).toEqual([
      ["log-dialect", expected, found, 2],
    ]);
  });

  it("are told where they are not of the kind declared", () => {
    expect(timeOf(["12:00"], { kind: "iso" }).problems[0]).toMatchObject({ expected: "a date with the time of day", found: '"12:00"' });
    expect(timeOf(["0", "1"], { kind: "iso" }).problems[0]).toMatchObject({ expected: 'times of the kind "iso"', found: '"0"' });
  });

  it.each([
    ["local", (i: number) => `03.02.2026 09:0${i}`, "33.02.2026 09:04", { kind: "local", order: "day-month-year" }],
    ["iso", (i: number) => `2026-02-03T09:0${i}:00Z`, "2026-13-03T09:04:00Z", { kind: "iso", order: "year-month-day" }],
  ] as const)("are not hidden by one impossible row in ten, which is told by itself later: %s", (_, write, garbled, time) => {
    const texts = Array.from({ length: 10 }, (_unused, i) => (i === 4 ? garbled : write(i)));
    expect(timeOf(texts).value?.time).toEqual(time);
  });
});

describe("lines before the data", () => {
  it("leave a line out that is a number only in every second field: it describes the recorder", () => {
    const head = ["serial;17;range;20", "0;12,5;4,0;21", "1;12,6;4,1;21"];
    expect(
      resolve(head, { headings: false, time: { unit: "s" }, voltage: { number: 2 }, current: { number: 3 } }).value?.linesBeforeData,
    ).toBe(1);
  });

  it("count in a garbled first row as data, so that it is told and not taken for headings", () => {
    expect(resolve(["t/s;U;I", "0;12,5;4,O", "1;12,6;4,1", "2;12,6;4,1"]).value).toMatchObject({
      linesBeforeData: 1,
      headings: ["t/s", "U", "I"],
    });
  });

  it("do not swallow rows behind a declared preamble", () => {
    const head = ["a;1;2", "b;3;4", "t/s;U;I", "0;12,5;4,0"];
    expect(resolve(head, { preambleLines: 2, headings: true }).value).toMatchObject({ linesBeforeData: 3, headings: ["t/s", "U", "I"] });
  });
});
