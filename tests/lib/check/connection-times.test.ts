import { describe, expect, it } from "vitest";
import { files, messagesOf, replaced, smallWorkspace } from "./small-workspace.ts";

const second = (on: string): string => `\n  - on: ${on}\n`;
const withSecond = (on: string) => replaced(files.test, "[logs/pomiar.csv]", `[logs/pomiar.csv]${second(on)}`);

describe("connection times", () => {
  it("says nothing of a workspace in order", async () => {
    expect(await messagesOf(smallWorkspace)).toEqual([]);
  });

  it("tells an end that is not after its start, at the end's place", async () => {
    const noLog = replaced(files.test, "    recordings: [logs/pomiar.csv]\n", "excluded: [{ what: logs/pomiar.csv, why: trial run }]\n");
    expect(await messagesOf(replaced(files.test, "off: 2026-02-03T16", "off: 2026-02-03T13", noLog))).toEqual([
      'data/tests/mole-on-quarry/test.yaml:13:10: error connection-times: expected a time after on, 2026-02-03T14:00:00+01:00, found off "2026-02-03T13:00:00+01:00"\n' +
        "  mend: check date and offset of both",
    ]);
  });

  it("tells a connection that starts before the one above it has ended", async () => {
    expect(await messagesOf(withSecond("2026-02-03T15:00:00+01:00"))).toEqual([
      'data/tests/mole-on-quarry/test.yaml:15:9: error connection-times: expected a time after the connection before, 2026-02-03T16:00:00+01:00, found on "2026-02-03T15:00:00+01:00"\n' +
        "  mend: put connections in order of time, and check their offsets",
    ]);
  });

  it("compares instants, not texts: 15:30 in London is after 16:00 in Warsaw", async () => {
    expect(await messagesOf(withSecond("2026-02-03T15:30:00Z"))).toEqual([]);
  });
});
