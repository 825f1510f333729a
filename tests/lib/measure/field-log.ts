/** The open field log of a 17 Ah battery, and its three charges as an independent script measured them (tests/reference/leadacid-17ah). */
import { fileURLToPath } from "node:url";
import { instrument } from "../../../lib/nouns/instrument.ts";
import type { Samples } from "../../../lib/nouns/samples.ts";
import { readLog } from "../../../lib/read/log.ts";
import { field, numberField, readReferenceTable } from "../../reference/read-table.ts";

/** Its recorder writes when something moves, at most ten minutes apart, and counts charging as negative. */
export const fieldRecorder = instrument.parse({
  name: "Field telemetry",
  kind: "recorder",
  measures: {},
  dialect: { chargingSign: "negative", time: { kind: "local", order: "year-month-day" } },
  longestIntervalS: 600,
});

export type FieldCharge = { readonly number: number; readonly samples: Samples; readonly expected: (name: string) => number };

/** Reads the whole log through our own reader and cuts out the charges at the instants that expected.csv names. */
export async function readFieldCharges(): Promise<readonly FieldCharge[]> {
  const { value: log, problems } = await readLog({
    absolutePath: fileURLToPath(new URL("../../reference/leadacid-17ah/telemetry.csv", import.meta.url)),
    file: "telemetry.csv",
    dialect: fieldRecorder.dialect,
    dialectPlace: undefined,
    // The log's clock has no zone and names an hour that European local time does not have.
    zone: "UTC",
    startedAtMs: undefined,
    badRows: [],
  });
  if (log?.samples.startMs === undefined) throw new Error(`the field log was not read: ${JSON.stringify(problems)}`);
  const { samples } = log;
  const originMs = log.samples.startMs;
  return readReferenceTable("leadacid-17ah/expected.csv").map((row) => {
    const [, start, end] = /start (\S+ \S+) end (\S+ [^;]+)/.exec(field(row, "note")) ?? [];
    const fromS = (instantMs(start) - originMs) / 1000;
    const toS = (instantMs(end) - originMs) / 1000;
    return { number: numberField(row, "charge_no"), samples: cut(samples, fromS, toS), expected: (name) => numberField(row, name) };
  });
}

function instantMs(text: string | undefined): number {
  const ms = Date.parse(`${(text ?? "").replace(" ", "T").replace(/(\.\d{3})\d+$/, "$1")}Z`);
  if (Number.isNaN(ms)) throw new Error(`no instant in the note: ${text}`);
  return ms;
}

function cut(samples: Samples, fromS: number, toS: number): Samples {
  // A millisecond of slack: the note is printed to 0.1 s and seconds are held as doubles.
  const kept = Array.from(samples.elapsedS.keys()).filter((row) => {
    const s = samples.elapsedS[row] ?? Number.NaN;
    return s >= fromS - 0.001 && s <= toS + 0.001;
  });
  const of = (column: Float64Array): Float64Array => Float64Array.from(kept, (row) => column[row] ?? Number.NaN);
  return {
    ...samples,
    elapsedS: of(samples.elapsedS).map((s) => s - fromS),
    voltagesV: of(samples.voltagesV),
    currentsA: of(samples.currentsA),
    temperaturesC: of(samples.temperaturesC),
    lines: Uint32Array.from(kept, (row) => samples.lines[row] ?? 0),
    startMs: (samples.startMs ?? 0) + fromS * 1000,
  };
}
