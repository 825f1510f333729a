/**
 * Works out how a log file is written: what the instrument's record says, and for the rest what the file itself shows.
 * Each choice is told with where it came from, so that the test page can show how the file was read.
 */
import { type Dialect, quantityUnits } from "../nouns/instrument.ts";
import type { Place, Problem } from "../nouns/problem.ts";
import { type DateOrder, isDateAlone, looksLikeTime, parseClockS, parseInstantMs, parseWallClockMs } from "./clock.ts";
import { type DecimalMark, parseNumber } from "./numbers.ts";
import { nearest } from "./record.ts";

/** One choice of how a file is read. */
export type ReadAs = { readonly what: string; readonly value: string; readonly from: "instrument record" | "test record" | "detected" };

export type TimeReading =
  | { readonly kind: "elapsed"; readonly unitS: number }
  | { readonly kind: "clock" }
  | { readonly kind: "unix"; readonly unitS: number }
  | { readonly kind: "iso" }
  | { readonly kind: "local"; readonly order: DateOrder };

/** A dialect with nothing left open. Field numbers count from 0. */
export type ResolvedDialect = {
  readonly encoding: string;
  readonly delimiter: string;
  readonly decimalMark: DecimalMark;
  /** Lines above the first row of data, headings included. */
  readonly linesBeforeData: number;
  readonly headings: readonly string[] | undefined;
  /** Fields of a whole row. */
  readonly fieldCount: number;
  readonly time: TimeReading;
  readonly timeField: number;
  readonly dateField: number | undefined;
  readonly voltage: { readonly field: number; readonly divisor: number } | undefined;
  readonly current: { readonly field: number; readonly divisor: number } | undefined;
  readonly temperature: { readonly field: number; readonly unit: (typeof quantityUnits.temperature)[number] } | undefined;
  /** +1 or -1 turns the file's current into "into the battery is positive"; undefined: to be told from the whole file. */
  readonly currentSign: 1 | -1 | undefined;
  readonly missing: ReadonlySet<string>;
  readonly readAs: readonly ReadAs[];
};

/** Divisors, since 12200 / 1000 is 12.2 to the last digit and 12200 × 0.001 is not. */
const unitDivisors: Readonly<Record<string, number>> = { V: 1, mV: 1000, A: 1, mA: 1000 };
const timeUnitS: Readonly<Record<string, number>> = { ms: 1e-3, s: 1, min: 60, h: 3600, d: 86_400 };

/** Texts that recorders write for "no value". */
const usualMissing = ["", "-", "--", "---", "----", "OL", "O.L", "NaN", "nan", "NAN", "null", "n/a", "N/A", "#N/A", "inf", "-inf"];

const delimiters = [";", "\t", ",", "|", " "] as const;
const delimiterNames: Readonly<Record<string, string>> = { ";": "semicolon", "\t": "tab", ",": "comma", "|": "bar", " ": "space" };

/** Headings of what a recorder may log beside voltage and current, and that is left unread on purpose. */
const otherQuantity = /^(?:n|no|nr|index|row|sample|count|energy|capacity|charge|power|status|mode|m?[aw]h|m?w)\b/i;

/** Splits one line into fields the way csv-parse does for a line that ends its quotes: enough to look at a file's head. */
export function splitFields(line: string, delimiter: string): string[] {
  if (!line.includes('"')) return line.split(delimiter);
  const fields: string[] = [];
  let field = "";
  let quoted = false;
  for (let i = 0; i < line.length; i++) {
    const character = line.charAt(i);
    if (character === '"') {
      if (quoted && line.charAt(i + 1) === '"') {
        field += '"';
        i++;
      } else quoted = !quoted;
    } else if (character === delimiter && !quoted) {
      fields.push(field);
      field = "";
    } else field += character;
  }
  fields.push(field);
  return fields;
}

type Layout = {
  delimiter: string;
  decimalMark: DecimalMark;
  firstDataLine: number;
  fieldCount: number;
  dataRows: number;
  /** Fields of those rows that are numbers, times or missing. */
  readable: number;
};

/** How much of a row must be numbers, times or missing: all of it, or, for recorders that add a column of words, half. */
type Strictness = "whole" | "half";

/** The delimiter and decimal mark under which most of the head's lines are rows of numbers and times; ties go to the first tried. */
function findLayout(lines: readonly string[], declared: Dialect | undefined, missing: ReadonlySet<string>): Layout | undefined {
  return bestLayout(lines, declared, missing, "whole") ?? bestLayout(lines, declared, missing, "half");
}

function bestLayout(
  lines: readonly string[],
  declared: Dialect | undefined,
  missing: ReadonlySet<string>,
  strictness: Strictness,
): Layout | undefined {
  let best: Layout | undefined;
  for (const delimiter of declared?.delimiter === undefined ? delimiters : [declared.delimiter]) {
    for (const decimalMark of declared?.decimalMark === undefined ? ([".", ","] as const) : [declared.decimalMark]) {
      const layout = layoutUnder(lines, delimiter, decimalMark, missing, declared?.preambleLines ?? 0, strictness);
      if (layout === undefined) continue;
      const isBetter =
        best === undefined || layout.dataRows > best.dataRows || (layout.dataRows === best.dataRows && layout.readable > best.readable);
      if (isBetter) best = layout;
    }
  }
  return best;
}

function layoutUnder(
  lines: readonly string[],
  delimiter: string,
  decimalMark: DecimalMark,
  missing: ReadonlySet<string>,
  skip: number,
  strictness: Strictness,
): Layout | undefined {
  const counts = new Map<number, { rows: number; first: number; readable: number }>();
  for (let index = skip; index < lines.length; index++) {
    const fields = splitFields(lines[index] ?? "", delimiter);
    if (fields.length < 2) continue;
    const { readable, numbers } = countReadable(fields, decimalMark, missing);
    const isData = strictness === "whole" ? readable === fields.length : readable >= 2 && readable * 2 >= fields.length;
    if (!isData || numbers === 0) continue;
    const seen = counts.get(fields.length);
    if (seen === undefined) counts.set(fields.length, { rows: 1, first: index, readable });
    else {
      seen.rows++;
      seen.readable += readable;
    }
  }
  let best: Layout | undefined;
  for (const [fieldCount, { rows, first, readable }] of counts)
    if (best === undefined || rows > best.dataRows)
      best = { delimiter, decimalMark, firstDataLine: first, fieldCount, dataRows: rows, readable };
  if (best === undefined) return undefined;
  return { ...best, firstDataLine: firstRowAbove(lines, best, missing, skip) };
}

/** How many fields of a row are numbers, times or missing, and how many of these are numbers. */
function countReadable(
  fields: readonly string[],
  decimalMark: DecimalMark,
  missing: ReadonlySet<string>,
): { readable: number; numbers: number } {
  let readable = 0;
  let numbers = 0;
  for (const field of fields) {
    const text = field.trim();
    if (!Number.isNaN(parseNumber(text, decimalMark))) numbers++;
    else if (!missing.has(text) && !looksLikeTime(text)) continue;
    readable++;
  }
  return { readable, numbers };
}

/** Where the data start when rows that can be read but for a field are counted in, so that a garbled first row is told, not taken for headings. */
function firstRowAbove(lines: readonly string[], layout: Layout, missing: ReadonlySet<string>, skip: number): number {
  let first = layout.firstDataLine;
  while (first > skip) {
    const fields = splitFields(lines[first - 1] ?? "", layout.delimiter);
    const { readable, numbers } = countReadable(fields, layout.decimalMark, missing);
    if (fields.length !== layout.fieldCount || numbers === 0 || readable * 2 <= fields.length) break;
    first--;
  }
  return first;
}

const roleWords = {
  time: /^(?:date[ _-]?time|time|timestamp|date|elapsed|clock|datetime|zeit|datum|uhrzeit|czas|data|godzina|heure|temps|hora|tiempo|t)(?:\b|_)/i,
  voltage: /^(?:v|u|volt|volts|voltage|spannung|napi[eę]cie|tension|voltaje|tensi[oó]n|ubat|vbat|u_?batt?|v_?batt?)(?:\b|_)/i,
  current: /^(?:i|a|amp|amps|ampere|current|strom|pr[aą]d|courant|corriente|ibat|i_?batt?)(?:\b|_)/i,
  // Not "temps", which is French for time.
  temperature: /^(?:temp(?!s\b)|temperatur|temperatura|temp[eé]rature)/i,
} as const;

const headingUnit = /(?:[[(/_]|\s|^)\s*(mV|V|mA|A|°C|°F|degC|degF|C|F|K|ms|s|sec|min|h|d)\s*[\])]?\s*$/;

type Heading = { readonly text: string; readonly unit: string | undefined };

function readHeading(name: string, unitRow: string | undefined): Heading {
  const text = name.trim().replace(/^\uFEFF/, "");
  const unit = unitRow?.trim().replace(/^[[(]|[\])]$/g, "") || headingUnit.exec(text)?.[1];
  const spelled: Readonly<Record<string, string>> = { degC: "°C", C: "°C", degF: "°F", F: "°F", sec: "s" };
  return { text, unit: unit === undefined ? undefined : (spelled[unit] ?? unit) };
}

const onlyUnits = /^\s*[[(]?\s*(?:mV|V|mA|A|°C|°F|C|F|K|ms|s|sec|min|h|d|W|Wh|Ah|mAh|%)?\s*[\])]?\s*$/;

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

/**
 * Resolves a dialect for one file.
 *
 * @param head      the file's first lines, whole ones only, decoded
 * @param declared  what the instrument's record says; each field of it is taken as it stands
 * @param at        the log file, and where in the instrument's record the dialect stands
 * @returns the dialect, or problems that say what the record must tell
 */
export function resolveDialect(
  head: readonly string[],
  encoding: string,
  declared: Dialect | undefined,
  file: string,
  recordPlace: Place | undefined,
): { value: ResolvedDialect | undefined; problems: Problem[] } {
  const problems: Problem[] = [];
  const readAs: ReadAs[] = [];
  const note = (what: string, value: string, isDeclared: boolean): void => {
    readAs.push({ what, value, from: isDeclared ? "instrument record" : "detected" });
  };
  const recordNotes = [
    recordPlace === undefined
      ? "test.yaml names no recorder for this log: instruments: recorder: with a record in data/instruments"
      : `${recordPlace.file}:${recordPlace.line ?? 1} describes this recorder`,
  ];
  const ask = (found: string, expected: string, mend: string, line = 1): void => {
    problems.push({ id: "log-dialect", level: "error", place: { file, line, column: 1 }, found, expected, mend, notes: recordNotes });
  };

  const missing = new Set([...usualMissing, ...(declared?.missing ?? [])]);
  const layout = findLayout(head, declared, missing);
  if (layout === undefined) {
    const shown = head.find((line) => line.trim() !== "");
    if (shown === undefined) return { value: undefined, problems: [emptyLog(file, "an empty file")] };
    ask(
      `"${shown.slice(0, 60)}"`,
      "rows of numbers, parted by semicolon, tab, comma, bar or space",
      "where nothing was recorded, take the log out of test.yaml; else say in the recorder's record how it writes: dialect: with delimiter, decimalMark and preambleLines",
    );
    return { value: undefined, problems };
  }
  const { delimiter, decimalMark, firstDataLine } = layout;
  note("encoding", encoding, declared?.encoding !== undefined);
  note("delimiter", delimiterNames[delimiter] ?? delimiter, declared?.delimiter !== undefined);
  note("decimal mark", decimalMark === "." ? "point" : "comma", declared?.decimalMark !== undefined);

  const aboveIsUnits = firstDataLine > 1 && splitFields(head[firstDataLine - 1] ?? "", delimiter).every((field) => onlyUnits.test(field));
  const headingLine = aboveIsUnits ? firstDataLine - 2 : firstDataLine - 1;
  const headingPlace = Math.max(1, headingLine + 1);
  const headingFields = headingLine >= 0 ? splitFields(head[headingLine] ?? "", delimiter) : [];
  const hasHeadings =
    declared?.headings ?? (headingFields.length === layout.fieldCount && headingFields.some((field) => field.trim() !== ""));
  const unitRow = aboveIsUnits ? splitFields(head[firstDataLine - 1] ?? "", delimiter) : [];
  const headings = hasHeadings ? headingFields.map((field, index) => readHeading(field, unitRow[index])) : undefined;
  note("lines before the data", String(firstDataLine), declared?.preambleLines !== undefined);
  note("headings", headings === undefined ? "none" : headings.map((heading) => heading.text).join(" | "), declared?.headings !== undefined);

  type Role = keyof typeof roleWords;
  const named = (role: Role): { name?: string | undefined; number?: number | undefined } | undefined => declared?.[role];
  /** Field of a role: as declared by name or number, else the one heading that speaks of it. */
  const findField = (role: Role, taken: readonly number[]): number | undefined => {
    const wish = named(role);
    if (wish?.number !== undefined) {
      if (wish.number <= layout.fieldCount) return wish.number - 1;
      ask(
        `${layout.fieldCount} columns`,
        `a column number ${wish.number} for ${role}`,
        `correct dialect: ${role}: number: in the recorder's record`,
        firstDataLine + 1,
      );
      return undefined;
    }
    if (wish?.name !== undefined) {
      const index = headings?.findIndex((heading) => heading.text === wish.name?.trim()) ?? -1;
      if (index >= 0) return index;
      const known = headings?.map((heading) => heading.text) ?? [];
      const near = nearest(wish.name, known);
      ask(
        known.length === 0 ? "no headings" : `the headings ${known.map((name) => `"${name}"`).join(", ")}`,
        `a column named "${wish.name}" for ${role}`,
        near === undefined ? `correct dialect: ${role}: name: in the recorder's record` : `did you mean "${near}"?`,
        headingPlace,
      );
      return undefined;
    }
    const candidates = (headings ?? []).flatMap((heading, index) =>
      !taken.includes(index) && roleWords[role].test(heading.text) ? [index] : [],
    );
    if (candidates.length > 1 && role !== "temperature")
      ask(
        candidates.map((index) => `"${headings?.[index]?.text ?? ""}"`).join(" and "),
        `one column for ${role}`,
        `name the right one in the recorder's record: dialect: ${role}: { name: … }`,
        headingPlace,
      );
    return candidates[0];
  };

  const voltageField = findField("voltage", []);
  const currentField = findField("current", []);
  const temperatureField = findField("temperature", []);
  const taken = [voltageField, currentField, temperatureField].filter((field) => field !== undefined);
  const rows = head
    .slice(firstDataLine)
    .map((line) => splitFields(line, delimiter))
    .filter((fields) => fields.length === layout.fieldCount);
  const parted =
    declared?.time?.name === undefined && declared?.time?.number === undefined ? findDateAndTime(rows[0], headings, taken) : undefined;
  const timeField =
    parted?.timeField ?? findField("time", taken) ?? (headings === undefined && declared?.time?.number === undefined ? 0 : undefined);
  let dateField = parted?.dateField;
  if (declared?.time?.dateName !== undefined) {
    const dateName = declared.time.dateName;
    dateField = headings?.findIndex((heading) => heading.text === dateName);
    if (dateField === undefined || dateField < 0) {
      ask(
        `the headings ${(headings ?? []).map((heading) => `"${heading.text}"`).join(", ")}`,
        `a column named "${dateName}" for the date`,
        "correct dialect: time: dateName: in the recorder's record",
        headingPlace,
      );
      dateField = undefined;
    }
  }
  if (timeField === undefined)
    ask(
      headings === undefined ? "no headings" : `the headings ${headings.map((heading) => `"${heading.text}"`).join(", ")}`,
      "a column of times",
      "name it in the recorder's record: dialect: time: { name: … } or { number: … }",
      headingPlace,
    );
  if (voltageField === undefined && currentField === undefined && problems.length === 0)
    ask(
      headings === undefined
        ? `${layout.fieldCount} columns without headings`
        : `the headings ${headings.map((heading) => `"${heading.text}"`).join(", ")}`,
      "a column of voltage or current",
      "say in the recorder's record which is which: dialect: voltage: { number: 2 }, current: { number: 3 }",
      headingPlace,
    );
  if (timeField === undefined || problems.length > 0) return { value: undefined, problems };

  const unitOf = (role: "voltage" | "current" | "temperature", field: number, fallback: string): string => {
    const wish = declared?.[role]?.unit;
    const heading = headings?.[field]?.unit;
    const allowed: readonly string[] = quantityUnits[role];
    const unit = wish ?? (heading !== undefined && allowed.includes(heading) ? heading : fallback);
    note(
      `${role} column`,
      `${headings?.[field]?.text ?? `number ${field + 1}`}, in ${unit}`,
      named(role)?.name !== undefined || named(role)?.number !== undefined,
    );
    return unit;
  };
  const voltage =
    voltageField === undefined ? undefined : { field: voltageField, divisor: unitDivisors[unitOf("voltage", voltageField, "V")] ?? 1 };
  const current =
    currentField === undefined ? undefined : { field: currentField, divisor: unitDivisors[unitOf("current", currentField, "A")] ?? 1 };
  const temperature =
    temperatureField === undefined
      ? undefined
      : { field: temperatureField, unit: unitOf("temperature", temperatureField, "°C") as (typeof quantityUnits.temperature)[number] };

  for (const [role, field] of [
    ["voltage", voltageField],
    ["current", currentField],
  ] as const) {
    const leftOver = (headings ?? []).filter(
      (heading, index) =>
        ![timeField, dateField, ...taken].includes(index) &&
        !otherQuantity.test(heading.text) &&
        !Number.isNaN(parseNumber(rows[0]?.[index] ?? "", decimalMark)),
    );
    if (field === undefined && leftOver.length > 0)
      problems.push({
        id: "log-column",
        level: "doubt",
        place: { file, line: headingPlace, column: 1 },
        found: `${leftOver.map((heading) => `"${heading.text}"`).join(", ")}, which ${leftOver.length === 1 ? "is" : "are"} not read`,
        expected: `a column of ${role} among the headings`,
        mend: `name it in the recorder's record: dialect: ${role}: { name: … }, unless this recorder logs no ${role}`,
        notes: recordNotes,
      });
  }
  const writtenTimes = rows.flatMap((fields) => {
    const time = fields[timeField]?.trim();
    const date = dateField === undefined ? undefined : fields[dateField]?.trim();
    return time === undefined || time === "" ? [] : [date === undefined ? time : `${date} ${time}`];
  });
  const readableTimes = writtenTimes.filter((text) => looksLikeTime(text) || !Number.isNaN(parseNumber(text, decimalMark)));
  const timeTexts = readableTimes.length > 0 ? readableTimes : writtenTimes;
  const time = resolveTime(timeTexts, declared?.time, decimalMark, headings?.[timeField]?.unit);
  if ("ask" in time) {
    ask(`"${timeTexts[0] ?? ""}"`, time.ask, time.mend, firstDataLine + 1);
    return { value: undefined, problems };
  }
  const timeNames = [dateField, timeField].flatMap((field) =>
    field === undefined ? [] : [headings?.[field]?.text ?? `number ${field + 1}`],
  );
  note("time column", `${timeNames.join(" and ")}, ${describeTime(time)}`, declared?.time?.kind !== undefined);
  if (declared?.chargingSign !== undefined) note("sign of charging current", declared.chargingSign, true);

  return {
    value: {
      encoding,
      delimiter,
      decimalMark,
      linesBeforeData: firstDataLine,
      headings: headings?.map((heading) => heading.text),
      fieldCount: Math.max(layout.fieldCount, headings?.length ?? 0),
      time,
      timeField,
      dateField,
      voltage,
      current,
      temperature,
      currentSign: declared?.chargingSign === undefined ? undefined : declared.chargingSign === "positive" ? 1 : -1,
      missing,
      readAs,
    },
    problems,
  };
}

/** What would have to be known to read the times, and how to say it. */
type TimeQuestion = { readonly ask: string; readonly mend: string };

const nameTheDate =
  "name the column of the date beside it in the recorder's record: dialect: time: { name: …, dateName: … }; without a date a time of day cannot be placed";

/** How the time column is read, or what would have to be known for it. A few garbled rows do not decide: they are told one by one later. */
function resolveTime(
  texts: readonly string[],
  declared: Dialect["time"],
  decimalMark: DecimalMark,
  headingUnit: string | undefined,
): TimeReading | TimeQuestion {
  const unitS = timeUnitS[declared?.unit ?? headingUnit ?? ""];
  const kind = declared?.kind;
  const share = (reads: (text: string) => number): number =>
    texts.length === 0 ? 0 : texts.filter((text) => !Number.isNaN(reads(text))).length / texts.length;
  const most = (reads: (text: string) => number): boolean => share(reads) >= 0.9;
  const asNumber = (text: string): number => parseNumber(text, decimalMark);
  const numeric = most(asNumber);
  const firstNumber = texts.map(asNumber).find((value) => !Number.isNaN(value)) ?? Number.NaN;
  if (kind === "unix" || (kind === undefined && numeric && firstNumber > 9e8))
    return { kind: "unix", unitS: unitS ?? (firstNumber > 1e11 ? 1e-3 : 1) };
  if (numeric && (kind === undefined || kind === "elapsed")) return { kind: "elapsed", unitS: unitS ?? 1 };
  if (most(parseClockS)) {
    if (kind === "elapsed" || (kind === undefined && parseClockS(texts[0] ?? "") < 60)) return { kind: "clock" };
    if (kind === undefined)
      return {
        ask: "to know whether h:mm:ss counts from the start or is the time of day",
        mend: `where it counts, say so in the recorder's record: dialect: time: { kind: elapsed }; where it is the time of day, ${nameTheDate}`,
      };
    return { ask: "a date with the time of day", mend: nameTheDate };
  }
  if (most(parseInstantMs) && (kind === undefined || kind === "iso")) return { kind: "iso" };
  if (kind === undefined || kind === "local") {
    const orders: readonly DateOrder[] =
      declared?.order === undefined ? ["year-month-day", "day-month-year", "month-day-year"] : [declared.order];
    const shares = orders.map((order) => share((text) => parseWallClockMs(text, order)));
    const needed = Math.max(0.9, ...shares);
    const possible = orders.filter((_, index) => (shares[index] ?? 0) >= needed);
    const order = declared?.order === undefined ? onlyOrder(possible, texts[0] ?? "") : possible[0];
    if (order !== undefined && !texts.some((text) => text.includes(":"))) return { ask: "a time of day with the date", mend: nameTheDate };
    if (order !== undefined) return { kind: "local", order };
    if (possible.length > 1)
      return {
        ask: "to know whether the day or the month comes first",
        mend: "say in the recorder's record: dialect: time: { order: day-month-year } or { order: month-day-year }",
      };
  }
  return {
    ask: kind === undefined ? "times that count from the start, carry a zone, or are dates with times" : `times of the kind "${kind}"`,
    mend: "say in the recorder's record: dialect: time: { kind: …, order: … or unit: … }",
  };
}

/** The one order of a date's parts under which a log can be read; undefined where that is a guess. */
function onlyOrder(possible: readonly DateOrder[], text: string): DateOrder | undefined {
  if (possible.includes("year-month-day") && /^\d{4}/.test(text)) return "year-month-day";
  const rest = possible.filter((order) => order !== "year-month-day");
  if (rest.length === 1) return rest[0];
  // A dotted date is day first wherever it is written; a slashed one is not.
  return rest.includes("day-month-year") && /^\d{1,2}\.\d{1,2}\.\d/.test(text) ? "day-month-year" : undefined;
}

/** The two columns of a recorder that writes date and time of day apart; undefined where the first row shows no such pair. */
function findDateAndTime(
  row: readonly string[] | undefined,
  headings: readonly Heading[] | undefined,
  taken: readonly number[],
): { dateField: number; timeField: number } | undefined {
  const speakOfTime = (headings ?? []).flatMap((heading, index) =>
    !taken.includes(index) && roleWords.time.test(heading.text) ? [index] : [],
  );
  const [dateField, ...moreDates] = speakOfTime.filter((index) => isDateAlone(row?.[index] ?? ""));
  const [timeField, ...moreTimes] = speakOfTime.filter((index) => !Number.isNaN(parseClockS(row?.[index] ?? "")));
  if (dateField === undefined || timeField === undefined || moreDates.length + moreTimes.length > 0) return undefined;
  return { dateField, timeField };
}

function describeTime(time: TimeReading): string {
  switch (time.kind) {
    case "elapsed":
      return `counted from the start, unit ${time.unitS} s`;
    case "clock":
      return "counted from the start as h:mm:ss";
    case "unix":
      return `counted from 1970 UTC, unit ${time.unitS} s`;
    case "iso":
      return "date and time with offset";
    case "local":
      return `local date and time, ${time.order}`;
  }
}
