/** Finds the general tools that the bench holds itself against. None of them is a dependency; what is not there is told, with how to get it. */
import { execFileSync } from "node:child_process";
import { existsSync } from "node:fs";
import path from "node:path";
import { fileURLToPath } from "node:url";
import type { LogForm } from "./charge-log.ts";
import type { Command } from "./whole-process.ts";

const readers = fileURLToPath(new URL("./readers/", import.meta.url));

export type FoundTools = { readonly commands: readonly Command[]; readonly missing: readonly string[] };

/**
 * Looks for pandas in the machine's Pythons, and for polars and DuckDB in the `node_modules` of a folder.
 *
 * @param toolsFolder  where `npm install --prefix` put them; undefined: they are told as missing
 */
export function findTools(toolsFolder: string | undefined, file: string, form: LogForm): FoundTools {
  const commands: Command[] = [];
  const missing: string[] = [];
  const python = ["python3", "/usr/bin/python3"].find(hasPandas);
  if (python === undefined) missing.push("pandas: apt-get install python3-pandas");
  else commands.push({ name: "pandas", program: python, args: [path.join(readers, "pandas_reader.py"), file, form] });
  for (const [name, packageName, script, args] of [
    ["polars", "nodejs-polars", "polars.mjs", []],
    ["DuckDB", "@duckdb/node-api", "duckdb.mjs", []],
  ] as const) {
    const folder = toolsFolder === undefined ? undefined : path.resolve(toolsFolder, "node_modules", packageName);
    if (folder === undefined || !existsSync(folder)) missing.push(`${name}: npm install --prefix DIR ${packageName}, and --tools DIR`);
    else
      commands.push({
        name,
        program: process.execPath,
        args: [path.join(readers, script), path.resolve(toolsFolder ?? ".", "package.json"), file, form, ...args],
      });
  }
  return { commands, missing };
}

function hasPandas(python: string): boolean {
  try {
    execFileSync(python, ["-c", "import pandas"], { stdio: "ignore" });
    return true;
  } catch {
    return false;
  }
}
