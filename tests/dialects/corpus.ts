/** The corpus of recorders' files: files that are read, and what must come out of each; and broken inputs with the very words that are said of them. */
import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { Dialect } from "../../lib/nouns/instrument.ts";
import type { RowCounts } from "../../lib/nouns/samples.ts";
import { type LogRequest, readLog } from "../../lib/read/log.ts";

const folder = fileURLToPath(new URL("./read/", import.meta.url));

/** What must come out of one file. It was written from the values the file was made of, not from what our reader says. */
export type Expected = {
  readonly what: string;
  readonly request?: { readonly dialect?: Dialect; readonly zone?: string; readonly startedAt?: string; readonly part?: number };
  /** Heading and unit of each column that is read, as the test's page tells them. */
  readonly columns: Readonly<Record<string, string>>;
  /** Instants of the first and the last sample; null where the log only counts. */
  readonly first: string | null;
  readonly last: string | null;
  /** Three samples: line, seconds from the first sample, V, A, and °C where logged; null for no value. */
  readonly rows: readonly (readonly (number | null)[])[];
  readonly counts: RowCounts;
  readonly tells?: Readonly<Record<string, string>>;
};

export type CorpusFile = { readonly name: string; readonly file: string; readonly absolutePath: string; readonly expected: Expected };

/** Every file that is read, by name. */
export function corpusFiles(): CorpusFile[] {
  return readdirSync(folder)
    .sort()
    .map((name) => {
      const file = readdirSync(`${folder}${name}`).find((entry) => entry.startsWith("log."));
      if (file === undefined) throw new Error(`${name} holds no log`);
      const expected = JSON.parse(readFileSync(`${folder}${name}/expected.json`, "utf8")) as Expected;
      return { name, file, absolutePath: `${folder}${name}/${file}`, expected };
    });
}

/** A request for one file, as a test's record would make it. */
export function requestOf(absolutePath: string, file: string, request: Expected["request"] = {}): LogRequest {
  return {
    absolutePath,
    file,
    dialect: request.dialect,
    dialectPlace: { file: "recorder.yaml", line: 4, column: 3 },
    zone: request.zone ?? "Europe/Ljubljana",
    startedAtMs: request.startedAt === undefined ? undefined : Date.parse(request.startedAt),
    badRows: [],
    ...(request.part === undefined ? {} : { part: request.part }),
  };
}

export const readCorpusFile = ({ absolutePath, file, expected }: CorpusFile) => readLog(requestOf(absolutePath, file, expected.request));

/** An input that is broken, or that leaves something open, and every message that it must bring about; some are read all the same, with a doubt. */
export type Broken = {
  readonly name: string;
  readonly what: string;
  readonly file: string;
  readonly request?: Expected["request"];
  /** The file's text, or its bytes where they are no UTF-8. */
  readonly text?: string;
  readonly base64?: string;
  readonly says: readonly string[];
};

export function brokenInputs(): Broken[] {
  return JSON.parse(readFileSync(fileURLToPath(new URL("./broken.json", import.meta.url)), "utf8")) as Broken[];
}

export const bytesOfBroken = ({ text, base64 }: Broken): Uint8Array =>
  base64 === undefined ? new TextEncoder().encode(text ?? "") : Buffer.from(base64, "base64");
