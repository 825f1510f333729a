/**
 * Writes the demo's logs, readings and truth: `npx tsx tests/generator/write-demo.ts`.
 * With `--full DIR` it writes instead a ten-day log of one sample a second in each recorder's form into DIR.
 */
import { mkdirSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { runScenario } from "./bench.ts";
import { fullLengthScenarios } from "./demo/full-length.ts";
import { demoScenarios } from "./demo/scenarios.ts";

const root = join(import.meta.dirname, "../..");

function writeDemo(): void {
  for (const scenario of demoScenarios) {
    const files = runScenario(scenario);
    const folder = join(root, "data/tests", scenario.id);
    // A log that the scenario no longer writes must not stay behind as if it were evidence.
    rmSync(join(folder, "logs"), { recursive: true, force: true });
    mkdirSync(join(folder, "logs"), { recursive: true });
    for (const [name, bytes] of files.logs) writeFileSync(join(folder, "logs", name), bytes);
    writeFileSync(join(folder, "readings.csv"), files.readings);
    mkdirSync(join(root, "tests/generator/truth"), { recursive: true });
    writeFileSync(join(root, "tests/generator/truth", `${scenario.id}.json`), `${JSON.stringify(files.truth, null, 2)}\n`);
  }
}

function writeFullLength(folder: string): void {
  mkdirSync(folder, { recursive: true });
  for (const scenario of fullLengthScenarios) {
    const files = runScenario(scenario);
    for (const [name, bytes] of files.logs) writeFileSync(join(folder, name), bytes);
    writeFileSync(join(folder, `${scenario.id}.truth.json`), `${JSON.stringify(files.truth, null, 2)}\n`);
  }
}

const [flag, folder] = process.argv.slice(2);
if (flag === undefined) writeDemo();
else if (flag === "--full" && folder !== undefined) writeFullLength(folder);
else {
  process.stderr.write("expected nothing, or --full DIR\n");
  process.exitCode = 1;
}
