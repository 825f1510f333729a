/**
 * Times the heavy parts side by side in one run and prints ratios, which hold where seconds do not.
 *
 *   npm run bench                                          every subject, a million rows
 *   npm run bench -- reading --rows 5000000 --tools DIR    one subject; DIR holds the tools to be held against
 *   npm run bench -- rebuilds --tests 1000                 building again at a size; its 500 chargers' forecasts take ten minutes
 *
 * Each subject stands in a file of its own; this one only calls them.
 */
import { mkdtemp, rm } from "node:fs/promises";
import os from "node:os";
import path from "node:path";
import { type BenchRun, parseBenchOptions } from "./options.ts";
import { benchParts } from "./parts.ts";
import { benchReading } from "./reading.ts";
import { benchRebuilds } from "./rebuilds.ts";

const subjects: Readonly<Record<string, (run: BenchRun) => Promise<void>>> = {
  reading: benchReading,
  parts: benchParts,
  rebuilds: benchRebuilds,
};

const { subjects: wanted, ...options } = parseBenchOptions(process.argv.slice(2));
for (const name of wanted)
  if (subjects[name] === undefined) throw new Error(`no subject "${name}": there are ${Object.keys(subjects).join(", ")}`);
const folder = await mkdtemp(path.join(os.tmpdir(), "ampwitness-bench-"));
try {
  const say = (text: string): void => void process.stdout.write(`${text}\n`);
  for (const [name, bench] of Object.entries(subjects))
    if (wanted.length === 0 || wanted.includes(name)) await bench({ ...options, folder, say });
} finally {
  await rm(folder, { recursive: true, force: true });
}
