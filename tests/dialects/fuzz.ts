/**
 * Reads mutated inputs of the corpus, and holds that nothing crashes, nothing hangs, and nothing is taken in that is not there.
 *
 *   npx tsx tests/dialects/fuzz.ts --count 100000 --seed 1
 *
 * What must hold of each input:
 * 1. It is read or it is refused with problems, each of which names the file, says what was found and expected, and how to mend it.
 * 2. It takes no longer than `longestMs`.
 * 3. Of plain text that is read, every line is counted once: lines above the data + samples + blank + left out = lines of the file. (A
 *    file with a line that cannot be read is refused. Not looked at where quotation marks may make rows of several lines.)
 * 4. The fast reader of plain rows finds what the reference reader finds, to the last bit.
 * 5. Each voltage and current of a sample stands in the file's own line: the digits of the field, read here by other means, give it.
 */
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { readFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import type { OpenedLog } from "../../lib/read/container/open-log.ts";
import type { ResolvedDialect } from "../../lib/read/dialect.ts";
import { type Detection, detectLog, detectOpened, type LogRequest, readDetectedLog } from "../../lib/read/log.ts";
import { readBothWays } from "./compare-rows.ts";
import { brokenInputs, bytesOfBroken, corpusFiles, requestOf } from "./corpus.ts";
import { mutate } from "./mutate.ts";
import { seededRandom } from "./seeded-random.ts";

export type Seed = {
  readonly name: string;
  readonly file: string;
  readonly bytes: Uint8Array;
  readonly request: Parameters<typeof requestOf>[2];
};
export type Tally = { inputs: number; read: number; refused: number; plainRows: number; slowestMs: number; readonly failures: string[] };

/** A file of the corpus has a few kilobytes; reading one takes a millisecond. */
const longestMs = 2000;

export async function fuzzSeeds(): Promise<Seed[]> {
  const good = await Promise.all(
    corpusFiles().map(async ({ name, file, absolutePath, expected }) => ({
      name,
      file,
      bytes: await readFile(absolutePath),
      request: expected.request,
    })),
  );
  return [
    ...good,
    ...brokenInputs().map((input) => ({ name: input.name, file: input.file, bytes: bytesOfBroken(input), request: input.request })),
  ];
}

/** Runs `count` inputs from one seed; the same seed makes the same inputs. Failures name the input's number, so that it can be made again. */
export async function fuzz(count: number, seed: number, onProgress: (tally: Tally) => void = () => undefined, from = 0): Promise<Tally> {
  const seeds = await fuzzSeeds();
  const folder = mkdtempSync(path.join(tmpdir(), "fuzz-"));
  const tally: Tally = { inputs: 0, read: 0, refused: 0, plainRows: 0, slowestMs: 0, failures: [] };
  try {
    for (let number = from; number < from + count; number++) {
      const random = seededRandom(seed, number);
      const chosen = seeds[random.below(seeds.length)];
      const other = seeds[random.below(seeds.length)];
      if (chosen === undefined || other === undefined) throw new Error("the corpus is empty");
      const bytes = mutate(chosen.bytes, other.bytes, random);
      const file = path.join(folder, `input${path.extname(chosen.file)}`);
      if (isPacked(bytes)) writeFileSync(file, bytes);
      const started = performance.now();
      try {
        const { wasRead, plainRows } = await holdOne(requestOf(file, "input", chosen.request), bytes);
        if (wasRead) tally.read++;
        else tally.refused++;
        tally.plainRows += plainRows;
      } catch (error) {
        tally.failures.push(
          `seed ${seed}, input ${number}, from ${chosen.name}: ${error instanceof Error ? error.message : String(error)}`,
        );
      }
      const tookMs = performance.now() - started;
      tally.slowestMs = Math.max(tally.slowestMs, tookMs);
      if (tookMs > longestMs) tally.failures.push(`seed ${seed}, input ${number}, from ${chosen.name}: took ${Math.round(tookMs)} ms`);
      tally.inputs++;
      if (tally.inputs % 10_000 === 0) onProgress(tally);
    }
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
  return tally;
}

type Log = NonNullable<Awaited<ReturnType<typeof readDetectedLog>>["value"]>;

/** Whether it was read, and how many of its rows straight from bytes; throws where something does not hold. */
async function holdOne(request: LogRequest, bytes: Uint8Array): Promise<{ wasRead: boolean; plainRows: number }> {
  const opened = openInMemory(bytes);
  const { value: detection, problems: ofHead } = opened === undefined ? await detectLog(request) : await detectOpened(request, opened);
  const { value: log, problems } =
    detection === undefined ? { value: undefined, problems: ofHead } : await readDetectedLog(request, detection);
  for (const { place, found, expected, mend } of problems)
    if (place.file === "" || found === "" || expected === "" || mend === "") throw new Error("a problem that leaves something unsaid");
  const dialect = detection?.resolution.value;
  const plainRows = dialect === undefined || detection?.opened.container !== undefined ? 0 : await holdAgreement(bytes, dialect);
  const isRefused = problems.some(({ level }) => level === "error");
  if (log === undefined) {
    if (!isRefused) throw new Error("refused without an error");
    return { wasRead: false, plainRows };
  }
  if (isRefused) throw new Error("read in spite of an error");
  const { samples, counts } = log;
  const columns = [samples.elapsedS, samples.voltagesV, samples.currentsA, samples.lines];
  if (columns.some((column) => column.length !== counts.samples)) throw new Error("columns of different lengths");
  if (samples.elapsedS.some((value) => !Number.isFinite(value))) throw new Error("a time that is no number");
  const plain = plainLines(detection, dialect, bytes);
  if (plain !== undefined) {
    holdCounts(plain, log);
    holdValues(plain, log);
  }
  return { wasRead: true, plainRows };
}

/** A plain file's bytes as if they were opened; undefined for what may be packed. Opening a file would take longer than all the rest. */
function openInMemory(bytes: Uint8Array): OpenedLog | undefined {
  if (isPacked(bytes)) return undefined;
  return {
    container: undefined,
    sheet: undefined,
    size: bytes.length,
    async *stream() {
      yield bytes;
    },
  };
}

/** gzip, and zip with all that is made of it. */
function isPacked([first, second]: Uint8Array): boolean {
  return (first === 0x1f && second === 0x8b) || (first === 0x50 && second === 0x4b);
}

/** The fast reader and the reference reader find the same; returns the rows that the fast one read from bytes. */
async function holdAgreement(bytes: Uint8Array, dialect: ResolvedDialect): Promise<number> {
  const { difference, plainRows } = await readBothWays([bytes], dialect);
  if (difference !== undefined) throw new Error(`the fast reader finds ${difference}`);
  return plainRows;
}

type Plain = { readonly dialect: ResolvedDialect; readonly lines: readonly string[] };

/** Lines of a plain file, decoded here; undefined where lines and rows are not one and the same. */
function plainLines(detection: Detection | undefined, dialect: ResolvedDialect | undefined, bytes: Uint8Array): Plain | undefined {
  if (detection === undefined || dialect === undefined || detection.opened.container !== undefined) return undefined;
  const text = new TextDecoder(detection.encoding).decode(bytes);
  if (text.includes('"')) return undefined;
  const lines = text.split(/\r\n|\n|\r/);
  if (lines.at(-1) === "") lines.pop();
  return { dialect, lines };
}

function holdCounts({ dialect, lines }: Plain, { counts }: Log): void {
  const sum = dialect.linesBeforeData + counts.samples + counts.blank + counts.excluded;
  if (sum !== lines.length || counts.lines !== lines.length)
    throw new Error(`${lines.length} lines, of which ${sum} are counted (${JSON.stringify(counts)})`);
}

/** Digits of a field as a number, without our reader: marks other than the decimal one are dropped, and what is left goes to Number(). */
function holdValues({ dialect, lines }: Plain, { samples, readAs }: Log): void {
  if (dialect.splitter.by !== "mark" || readAs.some(({ what }) => what === "rows by turns")) return;
  const { mark } = dialect.splitter;
  const other = dialect.form.decimalMark === "." ? "," : ".";
  for (const [column, values] of [
    [dialect.voltage, samples.voltagesV],
    [dialect.current, samples.currentsA],
  ] as const) {
    if (column === undefined) continue;
    for (const [row, line] of samples.lines.entries()) {
      const value = values[row] ?? Number.NaN;
      if (Number.isNaN(value)) continue;
      const parts = (lines[line - 1] ?? "").split(mark);
      const text = ((mark === " " ? parts.filter((part) => part !== "") : parts)[column.field] ?? "").trim();
      const digits = text
        .replaceAll("\u2212", "-")
        .replace(/[^0-9eE+\-.,]/g, "")
        .replaceAll(other, "")
        .replace(",", ".")
        .replace(/[eE]$/, "");
      const written = Math.abs(Number(digits));
      const isWritten = [1, 1000].some((divisor) => Math.abs(written / divisor - Math.abs(value)) <= 1e-9 * Math.abs(value));
      if (!isWritten) throw new Error(`line ${line}: "${text}" was read as ${value}`);
    }
  }
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const { values } = parseArgs({
    options: {
      count: { type: "string", default: "10000" },
      seed: { type: "string", default: "1" },
      from: { type: "string", default: "0" },
    },
  });
  const started = performance.now();
  const say = (text: string): void => void process.stdout.write(`${text}\n`);
  let told = 0;
  const report = ({ inputs, failures }: Tally): void => {
    for (const failure of failures.slice(told)) say(failure);
    told = failures.length;
    say(`${inputs} inputs, ${failures.length} failures, ${((performance.now() - started) / 1000).toFixed(0)} s`);
  };
  const tally = await fuzz(Number(values.count), Number(values.seed), report, Number(values.from));
  report(tally);
  say(
    `seed ${values.seed}: ${tally.inputs} inputs, ${tally.read} read, ${tally.refused} refused, ${tally.plainRows} rows read from bytes and all of them as the reference reader reads them, ${tally.failures.length} failures, the slowest ${tally.slowestMs.toFixed(0)} ms`,
  );
  process.exitCode = tally.failures.length > 0 ? 1 : 0;
}
