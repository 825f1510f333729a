/** What the card, the embed and quotations need to speak a language. */
import type { Language } from "../../nouns/site.ts";
import type { Formats } from "../../units/formats.ts";
import type { Speech } from "../pages/speech.tsx";
import { type Words, wordsIn } from "../words/index.ts";
import { speechIn } from "../words/speech-in.ts";

export type OutwardSpeech = Pick<Speech, "say"> & { readonly language: Language; readonly formats: Formats } & Pick<
    Words,
    "outward" | "marks"
  >;

export function outwardSpeechIn(language: Language): OutwardSpeech {
  const { outward, marks } = wordsIn(language);
  return { ...speechIn(language), outward, marks };
}
