import { describe, expect, it } from "vitest";
import { formatProblem } from "../../../../lib/nouns/problem.ts";
import { corpusFiles, readCorpusFile } from "../../../dialects/corpus.ts";

const files = corpusFiles();

describe("the corpus of files that are read", () => {
  it("holds at least sixty", () => expect(files.length).toBeGreaterThanOrEqual(60));

  it.each(files.map((file) => [file.name, file] as const))("%s", async (_, file) => {
    const { value: log, problems } = await readCorpusFile(file);
    expect(problems.map(formatProblem)).toEqual([]);
    if (log === undefined) throw new Error("nothing was read");
    const { samples } = log;
    const { expected } = file;
    expect(log.counts).toEqual(expected.counts);

    const told = Object.fromEntries(log.readAs.map(({ what, value }) => [what, value]));
    const columns = Object.fromEntries(Object.entries(expected.columns).map(([role, words]) => [`${role} column`, words]));
    expect(told).toMatchObject({ ...columns, ...expected.tells });
    for (const role of ["voltage", "current", "temperature"]) expect(`${role} column` in told, role).toBe(role in expected.columns);

    const last = samples.elapsedS.length - 1;
    const instant = (row: number): string | null =>
      samples.startMs === undefined ? null : new Date(samples.startMs + (samples.elapsedS[row] ?? Number.NaN) * 1000).toISOString();
    expect([instant(0), instant(last)]).toEqual([expected.first, expected.last]);

    const number = (value: number | undefined): number | null => (value === undefined || Number.isNaN(value) ? null : value);
    for (const [line, elapsedS, ...values] of expected.rows) {
      const row = samples.lines.indexOf(line ?? 0);
      expect(row, `no sample of line ${line}`).toBeGreaterThanOrEqual(0);
      // A microsecond: a spreadsheet's days and instants since 1970 hold no more than that in a double.
      expect(samples.elapsedS[row]).toBeCloseTo(elapsedS ?? 0, 3);
      const read = [samples.voltagesV[row], samples.currentsA[row], samples.temperaturesC[row]].slice(0, values.length).map(number);
      // 1e-9 of the unit: numbers are read to the last digit, and only temperatures and straight lines are computed.
      read.forEach((value, index) => {
        const wanted = values[index];
        if (wanted === null || wanted === undefined || value === null) expect(value).toBe(wanted);
        else expect(value).toBeCloseTo(wanted, 9);
      });
    }
  });
});
