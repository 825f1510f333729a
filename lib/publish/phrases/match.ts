/** Takes a text apart by a pattern. */
import { type Joint, joints, type Place, type SourcePart } from "./pattern.ts";
import { endOfValue, isValue, type PlainKind } from "./values.ts";

/** What stands at a place of a pattern; T is what a phrase inside it was found to be. */
export type Value<T> =
  | { readonly kind: "plain"; readonly as: PlainKind; readonly text: string }
  | { readonly kind: "phrase"; readonly found: T }
  | { readonly kind: "list"; readonly items: readonly T[]; readonly joint: Joint };

/** Looks a text up in a group of phrases; undefined where it is none of them. */
export type LookUp<T> = (group: string, text: string) => T | undefined;

/** No-break spaces stand where a plain space may: patterns are written with plain ones. The text keeps its length, so places keep their position. */
export function withPlainSpaces(text: string): string {
  return text.replace(/[\u00A0\u202F]/g, " ");
}

/**
 * Matches the whole of a text against a pattern.
 * @returns what stands at each place, by name; undefined where the text is no instance of the pattern. Where it could be cut in several
 *   ways, names are taken as short as can be, from the left.
 */
export function matchParts<T>(parts: readonly SourcePart[], text: string, lookUp: LookUp<T>): ReadonlyMap<string, Value<T>> | undefined {
  const plain = withPlainSpaces(text);
  const values = new Map<string, Value<T>>();
  return matchFrom(0, 0) ? values : undefined;

  function matchFrom(index: number, from: number): boolean {
    const part = parts[index];
    if (part === undefined) return from === text.length;
    if (typeof part === "string") return plain.startsWith(part, from) && matchFrom(index + 1, from + part.length);
    return endsOf(part, from, parts[index + 1], index + 2 >= parts.length).some((end) => {
      const value = readValue(part, text.slice(from, end), lookUp);
      if (value === undefined || !matchFrom(index + 1, end)) return false;
      values.set(part.name, value);
      return true;
    });
  }

  /** Where the value of a place can end: by its own form or, for words, wherever the pattern's next words stand. */
  function endsOf(place: Place, from: number, next: SourcePart | undefined, isNextLast: boolean): number[] {
    if (place.kind !== "name" && place.kind !== "file" && place.kind !== "phrase" && place.kind !== "list") {
      const end = endOfValue(place.kind, text, from);
      return end === undefined ? [] : [end];
    }
    if (typeof next !== "string") return from < text.length ? [text.length] : [];
    if (isNextLast) return plain.endsWith(next) && text.length - next.length > from ? [text.length - next.length] : [];
    const ends: number[] = [];
    for (let end = plain.indexOf(next, from + 1); end !== -1; end = plain.indexOf(next, end + 1)) ends.push(end);
    return ends;
  }
}

function readValue<T>(place: Place, text: string, lookUp: LookUp<T>): Value<T> | undefined {
  if (place.kind === "phrase") {
    const found = lookUp(place.group, text);
    return found === undefined ? undefined : { kind: "phrase", found };
  }
  if (place.kind !== "list") return isValue(place.kind, text) ? { kind: "plain", as: place.kind, text } : undefined;
  const items = readItems(text, joints[place.joint].en, (item) => lookUp(place.group, item));
  return items === undefined ? undefined : { kind: "list", items, joint: place.joint };
}

/** Items of a list; a joint may stand inside an item as well, so a longer item is tried where a shorter one is none. */
function readItems<T>(text: string, joint: string, lookUp: (item: string) => T | undefined): T[] | undefined {
  for (let at = text.indexOf(joint); at !== -1; at = text.indexOf(joint, at + 1)) {
    const item = lookUp(text.slice(0, at));
    const rest = item === undefined ? undefined : readItems(text.slice(at + joint.length), joint, lookUp);
    if (item !== undefined && rest !== undefined) return [item, ...rest];
  }
  const only = lookUp(text);
  return only === undefined ? undefined : [only];
}
