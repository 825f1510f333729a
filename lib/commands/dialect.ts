/** Shows how a log is read and why, and writes the dialect into the recorder's record when asked to. */
import { readFile, rename, writeFile } from "node:fs/promises";
import path from "node:path";
import { type Dialect, instrument } from "../nouns/instrument.ts";
import { formatProblem, type Problem } from "../nouns/problem.ts";
import { type Proposal, proposeDialect } from "../read/propose-dialect.ts";
import { readRecord } from "../read/record.ts";
import { dialectBlock, withDialect } from "../read/write-dialect.ts";
import { print, tell } from "./terminal.ts";

/** Answers to what a file leaves open, as they are typed. */
export type Answers = {
  readonly date?: string;
  readonly time?: string;
  readonly voltage?: string;
  readonly current?: string;
  readonly temperature?: string;
  readonly decimal?: string;
  readonly thousands?: string;
  readonly sign?: string;
  readonly sheet?: string;
  readonly encoding?: string;
  readonly delimiter?: string;
};

export type DialectOptions = Answers & {
  readonly log: string;
  /** A recorder's record whose dialect is taken as said. */
  readonly record?: string;
  /** The recorder's record to write the dialect into. */
  readonly write?: string;
  /** IANA zone of clocks on the wall. */
  readonly zone: string;
  readonly startedAt?: string;
  readonly part?: string;
};

/** Runs the command. @returns 0 where the file is read with nothing left open, and written where that was asked; else 1 */
export async function dialect(options: DialectOptions): Promise<number> {
  const answered = answersToDialect(options);
  if (typeof answered === "string") {
    tell(answered);
    return 1;
  }
  const said = options.record === undefined ? undefined : await dialectOfRecord(options.record);
  const proposal = await proposeDialect({
    absolutePath: path.resolve(options.log),
    file: options.log,
    dialect: merge(said, answered),
    dialectPlace: options.record === undefined ? undefined : { file: options.record, line: 1 },
    zone: options.zone,
    startedAtMs: options.startedAt === undefined ? undefined : Date.parse(options.startedAt),
    badRows: [],
    ...(options.part === undefined ? {} : { part: Number(options.part) }),
  });
  print(describeProposal(options.log, proposal, options.zone));
  if (proposal.dialect === undefined) return 1;
  if (options.write === undefined) return 0;
  const problems = await writeInto(options.write, proposal.dialect);
  for (const problem of problems) print(formatProblem(problem));
  if (problems.length === 0) tell(`written: ${options.write}`);
  return problems.length === 0 ? 0 : 1;
}

const marks: Readonly<Record<string, string>> = {
  point: ".",
  comma: ",",
  semicolon: ";",
  tab: "\t",
  bar: "|",
  space: " ",
  apostrophe: "'",
  blank: "blank",
};

/** What the answers say of the dialect; a sentence where one of them is no answer. */
export function answersToDialect(answers: Answers): Dialect | string {
  const column = (text: string | undefined): { name: string } | { number: number } | undefined =>
    text === undefined ? undefined : /^[1-9]\d*$/.test(text) ? { number: Number(text) } : { name: text };
  const time = { ...timeAnswer(answers.time), ...(answers.date === undefined ? {} : { order: answers.date }) };
  const stated = {
    encoding: answers.encoding,
    delimiter: answers.delimiter === undefined ? undefined : (marks[answers.delimiter] ?? answers.delimiter),
    decimalMark: answers.decimal === undefined ? undefined : (marks[answers.decimal] ?? answers.decimal),
    thousandsMark: answers.thousands === undefined ? undefined : (marks[answers.thousands] ?? answers.thousands),
    sheet: answers.sheet,
    time: Object.keys(time).length === 0 ? undefined : time,
    voltage: column(answers.voltage),
    current: column(answers.current),
    temperature: column(answers.temperature),
    chargingSign: answers.sign,
  };
  const parsed = instrument.shape.dialect.safeParse(Object.fromEntries(Object.entries(stated).filter(([, value]) => value !== undefined)));
  if (parsed.success) return parsed.data ?? {};
  const issue = parsed.error.issues[0];
  const option = optionOf[String(issue?.path[1] ?? issue?.path[0])] ?? optionOf[String(issue?.path[0])] ?? String(issue?.path[0]);
  return `--${option}: ${(issue?.message ?? "no such answer").toLowerCase()}`;
}

const optionOf: Readonly<Record<string, string>> = {
  order: "date",
  kind: "time",
  unit: "time",
  decimalMark: "decimal",
  thousandsMark: "thousands",
  chargingSign: "sign",
};

function timeAnswer(text: string | undefined): object {
  if (text === undefined) return {};
  if (/^(?:s|ms|min|h|d)$/.test(text)) return { kind: "elapsed", unit: text };
  if (text === "h:mm" || text === "mm:ss") return { kind: "elapsed", clock: text };
  return { kind: text };
}

/** Answers go before the record, field by field. */
function merge(said: Dialect | undefined, answered: Dialect): Dialect {
  const time = { ...said?.time, ...answered.time };
  return { ...said, ...answered, ...(Object.keys(time).length === 0 ? {} : { time }) };
}

async function dialectOfRecord(file: string): Promise<Dialect | undefined> {
  const { value, problems } = readRecord(await readFile(file, "utf8"), file, instrument);
  for (const problem of problems) print(formatProblem(problem));
  return value?.value.dialect;
}

/** Writes beside the record and renames, so that a fault leaves the record as it was. */
async function writeInto(file: string, dialect: Dialect): Promise<readonly Problem[]> {
  const text = await readFile(file, "utf8").catch(() => undefined);
  if (text === undefined)
    return [
      {
        id: "dialect-record",
        level: "error",
        place: { file },
        found: "no such file",
        expected: "the record of the recorder, with name, kind and measures",
        mend: "make the record first; docs/workspace.md shows one",
      },
    ];
  const { value, problems } = withDialect(text, file, dialect);
  if (value === undefined) return problems;
  const beside = `${file}.new`;
  await writeFile(beside, value, { flag: "wx" });
  await rename(beside, file);
  return [];
}

/** The proposal in words: choices with their evidence, rows read back, what is open, and the block for the record. */
export function describeProposal(log: string, proposal: Proposal, zone: string): string {
  const { choices, readBack, questions, problems, dialect: proposed, log: read } = proposal;
  const lines: string[] = [log];
  const section = (title: string, body: readonly string[]): void => {
    if (body.length > 0) lines.push("", title, ...body.map((line) => `  ${line}`));
  };
  section(
    "how it is read",
    choices.map(({ what, value, from, why }) => `${what}: ${value} (${from === "detected" ? why : from})`),
  );
  section(`rows read back, clocks on the wall in ${zone}`, readBack);
  if (read !== undefined) section("rows", [describeCounts(read)]);
  section(
    "what is wrong",
    problems.flatMap((problem) => (questions.some(({ found }) => found === problem.found) ? [] : formatProblem(problem).split("\n"))),
  );
  section(
    "what stays open",
    questions.flatMap(({ found, expected, mend, options }) => [
      `expected ${expected}, found ${found}`,
      ...(options.length === 0
        ? [`  ${mend}`]
        : options.map(({ answer, reads, yaml }) => `  ${answer}   reads ${reads}   dialect: ${yaml}`)),
    ]),
  );
  if (proposed !== undefined) {
    section("for the recorder's record", dialectBlock(proposed).trimEnd().split("\n"));
    if (proposed.current !== undefined && proposed.chargingSign === undefined)
      section("not written", [
        "chargingSign: told from each file, as the sign under which the whole log charges; state it with --sign where a log may be a discharge",
      ]);
  }
  return lines.join("\n");
}

function describeCounts({ counts, samples }: NonNullable<Proposal["log"]>): string {
  const spanS = samples.elapsedS.at(-1) ?? 0;
  return `${counts.lines} lines: ${counts.samples} samples over ${Number((spanS / 3600).toPrecision(4))} h, ${counts.blank} blank, ${counts.excluded} left out, ${counts.empty} without voltage and current`;
}
