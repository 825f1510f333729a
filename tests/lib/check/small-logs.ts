/** Logs, a visit and a battery as values, for checks that take these and not a folder. */
import type { Battery } from "../../../lib/nouns/battery.ts";
import type { Reading, ReadingColumn } from "../../../lib/nouns/reading.ts";
import type { Samples } from "../../../lib/nouns/samples.ts";
import type { JoinedFile } from "../../../lib/read/log/join-logs.ts";

export const smallBattery = {
  name: "Quarry 44 (invented)",
  nominalVoltageV: 12,
  cells: 6,
  construction: "flooded",
  capacityAh: 44,
} as Battery;

/** Two hours at one row a minute from 14:00 UTC: the voltage climbs by 0.01 V a minute from 12.3 V, at 4 A; every tenth row has 0.01 A less. */
export function sampled(change: Partial<Samples> = {}): Samples {
  const rows = Array.from({ length: 121 }, (_, index) => index);
  return {
    elapsedS: Float64Array.from(rows, (index) => index * 60),
    voltagesV: Float64Array.from(rows, (index) => Number((12.3 + index * 0.01).toFixed(2))),
    currentsA: Float64Array.from(rows, (index) => (index % 10 === 9 ? 3.99 : 4)),
    temperaturesC: new Float64Array(0),
    lines: Uint32Array.from(rows, (index) => index + 2),
    hasVoltage: true,
    hasCurrent: true,
    startMs: Date.parse("2026-02-03T14:00:00Z"),
    ...change,
  };
}

/** A visit at 15:00 UTC at which one value was read. */
export function visited(column: ReadingColumn, value: number): Reading {
  return {
    number: 1,
    line: 2,
    atMs: Date.parse("2026-02-03T15:00:00Z"),
    atText: "2026-02-03 16:00",
    values: { [column]: { value, text: String(value).replace(".", ","), line: 2, column: 18 } },
  };
}

/** One of two files that are to be set side by side. */
export function joined(file: string, change: Partial<Samples> = {}): JoinedFile {
  const samples = sampled(change);
  const counts = { lines: samples.lines.length + 1, samples: samples.lines.length, blank: 0, excluded: 0, empty: 0 };
  return { file, log: { samples, counts, readAs: [], sampleRead: 'line 2: "12.30" as 12.3 V' } };
}
