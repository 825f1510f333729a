/**
 * Holds the fast reader of plain rows against csv-parse on made-up logs: most lines plain, some odd in every way that is known to be odd.
 *
 *   npx tsx tests/dialects/agree.ts --lines 1000000 --seed 1
 *
 * Each log has its own separator, decimal mark, kind of time, columns, line endings, encoding and share of odd lines, and comes in chunks
 * of odd lengths. Row for row and number for number both ways must find the same: values to the last bit, lines, counts, problems at
 * their places, and the same fault where a file cannot be read.
 */
import { performance } from "node:perf_hooks";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import type { Dialect } from "../../lib/nouns/instrument.ts";
import { resolveDialect } from "../../lib/read/dialect.ts";
import { readBothWays } from "./compare-rows.ts";
import { type Random, seededRandom } from "./seeded-random.ts";

export type Agreement = {
  files: number;
  lines: number;
  /** Rows that the fast way read as numbers; were they few, nothing would be shown. */
  plainRows: number;
  /** Files that neither way can read: bytes of another encoding, an open quotation mark. */
  faults: number;
  readonly failures: string[];
};

type Form = {
  readonly dialect: Dialect;
  readonly headings: readonly string[];
  time(row: number, random: Random): string;
  readonly mark: string;
  readonly decimalMark: "." | ",";
  /** Columns beside time, voltage and current. */
  readonly more: readonly ("temperature" | "power" | "charge" | "words")[];
  readonly lineEnd: string;
  readonly encoding: string;
};

const pick = <T>(values: readonly T[], random: Random): T => values[random.below(values.length)] as T;

/** Runs over logs of `lines` lines in all; the same seed makes the same logs. */
export async function agree(lines: number, seed: number, onProgress: (sofar: Agreement) => void = () => undefined): Promise<Agreement> {
  const sofar: Agreement = { files: 0, lines: 0, plainRows: 0, faults: 0, failures: [] };
  while (sofar.lines < lines) {
    const random = seededRandom(seed, sofar.files);
    const form = makeForm(random);
    const { bytes, count } = writeLog(form, random);
    const head = new TextDecoder(form.encoding)
      .decode(bytes)
      .split(/\r\n|\n|\r/)
      .slice(0, 60);
    const { value: dialect } = resolveDialect(head, form.encoding, form.dialect, "log", undefined);
    sofar.files++;
    sofar.lines += count;
    if (dialect === undefined) continue;
    const badRows = random.below(4) === 0 ? [{ from: 5 + random.below(count), to: 8 + random.below(count) }] : [];
    const { difference, plainRows, outcome } = await readBothWays(cut(bytes, random), dialect, badRows);
    sofar.plainRows += plainRows;
    if (outcome.fault !== undefined) sofar.faults++;
    if (difference !== undefined) sofar.failures.push(`seed ${seed}, log ${sofar.files - 1}: ${difference}`);
    if (sofar.files % 500 === 0) onProgress(sofar);
  }
  return sofar;
}

export function makeForm(random: Random): Form {
  const mark = pick([",", ",", ";", ";", "\t", "|", " "], random);
  const decimalMark = mark !== "," && random.below(3) === 0 ? "," : ".";
  const more = (["temperature", "power", "charge", "words"] as const).filter(() => random.below(3) === 0);
  const names = { temperature: "T_C", power: "P_W", charge: "Q_Ah", words: "note" } as const;
  const number = (value: number, digits: number): string => value.toFixed(digits).replace(".", decimalMark);
  const two = (value: number): string => String(value).padStart(2, "0");
  const startMs = Date.UTC(2026, random.below(12), 1 + random.below(28), random.below(24), random.below(60));
  const at = (row: number): Date => new Date(startMs + row * 61_000);
  const clock = (date: Date): string => `${two(date.getUTCHours())}:${two(date.getUTCMinutes())}:${two(date.getUTCSeconds())}`;
  const dash = pick(["-", "/", "."], random);
  const parting = mark === " " ? "T" : pick(["T", " "], random);
  const ymd = (date: Date): string => [date.getUTCFullYear(), two(date.getUTCMonth() + 1), two(date.getUTCDate())].join(dash);
  const dmy = (date: Date): string => [two(date.getUTCDate()), two(date.getUTCMonth() + 1), date.getUTCFullYear()].join(dash);
  const mdy = (date: Date): string => [two(date.getUTCMonth() + 1), two(date.getUTCDate()), date.getUTCFullYear()].join(dash);
  const fraction = pick(["", "", ".5", ".125", ".000000001"], random);
  const offset = pick(["Z", "+01:00", "-0530", "+00:00"], random);
  const times: readonly { time: NonNullable<Dialect["time"]>; write: Form["time"] }[] = [
    { time: { kind: "elapsed", unit: "s" }, write: (row) => number(row + row / 1000, 3) },
    { time: { kind: "elapsed", unit: "ms" }, write: (row) => String(row * 997) },
    { time: { kind: "elapsed", unit: "h" }, write: (row) => number(row / 3600, 9) },
    { time: { kind: "unix" }, write: (row) => number(startMs / 1000 + row, 2) },
    { time: { kind: "serial" }, write: (row) => number(46_000 + row / 1440, 8) },
    { time: { kind: "elapsed" }, write: (row) => `${Math.floor(row / 60)}:${two(row % 60)}:07${fraction}` },
    { time: { kind: "time-of-day" }, write: (row) => `${clock(at(row))}${fraction}` },
    { time: { kind: "local", order: "year-month-day" }, write: (row) => `${ymd(at(row))}${parting}${clock(at(row))}${fraction}` },
    { time: { kind: "local", order: "day-month-year" }, write: (row) => `${dmy(at(row))}${parting}${clock(at(row))}${fraction}` },
    { time: { kind: "local", order: "month-day-year" }, write: (row) => `${mdy(at(row))}${parting}${clock(at(row))}` },
    { time: { kind: "iso" }, write: (row) => `${ymd(at(row))}${parting}${clock(at(row))}${fraction}${offset}` },
  ];
  const { time, write } = pick(times, random);
  return {
    mark,
    decimalMark,
    more,
    lineEnd: pick(["\n", "\n", "\r\n", "\r"], random),
    encoding: pick(["utf-8", "utf-8", "utf-8", "windows-1252"], random),
    headings: [
      "time",
      pick(["voltage_V", "voltage_mV"], random),
      pick(["current_A", "current_mA"], random),
      ...more.map((name) => names[name]),
    ],
    time: write,
    dialect: {
      delimiter: mark as ",",
      decimalMark,
      preambleLines: 0,
      time: { number: 1, ...time },
      ...(random.below(3) === 0 ? { missing: ["-1", "777"] } : {}),
      ...(random.below(6) === 0 ? { thousandsMark: "'" as const } : {}),
    },
  };
}

/** Fields that are odd in one way or another; whether they can be read is for both readers to agree upon. */
const oddFields = [
  "",
  " ",
  "-",
  "---",
  "OL",
  "NaN",
  "n/a",
  "-999",
  "-999.0",
  "-9999",
  "9.9E37",
  "-9.91e37",
  "1e3",
  "1.5E-02",
  "+12.5",
  "-0",
  "-0.000",
  ".5",
  "12.",
  ".",
  "+",
  "12.5V",
  "3,998",
  "3'998.5",
  "1 234",
  "0x1F",
  "Infinity",
  "12:34:56",
  "123456789012345",
  "1234567890123456789",
  "9007199254740993",
  "0.1234567890123456789012345",
  "123456.7890123456789",
  "12.3456789012345678",
  "0.30000000000000004",
  "90071992547.40993",
  "0.00000000000000000000001234",
  "\u2212 4.2",
  "\u22124.2",
  "12\u00a0345",
  "\ufeff12.5",
  "\u0660",
  "777",
  "-1",
  "12.5\t",
  "\t12.5",
  "12..5",
  "1-2",
  "note",
  "\0",
  '"12.5"',
  '"12;5,1"',
  '12"5',
];

export function writeLog(form: Form, random: Random): { bytes: Uint8Array; count: number } {
  const count = 20 + random.below(400);
  const oddOf = pick([0, 500, 100, 20, 3], random);
  const row = (at: number): string[] => {
    const number = (value: number, digits: number): string => value.toFixed(digits).replace(".", form.decimalMark);
    const digits = random.below(5);
    return [
      form.time(at, random),
      number(12 + random.below(3000) / 1000, digits),
      number(random.below(9000) / 1000 - 0.2, digits),
      ...form.more.map((name) =>
        name === "words" ? pick(["ok", "", "bulk", "10 %", "Laden", "23°"], random) : number(random.below(70_000) / 1000, 2),
      ),
    ];
  };
  const pad = pick(["", "", "", " "], random);
  const join = (fields: readonly string[]): string => fields.map((field) => `${pad}${field}`).join(form.mark);
  const lines = [...(random.below(4) === 0 ? ["Newt 2 serial 17", '5" range'] : []), form.headings.join(form.mark)];
  const preambleLines = lines.length - 1;
  for (let at = 0; at < count; at++) {
    const fields = row(at);
    // The head stays plain, so that the log is known for what it is.
    if (oddOf > 0 && at > 6 && random.below(oddOf) === 0) lines.push(oddLine(fields, form, join, random));
    else lines.push(join(fields));
  }
  if (random.below(8) === 0) lines.push("End of log", "Max: 14");
  const text = `${random.below(8) === 0 && form.encoding === "utf-8" ? "\ufeff" : ""}${lines.join(form.lineEnd)}${pick([form.lineEnd, form.lineEnd, "", "\r", "\n\n"], random)}`;
  Object.assign(form.dialect, { preambleLines });
  const bytes = form.encoding === "utf-8" ? Uint8Array.from(Buffer.from(text, "utf8")) : Uint8Array.from(Buffer.from(text, "latin1"));
  // A slipped byte, now and then: no UTF-8, or another sign.
  if (oddOf > 0 && random.below(12) === 0) bytes[random.below(bytes.length)] = random.below(256);
  return { bytes, count: lines.length };
}

function oddLine(fields: string[], form: Form, join: (fields: readonly string[]) => string, random: Random): string {
  switch (random.below(10)) {
    case 0:
      return "";
    case 1:
      return join(fields.slice(0, random.below(fields.length)));
    case 2:
      return join([...fields, pick(["", " ", "1", "x"], random)]);
    case 3:
      return form.headings.join(form.mark);
    case 4:
      return `${join(fields)}${pick(["\r", "\r\r", " ", form.mark, "\n"], random)}`;
    case 5:
      return pick(
        [" ", form.mark.repeat(fields.length - 1), "# comment", "----", "Error 5", '"', '"" ""', `\ufeff"${fields[0]}"${form.mark}"x"`],
        random,
      );
    case 6:
      return `${pick(["  ", "\t", "\ufeff", "\u00a0"], random)}${join(fields)}`;
    default: {
      fields[random.below(fields.length)] = random.below(4) === 0 ? longNumber(form.decimalMark, random) : pick(oddFields, random);
      return join(fields);
    }
  }
}

/** A number of up to 36 digits, wherever its mark stands: one of too many digits is not plain, and rounding it twice would show. */
function longNumber(decimalMark: string, random: Random): string {
  const digits = Array.from({ length: 4 }, () => String(random.below(1_000_000_000)))
    .join("")
    .slice(0, 1 + random.below(36));
  const at = random.below(digits.length + 1);
  return `${digits.slice(0, at)}${decimalMark}${digits.slice(at)}`;
}

/** The bytes in chunks: large ones as from a disk, or small ones, so that every kind of line is cut somewhere. */
export function cut(bytes: Uint8Array, random: Random): Uint8Array[] {
  const longest = pick([1, 7, 64, 5000, bytes.length], random);
  const chunks: Uint8Array[] = [];
  for (let from = 0; from < bytes.length; ) {
    const to = Math.min(bytes.length, from + 1 + random.below(longest));
    chunks.push(bytes.subarray(from, to));
    from = to;
  }
  return chunks;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const { values } = parseArgs({ options: { lines: { type: "string", default: "100000" }, seed: { type: "string", default: "1" } } });
  const started = performance.now();
  const say = (text: string): void => void process.stdout.write(`${text}\n`);
  const { files, lines, plainRows, faults, failures } = await agree(Number(values.lines), Number(values.seed));
  for (const failure of failures.slice(0, 50)) say(failure);
  say(
    `seed ${values.seed}: ${lines} lines in ${files} logs, ${plainRows} rows read from bytes, ${faults} logs that neither way can read, ${failures.length} differences, ${((performance.now() - started) / 1000).toFixed(0)} s`,
  );
  process.exitCode = failures.length > 0 ? 1 : 0;
}
