/** Where the time goes between a log's file and its figures, in whole processes. */
import { execFileSync } from "node:child_process";
import { rm } from "node:fs/promises";
import path from "node:path";
import { writeChargeLog } from "./charge-log.ts";
import type { BenchRun } from "./options.ts";
import { packScript } from "./pack-script.ts";
import { middleOf } from "./whole-process.ts";

export async function benchParts({ rows, rounds, folder, say }: BenchRun): Promise<void> {
  const script = await packScript("readers/parts-of-way.ts", folder);
  for (const form of ["counted", "dated"] as const) {
    const file = path.join(folder, "parts.csv");
    await writeChargeLog(file, rows, form);
    const runs = Array.from(
      { length: rounds },
      () => JSON.parse(execFileSync(process.execPath, [script, file], { encoding: "utf8" })) as Record<string, number>,
    );
    const middles = Object.keys(runs[0] ?? {}).map((part) => [part, middleOf(runs.map((run) => run[part] ?? Number.NaN))] as const);
    const total = middles.reduce((sum, [, middle]) => sum + middle, 0);
    say(`Parts of the way from file to figures, a ${form} log: ${rows} rows, whole processes, the middle of ${rounds}`);
    say("");
    for (const [part, middle] of middles)
      say(`${part.padEnd(22)} ${middle.toFixed(2).padStart(6)} s  ${((100 * middle) / total).toFixed(0).padStart(3)} %`);
    say("");
    await rm(file);
  }
}
