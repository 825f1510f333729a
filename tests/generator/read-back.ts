/** Reads the demo's logs back in the plainest way, for holding them against the truth. Not the tool's reader, on purpose. */
import type { DialectId } from "./recorder.ts";

/** Charge by trapezoids, highest voltage and hours of a log, read with no more than this test needs to know of its form. */
export function readBack(bytes: Buffer, dialect: DialectId): { chargeAh: number; highestV: number; hours: number } {
  const text = bytes.toString(dialect === "curlew" ? "utf16le" : "latin1");
  const rows = text.split(/\r?\n/).flatMap((line) => {
    const cells = line.split(dialect === "tern" ? "," : /[;\t]/);
    const [time = "", second = "", third = ""] = cells;
    const atS = secondsOf(time);
    if (Number.isNaN(atS) || second === "") return [];
    const [voltage, current] = dialect === "shoal" ? [third, second] : [second, third];
    const scale = dialect === "crab" ? -0.001 : 1;
    return [{ atS, voltageV: numberOf(voltage), currentA: scale * numberOf(current) }];
  });
  let chargeAs = 0;
  let highestV = 0;
  let before: { atS: number; currentA: number } | undefined;
  for (const row of rows) {
    if (row.voltageV > highestV) highestV = row.voltageV;
    if (Number.isNaN(row.currentA)) continue;
    if (before !== undefined && row.atS > before.atS) chargeAs += ((row.atS - before.atS) * (row.currentA + before.currentA)) / 2;
    before = row;
  }
  return { chargeAh: chargeAs / 3600, highestV, hours: ((rows.at(-1)?.atS ?? 0) - (rows[0]?.atS ?? 0)) / 3600 };
}

function numberOf(text: string): number {
  return text.trim() === "" ? Number.NaN : Number(text.replace(",", "."));
}

function secondsOf(text: string): number {
  const stopwatch = /^(\d+):(\d\d):(\d\d)$/.exec(text);
  if (stopwatch !== null) return Number(stopwatch[1]) * 3600 + Number(stopwatch[2]) * 60 + Number(stopwatch[3]);
  const wall = /^(\d\d)\.(\d\d)\.(\d{4}) (.*)$/.exec(text);
  if (wall !== null) return Date.parse(`${wall[3]}-${wall[2]}-${wall[1]}T${wall[4]}Z`) / 1000;
  return /^\d+$/.test(text) ? Number(text) : Date.parse(text) / 1000;
}
