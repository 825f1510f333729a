/** Remembers forecasts between builds: they take seconds each and depend on nothing but the question and the code. Safe to delete. */
import { createHash } from "node:crypto";
import { mkdirSync, readdirSync, readFileSync, renameSync, writeFileSync } from "node:fs";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { forecastMode, type ModeForecast, type ModeQuestion } from "../judge/forecast/forecast-mode.ts";

/** The code that a forecast is made by: when any of it changes, what was remembered counts no more. */
const codeFolders = ["project", "electrochem", "signal", "units", "judge/forecast"];
const lib = fileURLToPath(new URL("../", import.meta.url));

/**
 * A forecaster that looks its answers up first.
 *
 * @param folder  where answers are kept; made where it is missing. Where it cannot be read or written, forecasts are simply made anew
 */
export function rememberForecasts(folder: string): (question: ModeQuestion) => ModeForecast {
  const code = digestOf(codeFolders.flatMap((name) => filesIn(path.join(lib, name))).map((file) => readFileSync(file)));
  return (question) => {
    const file = path.join(folder, `forecast-${digestOf([code, JSON.stringify(question)])}.json`);
    const known = recall(file);
    if (known !== undefined) return known;
    const made = forecastMode(question);
    remember(folder, file, made);
    return made;
  };
}

function recall(file: string): ModeForecast | undefined {
  try {
    return JSON.parse(readFileSync(file, "utf8")) as ModeForecast;
  } catch {
    return undefined;
  }
}

/** Written aside and moved into place, so that two builds at once, or one that is killed, never leave half an answer. */
function remember(folder: string, file: string, forecast: ModeForecast): void {
  try {
    mkdirSync(folder, { recursive: true });
    const aside = `${file}.${process.pid}`;
    writeFileSync(aside, JSON.stringify(forecast));
    renameSync(aside, file);
  } catch {
    // A full or read-only disk costs time at the next build, and nothing else.
  }
}

function filesIn(folder: string): string[] {
  return readdirSync(folder)
    .filter((name) => name.endsWith(".ts"))
    .sort()
    .map((name) => path.join(folder, name));
}

function digestOf(parts: readonly (string | Buffer)[]): string {
  const hash = createHash("sha256");
  for (const part of parts) hash.update(part);
  return hash.digest("hex").slice(0, 40);
}
