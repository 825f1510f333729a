/** One small input for each problem id: the small workspace with one mistake in it. docs/problems.md prints what comes of each. */
import { symlink } from "node:fs/promises";
import path from "node:path";
import { checkLogAgainstReadings } from "../../../lib/check/log-against-readings.ts";
import { checkLogResolution } from "../../../lib/check/log-resolution.ts";
import type { Problem } from "../../../lib/nouns/problem.ts";
import { joinLogs } from "../../../lib/read/log/join-logs.ts";
import { withDialect } from "../../../lib/read/write-dialect.ts";
import type { Files } from "../read/temp-files.ts";
import { joined, sampled, smallBattery, visited } from "./small-logs.ts";
import { files, renamed, replaced, smallWorkspace, written } from "./small-workspace.ts";

export type Mistake =
  | { readonly workspace: Files; readonly prepare?: (root: string) => Promise<void> }
  /** For what a command says, and a run does not. */
  | { readonly say: () => Promise<readonly Problem[]> };

const plain = (workspace: Files): Mistake => ({ workspace });
const smallReadings = smallWorkspace[files.readings] as string;
const sealed = replaced(files.battery, "construction: flooded", "construction: AGM");

/** A log of n rows in the small workspace's form, each row made from its number. */
const log = (rows: number, row: (index: number) => string): string =>
  `Czas;Napięcie [V];Prąd [mA]\n${Array.from({ length: rows }, (_, index) => row(index)).join("\n")}\n`;
const minute = (index: number): string => `03.02.2026 14:${String(index + 5).padStart(2, "0")}`;

/** Rows of one column of the small log with a text put in its place. */
const column = (heading: string, row: (index: number) => string): string =>
  log(71, (index) => `${clock(index)};${row(index)}`).replace("Prąd [mA]", heading);
const clock = (index: number): string =>
  `03.02.2026 ${String(14 + Math.floor((index + 5) / 60)).padStart(2, "0")}:${String((index + 5) % 60).padStart(2, "0")}`;

export const mistakes: Readonly<Record<string, Mistake>> = {
  // The folder and its files
  "site-missing": plain(renamed(files.site, "data/sites.txt")),
  "file-name": plain(renamed(files.battery, "data/batteries/Quarry 44.yaml")),
  "file-unused": plain(written("data/tests/mole-on-quarry/Readings.csv", smallReadings)),
  "file-unreadable": plain(written("data/tests/mole-on-quarry/photos/locked.jpg", "")),
  "link-in-workspace": {
    workspace: smallWorkspace,
    prepare: (root) => symlink("pomiar.csv", path.join(root, "data/tests/mole-on-quarry/logs/again.csv")),
  },
  "test-record-missing": plain(written("data/tests/mole-on-ferry/logs/first.csv", "0;12.1;4\n")),

  // Records
  "record-encoding": plain(written(files.about, Uint8Array.of(0x2d, 0x2d, 0x2d, 0x0a, 0xb1, 0x0a))),
  "record-too-large": plain(written(files.battery, `name: Quarry 44\ncondition: ${"so ".repeat(400_000)}\n`)),
  "record-twice": plain(written("data/batteries/quarry-44.yml", smallWorkspace[files.battery] ?? "")),
  "record-yaml": plain(replaced(files.charger, "name: NORMAL", "name: NORMAL: slow")),
  "record-alias": plain(written(files.charger, "name: &words Mole Six\nmodes:\n  - id: normal\n    name: *words\n")),
  "record-unknown-field": plain(replaced(files.battery, "capacityAh: 44", "capacityAh: 44\nfulDensity: 1.28")),
  "record-missing-field": plain(replaced(files.battery, "capacityAh: 44\n", "")),
  "record-field": plain(replaced(files.battery, "capacityAh: 44", "capacityAh: 44,5")),

  // Words
  "prose-head": plain(written(files.about, "# About us\n")),
  "page-address": plain(renamed(files.about, "content/pl.md")),
  "prose-figure": plain(replaced(files.review, "It hums.", "It put in [[charge-recoded of connection/1 in mole-on-quarry]].")),
  "review-without-charger": plain(written("content/reviews/mole-sixteen.md", "---\ntitle: Mole Sixteen\n---\nNot tested yet.\n")),

  // Readings
  "readings-twice": plain(written("data/tests/mole-on-quarry/readings.xlsx", "")),
  "readings-encoding": plain(
    written(files.readings, Uint8Array.of(...new TextEncoder().encode("at;note\n2026-02-03 13:30;zdj"), 0xea, 0x63, 0x69, 0x65)),
  ),
  "readings-quotes": plain(written(files.readings, 'at;density_1;note\n2026-02-03 13:30;1,160;"flat\n')),
  "readings-column": plain(replaced(files.readings, "density_1", "densty_1")),
  "readings-row": plain(written(files.readings, "at,density_1,note\n2026-02-03 13:30,1.160,flat, and cold\n")),
  "readings-time": plain(replaced(files.readings, "2026-02-03 13:30", "03.02.26 13:30")),
  "readings-number": plain(replaced(files.readings, "1,240", "1.240")),
  "readings-range": plain(replaced(files.readings, "1,160", "1160")),
  "readings-word": plain(written(files.readings, "at;charger\n2026-02-03 13:30;off\n")),

  // Logs
  "log-empty": plain(written(files.log, "")),
  "log-dialect": plain(
    written(
      files.log,
      log(20, (i) => `${minute(i).replaceAll(".", "/")};13,20;4000`),
    ),
  ),
  "log-column": plain(replaced(files.log, "Napięcie [V]", "Klemme")),
  "log-encoding": plain(replaced(files.recorder, "decimalMark: ','", "decimalMark: ','\n  encoding: ascii-7")),
  "log-quotes": plain(replaced(files.log, "14:06;12,33", '14:06;"12,33')),
  "log-time": plain(replaced(files.log, "03.02.2026 14:06", "03.02.2026 --:--")),
  "log-number": plain(replaced(files.log, "12,33;4000", "12,3E;4000")),
  "log-fields": plain(replaced(files.log, "12,33;4000", "12;33;4000")),
  "log-more": plain(
    written(
      files.log,
      log(50, (i) => `${minute(i)};${i % 2 === 0 ? "13,20" : "13.20"};4000`),
    ),
  ),

  "log-container": plain(written(files.log, Uint8Array.of(0x25, 0x50, 0x44, 0x46, 0x2d, 0x31, 0x2e, 0x37))),
  "log-row": plain(written(files.log, "0123456789".repeat(20_000))),
  "log-parts": plain(
    written(files.log, "Czas [s];Napięcie [V];Prąd [mA]\n0;12,30;4000\n60;12,33;4000\n120;12,36;4000\n0;12,30;4000\n60;12,33;4000\n"),
  ),
  "log-with": {
    say: async () =>
      joinLogs(joined("logs/voltage.csv", { hasCurrent: false }), joined("logs/again.csv", { hasCurrent: false }), 0).problems,
  },
  "dialect-record": {
    say: async () => withDialect(smallWorkspace[files.recorder] as string, files.recorder, { decimalMark: "," }).problems,
  },

  // What a test states against what its files show
  reference: plain(replaced(files.test, "battery: quarry-44", "battery: quary-44")),
  "instrument-kind": plain(replaced(files.test, "hydrometer: float-glass", "hydrometer: bench-meter")),
  "connection-times": plain(replaced(files.test, "off: 2026-02-03T16", "off: 2026-02-03T13")),
  "log-missing": plain(replaced(files.test, "logs/pomiar.csv", "logs/pomair.csv")),
  "log-twice": plain(replaced(files.test, "[logs/pomiar.csv]", "[logs/pomiar.csv, logs/pomiar.csv]")),
  "log-unlisted": plain(written("data/tests/mole-on-quarry/logs/second.csv", "0;12.1;4\n")),
  "log-voltage": plain(replaced(files.log, "[V]", "[mV]")),
  "log-current": plain(replaced(files.log, "[mA]", "[A]")),
  "log-sign": plain(replaced(files.recorder, "decimalMark: ','", "decimalMark: ','\n  chargingSign: negative")),
  "log-clock": plain(replaced(files.test, "zone: Europe/Warsaw", "zone: Asia/Tokyo")),
  "log-swapped": plain(
    written(
      files.log,
      column("Prąd [A]", (index) => `4,0;${(12.3 + index / 100).toFixed(2).replace(".", ",")}`),
    ),
  ),
  "log-thousandfold": plain(written(files.log, (smallWorkspace[files.log] as string).replaceAll(/;(\d)(\d)00$/gm, ";$1,$2"))),
  "log-sign-flip": plain(replaced(files.log, "14:20;12,75;4000", "14:20;12,75;-4000")),
  "log-impossible": plain(replaced(files.log, "14:20;12,75;4000", "14:20;655,35;4000")),
  "log-frozen": plain(
    written(
      files.log,
      column("Prąd [mA]", () => "12,60;4000"),
    ),
  ),
  "log-power": plain(
    written(
      files.log,
      column("Prąd [mA];Moc [W]", () => "12,60;4000;12,6"),
    ),
  ),
  "log-charge": plain(
    written(
      files.log,
      column(
        "Prąd [mA];Ładunek [Ah]",
        (index) => `${(12 + index / 100).toFixed(2).replace(".", ",")};4000;${(index * 0.1).toFixed(1).replace(".", ",")}`,
      ),
    ),
  ),
  "log-readings": {
    say: async () =>
      checkLogAgainstReadings(sampled(), smallBattery, files.log, "mole-on-quarry", [visited("terminal_V", 13.9)], files.readings),
  },
  "log-coarse": {
    say: async () =>
      checkLogResolution(sampled(), { voltage: { resolution: 0.001, from: "data sheet" } }, files.log, "mole-on-quarry", {
        file: files.recorder,
        line: 4,
        column: 3,
      }),
  },
  "reading-cell": plain(replaced(files.readings, "density_1", "density_7")),
  "reading-sealed": plain(sealed),
  "reading-voltage": plain(replaced(files.readings, "12,11", "2,11")),
  "reading-time": plain(replaced(files.readings, "2026-02-03 13:30", "2025-02-03 13:30")),
  "reading-instrument": plain(replaced(files.test, "  hydrometer: float-glass\n", "")),
  "recorder-missing": plain(replaced(files.test, "  recorder: newt\n", "")),
  "accuracy-missing": plain(replaced(files.recorder, "  current: { percentOfReading: 1, resolution: 0.001 }\n", "")),
  "target-missing": plain(replaced(files.test, "target:\n  densityAt25C: 1.265\n", "")),
};
