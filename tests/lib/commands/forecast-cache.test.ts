import { mkdtempSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { rememberForecasts } from "../../../lib/commands/forecast-cache.ts";
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
    const forecast = rememberForecasts(folder);
    expect(forecast(question)).toEqual(made);
    expect(forecast(question)).toEqual(JSON.parse(JSON.stringify(made)));
    expect(readdirSync(folder)).toHaveLength(1);
  });

  it("are taken from what was kept, and kept apart by the question", () => {
    const forecast = rememberForecasts(folder);
    const [kept] = readdirSync(folder);
    writeFileSync(join(folder, kept ?? ""), JSON.stringify({ ...made, season: [] }));
    expect(forecast(question).season).toEqual([]);
    expect(forecast({ ...question, claimedAh: { low: 1, high: 200 } }).season).toHaveLength(3);
  });

  it("are made anew where what was kept is damaged, or the folder cannot be written", () => {
    for (const name of readdirSync(folder)) writeFileSync(join(folder, name), "{");
    expect(rememberForecasts(folder)(question)).toEqual(made);
    expect(rememberForecasts(join(folder, readdirSync(folder)[0] ?? "", "below"))(question)).toEqual(made);
  });
});
