/** The maker's own words with where they are printed. */
import type { StatedByMaker } from "./find-data.ts";
import type { FindSpeech } from "./find-speech.ts";

export const statedWords = ({ words, from }: StatedByMaker, speech: Pick<FindSpeech, "words">): string => {
  const sources: Readonly<Record<string, string>> = speech.words.sources;
  return speech.words.stated(words, sources[from] ?? from);
};
