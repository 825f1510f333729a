import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { parse } from "csv-parse/sync";
import { describe, expect, it } from "vitest";
import { parse as parseYaml } from "yaml";
import { type Dialect, instrument } from "../../../lib/nouns/instrument.ts";
import { formatProblem } from "../../../lib/nouns/problem.ts";
import { test } from "../../../lib/nouns/test.ts";
import { type LogRequest, readLog } from "../../../lib/read/log.ts";
import { withFiles } from "./temp-files.ts";

const project = fileURLToPath(new URL("../../../", import.meta.url));

const readText = (text: string | Uint8Array, dialect?: Dialect, more?: Partial<LogRequest>) =>
  withFiles({ "log.csv": text }, (root) =>
    readLog({
      absolutePath: path.join(root, "log.csv"),
      file: "log.csv",
      dialect,
      dialectPlace: undefined,
      zone: "UTC",
      startedAtMs: undefined,
      badRows: [],
      ...more,
    }),
  );

/** Rows of an elapsed log, each with its own numbers. */
const rows = (count: number, end = "\n"): string =>
  Array.from({ length: count }, (_, i) => `${i},${(12 + i / 100_000).toFixed(5)},${(4 - i / 100_000).toFixed(5)}${end}`).join("");
const headings = "time (s),voltage (V),current (A)";

async function expectRows(text: string | Uint8Array, count: number, firstLine: number): Promise<void> {
  const { value: log, problems } = await readText(text);
  expect(problems.map(formatProblem)).toEqual([]);
  expect(log?.samples.elapsedS).toEqual(Float64Array.from({ length: count }, (_, i) => i));
  expect(log?.samples.voltagesV).toEqual(Float64Array.from({ length: count }, (_, i) => Number((12 + i / 100_000).toFixed(5))));
  expect(log?.samples.lines).toEqual(Uint32Array.from({ length: count }, (_, i) => i + firstLine));
}

const headBytes = 128 * 1024;
/** createReadStream hands text over in pieces of this size. */
const pieceBytes = 1 << 18;

describe("long logs", () => {
  it.each(["\n", "\r\n", "\r"])("are read whole, past the head by which the dialect is told, with %j", (end) =>
    expectRows(`${headings}${end}${rows(30_000, end)}`, 30_000, 2),
  );

  it.each([-2, -1, 0, 1, 2])("are read whole where the head ends %d bytes from the end of the file", async (off) => {
    const body = rows(6_000);
    const count = body.slice(0, headBytes - 200).split("\n").length - 1;
    const kept = `${body.split("\n").slice(0, count).join("\n")}\n`;
    const padding = "x".repeat(headBytes + off - headings.length - 1 - kept.length - 1);
    await expectRows(`${padding}\n${headings}\n${kept}`, count, 3);
  });

  it.each([-3, -2, -1, 0, 1])("keep their rows where a piece ends %d bytes around a line's end", async (off) => {
    const body = rows(12_000, "\r\n");
    // The line end nearest to the piece's end is moved onto it by a preamble of the right length.
    const lineEnd = body.lastIndexOf("\r\n", pieceBytes - 1000);
    const padding = "x".repeat(pieceBytes + off - lineEnd - headings.length - 4);
    await expectRows(`${padding}\r\n${headings}\r\n${body}`, 12_000, 3);
  });

  it("keep letters of more than one byte that the end of a piece cuts, at each of its bytes", async () => {
    const cuts = new Set<number>();
    for (const shift of [0, 1, 2]) {
      const text = `${"x".repeat(shift)};;;\ntime (s);voltage (V);current (A);remark\n${rows(3000)
        .replaceAll(",", ";")
        .replaceAll("\n", `;${"€".repeat(40)}\n`)}`;
      cuts.add(Buffer.from(text)[pieceBytes] ?? 0);
      await expectRows(text, 3000, 3);
    }
    // The three bytes of the euro sign in UTF-8: the test would show nothing if the piece ended elsewhere.
    expect(cuts).toEqual(new Set([0xe2, 0x82, 0xac]));
  });
});

describe("what is told of a log", () => {
  it("reads one row back in words, so that a person can see that the numbers mean what they should", async () => {
    const { value } = await readText("Zeit [s];U [V];I [mA]\n0;;-5\n10;12,15;-4005\n", { chargingSign: "negative" });
    expect(value?.sampleRead).toBe('line 3: "12,15" as 12.15 V, "-4005" as 4.005 A');
  });

  it("says of each choice whether the record made it or the file", async () => {
    const { value } = await readText(`${headings}\n${rows(3)}`, { delimiter: ",", chargingSign: "positive" });
    expect(Object.fromEntries((value?.readAs ?? []).map(({ what, from }) => [what, from]))).toEqual({
      encoding: "detected",
      delimiter: "instrument record",
      "decimal mark": "detected",
      "lines before the data": "detected",
      headings: "detected",
      "voltage column": "detected",
      "current column": "detected",
      "time column": "detected",
      "sign of charging current": "instrument record",
    });
  });

  it("says which of voltage and current the recorder logs at all", async () => {
    const { value } = await readText("time (s),current (A)\n0,4\n10,3\n");
    expect(value?.samples).toMatchObject({ hasVoltage: false, hasCurrent: true });
    expect(value?.sampleRead).toBe('line 2: "4" as 4 A');
    expect([...(value?.samples.voltagesV ?? [])]).toEqual([Number.NaN, Number.NaN]);
  });

  it("counts bad rows over both ends of their range, and does not look at what stands in them", async () => {
    const { value, problems } = await readText(`${headings}\n0,12,4\n??,??,??\n-,-\n30,12,4\n`, undefined, {
      badRows: [{ from: 3, to: 4 }],
    });
    expect(problems).toEqual([]);
    expect(value?.counts).toEqual({ lines: 5, samples: 2, blank: 0, excluded: 2, empty: 0 });
  });

  it("tells a log of which every row is bad as empty", async () => {
    const { problems } = await readText(`${headings}\n0,12,4\n`, undefined, { badRows: [{ from: 1, to: 9 }] });
    expect(problems.map(formatProblem)).toEqual([
      "log.csv: error log-empty: expected at least one row with a time and a voltage or a current, found no rows of data\n  mend: take the recording out of test.yaml, or put the right file here",
    ]);
  });

  it("tells bytes that turn out, behind the head, not to be of the encoding", async () => {
    const text = new TextEncoder().encode(`${headings}\n${rows(20_000)}`);
    text[headBytes + 5000] = 0xff;
    expect((await readText(text)).problems.map(formatProblem)).toEqual([
      "log.csv: error log-encoding: expected text in utf-8, found bytes that are not utf-8\n  mend: name the right encoding in the recorder's record: dialect: encoding: utf-16le, windows-1250 …",
    ]);
  });

  it("tells an encoding that there is not", async () => {
    expect((await readText("0;1;2\n", { encoding: "cp-nobody" })).problems.map(formatProblem)).toEqual([
      'log.csv: error log-encoding: expected a name of the WHATWG Encoding Standard, such as utf-8, utf-16le, windows-1250 or iso-8859-2, found "cp-nobody"\n  mend: correct dialect: encoding: in the recorder\'s record, or leave it out',
    ]);
  });
});

/** Each log of the demo with the dialect of its recorder, as test.yaml names it. */
function demoLogs(): { file: string; dialect: Dialect | undefined; sign: 1 | -1 }[] {
  const yaml = (file: string): unknown => parseYaml(readFileSync(path.join(project, file), "utf8"));
  return readdirSync(path.join(project, "data/tests")).flatMap((id) => {
    const record = test.parse(yaml(`data/tests/${id}/test.yaml`));
    return record.connections.flatMap(({ recordings }) =>
      recordings.map((entry) => {
        const listed = typeof entry === "string" ? { file: entry, recorder: undefined } : entry;
        const recorder = listed.recorder ?? record.instruments.recorder;
        const dialect = instrument.parse(yaml(`data/instruments/${recorder}.yaml`)).dialect;
        return { file: `data/tests/${id}/${listed.file}`, dialect, sign: dialect?.chargingSign === "negative" ? -1 : 1 };
      }),
    );
  });
}

/** The numbers of a log as csv-parse reads them, by rules written here once more and only for the demo's recorders. */
function readIndependently(file: string, sign: 1 | -1): { voltagesV: number[]; currentsA: number[] } {
  const bytes = readFileSync(path.join(project, file));
  const isUtf16 = bytes[0] === 0xff && bytes[1] === 0xfe;
  const text = isUtf16 ? bytes.toString("utf16le").slice(1) : bytes.toString("latin1");
  const isCounting = /^\d\d:\d\d:\d\d;/.test(text);
  const isBlock = text.startsWith("CRAB");
  const table: string[][] = parse(text, {
    delimiter: text.includes("\t") ? "\t" : text.includes(";") ? ";" : ",",
    from_line: isCounting ? 1 : isBlock ? 7 : 2,
    relax_column_count: true,
    skip_empty_lines: true,
  });
  const value = (text: string | undefined): number => {
    const trimmed = (text ?? "").trim();
    return trimmed === "" || trimmed === "OL" || trimmed === "---" ? Number.NaN : Number(trimmed.replace(",", "."));
  };
  const [voltageField, currentField] = isCounting ? [2, 1] : [1, 2];
  return {
    voltagesV: table.map((row) => value(row[voltageField])),
    currentsA: table.map((row) => (sign * value(row[currentField])) / (isBlock ? 1000 : 1)),
  };
}

describe("the demo's logs", () => {
  const logs = demoLogs();

  it("are there: at least one from each of the demo's recorders", () => expect(logs.length).toBeGreaterThan(20));

  it.each(logs.map((log) => [log.file, log] as const))("%s agrees number for number with csv-parse", async (file, { dialect, sign }) => {
    const { value, problems } = await readLog({
      absolutePath: path.join(project, file),
      file,
      dialect,
      dialectPlace: undefined,
      zone: "Europe/Ljubljana",
      startedAtMs: undefined,
      badRows: [],
    });
    expect(problems.map(formatProblem)).toEqual([]);
    const expected = readIndependently(file, sign);
    expect(value?.samples.voltagesV).toEqual(Float64Array.from(expected.voltagesV));
    // + 0, since -0 A is 0 A.
    expect(value?.samples.currentsA.map((currentA) => currentA + 0)).toEqual(
      Float64Array.from(expected.currentsA, (currentA) => currentA + 0),
    );
  });
});
