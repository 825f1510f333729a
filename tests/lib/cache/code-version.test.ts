import { readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { codeVersion, figureSources } from "../../../lib/cache/code-version.ts";
import { forecastSources } from "../../../lib/cache/forecasts.ts";

const project = fileURLToPath(new URL("../../../", import.meta.url));

/** All files of ours that a module can run, itself among them; imports of types alone leave nothing behind. */
function reached(from: string, seen = new Set<string>()): Set<string> {
  if (seen.has(from)) return seen;
  seen.add(from);
  const text = readFileSync(join(project, from), "utf8");
  for (const [, target = ""] of text.matchAll(/^(?:import|export) (?!type )[^;]*? from "(\.[^"]+)";$/gm))
    reached(join(from, "..", target), seen);
  return seen;
}

const covers = (sources: readonly string[], file: string): boolean =>
  sources.some((source) => file === source || file.startsWith(`${source}/`));

describe("the version of the code", () => {
  it("counts every file of ours that a test is measured by, or a charger put together", () => {
    const files = [...reached("lib/run/jobs.ts")];
    expect(files.length).toBeGreaterThan(100);
    expect(files.filter((file) => !covers(figureSources, file))).toEqual([]);
  });

  it("of forecasts counts every file that makes one", () => {
    const files = [...reached("lib/judge/forecast/forecast-mode.ts")];
    expect(files.length).toBeGreaterThan(20);
    expect(files.filter((file) => !covers(forecastSources, file))).toEqual([]);
  });

  it("is the same for the same files, and another for others", () => {
    expect(codeVersion(["lib/units"])).toBe(codeVersion(["lib/units"]));
    expect(codeVersion(["lib/units"])).not.toBe(codeVersion(["lib/units", "lib/cli.ts"]));
  });
});
