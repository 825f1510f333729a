/** Invented chargers with the build's own forecasts, for the page that finds one. */
import { forecastMode } from "../../../lib/judge/forecast/forecast-mode.ts";
import { batteryClasses, type ChargerBehaviour, type Construction, exactly, flatnesses, type Range } from "../../../lib/project/index.ts";
import type { ChargerResult, ModeForecastResult, Results } from "../../../lib/publish/results.ts";
import type { ResultsFolder } from "../../../lib/publish/results-folder.ts";
import { fixture } from "../../pages/fixture.ts";

/** A current, then a voltage until the current has fallen, then a float: for as many cells as asked for. */
export function threeStage(currentA: number, limitV = 14.4, endA = currentA / 20): ChargerBehaviour {
  return {
    steps: [
      { kind: "constant-voltage", voltageV: exactly(limitV), limitA: exactly(currentA), end: { belowA: exactly(endA) } },
      { kind: "float", voltageV: exactly((limitV * 13.6) / 14.4), limitA: exactly(currentA), end: {} },
    ],
    efficiency: { low: 0.7, high: 0.9 },
    unknowns: ["what it takes from the mains beside what it passes on was not measured"],
  };
}

/** A mode's forecast as it is published, made by the code of the build. */
export function publishedForecast(
  behaviour: ChargerBehaviour,
  kinds: readonly Construction[],
  nominalVoltageV = 12,
  claimedAh: Range | null = null,
): ModeForecastResult {
  const { readyBy } = forecastMode({
    behaviour,
    nominalVoltageV,
    claimedAh,
    kinds,
    compensation: { leastMVPerKPerCell: -3, mostMVPerKPerCell: -5, fromC: 5, toC: 40 },
    statedCompensationMVPerK: 0,
    ownBatteries: [],
  });
  return {
    behaviour: { ...behaviour },
    told: [],
    unknowns: [...behaviour.unknowns],
    nominalVoltageV,
    claimedAh,
    reference: null,
    ownBatteries: [],
    readyBy: readyBy.map(({ construction, airC, cells }) => ({
      construction,
      airC,
      cells: cells.map((cell) => ({
        ...cell,
        battery: batteryClasses.find(({ id }) => id === cell.battery)?.label ?? "",
        flatness: flatnesses.find(({ id }) => id === cell.flatness)?.label ?? "",
        deadlines: cell.deadlines.map((deadline) => ({ ...deadline })),
        because: [...cell.because],
      })),
    })),
    season: [],
  };
}

/** The fixture's results with forecasts: two lanterns that are nearly alike, one of their modes unseen, and a small charger for AGM. */
export function findResults(): ResultsFolder {
  const forecasts: Readonly<Record<string, ModeForecastResult>> = {
    "lantern-eight car": publishedForecast(threeStage(8), ["flooded"], 12, { low: 20, high: 160 }),
    "lantern-two car": publishedForecast(threeStage(7.9), ["flooded"]),
    "pebble-trickle moto": publishedForecast(threeStage(0.8), ["AGM"]),
  };
  const withForecasts = (charger: ChargerResult): ChargerResult => ({
    ...charger,
    modes: charger.modes.map((mode) => ({ ...mode, forecast: forecasts[`${charger.id} ${mode.id}`] ?? null })),
  });
  return resultsFolderOf({ ...fixture, chargers: fixture.chargers.map(withForecasts) });
}

/** Results in memory, as the pages ask for them. */
export function resultsFolderOf({ index, tests, chargers }: Results): ResultsFolder {
  const of = <T extends { readonly id: string }>(all: readonly T[], id: string): T => {
    const found = all.find((one) => one.id === id);
    if (found === undefined) throw new Error(`no ${id} in the fixture`);
    return found;
  };
  return {
    index,
    test: (id) => of(tests, id),
    charger: (id) => of(chargers, id),
    rowsOf: (id) => index.rows.filter((row) => row.charger.id === id),
    testsOf: (id) => index.rows.filter((row) => row.charger.id === id).map((row) => row.test.id),
  };
}
