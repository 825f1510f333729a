/** The matrix that stands on the page without scripts: for flooded batteries, which chargers will, or may, be in time. From the results. */

import type { ChargerResult, ModeForecastResult } from "../results.ts";
import { nameOf } from "./find-data.ts";

/** A mode as it is named in a cell; the mode's name only where the charger has several. */
export type NamedMode = {
  readonly charger: string;
  readonly name: string;
  /** Whether something speaks against leaving it connected once the battery is full. */
  readonly isToComeOff: boolean;
};

export type MatrixCell = {
  readonly deadlineH: number;
  readonly will: readonly NamedMode[];
  readonly may: readonly NamedMode[];
  readonly willNot: number;
  readonly notAdvised: number;
};
export type MatrixRow = { readonly battery: string; readonly flatness: string; readonly cells: readonly MatrixCell[] };
export type ReadyMatrix = { readonly voltageV: number; readonly airC: number; readonly rows: readonly MatrixRow[] };

/** One matrix for each voltage of which a charger is forecast on flooded batteries, 12 V first; names in their own order. */
export function readyMatrices(chargers: readonly ChargerResult[]): ReadyMatrix[] {
  const forecasts = chargers
    .flatMap((charger) =>
      charger.modes.flatMap(({ name, forecast, leftOnWarning }) => {
        const table = forecast?.readyBy.find(({ construction }) => construction === "flooded");
        if (forecast == null || table === undefined) return [];
        const mode = { charger: charger.id, name: nameOf(charger, name), isToComeOff: leftOnWarning !== null };
        return [{ mode, voltageV: forecast.nominalVoltageV, table }];
      }),
    )
    .sort((a, b) => (a.mode.name < b.mode.name ? -1 : 1));
  const voltagesV = [...new Set(forecasts.map(({ voltageV }) => voltageV))].sort((a, b) => Number(b === 12) - Number(a === 12) || a - b);
  return voltagesV.flatMap((voltageV) => {
    const ofVoltage = forecasts.filter((forecast) => forecast.voltageV === voltageV);
    const first = ofVoltage[0];
    if (first === undefined) return [];
    return [{ voltageV, airC: first.table.airC, rows: first.table.cells.map((cell) => rowOf(cell, ofVoltage)) }];
  });
}

type Table = ModeForecastResult["readyBy"][number];
type Forecast = { readonly mode: NamedMode; readonly table: Table };

function rowOf({ battery, flatness, deadlines }: Table["cells"][number], forecasts: readonly Forecast[]): MatrixRow {
  return {
    battery,
    flatness,
    cells: deadlines.map(({ deadlineH }) => {
      const verdicts = forecasts.flatMap(({ mode, table }) => {
        const cell = table.cells.find((candidate) => candidate.battery === battery && candidate.flatness === flatness);
        const verdict = cell?.deadlines.find((candidate) => candidate.deadlineH === deadlineH)?.verdict;
        return verdict === undefined ? [] : [{ mode, verdict }];
      });
      const of = (wanted: string): NamedMode[] => verdicts.flatMap(({ mode, verdict }) => (verdict === wanted ? [mode] : []));
      return { deadlineH, will: of("will"), may: of("may"), willNot: of("will not").length, notAdvised: of("not advised").length };
    }),
  };
}
