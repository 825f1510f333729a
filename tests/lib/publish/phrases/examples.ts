/** An example of a phrase, made up from its places: every entry of the book has one, without anybody writing it. */
import type { Book, Entry } from "../../../../lib/publish/phrases/book.ts";
import { joints, type Place } from "../../../../lib/publish/phrases/pattern.ts";

const plain = {
  number: "12.5",
  range: "1.5 to 2.5",
  quantity: "1.5 to 2.5 Ah",
  numbers: "1, 2 and 4",
  duration: "6 h 30 min",
  date: "2026-04-29",
  instant: "2026-04-29 09:10",
  quoted: "12.5 V",
  file: "day-1.csv",
  name: "Tern One",
} as const;

/** A text that is an instance of the entry; phrases inside it are the plainest of their group, two of them in a list. */
export function exampleOf(book: Book, entry: Entry): string {
  return entry.parts.map((part) => (typeof part === "string" ? part : valueAt(book, part))).join("");
}

function valueAt(book: Book, place: Place): string {
  if (place.kind === "phrase") return plainestOf(book, place.group, 0);
  if (place.kind === "list") return [0, 1].map((rank) => plainestOf(book, place.group, rank)).join(joints[place.joint].en);
  return plain[place.kind];
}

function plainestOf(book: Book, group: string, rank: number): string {
  const placesIn = ({ parts }: Entry): number => parts.filter((part) => typeof part !== "string").length;
  const entries = [...(book.groups.get(group) ?? [])].sort((a, b) => placesIn(a) - placesIn(b));
  const entry = entries[Math.min(rank, entries.length - 1)];
  if (entry === undefined) throw new Error(`the group ${group} is empty`);
  return exampleOf(book, entry);
}
