import { distance } from "fastest-levenshtein";
import { isMap, isNode, isScalar, LineCounter, type Node, parseDocument, type YAMLMap, type YAMLParseError } from "yaml";
import type { z } from "zod";
import type { Checked, Place, Problem } from "../nouns/problem.ts";

/** A record read from YAML: its value, its text, and where each of its fields stands in the file. */
export type PlacedRecord<T> = PlainRecord<T> & { placeOf(fieldPath: readonly (string | number)[]): Place };

/** A record as plain data, which can be kept, and sent to another thread. */
export type PlainRecord<T> = { readonly value: T; readonly file: string; readonly text: string };

/**
 * Gives a record its places back. The text is parsed again when the first place is asked for, which is seldom: only problems have places.
 */
export function placeRecord<T>({ value, file, text }: PlainRecord<T>): PlacedRecord<T> {
  let places: ((fieldPath: readonly (string | number)[]) => Place) | undefined;
  return {
    value,
    file,
    text,
    placeOf(fieldPath) {
      places ??= placesIn(text, file);
      return places(fieldPath);
    },
  };
}

function placesIn(text: string, file: string): (fieldPath: readonly (string | number)[]) => Place {
  const { document, lineCounter } = parseYaml(text);
  return (fieldPath) => {
    const { line, col } = lineCounter.linePos(offsetOf(document.contents, fieldPath));
    return { file, line, column: col };
  };
}

function parseYaml(text: string) {
  const lineCounter = new LineCounter();
  return {
    document: parseDocument(text, { lineCounter, version: "1.2", schema: "core", uniqueKeys: true, prettyErrors: false }),
    lineCounter,
  };
}

/** A record larger than this is refused: it is not a record any more. */
const largestRecordBytes = 1_000_000;

/**
 * Reads a YAML record and holds it against its schema.
 *
 * @returns the record, or `undefined` with one problem for each fault, each at its line and column
 * Never throws: text that is no YAML, duplicate keys, aliases (refused: they can be made to explode) and wrong fields are all problems.
 */
export function readRecord<S extends z.ZodType>(text: string, file: string, schema: S): Checked<PlacedRecord<z.output<S>> | undefined> {
  if (text.length > largestRecordBytes)
    return refuse({
      id: "record-too-large",
      level: "error",
      place: { file },
      found: `${text.length} characters`,
      expected: `a record of at most ${largestRecordBytes} characters`,
      mend: "move measurements into readings.csv or logs/; a record only describes",
    });
  const { document, lineCounter } = parseYaml(text);
  const at = (offset: number): Place => {
    const { line, col } = lineCounter.linePos(offset);
    return { file, line, column: col };
  };
  if (document.errors.length > 0)
    return {
      value: undefined,
      problems: firstOfEachLine(document.errors.map((error) => problemOfYaml(error, at(error.pos[0]), text))),
    };
  const aliasAt = text.search(/(?:^|[\s:[{,-])\*[A-Za-z0-9_]+\s*(?:$|[,\]}\n])/m);
  let plain: unknown;
  try {
    plain = document.toJS({ maxAliasCount: 0 });
  } catch {
    return refuse({
      id: "record-alias",
      level: "error",
      place: aliasAt < 0 ? { file } : at(aliasAt),
      found: "a YAML alias",
      expected: "each value written out",
      mend: "write the value where it is needed; aliases are refused because a small file can unfold into a huge one",
    });
  }
  const placeOf = (fieldPath: readonly (string | number)[]): Place => at(offsetOf(document.contents, fieldPath));
  const parsed = schema.safeParse(plain ?? {});
  if (parsed.success) return { value: placeRecord({ value: parsed.data, file, text }), problems: [] };
  const problems = parsed.error.issues.flatMap((issue) => problemsOfIssue(issue, plain, schema, placeOf, document.contents, at));
  return { value: undefined, problems };
}

/** One fault of YAML often sets off more on its line; the first is the one to mend. */
function firstOfEachLine(problems: readonly Problem[]): Problem[] {
  return problems.filter((problem, index) => problems.findIndex((other) => other.place.line === problem.place.line) === index);
}

function problemOfYaml(error: YAMLParseError, place: Place, text: string): Problem {
  const line = (text.split(/\r\n|\n|\r/)[(place.line ?? 1) - 1] ?? "").trim();
  const tell = (found: string, expected: string, mend: string): Problem => ({
    id: "record-yaml",
    level: "error",
    place,
    found,
    expected,
    mend,
  });
  if (error.code === "DUPLICATE_KEY")
    return tell(`${quoteValue(line)}, a field that was there before`, "each field once", "keep one of the two");
  if (error.code === "TAB_AS_INDENT") return tell("a tab as indentation", "two spaces for each level", "put spaces in place of the tab");
  return tell(
    `${quoteValue(line)} (${(error.message.split("\n")[0] ?? "").replace(/\.$/, "").toLowerCase()})`,
    "YAML: one field a line, two spaces for each level",
    'check the indentation, and put text that holds ": " or starts with a special sign into quotes',
  );
}

function refuse(problem: Problem): Checked<undefined> {
  return { value: undefined, problems: [problem] };
}

/** Offset of the deepest node that the path reaches; a key's own place where the value is missing. */
function offsetOf(contents: unknown, fieldPath: readonly (string | number)[]): number {
  let node: unknown = contents;
  let offset = 0;
  if (isNode(node) && node.range) offset = node.range[0];
  for (const step of fieldPath) {
    if (isMap(node)) {
      const pair = (node as YAMLMap).items.find((item) => isScalar(item.key) && String(item.key.value) === String(step));
      if (pair === undefined) return offset;
      const key = pair.key as Node;
      node = pair.value;
      offset = isNode(node) && node.range ? node.range[0] : (key.range?.[0] ?? offset);
    } else if (isNode(node) && "items" in node) {
      node = (node.items as unknown[])[Number(step)];
      if (isNode(node) && node.range) offset = node.range[0];
    } else return offset;
  }
  return offset;
}

function keyOffset(contents: unknown, fieldPath: readonly (string | number)[], key: string): number {
  let node: unknown = contents;
  for (const step of fieldPath) {
    if (isMap(node)) node = node.get(step, true);
    else if (isNode(node) && "items" in node) node = (node.items as unknown[])[Number(step)];
  }
  if (!isMap(node)) return offsetOf(contents, fieldPath);
  const pair = node.items.find((item) => isScalar(item.key) && String(item.key.value) === key);
  return (pair?.key as Node | undefined)?.range?.[0] ?? offsetOf(contents, fieldPath);
}

type Issue = z.core.$ZodIssue;

function problemsOfIssue(
  issue: Issue,
  plain: unknown,
  schema: z.ZodType,
  placeOf: (path: readonly (string | number)[]) => Place,
  contents: unknown,
  at: (offset: number) => Place,
): Problem[] {
  const fieldPath = issue.path.filter((step): step is string | number => typeof step !== "symbol");
  const field = nameOf(fieldPath);
  if (issue.code === "unrecognized_keys") {
    const known = knownKeys(schema, fieldPath);
    return issue.keys.map((key) => {
      const near = nearest(key, known);
      return {
        id: "record-unknown-field",
        level: "error",
        place: at(keyOffset(contents, fieldPath, key)),
        found: `"${key}"`,
        expected: known.length > 0 ? `one of the fields ${known.join(", ")}` : "a field of this record",
        mend: near === undefined ? takeOut(known) : `did you mean "${near}"?`,
      };
    });
  }
  const value = valueAt(plain, fieldPath);
  if (value === undefined)
    return [
      {
        id: "record-missing-field",
        level: "error",
        place: placeOf(fieldPath),
        found: `no ${field}`,
        expected: `${field}: ${expectationOf(issue, schema, fieldPath)}`,
        mend: `add the line "${fieldPath.at(-1) ?? ""}:" with its value`,
      },
    ];
  return [
    {
      id: "record-field",
      level: "error",
      place: placeOf(fieldPath),
      found: `${field}: ${quoteValue(value)}`,
      expected: expectationOf(issue, schema, fieldPath),
      mend: mendFor(issue, value, fieldPath),
    },
  ];
}

/** A field's name as a person says it: fields parted by points, entries of a list counted from 1. */
function nameOf(fieldPath: readonly (string | number)[]): string {
  return (
    fieldPath.map((step, index) => (typeof step === "number" ? `[${step + 1}]` : `${index === 0 ? "" : "."}${step}`)).join("") ||
    "the record"
  );
}

/** What was expected; where that is an object, its fields are named. */
function expectationOf(issue: Issue, schema: z.ZodType, fieldPath: readonly (string | number)[]): string {
  const isObject = issue.code === "invalid_type" && issue.expected === "object";
  const known = isObject ? knownKeys(schema, fieldPath) : [];
  return known.length > 0 ? `fields of its own: ${known.join(", ")}` : expectation(issue);
}

function expectation(issue: Issue): string {
  switch (issue.code) {
    case "invalid_type":
      return kindWords[issue.expected] ?? issue.expected;
    case "invalid_value":
      return `one of ${issue.values.map((value) => String(value)).join(", ")}`;
    case "too_small":
      if (issue.origin === "array") return Number(issue.minimum) === 1 ? "at least one entry" : `at least ${String(issue.minimum)} entries`;
      if (issue.origin === "string") return "a text that is not empty";
      return `${issue.inclusive ? "at least" : "more than"} ${String(issue.minimum)}`;
    case "too_big":
      return `${issue.inclusive ? "at most" : "less than"} ${String(issue.maximum)}`;
    case "invalid_union":
      return unionExpectation(issue);
    default:
      return issue.message;
  }
}

const kindWords: Readonly<Record<string, string>> = {
  number: "a number with a decimal point",
  int: "a whole number",
  string: "a text",
  boolean: "true or false",
  array: "a list, each entry on a line that begins with a dash",
  object: "fields of its own",
};

function unionExpectation(issue: Extract<Issue, { code: "invalid_union" }>): string {
  const options = issue.errors.flatMap((branch) => branch.slice(0, 1).map((inner) => expectation(inner)));
  return [...new Set(options)].join(", or ") || issue.message;
}

function mendFor(issue: Issue, value: unknown, fieldPath: readonly (string | number)[]): string {
  if (issue.code === "invalid_type" && issue.expected === "object")
    return `write each on a line of its own below ${fieldPath.at(-1) ?? "the head"}, two spaces further in`;
  if (typeof value === "string" && /^\s*-?\d+,\d+\s*$/.test(value))
    return `write it with a decimal point: ${value.trim().replace(",", ".")}`;
  const number = typeof value === "string" ? /^\s*(-?\d+(?:[.,]\d+)?)\s*\p{L}/u.exec(value)?.[1] : undefined;
  if (issue.code === "invalid_type" && issue.expected === "number" && number !== undefined)
    return `write the number alone: ${number.replace(",", ".")}`;
  if (issue.code === "invalid_value" && typeof value === "string") {
    const near = nearest(value, issue.values.map(String));
    if (near !== undefined) return `did you mean "${near}"?`;
  }
  if (issue.code === "invalid_type" && issue.expected === "string" && typeof value !== "object")
    return `put it into quotes: "${String(value)}"`;
  return "change the value to what is expected";
}

/** What to do with a field that nobody knows: its words have a place where the record has one for words. */
function takeOut(known: readonly string[]): string {
  const forWords = known.find((key) => key === "notes" || key === "note");
  return forWords === undefined ? "take the field out" : `take the field out, or move its words into ${forWords}`;
}

/** The closest known word, where it is close enough to be a slip of the finger: two letters, one of a word of three, or a third of a long one. */
export function nearest(word: string, known: readonly string[]): string | undefined {
  let best: string | undefined;
  const most = word.length <= 3 ? 1 : Math.max(2, Math.floor(word.length / 3));
  let bestDistance = most + 1;
  for (const candidate of known) {
    const edits = distance(word.toLowerCase(), candidate.toLowerCase());
    if (edits < bestDistance) {
      best = candidate;
      bestDistance = edits;
    }
  }
  return best;
}

function valueAt(plain: unknown, fieldPath: readonly (string | number)[]): unknown {
  let value = plain;
  for (const step of fieldPath) {
    if (typeof value !== "object" || value === null) return undefined;
    value = (value as Record<string | number, unknown>)[step];
  }
  return value;
}

function quoteValue(value: unknown): string {
  if (value === null) return "nothing";
  const text = typeof value === "string" ? value : JSON.stringify(value);
  return `"${text.length > 60 ? `${text.slice(0, 57)}…` : text}"`;
}

/** The fields that an object of the schema knows at a path, looking through optional, default, array and union wrappers. */
function knownKeys(schema: z.ZodType, fieldPath: readonly (string | number)[]): string[] {
  let level: z.ZodType[] = unwrap(schema);
  for (const step of fieldPath) level = level.flatMap((inner) => children(inner, step)).flatMap(unwrap);
  return [...new Set(level.flatMap((inner) => Object.keys(shapeOf(inner) ?? {})))];
}

type Definition = {
  type: string;
  innerType?: z.ZodType;
  element?: z.ZodType;
  options?: z.ZodType[];
  shape?: Record<string, z.ZodType>;
  in?: z.ZodType;
};

function definitionOf(schema: z.ZodType): Definition {
  return schema.def as unknown as Definition;
}

function unwrap(schema: z.ZodType): z.ZodType[] {
  const definition = definitionOf(schema);
  if (definition.innerType !== undefined) return unwrap(definition.innerType);
  if (definition.type === "union" && definition.options !== undefined) return definition.options.flatMap(unwrap);
  if (definition.type === "pipe" && definition.in !== undefined) return unwrap(definition.in);
  return [schema];
}

function shapeOf(schema: z.ZodType): Record<string, z.ZodType> | undefined {
  const definition = definitionOf(schema);
  return definition.type === "object" ? definition.shape : undefined;
}

function children(schema: z.ZodType, step: string | number): z.ZodType[] {
  const shape = shapeOf(schema);
  if (shape !== undefined) {
    const child = shape[String(step)];
    return child === undefined ? [] : [child];
  }
  const { element } = definitionOf(schema);
  return element === undefined ? [] : [element];
}
