/**
 * How a phrase is written: an English pattern with typed places, and its wording in other languages with the same places by name.
 *
 * English: `{visit}` is a number, `{hours:range}` a number or an interval, `{file:name}` any words, `{cause:cause}` a phrase of the group
 * "cause", `{causes:cause+and}` several of them joined by "and". Other languages: `{visit}` sets the value in, `{^why}` sets it in with a
 * capital, `{visits|wizyta|wizyty|wizyt}` is the form of a word that goes with the number.
 */
import type { Language } from "./languages.ts";
import { isPlainKind, type PlainKind } from "./values.ts";

/** One entry of the phrase book: a sentence or a part of one, as the results hold it, and what it says in every other language. */
export type Phrase = { readonly en: string } & Readonly<Record<Language, string>>;

/** Phrases by group. The group "text" holds what stands alone in the results; the others are parts that only stand inside a phrase. */
export type Chapter = Readonly<Record<string, readonly Phrase[]>>;

/** What stands between the items of a list, by the name that a pattern calls it. */
export const joints = {
  and: { en: " and ", pl: " oraz ", de: " und " },
  comma: { en: ", ", pl: ", ", de: ", " },
  andThat: { en: ", and ", pl: ", oraz że ", de: ", und dass " },
  inTurn: { en: ", then ", pl: ", potem ", de: ", dann " },
  orThat: { en: ", or that ", pl: ", albo że ", de: ", oder dass " },
  andWhether: { en: ", and whether ", pl: " i czy ", de: " und ob " },
  or: { en: " or ", pl: " albo ", de: " oder " },
  plus: { en: " + ", pl: " + ", de: " + " },
  semicolon: { en: "; ", pl: "; ", de: "; " },
  semicolonAnd: { en: "; and ", pl: "; oraz ", de: "; und " },
} as const;
export type Joint = keyof typeof joints;

/** A place in the English pattern: a plain value, a phrase of a group, or a list of such phrases. */
export type Place =
  | { readonly name: string; readonly kind: PlainKind }
  | { readonly name: string; readonly kind: "phrase"; readonly group: string }
  | { readonly name: string; readonly kind: "list"; readonly group: string; readonly joint: Joint };
export type SourcePart = string | Place;

/** A place in another language's wording; with forms, it is replaced by the form that goes with its number. */
export type WordingPart = string | { readonly name: string; readonly isCapital: boolean; readonly forms: readonly string[] | null };

/**
 * Takes an English pattern apart.
 * Throws where it is no pattern: that is a mistake in the phrase book, and ours.
 */
export function readSource(pattern: string): SourcePart[] {
  const parts = cut(pattern).map((part) => (part.place === undefined ? part.literal : readPlace(part.place, pattern)));
  for (const [index, part] of parts.entries())
    if (typeof part !== "string" && typeof parts[index + 1] === "object") throw new Error(`two places without words between: ${pattern}`);
  return parts;
}

/** Takes the wording of another language apart. Throws as readSource does. */
export function readWording(wording: string): WordingPart[] {
  return cut(wording).map((part) => {
    if (part.place === undefined) return part.literal;
    const [place = "", ...forms] = part.place.split("|");
    return { name: place.replace("^", ""), isCapital: place.startsWith("^"), forms: forms.length === 0 ? null : forms };
  });
}

type Cut = { readonly literal: string; readonly place?: undefined } | { readonly place: string; readonly literal?: undefined };

/** Places stand between braces; a brace with a space beside it stands for itself, as records write it. */
function cut(text: string): Cut[] {
  const parts: Cut[] = text
    .split(/(\{[^\s{}][^{}]*\})/)
    .filter((part) => part !== "")
    .map((part) => (/^\{\S.*\}$/.test(part) ? { place: part.slice(1, -1) } : { literal: part }));
  const stray = parts.find((part) => part.literal !== undefined && /\{(?!\s)|(?<!\s)\}/.test(part.literal));
  if (stray !== undefined) throw new Error(`a brace that opens or closes nothing: ${text}`);
  return parts;
}

function readPlace(text: string, pattern: string): Place {
  const found = /^(\w+)(?::(\w+)(?:\+(\w+))?)?$/.exec(text);
  const [, name = "", kind = "number", joint] = found ?? [];
  if (found === null) throw new Error(`a place that cannot be read, {${text}}, in: ${pattern}`);
  if (joint === undefined) return isPlainKind(kind) ? { name, kind } : { name, kind: "phrase", group: kind };
  if (!isJoint(joint)) throw new Error(`lists are not joined by "${joint}": ${pattern}`);
  return { name, kind: "list", group: kind, joint };
}

function isJoint(text: string): text is Joint {
  return Object.hasOwn(joints, text);
}
