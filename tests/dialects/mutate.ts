/** Ways in which files are spoilt: by a slipped byte, by a copy cut short, by a recorder that stumbles, by a spreadsheet that meant well. */
import type { Random } from "./seeded-random.ts";

type Mutation = (bytes: Uint8Array, other: Uint8Array, random: Random) => Uint8Array;

const latin = (text: string): Uint8Array => Uint8Array.from(text, (character) => character.charCodeAt(0) & 0xff);
const textOf = (bytes: Uint8Array): string => Buffer.from(bytes).toString("latin1");

/** Texts that mean something to a reader of logs. */
const tokens = [
  ",",
  ";",
  "\t",
  "|",
  " ",
  '"',
  "\n",
  "\r",
  "\r\n",
  "\0",
  "-",
  "+",
  ".",
  "e9",
  "E",
  "NaN",
  "OL",
  "---",
  "-999",
  "9.9E37",
  "1,234",
  "12,84",
  "V",
  "mA",
  "°C",
  "time",
  "voltage (V)",
  "2026-03-14",
  "01/02/26",
  "23:59:59",
  "AM",
  "PM",
  "Z",
  "+01:00",
  "1773475200",
  "46095.4",
  "\xef\xbb\xbf",
  "\xff\xfe",
  "#",
  "Max",
  "=1+1",
  "''",
  '""',
  "0x1F",
  "1e999",
  "-0",
  "\u00a0",
];

const mutations: readonly Mutation[] = [
  // A byte turned, taken out, put in.
  (bytes, _, random) => {
    const copy = Uint8Array.from(bytes);
    if (copy.length > 0) copy[random.below(copy.length)] = random.below(256);
    return copy;
  },
  (bytes, _, random) => splice(bytes, random.below(bytes.length + 1), 1 + random.below(4), new Uint8Array(0)),
  (bytes, _, random) => splice(bytes, random.below(bytes.length + 1), 0, latin(tokens[random.below(tokens.length)] ?? "")),
  (bytes, _, random) =>
    splice(bytes, random.below(bytes.length + 1), 1 + random.below(6), latin(tokens[random.below(tokens.length)] ?? "")),
  // Cut short, at either end.
  (bytes, _, random) => bytes.slice(0, random.below(bytes.length + 1)),
  (bytes, _, random) => bytes.slice(random.below(bytes.length + 1)),
  // Lines twice, left out, turned about.
  (bytes, _, random) => ofLines(bytes, (lines) => lines.splice(random.below(lines.length), 0, lines[random.below(lines.length)] ?? "")),
  (bytes, _, random) => ofLines(bytes, (lines) => lines.splice(random.below(lines.length), 1 + random.below(3))),
  (bytes, _, random) =>
    ofLines(bytes, (lines) => {
      const [a, b] = [random.below(lines.length), random.below(lines.length)];
      [lines[a], lines[b]] = [lines[b] ?? "", lines[a] ?? ""];
    }),
  // One field exchanged for a token.
  (bytes, _, random) =>
    ofLines(bytes, (lines) => {
      const at = random.below(lines.length);
      const fields = (lines[at] ?? "").split(/([;,\t|])/);
      fields[2 * random.below(Math.ceil(fields.length / 2))] = tokens[random.below(tokens.length)] ?? "";
      lines[at] = fields.join("");
    }),
  // Every separator, or every decimal mark, exchanged.
  (bytes, _, random) =>
    latin(textOf(bytes).replaceAll([",", ";", "\t", "."][random.below(4)] ?? ",", [",", ";", "\t", "|", " ", "."][random.below(6)] ?? ";")),
  (bytes, _, random) => latin(textOf(bytes).replaceAll(/\r\n|\n|\r/g, ["\n", "\r", "\r\n", "\n\n", "\r\r\n"][random.below(5)] ?? "\n")),
  // Two files run together.
  (bytes, other, random) => join(bytes.slice(0, random.below(bytes.length + 1)), other.slice(random.below(other.length + 1))),
  (bytes, other) => join(bytes, other),
];

/** One to four mutations of a file, of which some draw on another. */
export function mutate(bytes: Uint8Array, other: Uint8Array, random: Random): Uint8Array {
  let mutated: Uint8Array = Uint8Array.from(bytes);
  for (let left = 1 + random.below(4); left > 0; left--)
    mutated = mutations[random.below(mutations.length)]?.(mutated, other, random) ?? mutated;
  return mutated;
}

function splice(bytes: Uint8Array, at: number, remove: number, put: Uint8Array): Uint8Array {
  return join(bytes.slice(0, at), put, bytes.slice(Math.min(bytes.length, at + remove)));
}

function join(...parts: readonly Uint8Array[]): Uint8Array {
  return Uint8Array.from(Buffer.concat(parts));
}

function ofLines(bytes: Uint8Array, change: (lines: string[]) => void): Uint8Array {
  const lines = textOf(bytes).split("\n");
  change(lines);
  return latin(lines.join("\n"));
}
