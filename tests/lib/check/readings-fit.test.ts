import { describe, expect, it } from "vitest";
import { files, messagesOf, replaced, written } from "./small-workspace.ts";

const visits = (columns: string, ...rows: string[]) => written(files.readings, `${[columns, ...rows].join("\n")}\n`);

describe("readings fit battery and test", () => {
  it("tells a density read from a sealed battery", async () => {
    const sealed = replaced(files.battery, "construction: flooded", "construction: AGM", visits("at;density_1", "2026-02-03 13:30;1,160"));
    expect(await messagesOf(sealed)).toEqual([
      'data/tests/mole-on-quarry/readings.csv:2:18: error reading-sealed: expected no density: the battery is AGM, which is sealed, found density_1 "1,160"\n  mend: correct the battery\'s construction, or move the reading into note',
    ]);
  });

  it("tells a cell that the battery does not have, and takes its last one", async () => {
    expect(await messagesOf(visits("at;density_6;density_7", "2026-02-03 13:30;1,160;1,165"))).toEqual([
      "data/tests/mole-on-quarry/readings.csv:2:24: error reading-cell: expected cells 1 to 6 of this battery, found density_7\n  mend: correct the column, or the battery's cells",
    ]);
  });

  it.each([
    ["rest_V", "8,9"],
    ["rest_V", "18,1"],
    ["terminal_V", "2,40"],
  ])("doubts %s %s on six cells", async (column, text) => {
    expect(await messagesOf(visits(`at;${column}`, `2026-02-03 13:30;${text}`))).toEqual([
      `data/tests/mole-on-quarry/readings.csv:2:18: doubt reading-voltage: expected 1.5 to 3 V a cell, 9 to 18 V for this battery, found ${column} "${text}"\n  mend: check the reading, and the battery's cells`,
    ]);
  });

  it.each(["9,0", "18,0"])("takes a rest voltage of %s V, the edge itself", async (text) => {
    expect(await messagesOf(visits("at;rest_V", `2026-02-03 13:30;${text}`))).toEqual([]);
  });

  it("asks once for an instrument that no line of the test names, however many readings it made", async () => {
    const unnamed = replaced(files.test, "  hydrometer: float-glass\n", "");
    expect(await messagesOf(unnamed)).toEqual([
      'data/tests/mole-on-quarry/readings.csv:2:18: doubt reading-instrument: expected the line "hydrometer:" under instruments in test.yaml, found density_1 without an instrument\n  mend: name the instrument, so that the reading carries its accuracy',
    ]);
  });

  it("asks no instrument for the hours of rest: nobody measures them", async () => {
    expect(await messagesOf(visits("at;rest_h", "2026-02-03 13:30;24"))).toEqual([]);
  });

  it("doubts a visit of another year", async () => {
    expect(await messagesOf(visits("at;rest_V", "2025-02-03 13:30;12,11", "2026-02-04 09:00;12,70"))).toEqual([
      "data/tests/mole-on-quarry/readings.csv:2:1: doubt reading-time: expected visits within half a year of the connections, which run from 2026-02-03 to 2026-02-03, found a visit at 2025-02-03 13:30\n  mend: check the year of the visit, and the times of the connections in test.yaml",
    ]);
  });

  it("takes visits at any time where no connection has a time", async () => {
    const timeless = replaced(
      files.test,
      "  - on: 2026-02-03T14:00:00+01:00\n    off: 2026-02-03T16:00:00+01:00\n    recordings",
      "  - recordings",
      visits("at;rest_V", "2019-02-03 13:30;12,11"),
    );
    expect(await messagesOf(timeless)).toEqual([]);
  });
});
