import { mkdtempSync, readdirSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { diskEntries, memoryEntries } from "../../../lib/cache/entries.ts";
import { rememberForecasts } from "../../../lib/cache/forecasts.ts";
import { forecastMode, type ModeQuestion } from "../../../lib/judge/forecast/forecast-mode.ts";

const folder = mkdtempSync(join(tmpdir(), "forecasts-"));
afterAll(() => rmSync(folder, { recursive: true }));

const question: ModeQuestion = {
  behaviour: {
    steps: [{ kind: "constant-voltage", voltageV: { low: 7.2, high: 7.2 }, limitA: { low: 1, high: 1 }, end: {} }],
    efficiency: { low: 0.8, high: 0.8 },
    unknowns: [],
  },
  nominalVoltageV: 6,
  claimedAh: null,
  kinds: ["flooded"],
  compensation: { leastMVPerKPerCell: -3, mostMVPerKPerCell: -5, fromC: 5, toC: 40 },
  statedCompensationMVPerK: null,
  ownBatteries: [],
};

describe("remembered forecasts", () => {
  const made = forecastMode(question);

  it("are the very ones that would be made anew, the first time as the second", () => {
    const forecast = rememberForecasts(diskEntries(folder));
    expect(forecast(question)).toEqual(made);
    expect(forecast(question)).toEqual(made);
    expect(rememberForecasts(diskEntries(folder))(question)).toEqual(made);
    expect(readdirSync(join(folder, "forecasts"))).toHaveLength(1);
  });

  it("are taken from what was kept, and kept apart by the question", () => {
    const entries = memoryEntries();
    const asked: string[] = [];
    const forecast = rememberForecasts({
      ...entries,
      get: <T>(_: string, key: string) => {
        asked.push(key);
        return { made: { ...made, season: [] } } as T;
      },
    });
    expect(forecast(question).season).toEqual([]);
    forecast({ ...question, claimedAh: { low: 1, high: 200 } });
    expect(new Set(asked).size).toBe(2);
  });
});
