/** Takes rows one at a time and keeps their numbers; what it cannot read it keeps as a problem. */
import type { quantityUnits } from "../../nouns/instrument.ts";
import type { Problem } from "../../nouns/problem.ts";
import { GrowingFloats, GrowingRows } from "../columns.ts";
import { joinDateAndTime, secondsOf } from "../dialect/times.ts";
import type { ResolvedDialect, ValueColumn } from "../dialect.ts";
import { highestNines, isNines } from "../missing.ts";
import { parseQuantity, type Quantity } from "../units.ts";

/** What a field should have been, and the problem that it is when it is not. */
export const problemIds = {
  "a time": "log-time",
  "a voltage": "log-number",
  "a current": "log-number",
  "a temperature": "log-number",
  "the end of the row": "log-fields",
  "a whole last row": "log-fields",
} as const satisfies Readonly<Record<string, Problem["id"]>>;

export type BadField = { readonly line: number; readonly field: number; readonly text: string; readonly what: keyof typeof problemIds };

/** Problems of one kind that are told one by one; the rest are counted. */
export const problemsTold = 20;

/** The label of a mark where the headings come again. */
export const headingsAgain = "headings again";

/** In place of a column that a log lacks. */
const noColumn = new Float64Array(0);

/** A summary below the data has a few lines; more words than this are no summary. */
const longestTail = 40;

/** Where plain rows are put: their times in seconds, and the other numbers as they are written, before units; NaN for a field without anything in it. */
export const plainColumns = { time: 0, voltage: 1, current: 2, temperature: 3, power: 4, charge: 5 } as const;

/** Room for whole rows of plain fields, side by side. */
export type PlainRoom = {
  /** As `plainColumns` counts them. Those that the log lacks hold nothing that is read. */
  readonly columns: readonly Float64Array[];
  /** Where the first row is put. */
  readonly from: number;
};

export type BadRows = readonly { readonly from: number; readonly to: number }[];

/** What came out of a log's rows, on the file's own scale of time and with its own sign. */
export type Rows = {
  readonly timesS: Float64Array;
  readonly voltagesV: Float64Array;
  readonly currentsA: Float64Array;
  readonly temperaturesC: Float64Array;
  readonly powersW: Float64Array;
  readonly chargesAh: Float64Array;
  readonly lines: Uint32Array;
  /** Samples at which another recording begins in the same file, and how that shows. */
  readonly marks: readonly { readonly at: number; readonly line: number; readonly label: string }[];
  readonly rows: number;
  readonly blank: number;
  readonly excluded: number;
  readonly empty: number;
  /** Kept rows that have a voltage or a current, but not both. */
  readonly single: number;
  /** Whether each kept row stands later than the one before it. */
  readonly isRising: boolean;
  /** The sum of the currents that are there, as the file signs them. */
  readonly sumA: number;
  /** Lines of words below the data. */
  readonly tail: { readonly line: number; readonly lines: number; readonly text: string } | undefined;
  /** Numbers of nines taken for "no value", as the file writes them. */
  readonly nines: { readonly text: string; readonly count: number } | undefined;
  readonly sample: { readonly line: number; readonly voltage: Written | undefined; readonly current: Written | undefined } | undefined;
  readonly bad: readonly BadField[];
  readonly badCount: number;
};

/** A value with the text that it was read from. */
export type Written = { readonly text: string; readonly value: number };

export class RowReader {
  readonly #dialect: ResolvedDialect;
  readonly #badRows: BadRows;
  readonly #lowestMissing: number;
  readonly #headingText: string | undefined;
  readonly #kept: GrowingRows;
  readonly #temperaturesC: GrowingFloats;
  readonly #powersW: GrowingFloats;
  readonly #chargesAh: GrowingFloats;
  readonly #marks: { at: number; line: number; label: string }[] = [];
  readonly #bad: BadField[] = [];
  #badCount = 0;
  #rows = 0;
  #blank = 0;
  #excluded = 0;
  #empty = 0;
  #single = 0;
  #latestS = Number.NEGATIVE_INFINITY;
  #isRising = true;
  #sumA = 0;
  #short = 0;
  #last: { fields: readonly string[]; line: number } | undefined;
  #part: string | undefined;
  #tail: { line: number; fields: readonly string[]; field: number }[] = [];
  #nines: { text: string; count: number } | undefined;
  #sample: Rows["sample"];

  /** @param likelyRows  how many rows are about to come, as far as that can be told: it saves moving columns as they grow */
  constructor(dialect: ResolvedDialect, badRows: BadRows, likelyRows = 0) {
    this.#dialect = dialect;
    this.#lowestMissing = dialect.missing.lowestNumber;
    const column = (isThere: boolean): GrowingFloats => new GrowingFloats(isThere ? likelyRows : 0);
    this.#kept = new GrowingRows(likelyRows);
    this.#temperaturesC = column(dialect.temperature !== undefined);
    this.#powersW = column(dialect.power !== undefined);
    this.#chargesAh = column(dialect.charge !== undefined);
    this.#badRows = badRows;
    this.#headingText = dialect.headings?.some((text) => text !== "") === true ? dialect.headings.join("\t") : undefined;
  }

  take(fields: string[], firstLine: number, lastLine: number): void {
    this.#rows++;
    this.#last = { fields, line: firstLine };
    if (fields.length < this.#dialect.fieldCount) this.#short++;
    if (fields.every((field) => field.trim() === "")) {
      this.#blank++;
      return;
    }
    if (this.#isLeftOut(firstLine, lastLine)) {
      this.#excluded++;
      return;
    }
    if (this.#isHeadingAgain(fields)) {
      this.#excluded++;
      this.#marks.push({ at: this.#kept.length, line: firstLine, label: headingsAgain });
      return;
    }
    const dialect = this.#dialect;
    const timeText = this.#timeText(fields);
    const timeS = secondsOf(timeText, dialect.time, dialect.form);
    if (Number.isNaN(timeS) && isWords(fields) && this.#tail.length < longestTail) {
      this.#tail.push({ line: firstLine, fields, field: dialect.timeField });
      return;
    }
    this.#tailIsNone();
    const surplus = fields.findIndex((field, index) => index >= dialect.fieldCount && field.trim() !== "");
    const isShort = dialect.splitter.by === "mark" && dialect.splitter.mark === " " && fields.length < dialect.fieldCount;
    if (surplus >= 0 || isShort) {
      const field = surplus >= 0 ? surplus : fields.length;
      this.#refuse({ line: firstLine, field, text: fields[field] ?? "", what: "the end of the row" });
      return;
    }
    if (Number.isNaN(timeS)) {
      this.#refuse({ line: firstLine, field: dialect.timeField, text: fields[dialect.timeField] ?? "", what: "a time" });
      return;
    }
    this.#keep(fields, firstLine, timeS);
  }

  /** Room for so many plain rows, to be put in one behind another and then kept with `keepPlain`. */
  plainRoom(most: number): PlainRoom {
    const from = this.#kept.length;
    const { timesS, voltagesV, currentsA } = this.#kept.room(most);
    const { temperature, power, charge } = this.#dialect;
    const side = (column: GrowingFloats, isThere: boolean): Float64Array => (isThere ? column.room(most) : noColumn);
    return {
      columns: [
        timesS,
        voltagesV,
        currentsA,
        side(this.#temperaturesC, temperature !== undefined),
        side(this.#powersW, power !== undefined),
        side(this.#chargesAh, charge !== undefined),
      ],
      from,
    };
  }

  /** Whether a number as written may stand for "no value": that is looked up as a text is, and told with its text. */
  isDoubtful(value: number): boolean {
    return value <= highestNines || (Math.abs(value) >= this.#lowestMissing && this.#dialect.missing.isMissingNumber(value));
  }

  /** Whether a row in the room is wanted as texts all the same: the first whole one is read back, and one that the test's record leaves out is counted. */
  wantsTexts({ columns }: PlainRoom, row: number, line: number): boolean {
    if (this.#badRows.length > 0 && this.#isLeftOut(line, line)) return true;
    return (
      this.#sample === undefined &&
      this.#isWhole(columns[plainColumns.voltage]?.[row] ?? Number.NaN, columns[plainColumns.current]?.[row] ?? Number.NaN)
    );
  }

  /** Keeps so many rows that were put into the `plainRoom`, on lines that follow each other, as `take` would from their texts. */
  keepPlain(count: number, firstLine: number): void {
    if (count === 0) return;
    if (this.#tail.length > 0) this.#tailIsNone();
    const { temperature, power, charge, voltage, current } = this.#dialect;
    const from = this.#kept.length;
    const { voltagesV, currentsA, lines } = this.#kept.room(0);
    toUnit(voltagesV.subarray(from, from + count), voltage);
    toUnit(currentsA.subarray(from, from + count), current);
    for (let row = 0; row < count; row++) lines[from + row] = firstLine + row;
    this.#kept.took(count);
    this.#lookOver(from);
    if (temperature !== undefined) {
      const temperatures = this.#temperaturesC.took(count);
      if (temperature.unit !== "°C")
        temperatures.forEach((value, row) => {
          temperatures[row] = toCelsius(value, temperature.unit);
        });
    }
    if (power !== undefined) toUnit(this.#powersW.took(count), power);
    if (charge !== undefined) toUnit(this.#chargesAh.took(count), charge);
    this.#rows += count;
    this.#last = undefined;
  }

  /** Whether the test's record lists a row as one not to be used. */
  #isLeftOut(firstLine: number, lastLine: number): boolean {
    return this.#badRows.some((range) => lastLine >= range.from && firstLine <= range.to);
  }

  #keep(fields: readonly string[], line: number, timeS: number): void {
    const dialect = this.#dialect;
    const badBefore = this.#badCount;
    const voltageV = this.#number(fields, dialect.voltage, line, "a voltage", "voltage");
    const currentA = this.#number(fields, dialect.current, line, "a current", "current");
    const temperatureC = this.#temperature(fields, line);
    // A row with a field that cannot be read is a problem, and no sample: the counts add up.
    if (this.#badCount > badBefore) return;
    const part = dialect.partField === undefined ? undefined : fields[dialect.partField]?.trim();
    if (part !== undefined && part !== this.#part) {
      this.#part = part;
      this.#marks.push({ at: this.#kept.length, line, label: `"${part}" under "${dialect.headings?.[dialect.partField ?? 0] ?? ""}"` });
    }
    this.#kept.push(timeS, voltageV, currentA, line);
    this.#lookOver(this.#kept.length - 1);
    if (dialect.temperature !== undefined) this.#temperaturesC.push(temperatureC);
    if (dialect.power !== undefined) this.#powersW.push(this.#side(fields, dialect.power, "power"));
    if (dialect.charge !== undefined) this.#chargesAh.push(this.#side(fields, dialect.charge, "charge"));
    if (this.#sample === undefined && this.#isWhole(voltageV, currentA)) this.#sample = this.#readBack(fields, line, voltageV, currentA);
  }

  /** Sees how kept rows stand while they are at hand, so that a long log is not gone through once for each of its questions. */
  #lookOver(from: number): void {
    const { timesS, voltagesV, currentsA } = this.#kept.room(0);
    let latestS = this.#latestS;
    let sumA = this.#sumA;
    for (let row = from; row < this.#kept.length; row++) {
      const timeS = timesS[row] as number;
      if (!(timeS > latestS)) this.#isRising = false;
      latestS = timeS;
      const currentA = currentsA[row] as number;
      const hasCurrent = !Number.isNaN(currentA);
      if (hasCurrent) sumA += currentA;
      if (hasCurrent === !Number.isNaN(voltagesV[row])) {
        if (!hasCurrent) this.#empty++;
      } else this.#single++;
    }
    this.#latestS = latestS;
    this.#sumA = sumA;
  }

  /** Whether a row has a value for each column that this recorder logs. */
  #isWhole(voltageV: number, currentA: number): boolean {
    const { voltage, current } = this.#dialect;
    return (voltage === undefined || !Number.isNaN(voltageV)) && (current === undefined || !Number.isNaN(currentA));
  }

  #readBack(fields: readonly string[], line: number, voltageV: number, currentA: number): Rows["sample"] {
    const { voltage, current } = this.#dialect;
    const written = (column: ValueColumn | undefined, value: number): Written | undefined =>
      column === undefined ? undefined : { text: (fields[column.field] ?? "").trim(), value };
    return { line, voltage: written(voltage, voltageV), current: written(current, currentA) };
  }

  #isHeadingAgain(fields: readonly string[]): boolean {
    return this.#headingText !== undefined && fields.map((field) => field.trim()).join("\t") === this.#headingText;
  }

  /** Date and time as one text, where they stand apart. */
  #timeText(fields: readonly string[]): string {
    const { timeField, dateField } = this.#dialect;
    const clockText = (fields[timeField] ?? "").trim();
    return dateField === undefined ? clockText : joinDateAndTime((fields[dateField] ?? "").trim(), clockText);
  }

  #number(fields: readonly string[], column: ValueColumn | undefined, line: number, what: BadField["what"], quantity: Quantity): number {
    if (column === undefined) return Number.NaN;
    const text = (fields[column.field] ?? "").trim();
    const { form, missing } = this.#dialect;
    if (text === "" || missing.isMissing(text)) return Number.NaN;
    const { value, unit } = parseQuantity(text, form.decimalMark, form.thousandsMark);
    if (Number.isNaN(value) || (unit !== undefined && unit.quantity !== quantity)) {
      this.#refuse({ line, field: column.field, text, what });
      return Number.NaN;
    }
    if (missing.isMissingNumber(value)) return Number.NaN;
    if (isNines(value, column.divisor === 1 ? "V" : "mV")) {
      this.#nines = { text: this.#nines?.text ?? text, count: (this.#nines?.count ?? 0) + 1 };
      return Number.NaN;
    }
    return value / (unit?.divisor ?? column.divisor);
  }

  #temperature(fields: readonly string[], line: number): number {
    const { temperature, form } = this.#dialect;
    if (temperature === undefined) return Number.NaN;
    const value = this.#number(fields, { field: temperature.field, divisor: 1 }, line, "a temperature", "temperature");
    if (Number.isNaN(value)) return Number.NaN;
    const glued = parseQuantity((fields[temperature.field] ?? "").trim(), form.decimalMark, form.thousandsMark).unit?.symbol;
    return toCelsius(value, glued ?? temperature.unit);
  }

  /** A value that only serves to check others: one that cannot be read is none. */
  #side(fields: readonly string[], column: ValueColumn, quantity: Quantity): number {
    const { form } = this.#dialect;
    const { value, unit } = parseQuantity((fields[column.field] ?? "").trim(), form.decimalMark, form.thousandsMark);
    return unit !== undefined && unit.quantity !== quantity ? Number.NaN : value / (unit?.divisor ?? column.divisor);
  }

  #refuse(bad: BadField): void {
    this.#badCount++;
    if (this.#bad.length < problemsTold) this.#bad.push(bad);
  }

  /** Lines of words that a row of data follows are no summary below the data: each is a problem of its own. */
  #tailIsNone(): void {
    for (const { line, fields, field } of this.#tail) this.#refuse({ line, field, text: (fields[field] ?? "").trim(), what: "a time" });
    this.#tail = [];
  }

  /**
   * Closes the reading. Words below the last row of data are counted as left out; where there are no rows at all they are problems.
   * @param isCut  whether the file stops without a line end: a last row that is the only short one was then cut off, its last number with it
   */
  finish(isCut: boolean): Rows {
    const last = this.#last;
    if (
      isCut &&
      last !== undefined &&
      this.#rows > 1 &&
      this.#short === 1 &&
      last.fields.length < this.#dialect.fieldCount &&
      this.#tail.length === 0
    )
      this.#refuse({ line: last.line, field: last.fields.length - 1, text: last.fields.at(-1) ?? "", what: "a whole last row" });
    if (this.#kept.length === 0) this.#tailIsNone();
    const [first] = this.#tail;
    this.#excluded += this.#tail.length;
    return {
      ...this.#kept.finish(),
      temperaturesC: this.#temperaturesC.finish(),
      powersW: this.#powersW.finish(),
      chargesAh: this.#chargesAh.finish(),
      marks: this.#marks,
      rows: this.#rows,
      blank: this.#blank,
      excluded: this.#excluded,
      empty: this.#empty,
      single: this.#single,
      isRising: this.#isRising,
      sumA: this.#sumA,
      tail:
        first === undefined
          ? undefined
          : { line: first.line, lines: this.#tail.length, text: first.fields.find((field) => field.trim() !== "")?.trim() ?? "" },
      nines: this.#nines,
      sample: this.#sample,
      bad: this.#bad,
      badCount: this.#badCount,
    };
  }
}

/** Whether a row begins with a word, a comment sign or a drawn line: such a row is none of data. */
function isWords(fields: readonly string[]): boolean {
  const first = fields.find((field) => field.trim() !== "")?.trim() ?? "";
  return /^(?:\p{L}{2}|#|[-=*_]{3})/u.test(first);
}

/** Turns numbers as they are written into volts, amperes, watts or ampere-hours; into no value where the log has no such column. */
function toUnit(values: Float64Array, column: ValueColumn | undefined): void {
  if (column === undefined) values.fill(Number.NaN);
  else if (column.divisor !== 1) for (let row = 0; row < values.length; row++) values[row] = (values[row] as number) / column.divisor;
}

function toCelsius(value: number, unit: (typeof quantityUnits.temperature)[number] | string): number {
  if (unit === "K") return value - 273.15;
  return unit === "°F" ? ((value - 32) * 5) / 9 : value;
}
