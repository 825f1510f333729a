import { readFile } from "node:fs/promises";
import path from "node:path";
import { Command } from "commander";
import { afterEach, describe, expect, it, vi } from "vitest";
import { answersToDialect, dialect } from "../../../lib/commands/dialect.ts";
import { addDialectCommand } from "../../../lib/commands/dialect-options.ts";
import { withFiles } from "../read/temp-files.ts";

const log = "time;voltage (V);current (A)\n03/02/2026 14:05;12,10;4,00\n03/02/2026 14:06;12,20;3,90\n";
const record = "name: Newt recorder (invented)\nkind: recorder\nmeasures: {}\n";

/** Runs the command in silence. @returns its status and what it printed */
async function said(options: Parameters<typeof dialect>[0]): Promise<{ status: number; text: string }> {
  let text = "";
  vi.spyOn(process.stdout, "write").mockImplementation((chunk) => {
    text += String(chunk);
    return true;
  });
  vi.spyOn(process.stderr, "write").mockImplementation((chunk) => {
    text += String(chunk);
    return true;
  });
  const status = await dialect(options);
  vi.restoreAllMocks();
  return { status, text };
}

afterEach(() => vi.restoreAllMocks());

describe("the command dialect", () => {
  it("shows both readings of a date that has two, with the option and the line that settle it, and fails", () =>
    withFiles({ "log.csv": log }, async (root) => {
      const { status, text } = await said({ log: path.join(root, "log.csv"), zone: "UTC" });
      expect(status).toBe(1);
      expect(text).toContain(
        '--date day-month-year   reads "03/02/2026 14:05" as 3 February 2026   dialect: time: { order: day-month-year }',
      );
      expect(text).toContain('--date month-day-year   reads "03/02/2026 14:05" as 2 March 2026   dialect: time: { order: month-day-year }');
      expect(text).not.toContain("for the recorder's record");
    }));

  it("refuses to write while it is open, and writes once it is answered", () =>
    withFiles({ "log.csv": log, "newt.yaml": record }, async (root) => {
      const [file, write] = [path.join(root, "log.csv"), path.join(root, "newt.yaml")];
      expect((await said({ log: file, write, zone: "UTC" })).status).toBe(1);
      expect(await readFile(write, "utf8")).toBe(record);
      const { status, text } = await said({ log: file, write, zone: "UTC", date: "day-month-year", sign: "positive" });
      expect(status).toBe(0);
      expect(text).toContain('line 2: "03/02/2026 14:05" as 2026-02-03T14:05:00.000Z, "12,10" as 12.1 V, "4,00" as 4 A into the battery');
      expect(await readFile(write, "utf8")).toBe(
        `${record}dialect:\n  encoding: utf-8\n  delimiter: ;\n  decimalMark: ","\n  headings: true\n  time: { name: time, kind: local, order: day-month-year }\n  voltage: { name: voltage (V), unit: V }\n  current: { name: current (A), unit: A }\n  chargingSign: positive\n`,
      );
      // A second time there is a dialect, and nothing of it is written over.
      const again = await said({ log: file, write, zone: "UTC", date: "month-day-year" });
      expect(again.status).toBe(1);
      expect(again.text).toContain("found a dialect already");
    }));

  it("does not claim to know which encoding of one byte a letter it is: what tells is only that the bytes are not UTF-8", () =>
    // "prąd (A)" in windows-1250, where ą is the byte B9.
    withFiles({ "log.csv": Buffer.from(log.replace("current", "pr\u00b9d").replaceAll("03/02", "13/02"), "latin1") }, async (root) => {
      const { text } = await said({ log: path.join(root, "log.csv"), zone: "UTC" });
      expect(text).toContain("encoding: windows-1252 (the file's first bytes are not UTF-8; ");
      expect(text).toContain("state it where letters look wrong");
    }));

  it("says so where there is no record to write into", () =>
    withFiles({ "log.csv": log }, async (root) => {
      const { status, text } = await said({
        log: path.join(root, "log.csv"),
        write: path.join(root, "eel.yaml"),
        zone: "UTC",
        date: "day-month-year",
      });
      expect(status).toBe(1);
      expect(text).toContain("expected the record of the recorder, with name, kind and measures, found no such file");
    }));

  it("takes what a record says as said", () =>
    withFiles({ "log.csv": log, "newt.yaml": `${record}dialect:\n  time: { order: month-day-year }\n` }, async (root) => {
      const { status, text } = await said({ log: path.join(root, "log.csv"), record: path.join(root, "newt.yaml"), zone: "UTC" });
      expect(status).toBe(0);
      expect(text).toContain("as 2026-03-02T14:05:00.000Z");
    }));

  it("tells a row that cannot be read, and proposes nothing", () =>
    withFiles({ "log.csv": log.replace("12,20", "12,2O") }, async (root) => {
      const { status, text } = await said({ log: path.join(root, "log.csv"), zone: "UTC", date: "day-month-year" });
      expect(status).toBe(1);
      expect(text).toContain(':3:18: error log-number: expected a voltage with "," as decimal mark, found "12,2O"');
    }));

  it("is part of a program that has it added", () => {
    const program = new Command();
    addDialectCommand(program);
    expect(program.commands.map((command) => command.name())).toEqual(["dialect"]);
  });
});

describe("answers", () => {
  it.each([
    [{ date: "day-month-year" }, { time: { order: "day-month-year" } }],
    [{ time: "min" }, { time: { kind: "elapsed", unit: "min" } }],
    [{ time: "mm:ss" }, { time: { kind: "elapsed", clock: "mm:ss" } }],
    [{ time: "time-of-day" }, { time: { kind: "time-of-day" } }],
    [{ time: "serial" }, { time: { kind: "serial" } }],
    [
      { voltage: "2", current: "Strom [A]" },
      { voltage: { number: 2 }, current: { name: "Strom [A]" } },
    ],
    [
      { decimal: "comma", thousands: "point" },
      { decimalMark: ",", thousandsMark: "." },
    ],
    [{ thousands: "apostrophe" }, { thousandsMark: "'" }],
    [
      { delimiter: "tab", sign: "negative", sheet: "Log" },
      { delimiter: "\t", chargingSign: "negative", sheet: "Log" },
    ],
    [{}, {}],
  ])("%j become the dialect %j", (answers, expected) => expect(answersToDialect(answers)).toEqual(expected));

  it.each([
    [{ date: "day-first" }, /^--date: /],
    [{ time: "fortnights" }, /^--time: /],
    [{ sign: "up" }, /^--sign: /],
    [{ decimal: "dash" }, /^--decimal: /],
  ])("%j is none, and its option is named", (answers, message) => expect(answersToDialect(answers)).toMatch(message));
});
