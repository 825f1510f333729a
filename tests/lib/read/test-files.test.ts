import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { formatProblem } from "../../../lib/nouns/problem.ts";
import { readTestFiles } from "../../../lib/read/test-files.ts";
import { readWorkspace } from "../../../lib/read/workspace.ts";
import { files, renamed, replaced, smallWorkspace, written } from "../check/small-workspace.ts";
import { type Files, withFiles } from "./temp-files.ts";

const read = (workspace: Files) =>
  withFiles(workspace, async (root) => {
    const { value } = await readWorkspace(root);
    const [folder] = value.tests;
    if (folder === undefined) throw new Error("no test in the workspace");
    return readTestFiles(folder, value.instruments);
  });

const counting = "Czas [s];Napięcie [V];Prąd [mA]\n0;12,30;4000\n60;12,33;4000\n";

describe("files of a test", () => {
  it("are its logs, each with its connection and its recorder, and its readings", async () => {
    const { value, problems } = await read(smallWorkspace);
    expect(problems).toEqual([]);
    expect(value.logs.map(({ file, connection, recorderId, log }) => [file.path, connection, recorderId, log.counts.samples])).toEqual([
      [files.log, 0, "newt", 71],
    ]);
    expect(value.readings.map(({ atText }) => atText)).toEqual(["2026-02-03 13:30", "2026-02-04 09:00"]);
  });

  it("are read in the test's zone", async () => {
    const { value } = await read(replaced(files.test, "Europe/Warsaw", "Asia/Kathmandu"));
    // Five hours and three quarters ahead of UTC.
    expect(value.logs[0]?.log.samples.startMs).toBe(Date.parse("2026-02-03T08:20:00Z"));
    expect(value.readings[0]?.atMs).toBe(Date.parse("2026-02-03T07:45:00Z"));
  });

  it("tell what is wrong with the readings even where the record cannot be read", async () => {
    const { value, problems } = await read(replaced(files.readings, "density_1", "densty_1", replaced(files.test, "battery:", "batery:")));
    expect(value).toEqual({ logs: [], readings: [] });
    expect(problems.map(formatProblem)).toEqual([
      expect.stringMatching(/readings-column: .*found the column "densty_1"\n {2}mend: did you mean "density_1"\?/),
    ]);
  });

  it("begin, where a log only counts, when its connection begins, or at its own startedAt", async () => {
    const byConnection = await read(written(files.log, counting));
    expect(byConnection.value.logs[0]?.log.samples.startMs).toBe(Date.parse("2026-02-03T14:00:00+01:00"));
    const own = replaced(
      files.test,
      "[logs/pomiar.csv]",
      "[{ file: logs/pomiar.csv, startedAt: 2026-02-03T14:10:00+01:00 }]",
      written(files.log, counting),
    );
    expect((await read(own)).value.logs[0]?.log.samples.startMs).toBe(Date.parse("2026-02-03T14:10:00+01:00"));
  });

  it("are read by the dialect of the recorder that one recording names", async () => {
    const other = written(
      "data/instruments/eel.yaml",
      "name: Eel recorder (invented)\nkind: recorder\nmeasures: {}\ndialect:\n  current: { name: 'Prąd [mA]', unit: A }\n",
    );
    const { value } = await read(replaced(files.test, "[logs/pomiar.csv]", "[{ file: logs/pomiar.csv, recorder: eel }]", other));
    expect(value.logs[0]).toMatchObject({ recorderId: "eel" });
    expect(value.logs[0]?.log.samples.currentsA[0]).toBe(4000);
  });

  it("leave out the rows that the record lists as bad", async () => {
    const listed = "[{ file: logs/pomiar.csv, badRows: [{ from: 2, to: 11, why: clamp fell off }] }]";
    const { value } = await read(replaced(files.test, "[logs/pomiar.csv]", listed));
    expect(value.logs[0]?.log.counts).toMatchObject({ samples: 61, excluded: 10 });
  });

  it("may lie in folders below logs/, whose names are then part of their own", async () => {
    const { value, problems } = await read(
      replaced(files.test, "[logs/pomiar.csv]", "[logs/day-1/pomiar.csv]", renamed(files.log, files.log.replace("logs/", "logs/day-1/"))),
    );
    expect(problems).toEqual([]);
    expect(value.logs.map(({ id, log }) => [id, log.counts.samples])).toEqual([["day-1~pomiar.csv", 71]]);
  });

  it("are two recordings of one file where the record names its parts", async () => {
    const text = smallWorkspace[files.log] as string;
    const numbered = text
      .split("\n")
      .map((line, index) => (line === "" ? "" : `${index === 0 ? "Run" : index < 36 ? 1 : 2};${line}`))
      .join("\n");
    const entries = "[{ file: logs/pomiar.csv, part: 1 }, { file: logs/pomiar.csv, part: 2 }]";
    const { value, problems } = await read(replaced(files.test, "[logs/pomiar.csv]", entries, written(files.log, numbered)));
    expect(problems).toEqual([]);
    expect(value.logs.map(({ id, log }) => [id, log.counts.samples, log.samples.lines[0]])).toEqual([
      ["pomiar.csv~1", 35, 2],
      ["pomiar.csv~2", 36, 37],
    ]);
  });

  it("are one recording of two files where voltage and current were logged apart", async () => {
    const lines = (smallWorkspace[files.log] as string).trimEnd().split("\n");
    const columns = (...fields: number[]): string =>
      lines.map((line) => `${fields.map((field) => line.split(";")[field]).join(";")}\n`).join("");
    const second = files.log.replace("pomiar", "amps");
    const apart = written(files.log, columns(0, 1), written(second, columns(0, 2)));
    const { value, problems } = await read(
      replaced(files.test, "[logs/pomiar.csv]", "[{ file: logs/pomiar.csv, with: logs/amps.csv }]", apart),
    );
    expect(problems).toEqual([]);
    const together = (await read(smallWorkspace)).value.logs[0]?.log.samples;
    expect(value.logs[0]?.log.samples).toEqual(together);
    expect(value.logs[0]?.second?.path).toBe(second);
  });

  it("pass over a log that is listed and not there: the checks tell it", async () => {
    const { [files.log]: _, ...rest } = smallWorkspace;
    const { value, problems } = await read(rest);
    expect([value.logs, problems]).toEqual([[], []]);
  });

  it("name the test in every problem", async () => {
    const { problems } = await read(written(files.log, ""));
    expect(problems.map(({ id, test }) => [id, test])).toEqual([["log-empty", "mole-on-quarry"]]);
  });

  it("include readings from a workbook", async () => {
    const workbook = readFileSync(fileURLToPath(new URL("fixtures/visits.xlsx", import.meta.url)));
    const xlsx = files.readings.replace(".csv", ".xlsx");
    const { value, problems } = await read(written(xlsx, workbook, renamed(files.readings, xlsx)));
    expect(problems).toEqual([]);
    expect(value.readings).toHaveLength(3);
  });

  it("tell readings that are neither text nor workbook", async () => {
    const xlsx = files.readings.replace(".csv", ".xlsx");
    expect((await read(renamed(files.readings, xlsx))).problems.map(formatProblem)).toEqual([
      `${xlsx}: error readings-encoding: expected an .xlsx workbook, found bytes that are no spreadsheet\n  mend: save it again as .xlsx, or as readings.csv`,
    ]);
    expect((await read(written(files.readings, Uint8Array.of(0x61, 0xea)))).problems.map(formatProblem)).toEqual([
      `${files.readings}: error readings-encoding: expected text saved as UTF-8, found bytes that are not UTF-8\n  mend: save the file again as UTF-8; in a spreadsheet choose CSV with UTF-8`,
    ]);
  });
});
