/** One small input for each problem id: the small workspace with one mistake in it. docs/problems.md prints what comes of each. */
import { symlink } from "node:fs/promises";
import path from "node:path";
import type { Files } from "../read/temp-files.ts";
import { files, renamed, replaced, smallWorkspace, written } from "./small-workspace.ts";

export type Mistake = { readonly workspace: Files; readonly prepare?: (root: string) => Promise<void> };

const plain = (workspace: Files): Mistake => ({ workspace });
const smallReadings = smallWorkspace[files.readings] as string;
const sealed = replaced(files.battery, "construction: flooded", "construction: AGM");

/** A log of n rows in the small workspace's form, each row made from its number. */
const log = (rows: number, row: (index: number) => string): string =>
  `Czas;Napięcie [V];Prąd [mA]\n${Array.from({ length: rows }, (_, index) => row(index)).join("\n")}\n`;
const minute = (index: number): string => `03.02.2026 14:${String(index + 5).padStart(2, "0")}`;

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
  "log-column": plain(replaced(files.log, "Napięcie", "Klemmenspannung")),
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

  // What a test states against what its files show
  reference: plain(replaced(files.test, "battery: quarry-44", "battery: quary-44")),
  "connection-times": plain(replaced(files.test, "off: 2026-02-03T16", "off: 2026-02-03T13")),
  "log-missing": plain(replaced(files.test, "logs/pomiar.csv", "logs/pomair.csv")),
  "log-twice": plain(replaced(files.test, "[logs/pomiar.csv]", "[logs/pomiar.csv, logs/pomiar.csv]")),
  "log-unlisted": plain(written("data/tests/mole-on-quarry/logs/second.csv", "0;12.1;4\n")),
  "log-voltage": plain(replaced(files.log, "[V]", "[mV]")),
  "log-current": plain(replaced(files.log, "[mA]", "[A]")),
  "log-sign": plain(replaced(files.recorder, "decimalMark: ','", "decimalMark: ','\n  chargingSign: negative")),
  "log-clock": plain(replaced(files.test, "zone: Europe/Warsaw", "zone: Europe/Lisbon", replaced(files.test, "T16:00", "T14:30"))),
  "reading-cell": plain(replaced(files.readings, "density_1", "density_7")),
  "reading-sealed": plain(sealed),
  "reading-voltage": plain(replaced(files.readings, "12,11", "2,11")),
  "reading-time": plain(replaced(files.readings, "2026-02-03 13:30", "2025-02-03 13:30")),
  "reading-instrument": plain(replaced(files.test, "  hydrometer: float-glass\n", "")),
  "recorder-missing": plain(replaced(files.test, "  recorder: newt\n", "")),
  "accuracy-missing": plain(replaced(files.recorder, "  current: { percentOfReading: 1, resolution: 0.001 }\n", "")),
  "target-missing": plain(replaced(files.test, "target:\n  densityAt25C: 1.265\n", "")),
};
