/** Where the time goes between a log's file and its figures, in one process. */
import { rm } from "node:fs/promises";
import path from "node:path";
import { performance } from "node:perf_hooks";
import { measureRecording } from "../../lib/measure/recording.ts";
import { findStages } from "../../lib/measure/stages/find-stages.ts";
import { measureStages } from "../../lib/measure/stages/measure-stages.ts";
import { makeTrace } from "../../lib/measure/trace.ts";
import { readLog } from "../../lib/read/log.ts";
import { writeChargeLog } from "./charge-log.ts";
import type { BenchRun } from "./options.ts";
import { facts, figuresOf, requestOfBench } from "./readers/ampwitness.ts";
import { middleOf } from "./whole-process.ts";

export async function benchParts({ rows, rounds, folder, say }: BenchRun): Promise<void> {
  const file = path.join(folder, "parts.csv");
  await writeChargeLog(file, rows, "counted");
  const seconds = new Map<string, number[]>();
  const timed = async <T>(what: string, work: () => Promise<T> | T): Promise<T> => {
    const started = performance.now();
    const value = await work();
    seconds.set(what, [...(seconds.get(what) ?? []), (performance.now() - started) / 1000]);
    return value;
  };
  for (let round = 0; round < rounds; round++) {
    const read = await timed("read into columns", () => readLog(requestOfBench(file)));
    if (read.value === undefined) throw new Error(JSON.stringify(read.problems));
    const log = read.value;
    const trace = await timed("trace", () => makeTrace(log.samples, undefined));
    const found = await timed("find stages", () => findStages(trace));
    await timed("measure stages", () => measureStages(trace, found));
    const recording = measureRecording(facts, log);
    await timed("figures", () => figuresOf(recording));
  }
  const middles = [...seconds].map(([what, list]) => [what, middleOf(list)] as const);
  const total = middles.reduce((sum, [, middle]) => sum + middle, 0);
  say(`Parts of the way from file to figures: ${rows} rows, one process, the middle of ${rounds}`);
  say("");
  for (const [what, middle] of middles)
    say(`${what.padEnd(22)} ${middle.toFixed(2).padStart(6)} s  ${((100 * middle) / total).toFixed(0).padStart(3)} %`);
  say("");
  await rm(file);
}
