/**
 * Times the heavy parts side by side in one run and prints ratios, which hold where seconds do not.
 *
 *   npm run bench                 a million rows
 *   npm run bench -- --rows 5000000
 */

import { createReadStream } from "node:fs";
import { mkdtemp, open, rm } from "node:fs/promises";
import os from "node:os";
import path from "node:path";
import { parse } from "csv-parse";
import { findStages } from "../../lib/measure/stages/find-stages.ts";
import { measureStages } from "../../lib/measure/stages/measure-stages.ts";
import { makeTrace } from "../../lib/measure/trace.ts";
import { readLog } from "../../lib/read/log.ts";
import { seededRandom } from "../generator/random.ts";

const rows = Number(process.argv[process.argv.indexOf("--rows") + 1] || 1_000_000) || 1_000_000;
const rounds = 3;

/** A plain IUoU charge at one sample a second, with noise: constant current, limit with a taper, float. */
async function writeLog(file: string): Promise<void> {
  const random = seededRandom(20_260_101);
  const handle = await open(file, "w");
  let text = "elapsed_s,voltage_V,current_A\n";
  for (let i = 0; i < rows; i++) {
    const share = i / rows;
    const inBulk = share < 0.3;
    const inFloat = share > 0.7;
    const voltageV = inBulk ? 12.3 + 2.1 * (share / 0.3) ** 2 : inFloat ? 13.6 : 14.4;
    const currentA = inBulk ? 8 : inFloat ? 0.12 : 0.4 + 7.6 * Math.exp(-(share - 0.3) / 0.08);
    text += `${i},${(voltageV + 0.004 * random.normal()).toFixed(3)},${(currentA + 0.01 * random.normal()).toFixed(3)}\n`;
    if (text.length > 1 << 20) {
      await handle.write(text);
      text = "";
    }
  }
  await handle.write(text);
  await handle.close();
}

const dir = await mkdtemp(path.join(os.tmpdir(), "ampwitness-bench-"));
const file = path.join(dir, "log.csv");
const seconds: Record<string, number[]> = {};
async function timed<T>(what: string, work: () => Promise<T> | T): Promise<T> {
  const started = performance.now();
  const value = await work();
  const list = seconds[what] ?? [];
  list.push((performance.now() - started) / 1000);
  seconds[what] = list;
  return value;
}

try {
  await writeLog(file);
  for (let round = 0; round < rounds; round++) {
    await timed("csv-parse alone", async () => {
      let sum = 0;
      for await (const record of createReadStream(file).pipe(parse({ from_line: 2 }))) sum += Number((record as string[])[2]);
      return sum;
    });
    const read = await timed("read into columns", () =>
      readLog({
        absolutePath: file,
        file: "log.csv",
        dialect: undefined,
        dialectPlace: undefined,
        zone: "UTC",
        startedAtMs: undefined,
        badRows: [],
      }),
    );
    if (read.value === undefined) throw new Error(JSON.stringify(read.problems));
    const { samples } = read.value;
    const trace = await timed("trace", () => makeTrace(samples, undefined));
    const found = await timed("find stages", () => findStages(trace));
    await timed("measure stages", () => measureStages(trace, found));
  }
  const median = (what: string): number => [...(seconds[what] ?? [])].sort((a, b) => a - b)[Math.floor(rounds / 2)] ?? Number.NaN;
  const lines = Object.keys(seconds).map((what) => `${what.padEnd(20)} ${median(what).toFixed(2)} s`);
  const stages = median("trace") + median("find stages") + median("measure stages");
  lines.push(
    "",
    `rows                 ${rows}`,
    `read / csv-parse     ${(median("read into columns") / median("csv-parse alone")).toFixed(2)}`,
    `stages / read        ${(stages / median("read into columns")).toFixed(2)}`,
    `peak memory          ${Math.round(process.resourceUsage().maxRSS / 1024)} MiB`,
  );
  process.stdout.write(`${lines.join("\n")}\n`);
} finally {
  await rm(dir, { recursive: true, force: true });
}
