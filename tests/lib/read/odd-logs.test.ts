/** Each file in tests/logs is odd in one way, and named for it. This table says what must come out of each. */
import { readdirSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import type { Dialect } from "../../../lib/nouns/instrument.ts";
import { formatProblem } from "../../../lib/nouns/problem.ts";
import { type LogRequest, readLog } from "../../../lib/read/log.ts";

const folder = fileURLToPath(new URL("../../logs/", import.meta.url));

/** Not a number stands for a missing value. */
const none = Number.NaN;

type Columns = { t: number[]; V: number[]; A: number[]; C?: number[]; lines: number[]; start?: string };
type Case = {
  readonly file: string;
  readonly dialect?: Dialect;
  readonly with?: Partial<LogRequest>;
  readonly out?: Columns;
  readonly counts?: { lines: number; samples: number; blank: number; excluded: number; empty: number };
  /** What the file's reading must tell of itself, beside much else. */
  readonly tells?: Readonly<Record<string, string>>;
  readonly problems?: readonly string[];
};

/** What most files hold, in whatever way they write it. */
const three: Columns = { t: [0, 10, 20], V: [12.1, 12.2, 12.3], A: [4, 3.9, 3.8], lines: [2, 3, 4] };
const two: Columns = { t: [0, 10], V: [12.1, 12.2], A: [4, 3.9], lines: [2, 3] };
const at = (columns: Columns, ...lines: number[]): Columns => ({ ...columns, lines });
const note = "  note: recorder.yaml:4 describes this recorder\n";
const badRow = (line: number): string =>
  `  mend: if the recorder wrote this, list line ${line} under badRows of this recording in test.yaml; logs themselves are never edited`;

const cases: readonly Case[] = [
  { file: "plain.csv", out: three, counts: { lines: 4, samples: 3, blank: 0, excluded: 0, empty: 0 } },
  { file: "line-ends-crlf.csv", out: three },
  { file: "line-ends-cr.csv", out: three },
  { file: "line-ends-mixed.csv", out: three },
  { file: "no-final-newline.csv", out: three },
  { file: "blank-first-lines.csv", out: at(three, 4, 5, 6), tells: { "lines before the data": "3" } },
  { file: "blank-rows-inside.csv", out: at(three, 2, 4, 6), counts: { lines: 7, samples: 3, blank: 3, excluded: 0, empty: 0 } },
  { file: "trailing-separators.csv", out: three },
  { file: "comma-decimals.csv", out: three, tells: { delimiter: "semicolon", "decimal mark": "comma" } },
  { file: "comma-decimals-quoted.csv", out: three, tells: { delimiter: "comma", "decimal mark": "comma" } },
  {
    file: "milliamps-and-millivolts.csv",
    out: three,
    tells: { "voltage column": "U (mV), in mV", "current column": "I (mA), in mA" },
  },
  { file: "unit-row.csv", out: at(three, 3, 4, 5), tells: { "voltage column": "voltage, in mV", "lines before the data": "2" } },
  {
    file: "no-headings.csv",
    problems: [
      "no-headings.csv:1:1: error log-dialect: expected a column of voltage or current, found 3 columns without headings\n" +
        note +
        "  mend: say in the recorder's record which is which: dialect: voltage: { number: 2 }, current: { number: 3 }",
      'no-headings.csv:1:1: error log-dialect: expected to know what the times count: 10 s, 10 min or 10 h from the start, found "10" without a unit\n' +
        note +
        "  mend: say in the recorder's record: dialect: time: { unit: s }, { unit: min } or { unit: h }",
    ],
  },
  {
    file: "no-headings.csv",
    dialect: { time: { unit: "s" }, voltage: { number: 3 }, current: { number: 2 } },
    out: at(three, 1, 2, 3),
    tells: { headings: "none" },
  },
  {
    file: "spaces.txt",
    dialect: { time: { unit: "s" }, voltage: { number: 2 }, current: { number: 3 } },
    out: at(two, 1, 2),
    tells: { delimiter: "space" },
  },
  { file: "bars.txt", out: two, tells: { delimiter: "bar" } },
  { file: "preamble-with-lone-quote.csv", out: at(three, 4, 5, 6), tells: { "lines before the data": "3" } },
  {
    file: "lone-quote-in-row.csv",
    problems: [
      "lone-quote-in-row.csv:3:4: error log-quotes: expected quotation marks in pairs around a field, found a quotation mark that is not closed\n" +
        "  mend: copy the file from the recorder once more; logs themselves are never edited, and rows inside a quotation cannot be told from words",
    ],
  },
  {
    file: "footer.csv",
    out: three,
    counts: { lines: 5, samples: 3, blank: 0, excluded: 1, empty: 0 },
    tells: { "lines below the data": '1 from line 5, "end of recording", left out' },
  },
  {
    file: "footer.csv",
    with: { badRows: [{ from: 5, to: 5 }] },
    out: three,
    counts: { lines: 5, samples: 3, blank: 0, excluded: 1, empty: 0 },
  },
  { file: "status-words.csv", out: three },
  { file: "quote-inside-words.csv", out: three },
  {
    file: "garbled-number.csv",
    problems: [`garbled-number.csv:3:4: error log-number: expected a voltage with "." as decimal mark, found "12.2O"\n${badRow(3)}`],
  },
  {
    file: "garbled-number.csv",
    with: { badRows: [{ from: 3, to: 3 }] },
    out: { t: [0, 20], V: [12.1, 12.3], A: [4, 3.8], lines: [2, 4] },
    counts: { lines: 4, samples: 2, blank: 0, excluded: 1, empty: 0 },
  },
  {
    file: "garbled-first-row.csv",
    problems: [`garbled-first-row.csv:2:3: error log-number: expected a voltage with "." as decimal mark, found "12.1O"\n${badRow(2)}`],
  },
  {
    file: "garbled-time.csv",
    problems: [`garbled-time.csv:7:1: error log-time: expected a time, found "2026-03-14T09:o5:00Z"\n${badRow(7)}`],
  },
  {
    file: "missing-values.csv",
    out: { t: [0, 10, 20, 30], V: [12.1, none, none, 12.3], A: [none, 3.9, none, 3.8], lines: [2, 3, 4, 5] },
    counts: { lines: 5, samples: 4, blank: 0, excluded: 0, empty: 1 },
  },
  {
    file: "own-missing-word.csv",
    problems: [`own-missing-word.csv:2:9: error log-number: expected a current with "." as decimal mark, found "lost"\n${badRow(2)}`],
  },
  { file: "own-missing-word.csv", dialect: { missing: ["lost"] }, out: { ...three, A: [none, 3.9, 3.8] } },
  { file: "short-rows.csv", out: { ...three, A: [4, none, 3.8] } },
  {
    file: "extra-fields.csv",
    problems: [`extra-fields.csv:3:10: error log-fields: expected the end of the row after 3 fields, found "3.90"\n${badRow(3)}`],
  },
  {
    file: "charge-counted-negative.csv",
    out: { ...three, A: [-0.01, 3.9, 3.8] },
    tells: { "sign of charging current": "negative" },
  },
  { file: "charge-counted-negative.csv", dialect: { chargingSign: "positive" }, out: { ...three, A: [0.01, -3.9, -3.8] } },
  { file: "true-minus.csv", out: { ...three, A: [4, -0.02, 3.8] } },
  {
    file: "clock-jumps-back.csv",
    out: { t: [0, 10, -10, 0], V: [12.1, 12.2, 12.3, 12.4], A: [4, 3.9, 3.8, 3.7], lines: [2, 3, 4, 5], start: "2026-03-14T08:00:00.000Z" },
  },
  {
    file: "clock-hour-repeated.csv",
    out: {
      t: [0, 1200, 2400, 3600, 4800, 6000],
      V: [12.1, 12.2, 12.3, 12.4, 12.45, 12.5],
      A: [4, 3.9, 3.8, 3.7, 3.65, 3.6],
      lines: [2, 3, 4, 5, 6, 7],
      start: "2026-10-25T00:30:00.000Z",
    },
    tells: { "summer time": "the recorder's clock follows it" },
  },
  {
    file: "clock-hour-skipped.csv",
    out: {
      t: [0, 1200, 2400, 3600],
      V: [12.1, 12.2, 12.3, 12.4],
      A: [4, 3.9, 3.8, 3.7],
      lines: [2, 3, 4, 5],
      start: "2026-03-29T00:30:00.000Z",
    },
    tells: { "summer time": "the recorder's clock follows it" },
  },
  {
    file: "clock-ignores-summer-time.csv",
    out: {
      t: [0, 1200, 2400, 3600, 4800, 6000],
      V: [12.1, 12.2, 12.3, 12.4, 12.5, 12.6],
      A: [4, 3.9, 3.8, 3.7, 3.6, 3.5],
      lines: [2, 3, 4, 5, 6, 7],
      start: "2026-03-29T00:30:00.000Z",
    },
    tells: { "summer time": "the recorder's clock does not follow it" },
  },
  { file: "clock-counts-hours.csv", out: { ...three, t: [0, 35_990, 442_800.5] } },
  {
    file: "time-of-day-alone.csv",
    problems: [
      'time-of-day-alone.csv:2:1: error log-dialect: expected to know whether h:mm:ss counts from the start or is the time of day, found "23:59:50"\n' +
        note +
        "  mend: where it counts, say so in the recorder's record: dialect: time: { kind: elapsed }; where it is the time of day, name the column of the date beside it in the recorder's record: dialect: time: { name: …, dateName: … }, or say { kind: time-of-day }, and the connection's on gives the day",
    ],
  },
  {
    file: "time-of-day-alone.csv",
    dialect: { time: { kind: "local" } },
    problems: [
      'time-of-day-alone.csv:2:1: error log-dialect: expected a date with the time of day, found "23:59:50"\n' +
        note +
        "  mend: name the column of the date beside it in the recorder's record: dialect: time: { name: …, dateName: … }; without a date say dialect: time: { kind: time-of-day }, and the connection's on gives the day",
    ],
  },
  { file: "date-and-time-apart.csv", out: { ...three, start: "2026-02-03T22:59:50.000Z" } },
  {
    file: "date-alone.csv",
    problems: [
      'date-alone.csv:2:1: error log-dialect: expected a time of day with the date, found "2026-02-03"\n' +
        note +
        "  mend: name the column of the date beside it in the recorder's record: dialect: time: { name: …, dateName: … }",
    ],
  },
  {
    file: "day-or-month-first.csv",
    problems: [
      'day-or-month-first.csv:2:1: error log-dialect: expected to know whether the day or the month comes first: 3 February 2026 or 2 March 2026, found "03/02/2026 14:05"\n' +
        note +
        "  mend: say in the recorder's record: dialect: time: { order: day-month-year } or { order: month-day-year }",
    ],
  },
  {
    file: "day-or-month-first.csv",
    dialect: { time: { order: "day-month-year" } },
    out: { ...two, t: [0, 60], start: "2026-02-03T13:05:00.000Z" },
  },
  {
    file: "day-or-month-first.csv",
    dialect: { time: { order: "month-day-year" } },
    out: { ...two, t: [0, 60], start: "2026-03-02T13:05:00.000Z" },
  },
  { file: "month-first-told-by-day.csv", out: { ...three, start: "2026-02-12T22:59:50.000Z" } },
  { file: "twelve-hour-clock.csv", out: { ...three, t: [0, 10, 3610], start: "2026-02-13T10:59:50.000Z" } },
  { file: "two-digit-years.csv", out: { ...two, t: [0, 60], start: "2026-02-03T13:05:00.000Z" } },
  { file: "unix-seconds.csv", out: { ...two, start: "2026-03-14T09:00:00.000Z" } },
  { file: "unix-milliseconds.csv", out: { ...two, start: "2026-03-14T09:00:00.000Z" } },
  { file: "minutes.csv", out: { ...two, t: [0, 30] } },
  { file: "plain.csv", with: { startedAtMs: Date.parse("2026-03-14T09:30:00Z") }, out: { ...three, start: "2026-03-14T09:30:00.000Z" } },
  { file: "utf-8-mark.csv", out: three, tells: { encoding: "utf-8" } },
  { file: "utf-16-little.tsv", out: two, tells: { encoding: "utf-16le", delimiter: "tab" } },
  { file: "utf-16-big-without-mark.tsv", out: two, tells: { encoding: "utf-16be" } },
  {
    file: "one-byte-letters.csv",
    out: { ...two, C: [21, 22] },
    tells: { encoding: "windows-1252", "temperature column": "temp (°C), in °C" },
  },
  {
    file: "not-the-named-encoding.csv",
    dialect: { encoding: "utf-8" },
    problems: [
      "not-the-named-encoding.csv: error log-encoding: expected text in utf-8, found bytes that are not utf-8\n" +
        "  mend: name the right encoding in the recorder's record: dialect: encoding: utf-16le, windows-1250 …",
    ],
  },
  { file: "fahrenheit.csv", out: { ...two, C: [0, 100] } },
  {
    file: "two-voltage-columns.csv",
    problems: [
      'two-voltage-columns.csv:1:1: error log-dialect: expected one column for voltage, found "voltage 1 (V)" and "voltage 2 (V)"\n' +
        note +
        "  mend: name the right one in the recorder's record: dialect: voltage: { name: … }",
    ],
  },
  {
    file: "two-time-columns.csv",
    problems: [
      'two-time-columns.csv:1:1: error log-dialect: expected one column for time, found "time (s)" and "timestamp"\n' +
        note +
        "  mend: name the right one in the recorder's record: dialect: time: { name: … }",
    ],
  },
  {
    file: "unknown-headings.csv",
    problems: [
      'unknown-headings.csv:1:1: error log-dialect: expected a column of voltage or current, found the headings "time (s)", "channel 1", "channel 2"\n' +
        note +
        "  mend: say in the recorder's record which is which: dialect: voltage: { number: 2 }, current: { number: 3 }",
    ],
  },
  { file: "unnamed-voltage.csv", out: two, tells: { "voltage column": "Batteriespannung [V], in V" } },
  { file: "unnamed-voltage.csv", dialect: { voltage: { name: "Batteriespannung [V]" } }, out: two },
  {
    file: "empty.csv",
    problems: [
      "empty.csv: error log-empty: expected at least one row with a time and a voltage or a current, found an empty file\n" +
        "  mend: take the recording out of test.yaml, or put the right file here",
    ],
  },
  {
    file: "only-headings.csv",
    problems: [
      'only-headings.csv:1:1: error log-dialect: expected rows of numbers, parted by semicolon, tab, comma, bar or space, found "time (s),voltage (V),current (A)"\n' +
        note +
        "  mend: where nothing was recorded, take the log out of test.yaml; else say in the recorder's record how it writes: dialect: with delimiter, decimalMark and preambleLines",
    ],
  },
];

const read = (odd: Case) =>
  readLog({
    absolutePath: `${folder}${odd.file}`,
    file: odd.file,
    dialect: odd.dialect,
    dialectPlace: { file: "recorder.yaml", line: 4, column: 3 },
    zone: "Europe/Ljubljana",
    startedAtMs: undefined,
    badRows: [],
    ...odd.with,
  });

const nameOf = ({ file, dialect, with: given }: Case): string =>
  [file, dialect && `declared ${JSON.stringify(dialect)}`, given && `given ${JSON.stringify(given)}`].filter(Boolean).join(", ");

describe("odd logs", () => {
  it.each(cases.map((odd) => [nameOf(odd), odd] as const))("%s", async (_, odd) => {
    const { value: log, problems } = await read(odd);
    expect(problems.map(formatProblem)).toEqual(odd.problems ?? []);
    const columns = log && {
      t: [...log.samples.elapsedS],
      V: [...log.samples.voltagesV],
      A: [...log.samples.currentsA],
      C: [...log.samples.temperaturesC],
      lines: [...log.samples.lines],
      start: log.samples.startMs === undefined ? undefined : new Date(log.samples.startMs).toISOString(),
    };
    expect(columns).toEqual(odd.out && { C: [], start: undefined, ...odd.out });
    if (odd.counts !== undefined) expect(log?.counts).toEqual(odd.counts);
    const told = Object.fromEntries((log?.readAs ?? []).map(({ what, value }) => [what, value]));
    for (const [what, value] of Object.entries(odd.tells ?? {})) expect(told[what], what).toBe(value);
  });

  it("tells twenty garbled fields one by one and counts the rest: 23 are garbled here", async () => {
    const { value, problems } = await read({ file: "garbled-everywhere.csv" });
    expect(value).toBeUndefined();
    expect(problems.map(({ id }) => id)).toEqual([...Array<string>(20).fill("log-number"), "log-more"]);
    expect(problems.at(-1)?.found).toBe("3 more fields that cannot be read");
  });

  it("has a row in this table for every file of the folder", () => {
    const told = new Set([...cases.map(({ file }) => file), "garbled-everywhere.csv"]);
    expect(readdirSync(folder).sort()).toEqual([...told].sort());
  });
});
