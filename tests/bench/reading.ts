/** From a plain log's file to finished figures, held against what general tools need to read the same file and add it up. */
import { rm, stat } from "node:fs/promises";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { type LogForm, writeChargeLog } from "./charge-log.ts";
import type { BenchRun } from "./options.ts";
import { packScript } from "./pack-script.ts";
import { findTools } from "./tools.ts";
import { type Command, middleOf, runByTurns, type WholeRun } from "./whole-process.ts";

const readers = fileURLToPath(new URL("./readers/", import.meta.url));

/** All readers must come to one and the same energy within this share: nine digits. */
const sameWithin = 1e-9;

export async function benchReading(run: BenchRun): Promise<void> {
  const bundle = await packScript("readers/ampwitness.ts", run.folder);
  for (const form of ["counted", "dated"] as const) await benchForm(run, form, bundle);
}

async function benchForm({ rows, rounds, toolsFolder, folder, say }: BenchRun, form: LogForm, bundle: string): Promise<void> {
  const file = path.join(folder, `${form}.csv`);
  await writeChargeLog(file, rows, form);
  const { size } = await stat(file);
  const { commands: tools, missing } = findTools(toolsFolder, file, form);
  const node = process.execPath;
  const ours: Command[] = [{ name: "ampwitness", program: node, args: [bundle, file] }];
  const reference: Command = { name: "csv-parse", program: node, args: [path.join(readers, "csv-parse.mjs"), file, form] };
  const commands = [...ours, ...tools, reference];
  // The reference reader takes ten times as long as any other, and one run shows it.
  const runs = [...(await runByTurns([...ours, ...tools], rounds)), ...(await runByTurns([reference], 1))];
  holdAgreement(commands, runs);

  say(`A ${form} log: ${rows} rows, ${(size / 1e6).toFixed(1)} MB; whole processes by turns, the middle of ${rounds}, csv-parse once`);
  say("");
  const wallsS = runs.map((ofOne) => middleOf(ofOne.map(({ wallS }) => wallS)));
  const fastest = Math.min(...tools.map((_, index) => wallsS[ours.length + index] ?? Number.NaN));
  const middle = (index: number, of: "cpuS" | "peakMiB"): number => middleOf((runs[index] ?? []).map(({ answer }) => answer[of]));
  for (const [index, { name }] of commands.entries()) {
    const wallS = wallsS[index] ?? Number.NaN;
    const ratio = tools.length === 0 ? "" : `${(wallS / fastest).toFixed(2)} of the fastest tool  `;
    const cpu = `${middle(index, "cpuS").toFixed(2).padStart(6)} s of processor`;
    const peak = `${middle(index, "peakMiB").toFixed(0).padStart(5)} MiB`;
    say(`${name.padEnd(22)} ${wallS.toFixed(2).padStart(6)} s  ${ratio}${cpu}  ${peak}  ${runs[index]?.[0]?.answer.told}`);
  }
  for (const told of missing) say(`not found: ${told}`);
  say(`all come to ${runs[0]?.[0]?.answer.energyWh.toPrecision(10)} Wh within ${sameWithin}`);
  say("");
  await rm(file);
}

function holdAgreement(commands: readonly Command[], runs: readonly (readonly WholeRun[])[]): void {
  const wanted = runs[0]?.[0]?.answer.energyWh ?? Number.NaN;
  for (const [index, ofOne] of runs.entries())
    for (const { answer } of ofOne)
      if (!(Math.abs(answer.energyWh - wanted) <= sameWithin * Math.abs(wanted)))
        throw new Error(`${commands[index]?.name} comes to ${answer.energyWh} Wh, ${commands[0]?.name} to ${wanted} Wh`);
}
