import { describe, expect, it } from "vitest";
import { files, messagesOf, replaced, smallWorkspace } from "./small-workspace.ts";

const note = "  note: data/instruments/newt.yaml:7 describes how this recorder writes\n";
const at = "data/tests/mole-on-quarry/logs/pomiar.csv:2:1:";

describe("plausible logs", () => {
  it("tells volts that are millivolts", async () => {
    expect(await messagesOf(replaced(files.log, "[V]", "[mV]"))).toEqual([
      `${at} error log-voltage: expected 6 to 19.2 V for a battery of 6 cells, found a middle voltage of 0.01335 V\n${note}  mend: check the unit and the column of voltage in the recorder's dialect, and the battery's cells; a thousand times as much, 13.35 V, would fit: unit: V`,
    ]);
  });

  it("tells amperes that are milliamperes", async () => {
    expect(await messagesOf(replaced(files.log, "[mA]", "[A]"))).toEqual([
      `${at} error log-current: expected at most 220 A for a battery of 44 Ah, found a middle current of 4000 A\n${note}  mend: check the unit of current in the recorder's dialect: a file in mA needs unit: mA`,
    ]);
  });

  it("lets a freak row pass: the middle of the log is what counts", async () => {
    expect(await messagesOf(replaced(files.log, "12,33;4000", "0,33;400000"))).toEqual([]);
  });

  it("doubts a sign turned round", async () => {
    expect(await messagesOf(replaced(files.recorder, "decimalMark: ','", "decimalMark: ','\n  chargingSign: negative"))).toEqual([
      `${at} doubt log-sign: expected a recording of a charge, found more current out of the battery than into it\n${note}  mend: check chargingSign in the recorder's dialect, unless this is a discharge`,
    ]);
  });

  it("lets the drain of a charger that has switched off pass: 0.05 A for 70 min is 0.06 Ah, under 2 % of 44 Ah", async () => {
    const log = smallWorkspace[files.log] as string;
    const drained = { ...smallWorkspace, [files.log]: log.replace(/;\d{4}$/gm, ";-50") };
    expect(await messagesOf(replaced(files.recorder, "decimalMark: ','", "decimalMark: ','\n  chargingSign: positive", drained))).toEqual(
      [],
    );
  });

  it("doubts a first row after the connection's end", async () => {
    expect(await messagesOf(replaced(files.test, "off: 2026-02-03T16:00", "off: 2026-02-03T14:03"))).toEqual([
      `${at} doubt log-clock: expected a start after the connection's on, 2026-02-03 13:00 UTC, and before its off, 2026-02-03 13:03 UTC, found a first row at 2026-02-03 13:05 UTC\n${note}  mend: check the recorder's clock and the test's zone, or the times of the connection`,
    ]);
  });

  it("doubts a first row long before the connection's start, and says only what is known", async () => {
    const open = replaced(files.test, "    off: 2026-02-03T16:00:00+01:00\n", "");
    expect(await messagesOf(replaced(files.test, "on: 2026-02-03T14:00", "on: 2026-02-03T14:21", open))).toEqual([
      `${at} doubt log-clock: expected a start after the connection's on, 2026-02-03 13:21 UTC, found a first row at 2026-02-03 13:05 UTC\n${note}  mend: check the recorder's clock and the test's zone, or the times of the connection`,
    ]);
  });

  it("lets a recorder run a quarter of an hour ahead: it is often started before the clamps are on", async () => {
    expect(await messagesOf(replaced(files.test, "on: 2026-02-03T14:00", "on: 2026-02-03T14:20"))).toEqual([]);
  });
});
