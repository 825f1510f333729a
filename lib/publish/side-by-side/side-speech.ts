/** How statements over several chargers speak the page's language: by words that are data, so that no table of words is in a script. */
import type { Language } from "../../nouns/site.ts";
import type { NumberMarks } from "../../units/write-number.ts";
import type { Words } from "../words/index.ts";

/** Words of the page, of the marks in it, and of its numbers; side-words.ts gathers them. */
export type SideWords = Words["sideBySide"] &
  Pick<Words["marks"], "absences" | "bases" | "invented"> & { readonly language: Language; readonly numbers: NumberMarks };

export type SideSpeech = {
  readonly words: SideWords;
  /** A text that the data give in English, in the page's language as far as it is known. */
  tell(text: string): string;
};

/** "A", "A and B", "A, B and C". */
export function listed(names: readonly string[], { and }: Pick<SideWords, "and">): string {
  return names.length < 2 ? (names[0] ?? "") : `${names.slice(0, -1).join(", ")}${and}${names.at(-1)}`;
}
