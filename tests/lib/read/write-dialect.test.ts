import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { formatProblem } from "../../../lib/nouns/problem.ts";
import { proposeDialect } from "../../../lib/read/propose-dialect.ts";
import { dialectBlock, withDialect } from "../../../lib/read/write-dialect.ts";
import { corpusFiles, requestOf } from "../../dialects/corpus.ts";

const record =
  "# our own words, kept\nname: Newt recorder (invented)   # two blanks, kept\nkind: recorder\nmeasures: { }\nnotes: >-\n  folded\n  words\n";
const dialect = { delimiter: ";", decimalMark: ",", voltage: { name: "U [V]", unit: "V" } } as const;

describe("a dialect written into a record", () => {
  it("stands at its end, and every byte before it is as it was", () => {
    const { value, problems } = withDialect(record, "newt.yaml", dialect);
    expect(problems).toEqual([]);
    expect(value).toBe(`${record}dialect:\n  delimiter: ;\n  decimalMark: ","\n  voltage: { name: "U [V]", unit: V }\n`);
  });

  it("ends its lines as the record does, and gives the record's last line an end first", () => {
    const windows = record.trimEnd().replaceAll("\n", "\r\n");
    const { value } = withDialect(windows, "newt.yaml", dialect);
    expect(value?.startsWith(`${windows}\r\ndialect:\r\n`)).toBe(true);
    expect(value?.replaceAll("\r\n", "")).not.toContain("\n");
  });

  it.each([
    [
      "one that has a dialect",
      `${record}dialect: { decimalMark: "." }\n`,
      "newt.yaml:8: error dialect-record: expected a record without one, so that nothing of yours is written over, found a dialect already\n  mend: compare the two, and take the lines that are missing from the proposal",
    ],
    [
      "one in braces",
      "{ name: Newt, kind: recorder, measures: {} }\n",
      "newt.yaml: error dialect-record: expected one field a line, and no end mark, found a record to whose end nothing can be added\n  mend: write the record with one field a line, or put the proposal in by hand",
    ],
    [
      "one with an end mark",
      `${record}...\n`,
      "newt.yaml: error dialect-record: expected one field a line, and no end mark, found a record to whose end nothing can be added\n  mend: write the record with one field a line, or put the proposal in by hand",
    ],
  ])("is not written into %s", (_, text, message) => {
    const { value, problems } = withDialect(text, "newt.yaml", dialect);
    expect(value).toBeUndefined();
    expect(problems.map(formatProblem)).toEqual([message]);
  });

  it("is not written into a record with faults, which are told", () => {
    const { value, problems } = withDialect("name: Newt\nkind: recoder\n", "newt.yaml", dialect);
    expect(value).toBeUndefined();
    expect(problems.length).toBeGreaterThan(0);
  });
});

describe("a proposed dialect", () => {
  const files = corpusFiles();
  it.each(files.map((file) => [file.name, file] as const))(
    "reads its own file to the same numbers: %s",
    async (_, { absolutePath, file, expected }) => {
      const request = requestOf(absolutePath, file, expected.request);
      const first = await proposeDialect(request);
      expect(first.questions).toEqual([]);
      if (first.dialect === undefined || first.log === undefined) throw new Error("no proposal");
      // By way of the record's text, as the command would write it and the next build read it.
      const { value: text } = withDialect(record, "newt.yaml", first.dialect);
      expect(text).toContain(dialectBlock(first.dialect));
      const second = await proposeDialect({ ...request, dialect: first.dialect });
      expect(second.problems).toEqual([]);
      expect(second.log?.samples).toEqual(first.log.samples);
      expect(second.dialect).toEqual(first.dialect);
    },
  );

  it("gives for each choice where it came from, and rows read back in the file's own text", async () => {
    const file = files.find(({ name }) => name === "semicolon-comma");
    const { choices, readBack } = await proposeDialect(requestOf(file?.absolutePath ?? "", "log.csv"));
    expect(choices.map(({ what }) => what)).toContain("decimal mark");
    expect(choices.every(({ why }) => why.length > 10)).toBe(true);
    expect(readBack[1]).toBe(
      'line 3: "2026-03-14T08:00:10Z" as 2026-03-14T08:00:10.000Z, "12,84" as 12.84 V, "4,00" as 4 A into the battery',
    );
  });

  it("is left open while something is: the file is not written to, and neither is anything else", async () => {
    const path = new URL("../../logs/day-or-month-first.csv", import.meta.url);
    const before = readFileSync(path);
    const proposal = await proposeDialect(requestOf(path.pathname, "log.csv"));
    expect(proposal.dialect).toBeUndefined();
    expect(proposal.questions.map(({ options }) => options.map(({ answer }) => answer))).toEqual([
      ["--date day-month-year", "--date month-day-year"],
    ]);
    expect(readFileSync(path)).toEqual(before);
  });
});
