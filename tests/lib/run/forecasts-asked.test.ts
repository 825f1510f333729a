import { appendFileSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { diskEntries } from "../../../lib/cache/entries.ts";
import { measureWorkspace } from "../../../lib/run.ts";
import { writeLarge } from "../../large/write-large.ts";

let root = "";
const inWorkspace = (path: string): string => join(root, "workspace", path);

/** Two chargers that were tested on one battery. Each test leaves the workspace and what was kept for the next. */
beforeAll(() => {
  root = mkdtempSync(join(tmpdir(), "asked-"));
  writeLarge(join(root, "workspace"), { chargers: 3, tests: 3 });
  rmSync(inWorkspace("data/tests/alder-brook-1-1"), { recursive: true });
  edit("data/tests/clover-brook-1-1/test.yaml", "battery: efb-72", "battery: flooded-calcium-110");
});
afterAll(() => rmSync(root, { recursive: true, force: true }));

/** Runs, and tells which chargers were put together again, and how many forecasts of each kind were made and not recalled. */
async function made(): Promise<{ chargers: readonly string[]; ofModes: number; ofOwnBatteries: number }> {
  const entries = diskEntries(join(root, "kept"));
  const forecasts: unknown[] = [];
  const { worked } = await measureWorkspace(join(root, "workspace"), {
    threads: 1,
    entries: {
      ...entries,
      put(kind, key, value) {
        if (kind === "forecasts") forecasts.push((value as { made: unknown }).made);
        entries.put(kind, key, value);
      },
    },
  });
  const ofOwnBatteries = forecasts.filter((forecast) => Array.isArray(forecast)).length;
  return { chargers: [...worked.chargers].sort(), ofModes: forecasts.length - ofOwnBatteries, ofOwnBatteries };
}

const firstLog = "data/tests/birch-brook-1-1/logs/day-1.csv";

describe("forecasts that a run asks for", { timeout: 60_000 }, () => {
  it("are one of each mode, and one of each battery whose start is known", async () => {
    expect(await made()).toEqual({ chargers: ["alder-brook-1", "birch-brook-1", "clover-brook-1"], ofModes: 2, ofOwnBatteries: 2 });
  });

  it("are the longer log's own, where it tells nothing of the battery that another charger was tested on", async () => {
    appendFileSync(inWorkspace("data/tests/birch-brook-1-1/logs/day-2.csv"), "99999,12.9,0.1\n");
    expect(await made()).toEqual({ chargers: ["birch-brook-1"], ofModes: 1, ofOwnBatteries: 1 });
  });

  it("are the longer log's own, where it is evidence for both and says no more of the battery than before", async () => {
    appendFileSync(inWorkspace(firstLog), "99999,12.9,0.1\n");
    expect(await made()).toEqual({ chargers: ["birch-brook-1", "clover-brook-1"], ofModes: 1, ofOwnBatteries: 1 });
  });

  it("are those on that battery alone, of both chargers, where it says another thing of the battery and the same of its charger", async () => {
    edit(firstLog, /,12\.[4-8]/g, ",12.9");
    expect(await made()).toEqual({ chargers: ["birch-brook-1", "clover-brook-1"], ofModes: 0, ofOwnBatteries: 2 });
  });

  it("are none, and nothing is put together again, for a charger whose own battery cannot be forecast, its start not being known", async () => {
    edit("data/tests/clover-brook-1-1/readings.csv", /\n.*/, "");
    await made();
    appendFileSync(inWorkspace(firstLog), "100999,12.9,0.1\n");
    expect((await made()).chargers).toEqual(["birch-brook-1"]);
  });
});

function edit(path: string, from: string | RegExp, to: string): void {
  const text = readFileSync(inWorkspace(path), "utf8");
  const changed = text.replace(from, to);
  if (changed === text) throw new Error(`${path} holds no ${from}`);
  writeFileSync(inWorkspace(path), changed);
}
