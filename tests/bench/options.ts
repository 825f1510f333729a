/** What the bench is asked for. */
import { parseArgs } from "node:util";

export type BenchRun = {
  readonly rows: number;
  readonly rounds: number;
  /** Tests of the workspace that is built again and again; it has half as many chargers. */
  readonly tests: number;
  /** Where general tools are installed, if anywhere. */
  readonly toolsFolder: string | undefined;
  /** A folder for logs, taken away at the end. */
  readonly folder: string;
  say(text: string): void;
};

export type BenchOptions = Omit<BenchRun, "folder" | "say"> & { readonly subjects: readonly string[] };

/** Reads `[subject …] --rows N --rounds N --tests N --tools DIR`. @throws Error for any other option, or a number that is none */
export function parseBenchOptions(args: readonly string[]): BenchOptions {
  const { values, positionals } = parseArgs({
    args: [...args],
    allowPositionals: true,
    options: {
      rows: { type: "string", default: "1000000" },
      rounds: { type: "string", default: "3" },
      tests: { type: "string", default: "20" },
      tools: { type: "string" },
    },
  });
  const whole = (name: "rows" | "rounds" | "tests"): number => {
    const number = Number(values[name]);
    if (!Number.isInteger(number) || number < 1) throw new Error(`--${name}: expected a whole number above 0, found "${values[name]}"`);
    return number;
  };
  return { subjects: positionals, rows: whole("rows"), rounds: whole("rounds"), tests: whole("tests"), toolsFolder: values.tools };
}
