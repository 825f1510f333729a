/** What charts need to speak a language. */
import type { Language } from "../../nouns/site.ts";
import type { Formats } from "../../units/formats.ts";
import type { Speech } from "../pages/speech.tsx";
import { type Words, wordsIn } from "../words/index.ts";
import { notations, speechIn } from "../words/speech-in.ts";

export type ChartSpeech = Pick<Speech, "say"> & { readonly formats: Formats } & Pick<Words, "charts" | "marks"> & {
    readonly decimalMark: string;
  };

export function chartSpeechIn(language: Language): ChartSpeech {
  const { charts, marks } = wordsIn(language);
  return { ...speechIn(language), charts, marks, decimalMark: notations[language].decimalMark };
}
