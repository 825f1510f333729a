import { describe, expect, it } from "vitest";
import { files, messagesOf, replaced, smallWorkspace, written } from "./small-workspace.ts";

const log = smallWorkspace[files.log] ?? "";
const second = "data/tests/mole-on-quarry/logs/second.csv";

describe("logs listed", () => {
  it("tells a listed log that is not there, and the name it is nearest to", async () => {
    const excused = replaced(files.test, "zone:", "excluded: [{ what: logs/pomiar.csv, why: trial run }]\nzone:");
    expect(await messagesOf(replaced(files.test, "[logs/pomiar.csv]", "[logs/pomair.csv]", excused))).toEqual([
      'data/tests/mole-on-quarry/test.yaml:15:18: error log-missing: expected one of logs/pomiar.csv, found "logs/pomair.csv", which is not in data/tests/mole-on-quarry/logs\n' +
        '  mend: did you mean "logs/pomiar.csv"?',
    ]);
  });

  it("tells a missing log where the folder holds none at all", async () => {
    const { [files.log]: _, ...rest } = smallWorkspace;
    expect(await messagesOf(rest)).toEqual([
      'data/tests/mole-on-quarry/test.yaml:14:18: error log-missing: expected a log in that folder, found "logs/pomiar.csv", which is not in data/tests/mole-on-quarry/logs\n' +
        "  mend: copy the recording there as the recorder wrote it, or take the line out",
    ]);
  });

  it("tells a log listed twice", async () => {
    expect(await messagesOf(replaced(files.test, "[logs/pomiar.csv]", "[logs/pomiar.csv, { file: logs/pomiar.csv }]"))).toEqual([
      'data/tests/mole-on-quarry/test.yaml:14:35: error log-twice: expected each log in one connection, found "logs/pomiar.csv" a second time\n' +
        "  mend: take it out of one of the connections",
    ]);
  });

  it("takes two recordings of one file for two logs, and the same one twice for a slip", async () => {
    const parts = (first: number, last: number) =>
      replaced(files.test, "[logs/pomiar.csv]", `[{ file: logs/pomiar.csv, part: ${first} }, { file: logs/pomiar.csv, part: ${last} }]`);
    const twice = (messages: readonly string[]): boolean => messages.some((message) => message.includes("log-twice"));
    expect(twice(await messagesOf(parts(1, 2)))).toBe(false);
    expect(twice(await messagesOf(parts(1, 1)))).toBe(true);
  });

  it("counts the second of two files as listed, and tells it where it is not there", async () => {
    const paired = replaced(files.test, "[logs/pomiar.csv]", "[{ file: logs/pomiar.csv, with: logs/second.csv }]");
    expect((await messagesOf(written(second, log, paired))).join("\n")).not.toContain("log-unlisted");
    expect((await messagesOf(paired)).join("\n")).toContain('found "logs/second.csv", which is not in');
  });

  it("tells a log that nobody lists, until the record says why it is left out", async () => {
    const unlisted = written(second, log);
    expect(await messagesOf(unlisted)).toEqual([
      "data/tests/mole-on-quarry/logs/second.csv: doubt log-unlisted: expected each log under the recordings of a connection in data/tests/mole-on-quarry/test.yaml, found a log that no connection lists\n" +
        "  mend: list it, or say why it is left out: excluded: [{ what: logs/second.csv, why: … }]",
    ]);
    const excused = replaced(files.test, "zone:", "excluded: [{ what: logs/second.csv, why: clamp fell off }]\nzone:", unlisted);
    expect(await messagesOf(excused)).toEqual([]);
  });
});
