/**
 * Works out how a log file is written: what the instrument's record says, and for the rest what the file itself shows.
 *
 *   lines ──► layout ──► headings ──► roles ──► units ──► times ──► a dialect with nothing left open
 *             fields,    names and    which     and       count,      or the questions that are left
 *             numbers    units        is what   signs     order
 *
 * Each choice is told with where it came from and why, so that the test page and the command can show how the file was read. Each step
 * stands in a file of its own under dialect/.
 */
import { type Dialect, quantityUnits } from "../nouns/instrument.ts";
import type { Place, Problem } from "../nouns/problem.ts";
import { looksLikeTime } from "./clock.ts";
import { markNames, type Splitter, splitLine } from "./dialect/fields.ts";
import { findHeadings, type Heading } from "./dialect/headings.ts";
import { doubtfulComma, findLayout, type NumberForm } from "./dialect/layout.ts";
import { choice, type Question } from "./dialect/questions.ts";
import { type Column, candidatesFor, columnsOf, findDateAndTime, findPartColumn, type Role, timeColumns } from "./dialect/roles.ts";
import { describeTime, joinDateAndTime, resolveTime, type TimeReading } from "./dialect/times.ts";
import { type MissingMarks, missingMarks } from "./missing.ts";
import { parseNumber } from "./numbers.ts";
import { nearest } from "./record.ts";
import { parseQuantity, parseUnit } from "./units.ts";

export { splitFields } from "./dialect/fields.ts";
export type { TimeReading } from "./dialect/times.ts";

/** One choice of how a file is read. */
export type ReadAs = { readonly what: string; readonly value: string; readonly from: "instrument record" | "test record" | "detected" };

/** Why a choice was made, where the file made it. */
export type Evidence = { readonly what: string; readonly why: string };

/** A column of numbers: its field, counted from 0, and the divisor to volts, amperes, watts or ampere-hours for values without a unit of their own. */
export type ValueColumn = { readonly field: number; readonly divisor: number };

/** A dialect with nothing left open. Field numbers count from 0. */
export type ResolvedDialect = {
  readonly encoding: string;
  readonly splitter: Splitter;
  readonly form: NumberForm;
  /** Lines above the first row of data, headings included. */
  readonly linesBeforeData: number;
  readonly headings: readonly string[] | undefined;
  /** Fields of a whole row. */
  readonly fieldCount: number;
  readonly time: TimeReading;
  readonly timeField: number;
  readonly dateField: number | undefined;
  readonly voltage: ValueColumn | undefined;
  readonly current: ValueColumn | undefined;
  readonly temperature: { readonly field: number; readonly unit: (typeof quantityUnits.temperature)[number] } | undefined;
  /** Columns of the recorder's own sums, by which voltage and current are checked. */
  readonly power: ValueColumn | undefined;
  readonly charge: ValueColumn | undefined;
  /** The column that numbers the recordings of the file. */
  readonly partField: number | undefined;
  /** +1 or -1 turns the file's current into "into the battery is positive"; undefined: to be told from the whole file. */
  readonly currentSign: 1 | -1 | undefined;
  readonly missing: MissingMarks;
  readonly readAs: readonly ReadAs[];
  readonly evidence: readonly Evidence[];
};

export type Resolution = {
  readonly value: ResolvedDialect | undefined;
  readonly problems: Problem[];
  /** What is asked, in the form in which a command can offer the answers. */
  readonly questions: readonly Question[];
};

/** Divisors, since 12200 / 1000 is 12.2 to the last digit and 12200 × 0.001 is not. */
const divisorOf = (symbol: string): number => parseUnit(symbol)?.divisor ?? 1;

/** Headings of what a recorder may log beside voltage and current, and that is left unread on purpose. */
const otherQuantity = /^(?:n|no|nr|index|row|sample|count|energy|capacity|charge|power|status|mode|m?[aw]h|m?w)\b/i;

/** A log from which nothing can be read, because nothing is in it. */
export function emptyLog(file: string, found: string): Problem {
  return {
    id: "log-empty",
    level: "error",
    place: { file },
    found,
    expected: "at least one row with a time and a voltage or a current",
    mend: "take the recording out of test.yaml, or put the right file here",
  };
}

/** So many rows are enough to see what a column holds. */
const rowsLookedAt = 2000;

/**
 * Resolves a dialect for one file.
 *
 * @param head         the file's first lines, whole ones only, decoded
 * @param declared     what the instrument's record says; each field of it is taken as it stands
 * @param file         the log file, for messages
 * @param recordPlace  where in the instrument's record the dialect stands
 * @returns the dialect, or problems that say what the record must tell
 */
export function resolveDialect(
  head: readonly string[],
  encoding: string,
  declared: Dialect | undefined,
  file: string,
  recordPlace: Place | undefined,
): Resolution {
  return new Resolver(head, encoding, declared, file, recordPlace).resolve();
}

/** The steps of one resolution; what they note and ask is gathered on the way. */
class Resolver {
  readonly #problems: Problem[] = [];
  readonly #questions: Question[] = [];
  readonly #readAs: ReadAs[] = [];
  readonly #evidence: Evidence[] = [];
  readonly #head: readonly string[];
  readonly #encoding: string;
  readonly #declared: Dialect | undefined;
  readonly #file: string;
  readonly #notes: readonly string[];
  #timeWhy = "";

  constructor(head: readonly string[], encoding: string, declared: Dialect | undefined, file: string, recordPlace: Place | undefined) {
    this.#head = head;
    this.#encoding = encoding;
    this.#declared = declared;
    this.#file = file;
    this.#notes = [
      recordPlace === undefined
        ? "test.yaml names no recorder for this log: instruments: recorder: with a record in data/instruments"
        : `${recordPlace.file}:${recordPlace.line ?? 1} describes this recorder`,
    ];
  }

  resolve(): Resolution {
    const value = this.#resolve();
    return { value, problems: this.#problems, questions: this.#questions };
  }

  #resolve(): ResolvedDialect | undefined {
    const declared = this.#declared;
    const layout = findLayout(this.#head, declared);
    if (layout === undefined) return this.#refuseLayout();
    const { splitter, form, firstDataLine } = layout;
    const rows = this.#head
      .slice(firstDataLine, firstDataLine + rowsLookedAt)
      .map((line) => splitLine(line, splitter))
      .filter((fields) => fields.length >= 2 && fields.length <= layout.fieldCount && fields.some((field) => field.trim() !== ""));
    this.#noteLayout(splitter, form, layout.dataRows, rows);

    const columns = columnsOf(rows, layout.fieldCount, form);
    const lastUsed = columns.findLastIndex(({ texts }) => texts.some((text) => text !== ""));
    const found = findHeadings(this.#head, firstDataLine, splitter, layout.fieldCount, lastUsed, declared?.headings);
    const headings = this.#chooseHeadings(found.headings, found.withRowAbove, columns);
    this.#note(
      "lines before the data",
      String(firstDataLine),
      declared?.preambleLines !== undefined,
      `line ${firstDataLine + 1} is the first row of numbers and times`,
    );
    this.#note(
      "headings",
      headings === undefined ? "none" : headings.map((heading) => heading.text).join(" | "),
      declared?.headings !== undefined,
      headings === undefined
        ? "no line of words stands above the first row"
        : `line ${found.line} stands above the first row and has words for its columns`,
    );

    const find = (role: Role, taken: readonly number[]): number | undefined =>
      this.#findField(role, taken, headings, columns, {
        fieldCount: layout.fieldCount,
        headingLine: found.line,
        dataLine: firstDataLine + 1,
      });
    const voltageField = find("voltage", []);
    const currentField = find("current", []);
    const temperatureField = find("temperature", []);
    const taken = [voltageField, currentField, temperatureField].filter((field) => field !== undefined);
    const { timeField, dateField } = this.#findTimeFields(headings, columns, taken, find, found.line);
    const used = [...taken, timeField, dateField].filter((field) => field !== undefined);
    const powerField = find("power", used);
    const chargeField = find("charge", used);
    if (timeField === undefined && this.#problems.length === 0)
      this.#ask(
        choice(
          describeHeadings(headings),
          "a column of times",
          "name it in the recorder's record: dialect: time: { name: … } or { number: … }",
          [],
        ),
        found.line,
      );
    if (voltageField === undefined && currentField === undefined && this.#problems.length === 0)
      this.#ask(
        choice(
          headings === undefined ? `${layout.fieldCount} columns without headings` : describeHeadings(headings),
          "a column of voltage or current",
          "say in the recorder's record which is which: dialect: voltage: { number: 2 }, current: { number: 3 }",
          [],
        ),
        found.line,
      );
    this.#askDoubtfulComma(form, [voltageField, currentField, temperatureField], columns, firstDataLine + 1);
    const partField = this.#findPart(headings, [...used, powerField, chargeField], found.line);
    // Asked before anything is given up, so that all questions of a file are asked at once.
    const lacksDate = declared?.time?.dateName !== undefined && dateField === undefined;
    const time =
      timeField === undefined || lacksDate ? undefined : this.#resolveTime(rows, timeField, dateField, form, headings, firstDataLine + 1);
    if (timeField === undefined || time === undefined || this.#problems.length > 0) return undefined;

    const unitOf = (role: Exclude<Role, "time">, field: number): string => this.#unitOf(role, field, headings, columns, form);
    const valueColumn = (role: Exclude<Role, "time">, field: number | undefined): ValueColumn | undefined =>
      field === undefined ? undefined : { field, divisor: divisorOf(unitOf(role, field)) };
    const voltage = valueColumn("voltage", voltageField);
    const current = valueColumn("current", currentField);
    const temperature =
      temperatureField === undefined
        ? undefined
        : { field: temperatureField, unit: unitOf("temperature", temperatureField) as (typeof quantityUnits.temperature)[number] };
    const power = valueColumn("power", powerField);
    const charge = valueColumn("charge", chargeField);
    this.#tellUnread(voltageField, currentField, headings, columns, [...used, powerField, chargeField, partField], found.line);

    this.#noteTime(time, timeField, dateField, headings);
    if (declared?.chargingSign !== undefined) this.#note("sign of charging current", declared.chargingSign, true, "the record says so");
    return {
      encoding: this.#encoding,
      splitter,
      form,
      linesBeforeData: firstDataLine,
      headings: headings?.map((heading) => heading.text),
      fieldCount: Math.max(layout.fieldCount, headings?.length ?? 0),
      time,
      timeField,
      dateField,
      voltage,
      current,
      temperature,
      power,
      charge,
      partField,
      currentSign: declared?.chargingSign === undefined ? undefined : declared.chargingSign === "positive" ? 1 : -1,
      missing: missingMarks(declared?.missing ?? [], form.decimalMark, form.thousandsMark),
      readAs: this.#readAs,
      evidence: this.#evidence,
    };
  }

  #note(what: string, value: string, isDeclared: boolean, why: string): void {
    this.#readAs.push({ what, value, from: isDeclared ? "instrument record" : "detected" });
    this.#evidence.push({ what, why: isDeclared ? "the record says so" : why });
  }

  #ask(question: Question, line = 1): void {
    this.#questions.push(question);
    const { found, expected, mend } = question;
    this.#problems.push({
      id: "log-dialect",
      level: "error",
      place: { file: this.#file, line, column: 1 },
      found,
      expected,
      mend,
      notes: this.#notes,
    });
  }

  #refuseLayout(): undefined {
    const line = this.#head.findIndex((text) => text.trim() !== "");
    if (line < 0) {
      this.#problems.push(emptyLog(this.#file, "an empty file"));
      return;
    }
    const found = `"${(this.#head[line] ?? "").slice(0, 60)}"`;
    const said = this.#saidOfLayout();
    if (said === undefined)
      this.#ask(
        choice(
          found,
          "rows of numbers, parted by semicolon, tab, comma, bar or space",
          "where nothing was recorded, take the log out of test.yaml; else say in the recorder's record how it writes: dialect: with delimiter, decimalMark and preambleLines",
          [],
        ),
        line + 1,
      );
    else this.#ask(choice(found, `rows of numbers, as the record says: ${said.words}`, said.mend, []), line + 1);
  }

  /** What the record says of the layout, and whether the file could be read if it did not. */
  #saidOfLayout(): { words: string; mend: string } | undefined {
    const { delimiter, columnStarts, decimalMark, thousandsMark, preambleLines, ...rest } = this.#declared ?? {};
    const words = Object.entries({
      delimiter: delimiter === undefined ? undefined : (markNames[delimiter] ?? delimiter),
      columnStarts: columnStarts?.join(", "),
      decimalMark: decimalMark === undefined ? undefined : decimalMark === "." ? "point" : "comma",
      thousandsMark,
      preambleLines,
    }).flatMap(([field, value]) => (value === undefined ? [] : [`${field} ${value}`]));
    if (words.length === 0) return undefined;
    const free = findLayout(this.#head, rest);
    const instead =
      free === undefined
        ? "correct these lines in the recorder's record"
        : `take these lines out of the recorder's record: without them the file reads with ${free.splitter.by === "mark" ? (markNames[free.splitter.mark] ?? "") : "columns by place"} and decimal ${free.form.decimalMark === "." ? "point" : "comma"}`;
    return { words: words.join(", "), mend: instead };
  }

  #noteLayout(splitter: Splitter, form: NumberForm, dataRows: number, rows: readonly (readonly string[])[]): void {
    const declared = this.#declared;
    this.#note("encoding", this.#encoding, declared?.encoding !== undefined, whyEncoding(this.#encoding));
    if (splitter.by === "mark")
      this.#note(
        "delimiter",
        markNames[splitter.mark] ?? splitter.mark,
        declared?.delimiter !== undefined,
        `it makes rows of numbers and times of ${dataRows} of the first lines, more than any other`,
      );
    else
      this.#note(
        "columns by place",
        `starting at characters ${splitter.starts.map((start) => start + 1).join(", ")}`,
        declared?.columnStarts !== undefined,
        "blanks stand one below the other there in every row",
      );
    this.#note("decimal mark", form.decimalMark === "." ? "point" : "comma", declared?.decimalMark !== undefined, whyDecimal(form, rows));
    if (form.thousandsMark !== undefined)
      this.#note(
        "thousands mark",
        { ",": "comma", ".": "point", "'": "apostrophe", blank: "blank" }[form.thousandsMark],
        declared?.thousandsMark !== undefined,
        "numbers in groups of three with another mark behind them",
      );
  }

  /** One row of headings, unless the row above it says what more of the columns are. */
  #chooseHeadings(
    one: readonly Heading[] | undefined,
    two: readonly Heading[] | undefined,
    columns: readonly Column[],
  ): readonly Heading[] | undefined {
    if (one === undefined || two === undefined) return one;
    const named = (["time", "voltage", "current", "temperature"] as const).flatMap((role) => this.#declared?.[role]?.name ?? []);
    const knows = (headings: readonly Heading[]): number =>
      named.filter((name) => headings.some((heading) => heading.text === name.trim())).length * 10 +
      (["time", "voltage", "current"] as const).filter(
        (role) => this.#declared?.[role]?.number !== undefined || candidatesFor(role, headings, columns, []).length === 1,
      ).length;
    return knows(two) > knows(one) ? two : one;
  }

  /** Field of a role: as declared by name or number, else the one column that its heading, its unit or its values show to be it. */
  #findField(
    role: Role,
    taken: readonly number[],
    headings: readonly Heading[] | undefined,
    columns: readonly Column[],
    at: { fieldCount: number; headingLine: number; dataLine: number },
  ): number | undefined {
    const wish: { name?: string | undefined; number?: number | undefined } | undefined = this.#declared?.[role];
    if (wish?.number !== undefined) {
      if (wish.number <= at.fieldCount) return wish.number - 1;
      this.#ask(
        choice(
          `${at.fieldCount} columns`,
          `a column number ${wish.number} for ${role}`,
          `correct dialect: ${role}: number: in the recorder's record`,
          [],
        ),
        at.dataLine,
      );
      return undefined;
    }
    if (wish?.name !== undefined) return this.#findNamed(role, wish.name, headings, at.headingLine);
    const candidates = candidatesFor(role, headings, columns, taken);
    if (candidates.length > 1 && role !== "power" && role !== "charge") {
      const names = candidates.map((index) => headings?.[index]?.text ?? `column ${index + 1}`);
      const isNamed = headings !== undefined && new Set(names).size === names.length;
      this.#ask(
        choice(
          names.map((name) => `"${name}"`).join(" and "),
          `one column for ${role}`,
          `name the right one in the recorder's record: dialect: ${role}: ${isNamed ? "{ name: … }" : `{ number: ${candidates.map((index) => index + 1).join(" }, or { number: ")} }`}`,
          candidates.map((index, place) => ({
            answer: `--${role} ${isNamed ? JSON.stringify(names[place]) : index + 1}`,
            yaml: `${role}: { ${isNamed ? `name: ${JSON.stringify(names[place])}` : `number: ${index + 1}`} }`,
            reads: `${role} from column ${index + 1}, "${names[place]}", which begins "${columns[index]?.texts[0] ?? ""}"`,
          })),
        ),
        at.headingLine,
      );
    }
    return candidates[0];
  }

  #findNamed(role: string, name: string, headings: readonly Heading[] | undefined, headingLine: number): number | undefined {
    const index = headings?.findIndex((heading) => heading.text === name.trim()) ?? -1;
    if (index >= 0) return index;
    const known = headings?.map((heading) => heading.text) ?? [];
    const near = nearest(name, known);
    this.#ask(
      choice(
        describeHeadings(headings),
        `a column named "${name}" for ${role}`,
        near === undefined ? `correct dialect: ${role}: name: in the recorder's record` : `did you mean "${near}"?`,
        [],
      ),
      headingLine,
    );
    return undefined;
  }

  /** The column of times, and of dates where these stand apart. */
  #findTimeFields(
    headings: readonly Heading[] | undefined,
    columns: readonly Column[],
    taken: readonly number[],
    find: (role: Role, taken: readonly number[]) => number | undefined,
    headingLine: number,
  ): { timeField: number | undefined; dateField: number | undefined } {
    const declared = this.#declared?.time;
    const isDeclared = declared?.name !== undefined || declared?.number !== undefined;
    const parted = isDeclared ? undefined : findDateAndTime(columns, headings, taken);
    if (parted !== undefined && declared?.dateName === undefined) return parted;
    let timeField = parted?.timeField ?? find("time", taken);
    if (timeField === undefined && !isDeclared) {
      const [only, ...more] = timeColumns(columns, taken);
      timeField = more.length === 0 ? only : undefined;
      if (timeField === undefined && headings === undefined && !taken.includes(0)) timeField = 0;
    }
    if (declared?.dateName === undefined) return { timeField, dateField: undefined };
    const dateName = declared.dateName;
    const dateField = headings?.findIndex((heading) => heading.text === dateName.trim()) ?? -1;
    if (dateField >= 0) return { timeField, dateField };
    this.#ask(
      choice(
        describeHeadings(headings),
        `a column named "${dateName}" for the date`,
        "correct dialect: time: dateName: in the recorder's record",
        [],
      ),
      headingLine,
    );
    return { timeField, dateField: undefined };
  }

  #findPart(headings: readonly Heading[] | undefined, taken: readonly (number | undefined)[], headingLine: number): number | undefined {
    const name = this.#declared?.part;
    if (name !== undefined) {
      const index = headings?.findIndex((heading) => heading.text === name.trim()) ?? -1;
      if (index >= 0) return index;
      const near = nearest(name, headings?.map((heading) => heading.text) ?? []);
      this.#ask(
        choice(
          describeHeadings(headings),
          `a column named "${name}" that numbers the recordings`,
          near === undefined ? "correct dialect: part: in the recorder's record, or leave it out" : `did you mean "${near}"?`,
          [],
        ),
        headingLine,
      );
      return undefined;
    }
    const field = findPartColumn(
      headings,
      taken.filter((index) => index !== undefined),
    );
    if (field !== undefined) this.#note("column that numbers recordings", headings?.[field]?.text ?? "", false, "its heading says so");
    return field;
  }

  /** A decimal comma that could part thousands as well is asked for, unless the record says what it is. */
  #askDoubtfulComma(form: NumberForm, fields: readonly (number | undefined)[], columns: readonly Column[], line: number): void {
    if (form.decimalMark !== "," || this.#declared?.decimalMark !== undefined || this.#declared?.thousandsMark !== undefined) return;
    if (form.thousandsMark !== undefined) return;
    const doubtful = doubtfulComma(fields.flatMap((field) => (field === undefined ? [] : (columns[field]?.texts ?? []))));
    if (doubtful === undefined) return;
    const asDecimal = parseNumber(doubtful, ",");
    const asThousands = parseNumber(doubtful, ".", ",");
    this.#ask(
      choice(
        `"${doubtful}"`,
        `to know whether the comma is the decimal mark or parts thousands: ${asDecimal} or ${asThousands}`,
        'say in the recorder\'s record: dialect: decimalMark: "," or thousandsMark: ","',
        [
          { answer: "--decimal comma", yaml: 'decimalMark: ","', reads: `"${doubtful}" as ${asDecimal}` },
          { answer: "--thousands comma", yaml: 'thousandsMark: ","', reads: `"${doubtful}" as ${asThousands}` },
        ],
      ),
      line,
    );
  }

  /** The unit of a column's values: as declared, else of its heading, else glued to them, else the first of the quantity's list. */
  #unitOf(
    role: Exclude<Role, "time">,
    field: number,
    headings: readonly Heading[] | undefined,
    columns: readonly Column[],
    form: NumberForm,
  ): string {
    const allowed: readonly string[] = quantityUnits[role];
    const heading = headings?.[field];
    const fromHeading = heading?.unit?.quantity === role ? heading.unit.symbol : undefined;
    const glued =
      columns[field]?.unit === role
        ? columns[field].texts
            .map((text) => parseQuantity(text, form.decimalMark, form.thousandsMark).unit?.symbol)
            .find((symbol) => symbol !== undefined)
        : undefined;
    const wish = this.#declared?.[role];
    const unit = wish?.unit ?? fromHeading ?? glued ?? allowed[0] ?? "";
    this.#note(
      `${role} column`,
      `${heading?.text ?? `number ${field + 1}`}, in ${unit}`,
      wish?.name !== undefined || wish?.number !== undefined,
      fromHeading !== undefined
        ? "its heading names quantity and unit"
        : glued !== undefined
          ? "the unit stands behind its values"
          : "its heading; no unit is named, so the usual one is taken",
    );
    return unit;
  }

  /** Columns of numbers that nothing reads, where voltage or current was not found: one of them may be it. */
  #tellUnread(
    voltageField: number | undefined,
    currentField: number | undefined,
    headings: readonly Heading[] | undefined,
    columns: readonly Column[],
    used: readonly (number | undefined)[],
    headingLine: number,
  ): void {
    const leftOver = (headings ?? []).filter(
      (heading, index) => !used.includes(index) && !otherQuantity.test(heading.text) && columns[index]?.isNumeric === true,
    );
    if (leftOver.length === 0) return;
    for (const [role, field] of [
      ["voltage", voltageField],
      ["current", currentField],
    ] as const)
      if (field === undefined)
        this.#problems.push({
          id: "log-column",
          level: "doubt",
          place: { file: this.#file, line: headingLine, column: 1 },
          found: `${leftOver.map((heading) => `"${heading.text}"`).join(", ")}, which ${leftOver.length === 1 ? "is" : "are"} not read`,
          expected: `a column of ${role} among the headings`,
          mend: `name it in the recorder's record: dialect: ${role}: { name: … }, unless this recorder logs no ${role}`,
          notes: this.#notes,
        });
  }

  #resolveTime(
    rows: readonly (readonly string[])[],
    timeField: number,
    dateField: number | undefined,
    form: NumberForm,
    headings: readonly Heading[] | undefined,
    line: number,
  ): TimeReading | undefined {
    const declared = this.#declared?.time;
    const written = rows.flatMap((fields) => {
      const time = fields[timeField]?.trim() ?? "";
      if (time === "") return [];
      return [dateField === undefined ? time : joinDateAndTime(fields[dateField]?.trim() ?? "", time)];
    });
    const readable = written.filter(
      (text) => looksLikeTime(text) || !Number.isNaN(parseQuantity(text, form.decimalMark, form.thousandsMark).value),
    );
    const heading = headings?.[timeField];
    const time = resolveTime(
      readable.length > 0 ? readable : written,
      declared,
      form,
      heading?.unit?.quantity === "time" ? heading.unit : undefined,
    );
    if ("question" in time) {
      this.#ask(time.question, line);
      return undefined;
    }
    this.#timeWhy = time.why;
    return time.value;
  }

  #noteTime(time: TimeReading, timeField: number, dateField: number | undefined, headings: readonly Heading[] | undefined): void {
    const names = [dateField, timeField].flatMap((field) =>
      field === undefined ? [] : [headings?.[field]?.text ?? `number ${field + 1}`],
    );
    this.#note("time column", `${names.join(" and ")}, ${describeTime(time)}`, this.#declared?.time?.kind !== undefined, this.#timeWhy);
  }
}

/** What tells the encoding, where the record does not state it. */
function whyEncoding(encoding: string): string {
  if (encoding.startsWith("utf-")) return "the file's first bytes are of it";
  return "the file's first bytes are not UTF-8; a number reads alike in every encoding of one byte a letter, so state it where letters look wrong";
}

/** A number of the file that has the decimal mark, as it is then read. */
function whyDecimal({ decimalMark, thousandsMark }: NumberForm, rows: readonly (readonly string[])[]): string {
  for (const fields of rows)
    for (const field of fields) {
      const { value } = parseQuantity(field, decimalMark, thousandsMark);
      if (field.includes(decimalMark) && !Number.isNaN(value)) return `"${field.trim()}" is ${value} by it`;
    }
  return "no number has one";
}

function describeHeadings(headings: readonly Heading[] | undefined): string {
  return headings === undefined ? "no headings" : `the headings ${headings.map((heading) => `"${heading.text}"`).join(", ")}`;
}
