/** Runs readers as whole processes, so that starting up, loading and memory count as they do for whoever calls them. */
import { spawn } from "node:child_process";
import { performance } from "node:perf_hooks";

/** What every reader prints as its only line, in JSON. */
export type Answer = {
  /** The log's energy by the trapezoidal rule, Wh: all readers must come to the same. */
  readonly energyWh: number;
  /** Time on all processors, user and system, s. */
  readonly cpuS: number;
  /** The most memory that the process ever held, MiB, as its own system call says. */
  readonly peakMiB: number;
  /** Name, version and settings that matter. */
  readonly told: string;
};

export type WholeRun = { readonly wallS: number; readonly answer: Answer };

export type Command = { readonly name: string; readonly program: string; readonly args: readonly string[] };

/**
 * Runs a reader once.
 * @throws Error where it fails, with what it said
 */
export function runWhole({ name, program, args }: Command): Promise<WholeRun> {
  return new Promise((resolve, reject) => {
    const started = performance.now();
    const child = spawn(program, args, { stdio: ["ignore", "pipe", "pipe"] });
    let out = "";
    let said = "";
    child.stdout.on("data", (text) => {
      out += text;
    });
    child.stderr.on("data", (text) => {
      said += text;
    });
    child.on("error", reject);
    child.on("close", (code) => {
      const wallS = (performance.now() - started) / 1000;
      if (code === 0) resolve({ wallS, answer: JSON.parse(out) as Answer });
      else reject(new Error(`${name} ended with ${code}: ${said.slice(-2000)}`));
    });
  });
}

/**
 * Runs readers by turns, so that whatever else the machine does falls on all alike.
 * @returns for each reader its runs, in the readers' order
 */
export async function runByTurns(commands: readonly Command[], rounds: number): Promise<WholeRun[][]> {
  const runs: WholeRun[][] = commands.map(() => []);
  for (let round = 0; round < rounds; round++)
    for (const [index, command] of commands.entries()) runs[index]?.push(await runWhole(command));
  return runs;
}

/** The middle of some values; of an even number the lower middle. NaN for none. */
export function middleOf(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[Math.ceil(values.length / 2) - 1] ?? Number.NaN;
}
