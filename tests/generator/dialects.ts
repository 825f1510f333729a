/** How five invented recorders write their files. Each is a plain function from rows to bytes. */
import type { DialectId, Row } from "./recorder.ts";

export type LogHead = {
  /** Start of the scenario, milliseconds since 1970 UTC, and the bench's offset from UTC in minutes. */
  readonly startMs: number;
  readonly offsetMin: number;
  readonly number: number;
};

/** Returns a log's bytes as this kind of recorder writes them. */
export function writeLog(dialect: DialectId, rows: readonly Row[], head: LogHead): Buffer {
  return writers[dialect](rows, head);
}

const writers: Readonly<Record<DialectId, (rows: readonly Row[], head: LogHead) => Buffer>> = {
  tern: writeTern,
  crab: writeCrab,
  mussel: writeMussel,
  shoal: writeShoal,
  curlew: writeCurlew,
};

/** Commas, points, UTC with its Z, units in the headings. */
function writeTern(rows: readonly Row[], head: LogHead): Buffer {
  const lines = rows.map((row) => {
    const instant = new Date(head.startMs + row.clockS * 1000).toISOString().replace(".000Z", "Z");
    return `${instant},${fixed(row.voltageV, 3)},${fixed(row.currentA, 3)},${fixed(row.temperatureC, 1)}`;
  });
  return utf8(["time,voltage (V),current (A),temperature (°C)", ...lines], "\n");
}

/** Lines of its own above the table, semicolons, decimal commas, wall clock without a zone, milliamperes, charging negative. */
function writeCrab(rows: readonly Row[], head: LogHead): Buffer {
  const first = rows[0];
  const preamble = [
    "CRAB tabletop recorder;firmware 3.1",
    `memory block;${head.number}`,
    `begun;${first === undefined ? "" : wallClock(head, first.clockS)}`,
    "shunt;50 mOhm",
    "",
    "Date and time;Terminal voltage [V];Current [mA]",
  ];
  const lines = rows.map((row) => {
    const milliamperes = row.currentA === undefined ? undefined : -row.currentA * 1000;
    return `${wallClock(head, row.clockS)};${comma(fixed(row.voltageV, 3))};${comma(fixed(milliamperes, 0))}`;
  });
  return utf8([...preamble, ...lines], "\r\n");
}

/** Tabs, decimal commas, seconds since the button was pressed, Slovene headings in windows-1250, OL and --- for what it lacks. */
function writeMussel(rows: readonly Row[]): Buffer {
  const startS = rows[0]?.clockS ?? 0;
  const lines = rows.map((row) => {
    const current = row.currentA === undefined ? (row.voltageV === undefined ? "---" : "OL") : comma(fixed(row.currentA, 2));
    const voltage = row.voltageV === undefined ? "---" : comma(fixed(row.voltageV, 2));
    return `${row.clockS - startS}\t${voltage}\t${current}\t${comma(fixed(row.temperatureC, 0))}`;
  });
  const text = ["Čas [s]\tNapetost [V]\tTok [A]\tTemp. [°C]", ...lines].map((line) => `${line}\r\n`).join("");
  return windows1250(text);
}

/** No headings at all: hours, minutes and seconds since the start, current before voltage. */
function writeShoal(rows: readonly Row[]): Buffer {
  const startS = rows[0]?.clockS ?? 0;
  const lines = rows.map((row) => `${stopwatch(row.clockS - startS)};${fixed(row.currentA, 3)};${fixed(row.voltageV, 2)}`);
  return utf8(lines, "\n");
}

/** UTF-16 with its mark, tabs, ISO time with the bench's offset; a row only where something moved. */
function writeCurlew(rows: readonly Row[], head: LogHead): Buffer {
  const lines = rows.map((row) => {
    const instant = isoWithOffset(head.startMs + row.clockS * 1000, head.offsetMin);
    return `${instant}\t${fixed(row.voltageV, 3)}\t${fixed(row.currentA, 3)}`;
  });
  const text = ["Instant\tU (V)\tI (A)", ...lines].map((line) => `${line}\r\n`).join("");
  return Buffer.from(`\uFEFF${text}`, "utf16le");
}

/**
 * Returns an instant as ISO 8601 with the given offset, to the second.
 * @param offsetMin minutes east of UTC
 */
export function isoWithOffset(ms: number, offsetMin: number): string {
  const sign = offsetMin < 0 ? "-" : "+";
  const size = Math.abs(offsetMin);
  const offset = `${sign}${two(Math.floor(size / 60))}:${two(size % 60)}`;
  return new Date(ms + offsetMin * 60_000).toISOString().slice(0, 19) + offset;
}

function wallClock(head: LogHead, clockS: number): string {
  const at = new Date(head.startMs + clockS * 1000 + head.offsetMin * 60_000);
  const date = `${two(at.getUTCDate())}.${two(at.getUTCMonth() + 1)}.${at.getUTCFullYear()}`;
  return `${date} ${two(at.getUTCHours())}:${two(at.getUTCMinutes())}:${two(at.getUTCSeconds())}`;
}

function stopwatch(seconds: number): string {
  const whole = Math.round(seconds);
  return `${two(Math.floor(whole / 3600))}:${two(Math.floor(whole / 60) % 60)}:${two(whole % 60)}`;
}

function two(value: number): string {
  return String(value).padStart(2, "0");
}

function fixed(value: number | undefined, decimals: number): string {
  if (value === undefined) return "";
  const text = value.toFixed(decimals);
  return Number(text) === 0 ? (0).toFixed(decimals) : text;
}

function comma(text: string): string {
  return text.replace(".", ",");
}

function utf8(lines: readonly string[], ending: string): Buffer {
  return Buffer.from(lines.map((line) => line + ending).join(""), "utf8");
}

/** The few letters beyond ASCII that the headings need; any other is refused, since a wrong byte would go unseen. */
function windows1250(text: string): Buffer {
  const codes: Readonly<Record<string, number>> = { Č: 0xc8, č: 0xe8, Š: 0x8a, š: 0x9a, Ž: 0x8e, ž: 0x9e, "°": 0xb0 };
  const bytes = [...text].map((character) => {
    const code = codes[character] ?? character.charCodeAt(0);
    if (code > 0x7f && codes[character] === undefined) throw new Error(`no windows-1250 byte known for "${character}"`);
    return code;
  });
  return Buffer.from(bytes);
}
