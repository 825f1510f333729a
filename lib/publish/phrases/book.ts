/** A phrase book, opened: finds the phrase that a text is an instance of. */
import type { Language } from "./languages.ts";
import { matchParts, type Value, withPlainSpaces } from "./match.ts";
import { type Chapter, type Phrase, readSource, readWording, type SourcePart, type WordingPart } from "./pattern.ts";

export type Entry = {
  readonly phrase: Phrase;
  readonly parts: readonly SourcePart[];
  readonly wordings: Readonly<Record<Language, readonly WordingPart[]>>;
};

/** A text taken apart: the entry it is an instance of, and what stands at each of the entry's places. */
export type Found = { readonly entry: Entry; readonly values: ReadonlyMap<string, Value<Found>> };

export type Book = {
  /** Entries by group. */
  readonly groups: ReadonlyMap<string, readonly Entry[]>;
  /** The first entry of the group that the whole text is an instance of; undefined where none is. Texts met before are remembered. */
  find(group: string, text: string): Found | undefined;
  /** One find for every entry of the group that the whole text is an instance of: more than one is a mistake in the book. */
  findAll(group: string, text: string): Found[];
};

/** Opens a book: chapters that name the same group add to it. Throws on a pattern that is none and a group that nobody wrote: our mistakes. */
export function openBook(chapters: readonly Chapter[]): Book {
  const groups = new Map<string, Entry[]>();
  for (const chapter of chapters)
    for (const [name, phrases] of Object.entries(chapter)) groups.set(name, [...(groups.get(name) ?? []), ...phrases.map(entryOf)]);
  checkGroups(groups);

  const candidatesIn = new Map([...groups].map(([name, entries]) => [name, byFirstWord(entries)]));
  const remembered = new Map<string, Found | null>();
  return { groups, find, findAll };

  function find(group: string, text: string): Found | undefined {
    const key = `${group}\n${text}`;
    const known = remembered.get(key);
    if (known !== undefined) return known ?? undefined;
    let found: Found | undefined;
    for (const entry of candidatesIn.get(group)?.(text) ?? []) {
      found = asInstance(entry, text);
      if (found !== undefined) break;
    }
    remembered.set(key, found ?? null);
    return found;
  }

  function findAll(group: string, text: string): Found[] {
    return (candidatesIn.get(group)?.(text) ?? []).flatMap((entry) => asInstance(entry, text) ?? []);
  }

  function asInstance(entry: Entry, text: string): Found | undefined {
    const values = matchParts<Found>(entry.parts, text, find);
    return values === undefined ? undefined : { entry, values };
  }
}

function entryOf(phrase: Phrase): Entry {
  return { phrase, parts: readSource(phrase.en), wordings: { pl: readWording(phrase.pl), de: readWording(phrase.de) } };
}

function checkGroups(groups: ReadonlyMap<string, readonly Entry[]>): void {
  for (const [name, entries] of groups)
    for (const { parts, phrase } of entries)
      for (const part of parts) {
        if (typeof part === "string" || !("group" in part)) continue;
        if (!groups.has(part.group)) throw new Error(`no group is called "${part.group}": ${phrase.en}`);
        if (parts.length === 1 && part.group === name) throw new Error(`a phrase in place of itself: ${phrase.en}`);
      }
}

/**
 * The few entries of a group that a text can be an instance of: those that begin with the text's first word, and those that begin with a
 * place. A build asks for thousands of texts, and a book has hundreds of entries.
 */
function byFirstWord(entries: readonly Entry[]): (text: string) => readonly Entry[] {
  const begun = new Map<string, Entry[]>();
  const others: Entry[] = [];
  for (const entry of entries) {
    const word = firstWordOf(entry.parts);
    if (word === undefined) others.push(entry);
    else begun.set(word, [...(begun.get(word) ?? []), entry]);
  }
  return (text) => [...(begun.get(withPlainSpaces(text).split(" ", 1)[0] ?? "") ?? []), ...others];
}

/** The word that every instance begins with; undefined where a place comes before the word's end. */
function firstWordOf([first, second]: readonly SourcePart[]): string | undefined {
  if (typeof first !== "string") return undefined;
  const [word, ...more] = first.split(" ");
  return more.length === 0 && second !== undefined ? undefined : word;
}
