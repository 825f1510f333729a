/** Plain values inside a phrase: how they are recognised in English text, and how they are written in another language. */
import type { Language } from "./languages.ts";

const number = String.raw`[+\u2212-]?\d+(?:[\u00A0\u202F]\d{3}(?!\d))*(?:\.\d+)?`;
const space = String.raw`[ \u00A0\u202F]`;
/** Units that the results use; a currency is three capitals. Longer ones first, so that "m³/h" is not read as "m". */
const unit = String.raw`(?:kg\/l|m³\/h|mV\/K|kWh|mAh|Ah|Wh|mV|mA|mΩ|kg|cm²|min|°C|%|[A-Z]{3}\b|A|V|W|K|h|s|d|g|l)`;
const range = `${number}(?: to ${number})?`;

/** Recognised at a position, as much as can be: "12.1 to 13.4" is one range, and never the number 12.1 with words behind it. */
const recognised = {
  /** 12.1, −0.24, 10 000 */
  number: `${number}`,
  /** 12.1 or 12.1 to 13.4 */
  range: `${range}`,
  /** A range with a unit: 8 A, 0.0 to 3.0 Ah, 24 A or more; with the middle before it: 22 Ah (16 to 39) */
  quantity: `${range}(?:${space}${unit})?(?: or (?:more|less))?(?: \\((?:less|${number}) to (?:more|${number})\\))?`,
  /** 1, 2 and 4 */
  numbers: String.raw`\d+(?:, \d+)*(?: and \d+)?`,
  /** 42 min, 6 d 15 h */
  duration: `${number}${space}(?:min|h|d)(?: ${number}${space}(?:min|h))?`,
  /** 2026-04-29 */
  date: String.raw`\d{4}-\d{2}-\d{2}`,
  /** 2026-04-13 09:10 */
  instant: String.raw`\d{4}-\d{2}-\d{2} \d{2}:\d{2}`,
  /** What stands between double quotes, as a file has it. */
  quoted: '[^"]+',
  /** A file's name, with a part's number where a log was cut in parts; it ends where the pattern goes on. */
  file: null,
  /** Words that nobody translates; they may be anything, and end where the pattern goes on. */
  name: null,
} as const;
export type PlainKind = keyof typeof recognised;

export function isPlainKind(text: string): text is PlainKind {
  return Object.hasOwn(recognised, text);
}

const sticky = new Map(
  Object.entries(recognised).flatMap(([kind, source]) => (source === null ? [] : [[kind, new RegExp(source, "y")] as const])),
);

/**
 * Where a value that begins at a position ends.
 * @returns the position after it; undefined where no such value begins there, and for names, which show no end of their own
 */
export function endOfValue(kind: PlainKind, text: string, from: number): number | undefined {
  const pattern = sticky.get(kind);
  if (pattern === undefined) return undefined;
  pattern.lastIndex = from;
  return pattern.test(text) ? pattern.lastIndex : undefined;
}

const words = {
  pl: { or: "lub", more: "więcej", less: "mniej", and: "i" },
  de: { or: "oder", more: "mehr", less: "weniger", and: "und" },
} as const;

/** Names a file by its ending, or a part of one: "Log 12.csv", "block.txt~2". */
const fileName = /^[^\s,;:"“”][^,;:"“”]*\.\w*\p{L}\w*(?:~\d+)?$/u;

/** Whether words cut out of a text can be a value of a kind that shows no end of its own. */
export function isValue(kind: PlainKind, text: string): boolean {
  return kind !== "file" || fileName.test(text);
}

/** Writes a value in a language: decimal comma, real minus, ranges in words, days in its own order. Units and names stay as they are. */
export function writeValue(kind: PlainKind, text: string, language: Language): string {
  switch (kind) {
    case "name":
    case "quoted":
    case "file":
      return text;
    case "date":
    case "instant":
      return writeDay(text, language);
    case "numbers":
      return text.replace(" and ", ` ${words[language].and} `);
    default:
      return writeNumbers(text, language);
  }
}

/** A calendar's day, which no zone shifts, in the figures and the order of the language; a time of day behind it stays. */
function writeDay(text: string, language: Language): string {
  const format = new Intl.DateTimeFormat(language, { year: "numeric", month: "2-digit", day: "2-digit", timeZone: "UTC" });
  return format.format(new Date(`${text.slice(0, 10)}T00:00:00Z`)) + text.slice(10);
}

function writeNumbers(text: string, language: Language): string {
  const { or, more, less } = words[language];
  return text
    .replace(new RegExp(`(${number}|\\bless) to (${number}|more\\b)`, "g"), (_, from: string, to: string) =>
      language === "pl" ? `od ${from} do ${to}` : `${from} bis ${to}`,
    )
    .replace(/ or (?=more|less)/, ` ${or} `)
    .replace(/\bmore\b/, more)
    .replace(/\bless\b/, less)
    .replace(/(\d)\.(\d)/g, "$1,$2")
    .replace(/(^|[ (])-(?=\d)/g, "$1\u2212");
}

/** The number that a word beside a value goes by, with its decimals: the last one written, "5" of "2 to 5". NaN for a value without number. */
export function countOf(text: string): { readonly count: number; readonly decimals: number } {
  const last =
    text
      .match(/\d+(?:[\u00A0\u202F]\d{3})*(?:\.\d+)?/g)
      ?.at(-1)
      ?.replace(/[\u00A0\u202F]/g, "") ?? "";
  return { count: last === "" ? Number.NaN : Number(last), decimals: last.split(".")[1]?.length ?? 0 };
}
